/** What the state has latched of the agenda: which watchers have fired, which of them act in the next tick, which crossings were seen. */
import type { Entry } from './entry.js';
import type { Fixed } from './fixed.js';
import { latch, type State } from './state.js';
import { flightTick } from './task/rule.js';
import { runTick, type Turn } from './turns.js';

const WORD = 30;

/** Whether a place is marked in a pair of words. */
export const has = (low: number, high: number, place: number): boolean =>
  ((place < WORD ? low >> place : high >> (place - WORD)) & 1) === 1;

export const isPending = (s: State, latch: number): boolean => has(s.latched.pending0, s.latched.pending1, latch);
export const isDone = (s: State, latch: number): boolean => has(s.latched.done0, s.latched.done1, latch);

export function put(s: State, low: 'pending0' | 'done0' | 'leaf0', high: 'pending1' | 'done1' | 'leaf1', place: number): void {
  if (place < WORD) latch(s, low, s.latched[low] | (1 << place));
  else latch(s, high, s.latched[high] | (1 << (place - WORD)));
}

/** Whether an entry has acted by the end of the tick before `s.tick`. */
export const hasActed = (s: State, { agenda: { turns } }: Fixed, entry: Entry): boolean =>
  (entry.when === null ? s.tick > 0 && actedBy(turns, entry, s.tick - 1) : isDone(s, entry.latch) && !isPending(s, entry.latch));

/** Whether an entry has acted by now, for one who acts behind it in the same tick. */
export const hasBegun = (s: State, { agenda: { turns } }: Fixed, entry: Entry): boolean =>
  (entry.when === null ? actedBy(turns, entry, s.tick) : isDone(s, entry.latch));

/** Whether an entry stands at a tick of the run: what a desk put in does from then on, until it is disarmed or taken back. */
export function stands({ spans }: Entry, tick: number): boolean {
  if (spans === null) return true;
  for (const { from, until } of spans) if (tick >= from && tick < until) return true;
  return false;
}

/** Whether a timed entry had its tick by a tick of the run, and stood then. */
const actedBy = (turns: readonly Turn[], entry: Entry, tick: number): boolean =>
  flightTick(turns, tick) >= entry.tick && (entry.spans === null || stands(entry, runTick(turns, entry.tick, tick)));
