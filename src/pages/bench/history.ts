/** What was undone and can be done again: whole states, as they are small. Plain data, no page. */

export interface History<T> {
  readonly past: readonly T[];
  readonly now: T;
  readonly future: readonly T[];
  /** What the last step was called; edits of one name join into one step. */
  readonly step: string | null;
}

/** Most steps that can be taken back. */
export const MOST_STEPS = 200;

export const begin = <T>(now: T): History<T> => ({ past: [], now, future: [], step: null });

/** A step onward. With the name of the step before it the two are one: typing, dragging. */
export function advance<T>({ past, now, step: before }: History<T>, next: T, step: string | null): History<T> {
  const joins = step !== null && step === before;
  return { past: joins ? past : [...past, now].slice(-MOST_STEPS), now: next, future: [], step };
}

/** The next edit begins a step of its own, whatever it is called. */
export const part = <T>(history: History<T>): History<T> => (history.step === null ? history : { ...history, step: null });

export function back<T>(history: History<T>): History<T> {
  const { past, now, future } = history;
  const before = past.at(-1);
  return before === undefined ? history : { past: past.slice(0, -1), now: before, future: [now, ...future], step: null };
}

export function forth<T>(history: History<T>): History<T> {
  const { past, now, future } = history;
  const [next] = future;
  return next === undefined ? history : { past: [...past, now], now: next, future: future.slice(1), step: null };
}
