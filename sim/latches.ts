/** What the state has latched of the agenda: which watchers have fired, which of them act in the next tick, which crossings were seen. */
import type { Entry } from './entry.js';
import type { State } from './state.js';

const WORD = 30;

/** Whether a place is marked in a pair of words. */
export const has = (low: number, high: number, place: number): boolean =>
  ((place < WORD ? low >> place : high >> (place - WORD)) & 1) === 1;

export const isPending = (s: State, place: number): boolean => has(s.pending0, s.pending1, place);
export const isDone = (s: State, place: number): boolean => has(s.done0, s.done1, place);

export function put(s: State, low: 'pending0' | 'done0' | 'leaf0', high: 'pending1' | 'done1' | 'leaf1', place: number): void {
  if (place < WORD) s[low] |= 1 << place;
  else s[high] |= 1 << (place - WORD);
}

/** Whether an entry has acted by the end of the tick before `s.tick`. */
export const hasActed = (s: State, entry: Entry): boolean =>
  entry.when === null ? s.tick > entry.tick : isDone(s, entry.place) && !isPending(s, entry.place);

/** Whether an entry has acted by now, for one who acts behind it in the same tick. */
export const hasBegun = (s: State, entry: Entry): boolean =>
  entry.when === null ? s.tick >= entry.tick : isDone(s, entry.place);
