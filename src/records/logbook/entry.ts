/** An entry of the logbook: what is told of a run without opening its record. */
import type { RunRecord } from '../../../sim/files/index.js';

export interface Entry {
  /** Made when the run began; the record changes when the trainee has judged it, the entry stays the same. */
  readonly id: string;
  /** Digest of the record: two records of one digest are one. */
  readonly digest: string;
  /** Short name of who flew. */
  readonly person: string;
  /** When it was flown by this machine's calendar, ms since 1970; an imported run keeps what its file says. */
  readonly atMs: number;
  /** The flight of a set that it belongs to; null for a run of its own. */
  readonly attempt: string | null;
  /** Number of the shipped drill; null for a run of something else. */
  readonly drill: number | null;
  /** The task in words that give nothing away: flaps from 4 to 16. */
  readonly task: string;
  readonly outcome: RunRecord['outcome'];
  readonly source: RunRecord['source'];
  readonly model: number;
  readonly growthAtReleaseDeg: number | null;
  readonly afterOnsetS: number | null;
  readonly rollAuthorityPct: number;
  /** Came out of a file. */
  readonly imported: boolean;
  /** The page went away in mid-run. */
  readonly abandoned: boolean;
  /** When it was taken off the list, ms since 1970; null: it is on it. */
  readonly removedMs: number | null;
}

/** What the logbook knows of a run beside its record. */
export type About = Pick<Entry, 'id' | 'person' | 'atMs' | 'attempt' | 'drill' | 'imported' | 'abandoned'>;

/** The task of a run in words that give nothing away. */
export function taskIn({ scenario: { start, task }, airframe: { settings } }: Pick<RunRecord, 'scenario' | 'airframe'>): string {
  const name = (deg: number): string => settings.find((setting) => setting.deg === deg)?.name ?? `${deg}`;
  return `Flaps from ${name(start.flapDeg)} to ${task.settings.map(name).join(', then ')}`;
}

/** The entry of a record. */
export function entryOf(record: RunRecord, about: About): Entry {
  const { score } = record;
  return {
    ...about,
    digest: record.digest,
    task: taskIn(record),
    outcome: record.outcome, source: record.source, model: record.model,
    growthAtReleaseDeg: score.growthAtReleaseDeg, afterOnsetS: score.afterOnsetS, rollAuthorityPct: score.rollAuthorityPct,
    removedMs: null,
  };
}
