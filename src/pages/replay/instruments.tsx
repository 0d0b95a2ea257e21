/** The drill's own instruments, drawn for the moment at which a cursor stands. */
import { useComputed, useSignal, useSignalEffect, type Signal } from '@preact/signals';
import { useLayoutEffect, useRef } from 'preact/hooks';
import { replayLayout } from '../../view/layoutReplay.js';
import type { Layout } from '../../view/place.js';
import { alertWords } from '../../view/alertList.js';
import type { House, Instruments as Drawn, Replayed } from '../house.js';
import { tickAt } from './player.js';
import { look } from '../settings.js';
import { degrees, seconds } from '../words.js';

interface Props {
  readonly house: House;
  readonly replayed: Pick<Replayed, 'panel' | 'pictureAt'>;
  readonly cursor: Signal<number>;
  readonly truth: Signal<boolean>;
  /** Lays them out in the room they have, px; left out, side by side in a width. */
  readonly layoutOf?: (width: number, height: number) => Layout;
}

export function Instruments({ house, replayed, cursor, truth, layoutOf = replayLayout }: Props) {
  const place = useRef<HTMLDivElement>(null);
  const drawn = useSignal<Drawn | null>(null);
  const now = useComputed(() => replayed.pictureAt(tickAt(cursor.value), truth.value));
  useLayoutEffect(() => {
    const host = place.current as HTMLDivElement;
    let gone = false;
    const undo: (() => void)[] = [];
    void house.instruments(host).then((stage) => {
      if (gone) return stage.close();
      // An observer may speak once more of a place that has just left the page, where no colour can be read.
      const set = (): void => { if (host.isConnected) stage.set(layoutOf(host.clientWidth, host.clientHeight), replayed.panel); };
      set();
      drawn.value = stage;
      const sizes = new ResizeObserver(() => { if (!matchMedia('print').matches) set(); });
      sizes.observe(host);
      // Behind the page's own effect, which puts the colours in force.
      const unlook = look.subscribe(() => { queueMicrotask(set); });
      const queries = ['(prefers-color-scheme: dark)', '(prefers-contrast: more)', '(forced-colors: active)'].map((query) => matchMedia(query));
      for (const query of queries) query.addEventListener('change', set);
      undo.push(() => sizes.disconnect(), unlook, () => { for (const query of queries) query.removeEventListener('change', set); }, () => stage.close());
    }, (problem: unknown) => { if (host.isConnected) throw problem; });
    return () => {
      gone = true;
      drawn.value = null;
      for (const one of undo) one();
    };
  }, [house, replayed]);
  useSignalEffect(() => { drawn.value?.draw(now.value); });
  const { timeS, leftPointerDeg, rightPointerDeg, speedKt } = now.value;
  const alerts = alertWords(now.value);
  return (
    <div
      ref={place} class="instruments" role="img"
      aria-label={`The instruments at ${seconds(timeS)}: left ${degrees(leftPointerDeg)}, right ${degrees(rightPointerDeg)}, ${Math.round(speedKt)} knots${alerts === '' ? '' : `; ${alerts}`}`}
    />
  );
}
