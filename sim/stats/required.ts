/** How many runs a claim needs. */
import { normalQuantile } from '../portable.js';
import { binomialTail } from './proportion.js';

/**
 * Fewest runs with at most `failures` failures that show a success rate of at least `rate`.
 * @param rate 0 to 1, both excluded @param confidence one-sided, 0 to 1, both excluded @param failures whole, from 0
 * @returns runs: of all of them but `failures` must succeed. "At least 9 in 10": 29 of 29, 45 of 46.
 * @throws RangeError for a rate or confidence outside its range
 */
export function runsToClaim(rate: number, confidence = 0.95, failures = 0): number {
  if (!(rate > 0 && rate < 1 && confidence > 0 && confidence < 1)) throw new RangeError(`rate ${rate}, confidence ${confidence}`);
  const tooEasy = (n: number): boolean => binomialTail(n - failures, n, rate) > 1 - confidence + 1e-12;
  let high = failures + 1;
  while (tooEasy(high)) high *= 2;
  let low = Math.floor(high / 2);
  while (low + 1 < high) {
    const middle = Math.floor((low + high) / 2);
    if (tooEasy(middle)) low = middle;
    else high = middle;
  }
  return high;
}

/** ln of the smallest ratio, over the spread of one block's mean, that `power` of all comparisons show at 5 %, two-sided. */
const standardErrors = (power: number): number => normalQuantile(0.975) + normalQuantile(power);

/**
 * Runs in each of two blocks that show a ratio of their median splits.
 * @param ratio of medians, above 0, not 1 @param sigma log-spread of splits of one person @param power chance to see it, 0 to 1
 * @returns whole number of releases a block, 2 (z.975 + z.power)^2 sigma^2 / ln(ratio)^2 (large samples)
 */
export const runsForRatio = (ratio: number, sigma: number, power = 0.8): number =>
  Math.ceil(2 * (standardErrors(power) * sigma / Math.log(ratio)) ** 2 - 1e-9);

/** The ratio below 1 that `runs` against `runs` releases show; `sigma` and `power` are those of runsForRatio. */
export const ratioShown = (runs: number, sigma: number, power = 0.8): number =>
  Math.exp(-standardErrors(power) * sigma * Math.sqrt(2 / runs));
