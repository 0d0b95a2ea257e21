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
  const positive = (of: Quantity): Estimate => mapped(estimate(grid, of), Math.exp);
  const inMiddle = (ratio: number): number => part(grid.middleRate, ratio);
  return {
    thetaDeg: positive((m, ratio) => [m - Math.log(1 + grid.middleRate * ratio), 1, inMiddle(ratio), 0]),
    t0S: positive((m, ratio) => [m - Math.log(1 + grid.middleRate * ratio) + Math.log(ratio), 1, 1 - inMiddle(ratio), 0]),
    sigma: positive((_m, _ratio, sigma) => [Math.log(sigma), 0, 0, 1]),
    atRates: ratesDegPerS.map((rateDegPerS): AtRate => {
      const lnMedian = (m: number, ratio: number): number => m + Math.log((1 + rateDegPerS * ratio) / (1 + grid.middleRate * ratio));
      const turn = (ratio: number): number => Math.abs(part(rateDegPerS, ratio) - inMiddle(ratio));
      return {
        rateDegPerS,
        medianDeg: positive((m, ratio) => [lnMedian(m, ratio), 1, turn(ratio), 0]),
        q90Deg: positive((m, ratio, sigma) => [lnMedian(m, ratio) + Z90 * sigma, 1, turn(ratio), Z90 * sigma]),
        beforeLimit: mapped(estimate(grid, (m, ratio, sigma) => {
          const z = (Math.log(limitDeg) - lnMedian(m, ratio)) / sigma;
          return [z, 1 / sigma, turn(ratio) / sigma, Math.abs(z)];
        }), normalCdf),
      };
    }),
  };
}

/** Part of the median that is due to time: v t0 / (theta + v t0). */
const part = (rate: number, ratio: number): number => rate * ratio / (1 + rate * ratio);

/** A quantity at a point, and how far it changes along m, r and k (absolute). */
type Quantity = (m: number, ratio: number, sigma: number) => readonly [value: number, alongM: number, alongR: number, alongK: number];

/** Points with less than this are nowhere near the 2.5 % of an interval's end. */
const NO_MASS = 1e-9;

function estimate(grid: RaceGrid, of: Quantity): Estimate {
  const { box: [m, r, k], mass } = grid;
  const spread: Spread = { value: new Float64Array(mass.length), width: new Float64Array(mass.length), mass: new Float64Array(mass.length), count: 0 };
  const ratios = Float64Array.from({ length: r.count }, (_, at) => Math.exp(node(r, at)));
  const sigmas = Float64Array.from({ length: k.count }, (_, at) => Math.exp(node(k, at)));
  for (let i = 0, from = 0; i < m.count; i += 1) {
    for (let j = 0; j < r.count; j += 1, from += k.count) {
      for (let l = 0; l < k.count; l += 1) {
        const here = mass[from + l] as number;
        if (here < NO_MASS) continue;
        const [value, alongM, alongR, alongK] = of(node(m, i), ratios[j] as number, sigmas[l] as number);
        spread.value[spread.count] = value;
        spread.width[spread.count] = Math.max(alongM * m.step, alongR * r.step, alongK * k.step);
        spread.mass[spread.count] = here;
        spread.count += 1;
      }
    }
  }
  return estimateOf(spread);
}

const mapped = ({ median, lo, hi }: Estimate, to: (x: number) => number): Estimate => ({ median: to(median), lo: to(lo), hi: to(hi) });
