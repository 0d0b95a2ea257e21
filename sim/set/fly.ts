/** A set flown by one scripted person: run by run, and what it comes to. Counts and points; nothing about the person. */
import type { Outcome } from '../files/record.js';
import { flyRow, type SweepRow } from '../sweep/row.js';
import { watcherFor, type Trainee } from '../trainee/fly.js';
import { drawSet, type SetRun } from './draw.js';
import { pointsOf } from './points.js';
import type { ReadySet } from './ready.js';

/** How many of the `runs` came to what: `caught`, `late`, `missed`, `undecided`, `falseRelease` or `held`. A void run is in `runs` alone. */
export interface SetCounts {
  readonly runs: number;
  readonly caught: number;
  readonly late: number;
  readonly missed: number;
  readonly undecided: number;
  readonly falseRelease: number;
  readonly held: number;
  /** Sum over the runs, and their mean; 0 without a run. */
  readonly points: number;
  readonly meanPoints: number;
}

/** Outcome and growth of one run. */
export interface Scored {
  readonly outcome: Outcome;
  readonly growthAtReleaseDeg: number | null;
}

/** Counts and points of runs, in their order. */
export function countsOf(of: ReadySet, scored: readonly Scored[]): SetCounts {
  const count = (outcome: Outcome): number => scored.filter((one) => one.outcome === outcome).length;
  let points = 0;
  for (const { outcome, growthAtReleaseDeg } of scored) points += pointsOf(outcome, growthAtReleaseDeg, of.set);
  return {
    runs: scored.length, caught: count('caught'), late: count('late'), missed: count('missed'), undecided: count('undecided'),
    falseRelease: count('falseRelease'), held: count('held'), points, meanPoints: scored.length === 0 ? 0 : points / scored.length,
  };
}

/** Flies the set of a seed, as figures. One person flies all its runs, drawn by the seed of the set. */
export function flySet(of: ReadySet, seed: number, trainee: Trainee): { runs: SetRun[]; rows: SweepRow[] } {
  const person = watcherFor(trainee, seed);
  const runs = drawSet(of, seed);
  return { runs, rows: runs.map((run) => flyRow(of.scenarios[run.rate] as ReadySet['scenarios'][number], of.airframe, run.seed, person)) };
}
