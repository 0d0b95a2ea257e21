/**
 * What may be said of a person from runs of one condition, and what may not yet. After one run: nothing about the person.
 * From 8 decided runs: k of n, false releases a minute, the median split. From 20: the fit at the flown rates; threshold and
 * time apart only where four rates were flown, since with fewer the time is the prior's. A decided run is one that was
 * caught, late or missed.
 */
import type { Share } from '../sweep/share.js';
import { curveOf, type CurveStep, isEveryRunDecided, type RateCurve, rateCurves } from './curve.js';
import { medianRanks } from './order-median.js';
import { binomialTail } from './proportion.js';
import { race, type AtRate } from './race.js';
import type { Estimate } from './spread.js';
import { kaplanMeier, medianLimits, medianOf } from './survival.js';
import { caughtOf, falsePerSOf, type FalseReleases, falseReleasesOf, flownRates, isDecided, observationsOf, outcomesOf, raceRunsOf } from './tally.js';
import type { JudgedTrial, TrialOutcome } from './trial.js';

/** Decided runs from which on the counts and the fit are shown, and rates from which on threshold and time are. */
export const SHOWN_FROM = { counts: 8, fit: 20, rates: 4 } as const;

/** Median split at release with its 95 % limits `lo` and `hi`, deg; null: beyond what was seen. */
export interface MedianSplit {
  readonly deg: number | null;
  readonly lo: number | null;
  readonly hi: number | null;
  /** Two of the sorted splits; or the band of the curve, where a run ended undecided. */
  readonly limitsBy: 'orderStatistics' | 'logLog';
}

/** Posterior of the race: `sigma` log-spread of splits, `thetaDeg` what the eye needs, `t0S` attention, reaction and device together. */
export interface Fit {
  readonly sigma: Estimate;
  readonly atRates: readonly AtRate[];
  /** null with fewer than four rates. */
  readonly thetaDeg: Estimate | null;
  readonly t0S: Estimate | null;
}

/** Made by `personOf`. What is null may not be said yet; `needed` tells what is missing. */
export interface Person {
  readonly outcomes: Readonly<Record<TrialOutcome, number>>;
  /** Runs that were caught, late or missed. */
  readonly decided: number;
  readonly caught: Share | null;
  readonly falseReleases: FalseReleases | null;
  readonly median: MedianSplit | null;
  /** A curve a rate, and one for all rates where every run was decided. */
  readonly curves: readonly RateCurve[] | null;
  readonly curve: readonly CurveStep[] | null;
  /** "At least nine in ten" is shown, with 95 % confidence: 29 of 29, 45 of 46. */
  readonly nineInTen: boolean;
  readonly fit: Fit | null;
  /** What is missing for what is null: decided runs, and rates; 0 where nothing is. */
  readonly needed: { readonly runsForCounts: number; readonly runsForFit: number; readonly ratesForThreshold: number };
}

/**
 * @param trials judged trials of one condition and one limit, flown by one person
 * @param seenDeg growth below which a release is no reaction, deg, from 0
 * @throws RangeError for trials of different limits: they are never pooled
 */
export function personOf(trials: readonly JudgedTrial[], seenDeg: number): Person {
  const limits = new Set(trials.map(({ limitDeg }) => limitDeg));
  if (limits.size > 1) throw new RangeError(`trials with limits ${[...limits].join(', ')} are not one condition`);
  const decided = trials.filter(isDecided).length;
  const counts = decided >= SHOWN_FROM.counts;
  const rates = flownRates(trials);
  return {
    outcomes: outcomesOf(trials), decided,
    caught: counts ? caughtOf(trials) : null,
    falseReleases: counts ? falseReleasesOf(trials, seenDeg) : null,
    median: counts ? medianSplitOf(trials) : null,
    curves: counts ? rateCurves(trials) : null,
    curve: counts && isEveryRunDecided(trials) ? curveOf(observationsOf(trials)) : null,
    nineInTen: decided > 0 && binomialTail(trials.filter(({ outcome }) => outcome === 'caught').length, decided, 0.9) <= 0.05,
    fit: decided >= SHOWN_FROM.fit && rates.length > 0 ? fitOf(trials, seenDeg, rates) : null,
    needed: {
      runsForCounts: Math.max(0, SHOWN_FROM.counts - decided),
      runsForFit: Math.max(0, SHOWN_FROM.fit - decided),
      ratesForThreshold: Math.max(0, SHOWN_FROM.rates - rates.length),
    },
  };
}

function fitOf(trials: readonly JudgedTrial[], seenDeg: number, rates: readonly number[]): Fit {
  const found = race(raceRunsOf(trials, seenDeg), { falsePerS: falsePerSOf(trials, seenDeg), limitDeg: (trials[0] as JudgedTrial).limitDeg, ratesDegPerS: rates });
  const apart = rates.length >= SHOWN_FROM.rates;
  return { sigma: found.sigma, atRates: found.atRates, thetaDeg: apart ? found.thetaDeg : null, t0S: apart ? found.t0S : null };
}

/** The median of the curve. A missed run counts as above every release, so ranks serve as long as no run ended undecided. */
export function medianSplitOf(trials: readonly JudgedTrial[]): MedianSplit {
  const observations = observationsOf(trials);
  const steps = kaplanMeier(observations);
  const deg = medianOf(steps);
  if (trials.some(({ outcome }) => outcome === 'undecided')) return { deg, ...medianLimits(steps), limitsBy: 'logLog' };
  const ranks = medianRanks(observations.length);
  const sorted = observations.map(({ value, event }) => (event ? value : Infinity)).sort((a, b) => a - b);
  const at = (rank: number | undefined): number | null => {
    const value = rank === undefined ? undefined : sorted[rank - 1];
    return value === undefined || value === Infinity ? null : value;
  };
  return { deg, lo: at(ranks?.lo), hi: at(ranks?.hi), limitsBy: 'orderStatistics' };
}
