/** One flight of a set, over as many sittings as it takes: which runs are done, and what became of them. */
import type { RunRecord } from '../../../sim/files/index.js';
import type { Forecast } from '../../../sim/index.js';

/** As it is kept, and as a line of an exported logbook has it. Times are ms since 1970. */
export interface Attempt {
  readonly id: string;
  /** Name of the shipped set. It is the instructor's, and no page shows it. */
  readonly set: string;
  /** The set was drawn by it as a whole, before the first run. */
  readonly seed: number;
  readonly person: string;
  /** Name that the trainee gave it beforehand; empty for none. */
  readonly name: string;
  readonly startedMs: number;
  /** Runs of the set, and blocks of them with a pause between. */
  readonly runs: number;
  readonly blocks: number;
  /** Runs done, in their order: the entry of each in the logbook. A void run is done as well, and counts as void. */
  readonly done: readonly { readonly entry: string; readonly outcome: RunRecord['outcome'] }[];
  /** When it was left off before its last run, ms since 1970; null: it was not. */
  readonly leftMs: number | null;
  /** What the trainee expected of it before the first run; absent where nothing was said. */
  readonly forecast?: Forecast;
}

/** The place of the next run, from 0; null where there is none. */
export const nextPlace = ({ done, runs, leftMs }: Pick<Attempt, 'done' | 'runs' | 'leftMs'>): number | null => (leftMs === null && done.length < runs ? done.length : null);

/** The attempt behind a run. A run that is in it already changes nothing. */
export const withRun = (attempt: Attempt, entry: string, outcome: RunRecord['outcome']): Attempt =>
  (attempt.done.some((one) => one.entry === entry) ? attempt : { ...attempt, done: [...attempt.done, { entry, outcome }] });

/** Whether the next run begins a block behind the first. */
export const isPause = (attempt: Attempt): boolean => {
  const place = nextPlace(attempt);
  return place !== null && place > 0 && place % (attempt.runs / attempt.blocks) === 0;
};
