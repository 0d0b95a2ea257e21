/**
 * How hard a scenario is, in figures an instructor can read: what an ordinary watcher makes of it, how long there is
 * between the first degree shown and the limit, and what is at stake there. A property of the scenario, whoever sweeps it.
 */
import type { SweepRow } from './row.js';
import { shareOf, type Share } from './share.js';
import { quantileOf } from './spread.js';

/** Who shows what an ordinary watcher makes of it, and who shows what there is to be seen. */
export const ORDINARY = 'steady';
export const HOLDS_ON = 'never';
/** Runs of a sweep that are flown by these two as well, at most. */
export const DIFFICULTY_RUNS = 200;

/** Made by `difficultyOf`. null: in no run held on did the split come so far. */
export interface Difficulty {
  /** Runs it was read from. */
  readonly runs: number;
  /** Growth at which a release is late, deg. */
  readonly limitDeg: number;
  /** Of the runs with an onset that were decided: those in which an ordinary watcher lets go within the limit. */
  readonly withinLimit: Share;
  /** Held on: median time from 1 degree shown to the limit, s. */
  readonly oneDegreeToLimitS: number | null;
  /** Held on: median roll authority used at the limit, %. */
  readonly rollAuthorityAtLimitPct: number | null;
  readonly sentence: string;
}

const median = (values: readonly number[]): number | null =>
  (values.length === 0 ? null : quantileOf([...values].sort((a, b) => a - b), 0.5));

const DECIDED: readonly SweepRow['outcome'][] = ['caught', 'late', 'missed', 'completed', 'lost', 'timeUp'];

/** Let go within the limit: caught, or in a drill done with a release before the limit. */
const inTime = (row: SweepRow, limitDeg: number): boolean =>
  row.outcome === 'caught' || (row.outcome === 'completed' && row.growthAtReleaseDeg !== null && row.growthAtReleaseDeg < limitDeg);

/** @param ordinary runs flown by the ordinary watcher @param held the same seeds flown by one who never lets go */
export function difficultyOf(ordinary: readonly SweepRow[], held: readonly SweepRow[], limitDeg: number): Difficulty {
  const decided = ordinary.filter((row) => row.onsetS !== null && DECIDED.includes(row.outcome));
  const withinLimit = shareOf(decided.filter((row) => inTime(row, limitDeg)).length, decided.length);
  const oneDegreeToLimitS = median(held.flatMap(({ oneDegreeS, atLimitS }) =>
    (oneDegreeS === null || atLimitS === null ? [] : [Math.max(0, atLimitS - oneDegreeS)])));
  const rollAuthorityAtLimitPct = median(held.flatMap(({ rollAuthorityAtLimitPct: pct }) => (pct === null ? [] : [pct])));
  const figures = { runs: ordinary.length, limitDeg, withinLimit, oneDegreeToLimitS, rollAuthorityAtLimitPct };
  return { ...figures, sentence: sentenceOf(figures) };
}

/** A number with so many places; halves go up. */
const fixed = (value: number, places: number): string => value.toFixed(places);

function sentenceOf({ runs, limitDeg, withinLimit, oneDegreeToLimitS, rollAuthorityAtLimitPct }: Omit<Difficulty, 'sentence'>): string {
  const { k, n } = withinLimit;
  if (n === 0) return `In none of ${runs} runs did an ordinary watcher meet a split that was decided.`;
  const who = `An ordinary watcher lets go within ${limitDeg} deg in ${fixed(100 * k / n, 0)} of 100 runs with a split (${k} of ${n})`;
  if (oneDegreeToLimitS === null || rollAuthorityAtLimitPct === null) return `${who}; held on, the split never reaches the limit.`;
  return `${who}: there are ${fixed(oneDegreeToLimitS, 1)} s from 1 deg shown to the limit, where ${fixed(rollAuthorityAtLimitPct, 0)} % of the roll authority is used.`;
}
