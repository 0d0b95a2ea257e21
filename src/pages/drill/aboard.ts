/** A run in its window, from the page being there to its being left: begun, shown, fitted to the window, and brought to its end. */
import { useSignal, type ReadonlySignal, type Signal } from '@preact/signals';
import type { RefObject } from 'preact';
import { useEffect, useMemo } from 'preact/hooks';
import type { RunRecord } from '../../../sim/files/index.js';
import type { Picture } from '../../view/picture.js';
import type { Layout } from '../../view/place.js';
import type { Cabin, Flown, Flying, House } from '../house.js';
import { planFor } from '../plan/kept.js';
import type { Route } from '../route.js';
import { fromFile, lastOwn, lastStep, record, route, started } from '../session.js';
import { bindings, latchedHold, letters, look, loudness, muted, pads, spokenPointers } from '../settings.js';
import { screenName } from '../size/screen.js';
import type { Sight } from '../size/sight.js';
import { timingNow } from '../timing/kept.js';
import { isNews } from './news.js';
import type { Why } from './paused.js';
import { placeOf } from './place.js';

/** Where a run leads that has ended by itself. */
const BEHIND: readonly Route['page'][] = ['say', 'step-say', 'own-say', 'set-say', 'practice'];

export interface Boarding {
  readonly house: House;
  readonly of: Flown;
  /** What the page is called: never what the run holds. */
  readonly name: string;
  /** How the gauge was seen before: it is drawn so again, and a change in mid-run stops the clock. */
  readonly lock?: Sight | null;
  /** The run is over, and its record is at hand. */
  readonly over: (run: RunRecord) => void;
  /** The run was left by going back; what it came to so far. */
  readonly left: (run: RunRecord) => void;
}

export interface Aboard {
  /** null until the run has begun. */
  readonly flying: ReadonlySignal<Flying | null>;
  /** The picture of which the page was last told; null before the first. */
  readonly now: ReadonlySignal<Picture | null>;
  /** Why the run is paused; null: it is not. */
  readonly paused: Signal<Why | null>;
  /** How many desks follow. */
  readonly desks: ReadonlySignal<number>;
  /** Why the run could not begin; null: it could. */
  readonly failed: ReadonlySignal<string | null>;
  readonly at: ReadonlySignal<Layout>;
}

/** Goes aboard when the page is there, on the deck that it holds, and off when it is left. */
export function useAboard(deck: RefObject<HTMLElement | null>, { house, of, name, lock = null, over: isOver, left: isLeft }: Boarding): Aboard {
  const flying = useSignal<Flying | null>(null);
  const now = useSignal<Picture | null>(null);
  const paused = useSignal<Why | null>(null);
  const desks = useSignal(0);
  const failed = useSignal<string | null>(null);
  const place = useMemo(() => placeOf(lock), []);

  useEffect(() => {
    document.title = `${name} · Evenhand`;
    const host = deck.current as HTMLElement;
    let over = false;
    let flight: Flying | null = null;
    const undo: (() => void)[] = [];
    host.focus({ preventScroll: true });
    if (!('course' in of)) lastStep.value = null;
    const onEnd = (run: RunRecord): void => {
      if (!('own' in of)) lastOwn.value = null;
      if (over) return isLeft(run);
      record.value = run;
      fromFile.value = false;
      isOver(run);
    };
    void house.fly({
      host, of, onEnd, ...chosen(of),
      place: (gauge) => ({ sight: place.begin(gauge), at: place.at.value }),
      onPause: (why) => { paused.value = why; },
      onDesks: (count) => { desks.value = count; },
    }).then((begun) => {
      flight = begun;
      if (over) return begun.close();
      undo.push(begun.onPicture((picture) => { if (isNews(now.value, picture)) now.value = picture; }));
      flying.value = begun;
    }).catch((problem: unknown) => { failed.value = problem instanceof Error ? problem.message : String(problem); });
    undo.push(onResize(() => {
      if (place.fit()) {
        flight?.resized();
        // What is measured is measured at one size: the clock stops, and the run no longer counts.
        if ('set' in of && flight !== null && paused.peek() === null) {
          flight.pause(performance.now());
          paused.value = 'resized';
        }
      }
      // Colours are worked out by the style sheet first.
      requestAnimationFrame(() => flight?.place(place.at.value));
    }));
    return () => {
      over = true;
      started.value = false;
      for (const one of undo) one();
      // Left by Back, or over: whichever it was, nothing stays held.
      if (record.value === null || !BEHIND.includes(route.value.page)) flight?.stop(performance.now());
      flight?.close();
    };
  }, [house]);
  return { flying, now, paused, desks, failed, at: place.at };
}

/** What the trainee has chosen for every run, and the plan that goes along with this one. */
const chosen = (of: Flown): Pick<Cabin, 'letters' | 'bindings' | 'pads' | 'latched' | 'mute' | 'loudness' | 'assisted' | 'timing' | 'plan'> => ({
  letters: () => letters.value, bindings: () => bindings.value, pads: () => pads.value,
  latched: () => latchedHold.value, mute: () => { muted.value = !muted.value; }, loudness,
  assisted: helpsInUse(), timing: timingNow(), ...planned(of),
});

/** The plan that goes along: of a drill, or of a run from a bench. */
function planned(of: Flown): Pick<Cabin, 'plan'> {
  const shipped = 'drill' in of ? of.drill : 'course' in of ? of.shipped : null;
  const plan = shipped !== null ? planFor({ drill: shipped }) : 'own' in of ? planFor({ own: of.own }) : undefined;
  return plan === undefined ? {} : { plan };
}

/** Helps that mark the record of a run. */
function helpsInUse(): NonNullable<RunRecord['device']['assisted']> {
  return [...(latchedHold.peek() ? ['latchedHold' as const] : []), ...(spokenPointers.peek() ? ['spokenPointers' as const] : [])];
}

/** Calls at once, and whenever window, colours or screen have changed. @returns its undo */
function onResize(fit: () => void): () => void {
  const dark = matchMedia('(prefers-color-scheme: dark)');
  addEventListener('resize', fit);
  dark.addEventListener('change', fit);
  const undo = [look.subscribe(fit), screenName.subscribe(fit), () => removeEventListener('resize', fit), () => dark.removeEventListener('change', fit)];
  return () => { for (const one of undo) one(); };
}
