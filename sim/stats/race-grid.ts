/** The posterior of the race on a grid that is laid over the whole prior and drawn in, time after time, to where it lies. */
import { type Axis, axis, type Box, node, RACE_PRIOR, raceLikelihood, racePrior, type RaceRun } from './race-likelihood.js';

/** Posterior masses at the points of a box; they add up to 1. */
export interface RaceGrid {
  readonly middleRate: number;
  readonly box: Box;
  readonly mass: Float64Array;
}

const COARSE = [28, 20, 14] as const;
const FINE = [40, 28, 22] as const;
/** ln of the part of the summit below which a corner of the grid is cut off. */
const CUT = 10;

/** The rate about which m is told: the geometric mean of the flown ones. */
export const middleRateOf = (runs: readonly RaceRun[]): number =>
  (runs.length === 0 ? 0.15 : Math.exp(runs.reduce((sum, { rateDegPerS }) => sum + Math.log(rateDegPerS), 0) / runs.length));

/**
 * The posterior, on 24,640 points.
 * @param runs rates and splits above 0; none: the prior
 * @param falsePerS releases without cause, 1/s, above 0
 */
export function raceGrid(runs: readonly RaceRun[], falsePerS: number): RaceGrid {
  const middleRate = middleRateOf(runs);
  const box = boxOf(runs, falsePerS, middleRate);
  return { middleRate, box, mass: normalised(posterior(runs, falsePerS, middleRate, box)) };
}

/** The box in which all of the posterior lies that matters. */
export function boxOf(runs: readonly RaceRun[], falsePerS: number, middleRate: number): Box {
  let box = priorBox(middleRate);
  for (let drawn = 0; drawn < 8; drawn += 1) {
    const before = box;
    box = drawnIn(before, posterior(runs, falsePerS, middleRate, before));
    if (box.every((one, at) => one.step > 0.6 * (before[at] as Axis).step)) break;
  }
  return box.map((one, at) => axis(one.from, node(one, one.count - 1), FINE[at] as number)) as unknown as Box;
}

function posterior(runs: readonly RaceRun[], falsePerS: number, middleRate: number, box: Box): Float64Array {
  const ln = raceLikelihood(runs, falsePerS, middleRate, box);
  racePrior(middleRate, box).forEach((prior, at) => { (ln[at] as number) += prior; });
  return ln;
}

function priorBox(middleRate: number): Box {
  const { lnTheta, lnT0, lnSigma } = RACE_PRIOR;
  const wide = 4.5;
  const lowest = Math.min(lnTheta.mean - wide * lnTheta.sd, 0);
  const highest = Math.log(Math.exp(lnTheta.mean + wide * lnTheta.sd) + middleRate * Math.exp(lnT0.mean + wide * lnT0.sd));
  const across = wide * Math.hypot(lnTheta.sd, lnT0.sd);
  return [
    axis(lowest, highest, COARSE[0]),
    axis(lnT0.mean - lnTheta.mean - across, lnT0.mean - lnTheta.mean + across, COARSE[1]),
    axis(lnSigma.mean - wide * lnSigma.sd, lnSigma.mean + wide * lnSigma.sd, COARSE[2]),
  ];
}

/** The smallest box that holds every point near enough to the summit, and one step around it. */
function drawnIn(box: Box, ln: Float64Array): Box {
  const counts = box.map(({ count }) => count) as [number, number, number];
  const low = [...counts];
  const high = [-1, -1, -1];
  const cut = largest(ln) - CUT;
  for (let index = 0; index < ln.length; index += 1) {
    if ((ln[index] as number) < cut) continue;
    const rest = Math.floor(index / counts[2]);
    [Math.floor(rest / counts[1]), rest % counts[1], index % counts[2]].forEach((place, at) => {
      low[at] = Math.min(low[at] as number, place);
      high[at] = Math.max(high[at] as number, place);
    });
  }
  return box.map((one, at) => axis(node(one, (low[at] as number) - 1), node(one, (high[at] as number) + 1), one.count)) as unknown as Box;
}

/** Masses that add up to 1, from their logarithms, in the same row. */
export function normalised(ln: Float64Array): Float64Array {
  const top = largest(ln);
  let sum = 0;
  for (let at = 0; at < ln.length; at += 1) sum += ln[at] = Math.exp((ln[at] as number) - top);
  for (let at = 0; at < ln.length; at += 1) (ln[at] as number) /= sum;
  return ln;
}

function largest(values: Float64Array): number {
  let most = -Infinity;
  for (const value of values) if (value > most) most = value;
  return most;
}
