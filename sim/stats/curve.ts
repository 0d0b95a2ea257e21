/** Curves of release as they are shown: share not yet let go, over the split. One a rate; one for all where every run was decided. */
import { kaplanMeier, logLogLimits, type Observation } from './survival.js';
import { isDecided, observationsOf, rateGroups } from './tally.js';
import type { JudgedTrial } from './trial.js';

/**
 * The curve at a split at which someone let go: `atRisk` runs still held just before it, `events` of them let go at it, share `s` not yet
 * let go behind it, 0 to 1, and its 95 % limits `lo` and `hi` (log-log; null where none can be given).
 */
export interface CurveStep {
  readonly splitDeg: number;
  readonly atRisk: number;
  readonly events: number;
  readonly s: number;
  readonly lo: number | null;
  readonly hi: number | null;
}

/** One flown rate, with its curve by rising split. */
export interface RateCurve {
  readonly rateDegPerS: number;
  readonly steps: readonly CurveStep[];
  /** Splits at which runs ended that were still held, rising, deg. */
  readonly heldToDeg: readonly number[];
}

export const curveOf = (observations: readonly Observation[]): CurveStep[] => kaplanMeier(observations).map((step) => {
  const limits = logLogLimits(step);
  return { splitDeg: step.value, atRisk: step.atRisk, events: step.events, s: step.s, lo: limits?.lo ?? null, hi: limits?.hi ?? null };
});

/** A curve for each of the flown rates, slowest first. */
export const rateCurves = (trials: readonly JudgedTrial[]): RateCurve[] => rateGroups(trials).map(({ rateDegPerS, trials: flown }) => {
  const observations = observationsOf(flown);
  return { rateDegPerS, steps: curveOf(observations), heldToDeg: observations.filter(({ event }) => !event).map(({ value }) => value).sort((a, b) => a - b) };
});

/** No run with an onset ended before the limit: only then may rates stand in one curve. */
export const isEveryRunDecided = (trials: readonly JudgedTrial[]): boolean => trials.every((one) => one.growthDeg === null || one.outcome === 'void' || isDecided(one));
