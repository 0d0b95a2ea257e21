/** What a trainee does, as a spread of releases: many people drawn from its numbers, one run each, at one rate of growth. */
import { watcherOf, watchOf, type TraineeNumbers } from '../../../../sim/index.js';

export interface Releases {
  readonly rateDegPerS: number;
  /** Growth at release, deg, rising; Infinity for a run in which nothing is noticed. */
  readonly growthDeg: readonly number[];
  readonly medianDeg: number | null;
  readonly q90Deg: number | null;
}

/** People drawn: enough for a smooth line, few enough to follow the typing. */
const PEOPLE = 2000;

/**
 * Releases without a false one among them: growth is what the eye needs and what grows while the hand comes off.
 * @param rateDegPerS above 0
 */
export function releasesAt(numbers: TraineeNumbers, rateDegPerS: number, people = PEOPLE): Releases {
  const growthDeg = Array.from({ length: people }, (_, at) => {
    const { thresholdDeg, reactionTicks, lapsed } = watchOf(watcherOf(numbers, at + 1), at + 1);
    return lapsed ? Infinity : thresholdDeg + (rateDegPerS * reactionTicks) / 100;
  }).sort((a, b) => a - b);
  return { rateDegPerS, growthDeg, medianDeg: quantile(growthDeg, 0.5), q90Deg: quantile(growthDeg, 0.9) };
}

/** The least value that so many are at or below; null where too many never come. */
function quantile(sorted: readonly number[], p: number): number | null {
  const value = sorted[Math.ceil(p * sorted.length) - 1];
  return value === undefined || value === Infinity ? null : value;
}

/** Part that has let go by a growth. */
export const letGoBy = ({ growthDeg }: Releases, deg: number): number => {
  let low = 0;
  let high = growthDeg.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((growthDeg[middle] as number) <= deg) low = middle + 1;
    else high = middle;
  }
  return low / growthDeg.length;
};

/** Chance of a release without cause within so many seconds of holding. */
export const falseWithin = ({ falsePerMin }: TraineeNumbers, seconds: number): number => 1 - Math.exp((-falsePerMin * seconds) / 60);
