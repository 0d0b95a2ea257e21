/** Asks a device which of its parts is meant: one line waits at a time, and what is taken already is asked about. */
import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { change, say } from '../changing.js';
import { pads as kept } from '../settings.js';
import { upper } from '../../view/words.js';
import type { PadLine, PadPut, PadSeen, SwitchHouse } from './house.js';
import { sourceOf } from './source.js';
import { goneOn, pressedIn, waitFor, widestOf, type Waiting } from './waiting.js';

interface Taken {
  readonly line: PadLine;
  readonly put: Extract<PadPut, { what: 'taken' }>;
}

export interface Asking {
  /** What waits; null while nothing does. */
  readonly waiting: Waiting | null;
  /** What something else has; null while nothing is asked about. */
  readonly taken: Taken | null;
  wait(line: PadLine): void;
  /** A lever stands again where it begins. */
  done(line: PadLine): void;
  /** What is taken is taken from there. */
  instead(): void;
  /** Leaves it as it was. */
  leave(): void;
}

/** @param focusOn moves the focus to the button of a line */
export function useAsking(house: SwitchHouse, pad: PadSeen, focusOn: (does: string) => void): Asking {
  const waiting = useSignal<Waiting | null>(null);
  const taken = useSignal<Taken | null>(null);
  const lineOf = (does: string): PadLine | undefined => house.groups(kept.value, pad.id).flatMap(({ lines }) => lines).find((one) => one.does === does);

  const take = (line: PadLine, put: PadPut): void => {
    waiting.value = null;
    taken.value = null;
    if (put.what === 'refused') return say(put.why);
    if (put.what === 'taken') {
      taken.value = { line, put };
      return say(`That is for ${put.by} already.`);
    }
    change(() => {
      kept.value = put.changes;
      const now = lineOf(line.does);
      return `${upper(line.words)}: ${now === undefined || now.source === null ? 'nothing' : `${now.is === 'switch' ? 'switch' : 'lever'} ${sourceOf(now)}`}`;
    });
  };
  const leave = (): void => {
    const does = waiting.peek()?.does ?? taken.peek()?.line.does;
    if (does === undefined) return;
    waiting.value = null;
    taken.value = null;
    say('Left as it was');
    focusOn(does);
  };

  // Every reading goes to the line that waits.
  useEffect(() => {
    const now = waiting.peek();
    const line = now === null ? undefined : lineOf(now.does);
    if (now === null || line === undefined) return;
    const pressed = line.is === 'switch' ? pressedIn(now, pad) : null;
    if (pressed === null) waiting.value = goneOn(now, line.is, pad);
    else take(line, house.putSwitch(kept.value, pad.id, line.does, pressed));
  }, [pad]);
  useEffect(() => {
    const onKey = (key: KeyboardEvent): void => { if (key.code === 'Escape') leave(); };
    addEventListener('keydown', onKey);
    return () => removeEventListener('keydown', onKey);
  }, []);

  return {
    waiting: waiting.value, taken: taken.value, leave,
    wait(line) {
      taken.value = null;
      waiting.value = waitFor(line, pad);
      say(line.is === 'switch' ? `Press the switch for ${line.words}. Esc leaves it.` : `Move the lever for ${line.words} to both its ends, leave it ${line.begins}, then press Done. Esc leaves it.`);
    },
    done(line) {
      const now = waiting.peek();
      if (now === null) return;
      const { axis, least, most } = widestOf(now);
      const value = pad.axes[axis] ?? 0;
      // It was left where it begins: the farther end is the other one.
      const to = Math.abs(value - least) > Math.abs(value - most) ? least : most;
      take(line, house.putLever(kept.value, pad.id, line.does, axis, to === least ? most : least, to));
      focusOn(line.does);
    },
    instead() {
      const now = taken.peek();
      if (now === null) return;
      take(now.line, { what: 'put', changes: now.put.instead });
      focusOn(now.line.does);
    },
  };
}
