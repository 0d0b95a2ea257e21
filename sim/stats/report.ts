/**
 * The report of a table of trials. Counts, curve, plain fit and points describe the table and are given as soon as they can be
 * worked out; `person` is what may be said of whoever flew it, and is null below the counts that it needs.
 */
import type { Share } from '../sweep/share.js';
import { curveOf, type CurveStep, isEveryRunDecided, type RateCurve, rateCurves } from './curve.js';
import { guessCorrected, type GuessCorrected } from './guess.js';
import { fitLogNormal, type LogNormalFit } from './log-normal.js';
import { type Person, personOf } from './person.js';
import { meanPoints, POINT_RULE } from './points.js';
import { fitRamp, type RampFit, v90 } from './ramp.js';
import { type CountedSensitivity, logLinear } from './sensitivity.js';
import { kaplanMeier, medianLimits, medianOf, midpointMedian, restrictedMean, type RestrictedMean } from './survival.js';
import { caughtOf, type FalseReleases, falseReleasesOf, flownRates, observationsOf, outcomesOf } from './tally.js';
import { type JudgedTrial, judgeTrial, type Trial, type TrialOutcome } from './trial.js';

/**
 * Made by `reportOf`, of trials under one limit; null where they do not bear the figure. Of the median `lo` and `hi` are 95 % limits, deg;
 * `meanPoints` is a run, quiet ones among them; `windows` are stretches of quiet holding that count as trials.
 */
export interface Report {
  readonly limitDeg: number;
  readonly outcomes: Readonly<Record<TrialOutcome, number>>;
  readonly caught: Share | null;
  readonly falseReleases: FalseReleases | null;
  /** All rates together: to be read as one curve only where `everyRunDecided`. */
  readonly survival: readonly CurveStep[];
  readonly everyRunDecided: boolean;
  readonly survivalByRate: readonly RateCurve[];
  readonly median: { readonly deg: number | null; readonly midpointDeg: number | null; readonly lo: number | null; readonly hi: number | null };
  /** Mean growth, each cut at the limit. */
  readonly restrictedMean: RestrictedMean | null;
  readonly logNormal: LogNormalFit | null;
  readonly model: (RampFit & { readonly v90DegPerS: number | null }) | null;
  readonly meanPoints: number | null;
  /** Only beyond 100 runs with an onset: below, its error is too large to be shown. */
  readonly sensitivity: (CountedSensitivity & { readonly windows: number }) | null;
  readonly guess: (GuessCorrected & { readonly windowS: number }) | null;
  readonly person: Person;
}

/** Runs with an onset beyond which d' is shown. */
const SENSITIVITY_BEYOND = 100;

/**
 * @param trials at least one, all of one limit
 * @param seenDeg growth below which a release is no reaction, deg, from 0
 * @param falsePoints points taken for a false release, from 0
 * @throws RangeError for no trial, or for different limits
 */
export function reportOf(trials: readonly Trial[], seenDeg: number, falsePoints: number): Report {
  const judged = trials.map((trial) => judgeTrial(trial, seenDeg));
  const limitDeg = judged[0]?.limitDeg;
  if (limitDeg === undefined) throw new RangeError('a report of no trials');
  const person = personOf(judged, seenDeg);
  const observations = observationsOf(judged);
  const steps = kaplanMeier(observations);
  const rates = flownRates(judged);
  const caught = caughtOf(judged);
  const falseReleases = falseReleasesOf(judged, seenDeg);
  const model = modelOf(judged);
  const windowS = windowOf(rates, limitDeg);
  return {
    limitDeg, outcomes: outcomesOf(judged), caught, falseReleases,
    survival: curveOf(observations),
    everyRunDecided: isEveryRunDecided(judged),
    survivalByRate: rateCurves(judged),
    median: { deg: medianOf(steps), midpointDeg: midpointMedian(steps), ...medianLimits(steps) },
    restrictedMean: observations.length === 0 ? null : restrictedMean(steps, limitDeg),
    logNormal: fitLogNormal(observations.filter(({ value }) => value > 0)),
    model: model === null ? null : { ...model, v90DegPerS: v90(model, limitDeg) },
    meanPoints: meanPoints(judged, { ...POINT_RULE, falseRelease: falsePoints }),
    sensitivity: sensitivityOf(judged, caught, falseReleases, windowS),
    guess: caught === null || falseReleases === null || windowS === null ? null
      : { windowS, ...guessCorrected(caught.k / caught.n, falseReleases.count / falseReleases.quietS, windowS) },
    person,
  };
}

const modelOf = (trials: readonly JudgedTrial[]): RampFit | null => fitRamp(trials.flatMap(({ rateDegPerS, growthDeg, outcome }) =>
  (rateDegPerS === null || growthDeg === null || growthDeg <= 0 ? [] : [{ rateDegPerS, splitDeg: growthDeg, event: outcome === 'caught' || outcome === 'late' }])));

/** The stretch of quiet holding that counts as one trial without a split: from onset to the limit at the lower middle rate, s. */
function windowOf(rates: readonly number[], limitDeg: number): number | null {
  const rate = rates[Math.floor((rates.length - 1) / 2)];
  return rate === undefined ? null : limitDeg / rate;
}

function sensitivityOf(trials: readonly JudgedTrial[], caught: Share | null, falses: FalseReleases | null, windowS: number | null): Report['sensitivity'] {
  const onsets = trials.filter(({ onsetS, outcome }) => onsetS !== null && outcome !== 'void').length;
  if (onsets <= SENSITIVITY_BEYOND || caught === null || falses === null || windowS === null) return null;
  const windows = Math.floor(falses.quietS / windowS);
  return windows < 1 ? null : { windows, ...logLinear(caught.k, Math.min(falses.count, windows), caught.n, windows) };
}
