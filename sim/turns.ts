/**
 * Repositions: the state of an earlier tick returns while the tick of the run goes on. What counts time of flight (timed
 * entries, the time allowed, time since a call) leaves out the stretches that were taken back.
 */
import type { State } from './state.js';
import type { TakenBack } from './task/rule.js';

/** One reposition: at tick `from` of the run the state of tick `to` returns; behind it `by` ticks in all are none of the flight. */
export interface Turn extends TakenBack {
  /** Tick whose state returns. */
  readonly to: number;
  readonly state: Readonly<State>;
}

/** Tick of the run at which the flight that goes on at `now` was at a tick of flight. */
export function runTick(turns: readonly Turn[], flown: number, now: number): number {
  let end = now + 1;
  for (let i = turns.length - 1; i >= 0; i -= 1) {
    const { from, to, by } = turns[i] as Turn;
    if (from >= end) continue; // on a stretch that was taken back itself
    if (flown + by >= from) return flown + by;
    end = to;
  }
  return flown;
}

/** Whether the step that made the state of this tick count was taken back later. */
export function isTakenBack(turns: readonly Turn[], tick: number): boolean {
  let end = Infinity;
  for (let i = turns.length - 1; i >= 0; i -= 1) {
    const { from, to } = turns[i] as Turn;
    if (from >= end) continue;
    if (tick > from) return false;
    if (tick > to) return true;
    end = to;
  }
  return false;
}
