/** What the race says of a person: medians and intervals, from the grid. */
import { normalCdf, Z90 } from './normal.js';
import { type RaceGrid, raceGrid } from './race-grid.js';
import { node, type RaceRun } from './race-likelihood.js';
import { type Estimate, estimateOf, type Spread } from './spread.js';

/** At one rate of growth. */
export interface AtRate {
  readonly rateDegPerS: number;
  /** Median split at release, deg. */
  readonly medianDeg: Estimate;
  /** Split below which nine in ten releases lie, deg. */
  readonly q90Deg: Estimate;
  /** Chance to let go before the limit, 0 to 1: of a run that is watched; lapses stand in k of n. */
  readonly beforeLimit: Estimate;
}

export interface Race {
  readonly thetaDeg: Estimate;
  readonly t0S: Estimate;
  readonly sigma: Estimate;
  readonly atRates: readonly AtRate[];
}

export interface RaceAsk {
  /** Releases without cause, 1/s; see falseRate. */
  readonly falsePerS: number;
  readonly limitDeg: number;
  /** Rates to speak about: those that were flown. */
  readonly ratesDegPerS: readonly number[];
}

/** Releases without cause, 1/s, never 0: (false + 1/2) / time (the mean of Jeffreys' posterior). */
export const falseRate = (falses: number, quietS: number): number => (falses + 0.5) / quietS;

/** Posterior medians and 95 % intervals. @param runs runs with an onset and no false release */
export function race(runs: readonly RaceRun[], { falsePerS, limitDeg, ratesDegPerS }: RaceAsk): Race {
  const grid = raceGrid(runs, falsePerS);
  const { middleRate, box: [, r, k] } = grid;
  const spread = spreadFor(grid.mass.length);
  const ratios = Float64Array.from({ length: r.count }, (_, at) => Math.exp(node(r, at)));
  const sigmas = Float64Array.from({ length: k.count }, (_, at) => Math.exp(node(k, at)));
  const of = (quantity: Quantity): Estimate => estimateOf(spreadOut(grid, quantity, spread));
  const positive = (quantity: Quantity): Estimate => mapped(of(quantity), Math.exp);
  const one = { factor: sigmas.map(() => 1), plus: sigmas.map(() => 0), alongK: sigmas.map(() => 0), valueAlongK: 0 };
  const still = { offset: ratios.map(() => 0), turn: ratios.map(() => 0) };
  const lnTheta = { offset: ratios.map((ratio) => -Math.log(1 + middleRate * ratio)), turn: ratios.map((ratio) => part(middleRate, ratio)) };
  return {
    thetaDeg: positive({ ...lnTheta, ...one }),
    t0S: positive({ ...one, offset: lnTheta.offset.map((offset, at) => offset + node(r, at)), turn: lnTheta.turn.map((turn) => 1 - turn) }),
    sigma: positive({ ...still, factor: one.plus, plus: sigmas.map(Math.log), alongK: one.factor, valueAlongK: 0 }),
    atRates: ratesDegPerS.map((rateDegPerS): AtRate => {
      const lnMedian = {
        offset: ratios.map((ratio) => Math.log((1 + rateDegPerS * ratio) / (1 + middleRate * ratio))),
        turn: ratios.map((ratio) => Math.abs(part(rateDegPerS, ratio) - part(middleRate, ratio))),
      };
      return {
        rateDegPerS,
        medianDeg: positive({ ...lnMedian, ...one }),
        q90Deg: positive({ ...lnMedian, ...one, plus: sigmas.map((sigma) => Z90 * sigma), alongK: sigmas.map((sigma) => Z90 * sigma) }),
        beforeLimit: mapped(of({ ...lnMedian, ...one, factor: sigmas.map((sigma) => -1 / sigma), plus: sigmas.map((sigma) => Math.log(limitDeg) / sigma), valueAlongK: 1 }), normalCdf),
      };
    }),
  };
}

/** Part of the median that is due to time: v t0 / (theta + v t0). */
const part = (rate: number, ratio: number): number => rate * ratio / (1 + rate * ratio);

/** A quantity (m + offset) factor + plus: offset for each r, factor and plus for each k. Plain rows, as it is asked at every point. */
interface Quantity {
  readonly offset: Float64Array;
  /** How far the offset changes along r. */
  readonly turn: Float64Array;
  readonly factor: Float64Array;
  readonly plus: Float64Array;
  /** How far the quantity changes along k; and whether as far as its own value (1) besides. */
  readonly alongK: Float64Array;
  readonly valueAlongK: number;
}

/** Points with less than this are nowhere near the 2.5 % of an interval's end. */
const NO_MASS = 1e-9;

const spreadFor = (count: number): Spread => ({ value: new Float64Array(count), width: new Float64Array(count), mass: new Float64Array(count), count: 0 });

function spreadOut({ box: [m, r, k], mass }: RaceGrid, quantity: Quantity, spread: Spread): Spread {
  spread.count = 0;
  for (let i = 0, from = 0; i < m.count; i += 1) {
    for (let j = 0; j < r.count; j += 1, from += k.count) {
      const lnHere = node(m, i) + (quantity.offset[j] as number);
      const step = Math.max(m.step, (quantity.turn[j] as number) * r.step);
      for (let l = 0; l < k.count; l += 1) {
        const here = mass[from + l] as number;
        if (here < NO_MASS) continue;
        const factor = quantity.factor[l] as number;
        const value = lnHere * factor + (quantity.plus[l] as number);
        spread.value[spread.count] = value;
        spread.width[spread.count] = Math.max(step * Math.abs(factor), ((quantity.alongK[l] as number) + Math.abs(value) * quantity.valueAlongK) * k.step);
        spread.mass[spread.count] = here;
        spread.count += 1;
      }
    }
  }
  return spread;
}

const mapped = ({ median, lo, hi }: Estimate, to: (x: number) => number): Estimate => ({ median: to(median), lo: to(lo), hi: to(hi) });
