/** One replicate: a set is flown, the race is fitted, and each interval is asked whether it holds the truth. */
import { dice } from '../../sim/dice.js';
import { chanceBefore, medianSplit, q90Split } from '../../sim/stats/ramp.js';
import { race, type Race } from '../../sim/stats/race.js';
import { RACE_PRIOR } from '../../sim/stats/race-likelihood.js';
import type { Estimate } from '../../sim/stats/spread.js';
import { falsePerSOf, outcomesOf, raceRunsOf } from '../../sim/stats/tally.js';
import { judgeTrial } from '../../sim/stats/trial.js';
import { flySet, PLANS, WATCHERS, type Known, type SetPlan } from './watcher.js';

/** A watcher drawn from the prior of the fit; false releases evenly between .06 and .36 a minute. */
function drawWatcher(seed: number): Known {
  const throwDice = dice(seed, 'study-prior');
  const of = ({ mean, sd }: { mean: number; sd: number }): number => Math.exp(mean + sd * throwDice.normal());
  return {
    thetaDeg: of(RACE_PRIOR.lnTheta), t0S: of(RACE_PRIOR.lnT0), sigma: of(RACE_PRIOR.lnSigma),
    lapse: RACE_PRIOR.lapse, falsePerMin: 0.06 + 0.3 * throwDice.uniform(),
  };
}

export interface Replicate {
  /** Interval by name: truth, and what was found. */
  readonly found: Readonly<Record<string, { readonly truth: number; readonly estimate: Estimate }>>;
  readonly outcomes: Readonly<Record<string, number>>;
}

/** Decided runs of a set. */
export const decidedOf = (outcomes: Readonly<Record<string, number>>): number => (outcomes.caught ?? 0) + (outcomes.late ?? 0) + (outcomes.missed ?? 0);

/** @param watcher name of a known one; null: drawn from the prior */
export function replicate(planName: string, watcher: string | null, seed: number): Replicate {
  const plan = PLANS.find(({ name }) => name === planName) as SetPlan;
  const who = watcher === null ? drawWatcher(seed) : WATCHERS[watcher] as Known;
  const trials = flySet(who, plan, dice(seed, `study-${planName}-${watcher ?? 'prior'}`)).map((trial) => judgeTrial(trial, plan.seenDeg));
  const fit = race(raceRunsOf(trials, plan.seenDeg), { falsePerS: falsePerSOf(trials, plan.seenDeg), limitDeg: plan.limitDeg, ratesDegPerS: plan.ratesDegPerS });
  return { found: compared(fit, who, plan), outcomes: outcomesOf(trials) };
}

function compared(fit: Race, who: Known, plan: SetPlan): Replicate['found'] {
  const all: Record<string, { truth: number; estimate: Estimate }> = {
    theta: { truth: who.thetaDeg, estimate: fit.thetaDeg },
    t0: { truth: who.t0S, estimate: fit.t0S },
    sigma: { truth: who.sigma, estimate: fit.sigma },
  };
  for (const { rateDegPerS: rate, medianDeg, q90Deg, beforeLimit } of fit.atRates) {
    all[`median at ${rate}`] = { truth: medianSplit(who, rate), estimate: medianDeg };
    all[`q90 at ${rate}`] = { truth: q90Split(who, rate), estimate: q90Deg };
    all[`before limit at ${rate}`] = { truth: chanceBefore(who, rate, plan.limitDeg), estimate: beforeLimit };
  }
  return all;
}
