/** Trials of one condition, counted: the three numbers that are never one. */
import { type Share, shareOf } from '../sweep/share.js';
import type { Interval } from './proportion.js';
import { falseRate } from './race.js';
import type { RaceRun } from './race-likelihood.js';
import { garwood } from './rate.js';
import type { Observation } from './survival.js';
import { type JudgedTrial, quietSeconds, soonest, TRIAL_OUTCOMES, type TrialOutcome } from './trial.js';

/** Events of quiet holding with Garwood's 95 % interval. */
export interface FalseReleases extends Interval {
  readonly count: number;
  /** Time in which nothing was wrong and the drive was held, s. */
  readonly quietS: number;
  readonly perMin: number;
}

export const outcomesOf = (trials: readonly JudgedTrial[]): Record<TrialOutcome, number> =>
  Object.fromEntries(TRIAL_OUTCOMES.map((what) => [what, trials.filter(({ outcome }) => outcome === what).length])) as Record<TrialOutcome, number>;

/** Trials that say whether the person lets go before the limit. */
export const isDecided = ({ outcome }: JudgedTrial): boolean => outcome === 'caught' || outcome === 'late' || outcome === 'missed';
const isRelease = ({ outcome }: JudgedTrial): boolean => outcome === 'caught' || outcome === 'late';

/** Caught of decided; null without a decided trial. */
export function caughtOf(trials: readonly JudgedTrial[]): Share | null {
  const n = trials.filter(isDecided).length;
  const k = trials.filter(({ outcome }) => outcome === 'caught').length;
  return n === 0 ? null : shareOf(k, n);
}

/** Total quiet holding of the trials that are not void, s. */
const quietOf = (trials: readonly JudgedTrial[], seenDeg: number): number =>
  trials.reduce((sum, one) => (one.outcome === 'void' ? sum : sum + quietSeconds(one, seenDeg)), 0);

/** null without any quiet holding. @param seenDeg growth below which nothing can be seen, deg */
export function falseReleasesOf(trials: readonly JudgedTrial[], seenDeg: number): FalseReleases | null {
  const quietS = quietOf(trials, seenDeg);
  const count = trials.filter(({ outcome }) => outcome === 'falseRelease').length;
  return quietS > 0 ? { count, quietS, perMin: count / quietS * 60, ...garwood(count, quietS / 60) } : null;
}

/** For the curve: growth at the release, or at the end of a run that was held through. False releases say nothing and are left out. */
export const observationsOf = (trials: readonly JudgedTrial[]): Observation[] =>
  trials.flatMap((one) => (one.growthDeg === null || one.outcome === 'void' ? [] : [{ value: one.growthDeg, event: isRelease(one) }]));

/** For the fit: the same, where the growth was steady and above 0. */
export const raceRunsOf = (trials: readonly JudgedTrial[], seenDeg: number): RaceRun[] => trials.flatMap((one) => {
  const { rateDegPerS, growthDeg, outcome } = one;
  if (rateDegPerS === null || growthDeg === null || outcome === 'void' || !(growthDeg > 0)) return [];
  return [{ rateDegPerS, splitDeg: growthDeg, event: isRelease(one), fromDeg: Math.min(growthDeg, rateDegPerS * soonest(rateDegPerS, seenDeg)) }];
});

/** Releases without cause for the fit, 1/s; see falseRate. A condition without quiet time is given one second of it. */
export const falsePerSOf = (trials: readonly JudgedTrial[], seenDeg: number): number =>
  falseRate(trials.filter(({ outcome }) => outcome === 'falseRelease').length, Math.max(1, quietOf(trials, seenDeg)));

/** Realised rates up to a tenth above the slowest of a group are one flown rate. */
const ONE_RATE = 1.1;

/** One flown rate and its trials. */
export interface RateGroup {
  /** Geometric mean of the realised rates, deg/s. */
  readonly rateDegPerS: number;
  readonly trials: readonly JudgedTrial[];
}

/** The flown rates, slowest first; each trial with growth at a steady rate stands in one of them. */
export function rateGroups(trials: readonly JudgedTrial[]): RateGroup[] {
  const rateOf = ({ rateDegPerS }: JudgedTrial): number => rateDegPerS as number;
  const steady = trials.filter((one) => one.rateDegPerS !== null && one.growthDeg !== null && one.outcome !== 'void').sort((a, b) => rateOf(a) - rateOf(b));
  const groups: JudgedTrial[][] = [];
  for (const trial of steady) {
    const group = groups.at(-1);
    if (group !== undefined && rateOf(trial) <= rateOf(group[0] as JudgedTrial) * ONE_RATE) group.push(trial);
    else groups.push([trial]);
  }
  return groups.map((group) => {
    const [slowest, fastest] = [rateOf(group[0] as JudgedTrial), rateOf(group.at(-1) as JudgedTrial)];
    const mean = Math.exp(group.reduce((sum, one) => sum + Math.log(rateOf(one)), 0) / group.length);
    return { rateDegPerS: slowest === fastest ? slowest : mean, trials: group };
  });
}

/** The flown rates, slowest first, deg/s. */
export const flownRates = (trials: readonly JudgedTrial[]): number[] => rateGroups(trials).map(({ rateDegPerS }) => rateDegPerS);
