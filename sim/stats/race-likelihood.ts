/**
 * The race of a detection, a lapse and a lucky release. Between onset and detection lies time in which a release without
 * cause would count as a catch; at slow rates that is long, and a fit without it says too little spread.
 *
 * Likelihood, time in s, split s = v t: let go  v f(s) (1 - l) + lF [(1 - l) S(s) + l];  still held  (1 - l) S(s) + l;
 * f, S density and survival of ln s ~ N(ln(theta + v t0), sigma); l the chance of a lapse (never seen in this run);
 * lF releases without cause, 1/s. A run counts from the split `fromDeg` on, below which a release is no reaction: divided
 * by the chance to have come so far, (1 - l) S(from) + l.
 *
 * Coordinates: m = ln(theta + v* t0) at a middle rate v*, r = ln(t0 / theta), k = ln sigma. m is what the data tell, r what
 * they tell least, and (m, r) has the volume of (ln theta, ln t0).
 */
import { ln } from '../portable.js';
import { INV_SQRT_2PI } from './normal.js';
import { tailTable } from './tail-table.js';

export interface RaceRun {
  /** Growth of the split, deg/s, above 0. */
  readonly rateDegPerS: number;
  /** Split at the release, or at the end of a run that was held, deg, above 0. */
  readonly splitDeg: number;
  /** Let go. */
  readonly event: boolean;
  /** Split from which on a release counted, deg, 0 to splitDeg. */
  readonly fromDeg: number;
}

/** Mean and spread of a normal prior of a logarithm. */
interface Prior { readonly mean: number; readonly sd: number }

/** Priors, printed on every report: ln theta, ln t0, ln sigma (deg, s, 1), and the lapse that is taken for given. */
export const RACE_PRIOR: { readonly lnTheta: Prior; readonly lnT0: Prior; readonly lnSigma: Prior; readonly lapse: number } = {
  lnTheta: { mean: 0, sd: 0.7 },
  lnT0: { mean: ln(1.5), sd: 1.2 },
  lnSigma: { mean: ln(0.4), sd: 0.5 },
  lapse: 0.02,
};

/** Evenly spaced places along one coordinate. */
export interface Axis {
  readonly from: number;
  readonly step: number;
  readonly count: number;
}
/** The three axes of a grid. Values on it lie at [m][r][k], k running fastest. */
export type Box = readonly [m: Axis, r: Axis, k: Axis];

export const axis = (low: number, high: number, count: number): Axis => ({ from: low, step: (high - low) / (count - 1), count });
export const node = ({ from, step }: Axis, at: number): number => from + step * at;

const lnNormal = (x: number, { mean, sd }: Prior): number => -(((x - mean) / sd) ** 2) / 2;

/** ln of the prior at every point of a box, apart from a constant. */
export function racePrior(middleRate: number, [m, r, k]: Box): Float64Array {
  const { lnTheta, lnT0, lnSigma } = RACE_PRIOR;
  const found = new Float64Array(m.count * r.count * k.count);
  for (let i = 0, at = 0; i < m.count; i += 1) {
    for (let j = 0; j < r.count; j += 1) {
      const theta = node(m, i) - Math.log(1 + middleRate * Math.exp(node(r, j)));
      const both = lnNormal(theta, lnTheta) + lnNormal(theta + node(r, j), lnT0);
      for (let l = 0; l < k.count; l += 1, at += 1) found[at] = both + lnNormal(node(k, l), lnSigma);
    }
  }
  return found;
}

