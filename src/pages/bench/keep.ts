/**
 * What is being written outlives a reload and a crash. A tab looks for its own work first, then for what any tab wrote
 * last: two tabs do not take each other's work away.
 */
import { isBenchKind, type BenchKind } from './kinds.js';

export interface Kept {
  readonly kind: BenchKind;
  readonly name: string;
  readonly text: string;
  readonly own: string | null;
  /** The text as it was opened or saved. */
  readonly base: string;
}

const KEY = 'evenhand.bench';
/** A store is written to when the hand rests for so long, ms: a crash loses no more. */
const REST_MS = 250;

/** A store holds whatever an older page or a hand has put there: what is no document is none. */
export function keptOf(text: string | null): Kept | null {
  try {
    const { kind, name, text: written, own, base } = JSON.parse(text ?? 'null') as Partial<Record<keyof Kept, unknown>>;
    if (!isBenchKind(kind) || typeof name !== 'string' || typeof written !== 'string' || typeof base !== 'string') return null;
    return { kind, name, text: written, own: typeof own === 'string' ? own : null, base };
  } catch {
    return null;
  }
}

/** Stores may be closed to us, or full: then the work lasts as long as the page. */
const tried = <T>(work: () => T): T | null => {
  try {
    return work();
  } catch {
    return null;
  }
};

/** What was being written when the page went away. */
export const kept = (): Kept | null => keptOf(tried(() => sessionStorage.getItem(KEY)) ?? tried(() => localStorage.getItem(KEY)));

let waiting: { readonly timer: number; readonly write: () => void } | null = null;

/** Keeps what is being written, once the hand rests. An empty bench keeps nothing. */
export function keep(now: Kept): void {
  if (waiting !== null) clearTimeout(waiting.timer);
  const write = (): void => {
    waiting = null;
    const put = (store: Storage): void => (now.text === '' ? store.removeItem(KEY) : store.setItem(KEY, JSON.stringify(now)));
    tried(() => put(sessionStorage));
    tried(() => put(localStorage));
  };
  waiting = { timer: setTimeout(write, REST_MS), write };
}

if (typeof window !== 'undefined') {
  addEventListener('pagehide', () => {
    if (waiting === null) return;
    clearTimeout(waiting.timer);
    waiting.write();
  });
}
