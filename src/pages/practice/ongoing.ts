/** A practice under way, and how it comes back from a store. */
import type { RunRecord } from '../../../sim/files/index.js';
import type { Practice } from '../../../sim/index.js';

/** One run of a practice, as it is drawn. */
export interface Practised {
  readonly degPerS: number;
  readonly easy: boolean;
  readonly outcome: RunRecord['outcome'];
}

export interface Ongoing {
  readonly practice: Practice;
  readonly seed: number;
  /** The latest runs, oldest first. */
  readonly runs: readonly Practised[];
}

/** Runs that are kept for the picture. */
export const KEPT = 40;

/** What a store holds may be anything: what is no practice is none. */
export function ongoingOf(text: string | null): Ongoing | null {
  try {
    const found = JSON.parse(text ?? 'null') as Partial<Ongoing> | null;
    const { degPerS, runs } = found?.practice ?? {};
    if (typeof degPerS !== 'number' || !(degPerS > 0 && degPerS < 10) || typeof runs !== 'number' || typeof found?.seed !== 'number') return null;
    const kept = (Array.isArray(found.runs) ? found.runs : []).filter((one) => typeof one?.degPerS === 'number' && typeof one.outcome === 'string').slice(-KEPT);
    return { practice: { degPerS, runs }, seed: found.seed >>> 0, runs: kept };
  } catch {
    return null;
  }
}