/** ln of the likelihood of runs at every point of a box. @param falsePerS releases without cause, 1/s, above 0 */
export function raceLikelihood(runs: readonly RaceRun[], falsePerS: number, middleRate: number, [m, r, k]: Box): Float64Array {
  const found = new Float64Array(m.count * r.count * k.count);
  const byRate = new Map<number, RaceRun[]>();
  for (const run of runs) byRate.set(run.rateDegPerS, [...(byRate.get(run.rateDegPerS) ?? []), run]);
  for (const [rate, group] of byRate) {
    // At one rate all depends on the median and the spread alone: a table over these, read at every m and r.
    const shifts = Float64Array.from({ length: r.count }, (_, j) => Math.log((1 + rate * Math.exp(node(r, j))) / (1 + middleRate * Math.exp(node(r, j)))));
    const low = node(m, 0) + shifts.reduce((a, b) => Math.min(a, b));
    const high = node(m, m.count - 1) + shifts.reduce((a, b) => Math.max(a, b));
    const lnMedian = axis(low, high + 1e-9, Math.ceil((high - low) / Math.min(m.step / 2, FINEST)) + 2);
    const table = rateTable(group, falsePerS, lnMedian, k);
    shifts.forEach((shift, j) => {
      for (let i = 0; i < m.count; i += 1) addRow(found, (i * r.count + j) * k.count, table, (node(m, i) + shift - lnMedian.from) / lnMedian.step, lnMedian.count, k.count);
    });
  }
  return found;
}

/** Step of the table of one rate where the grid itself is coarse. */
const FINEST = 0.03;

/** ln likelihood of the runs of one rate at [ln median][k]. */
function rateTable(runs: readonly RaceRun[], falsePerS: number, lnMedian: Axis, k: Axis): Float64Array {
  const found = new Float64Array(lnMedian.count * k.count);
  const perSigma = Float64Array.from({ length: k.count }, (_, l) => Math.exp(-node(k, l)));
  const product = new Float64Array(found.length).fill(1);
  const gather = (): void => product.forEach((one, at) => {
    (found[at] as number) += Math.log(one);
    product[at] = 1;
  });
  runs.forEach((run, at) => {
    multiply(product, run, falsePerS, lnMedian, perSigma);
    if (at % GATHERED === GATHERED - 1) gather();
  });
  gather();
  return found;
}

/** Runs whose likelihoods are multiplied before a logarithm is taken: none is below 1e-12, so the product stays a number. */
const GATHERED = 16;

/** Multiplies in one run at every median and spread. */
function multiply(product: Float64Array, { rateDegPerS, splitDeg, event, fromDeg }: RaceRun, falsePerS: number, lnMedian: Axis, perSigma: Float64Array): void {
  const { lapse } = RACE_PRIOR;
  const lnSplit = Math.log(splitDeg);
  const lnFrom = fromDeg > 0 ? Math.log(fromDeg) : -Infinity;
  const density = (1 - lapse) * rateDegPerS / splitDeg * INV_SQRT_2PI;
  for (let i = 0, at = 0; i < lnMedian.count; i += 1) {
    const above = lnSplit - node(lnMedian, i);
    const aboveFrom = lnFrom - node(lnMedian, i);
    for (let l = 0; l < perSigma.length; l += 1, at += 1) {
      const by = perSigma[l] as number;
      const z = above * by;
      const held = (1 - lapse) * tailTable(z) + lapse;
      const likelihood = event ? density * by * Math.exp(-z * z / 2) + falsePerS * held : held;
      const zFrom = aboveFrom * by;
      (product[at] as number) *= zFrom < -6 ? likelihood : likelihood / ((1 - lapse) * tailTable(zFrom) + lapse);
    }
  }
}

/** Adds to `count` places from `to` on the rows of a table at a place between its rows: the cubic through four of them. */
function addRow(found: Float64Array, to: number, table: Float64Array, place: number, rows: number, count: number): void {
  const first = Math.max(0, Math.min(rows - 4, Math.floor(place) - 1));
  const t = place - first;
  const a = -(t - 1) * (t - 2) * (t - 3) / 6;
  const b = t * (t - 2) * (t - 3) / 2;
  const c = -t * (t - 1) * (t - 3) / 2;
  const d = t * (t - 1) * (t - 2) / 6;
  for (let l = 0, at = first * count; l < count; l += 1, at += 1) {
    (found[to + l] as number) += a * (table[at] as number) + b * (table[at + count] as number) + c * (table[at + 2 * count] as number) + d * (table[at + 3 * count] as number);
  }
}
