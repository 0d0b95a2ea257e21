/** Limits of a median that ask for no shape of the distribution: two of the sorted values. */

/** Ranks from 1 of the lower and the upper limit. */
export interface Ranks {
  readonly lo: number;
  readonly hi: number;
}

/**
 * Ranks between which the median lies with at least the given confidence, symmetrical and as close as they may be.
 * @param n values, whole, from 1 @param level two-sided confidence
 * @returns null where even the smallest and the largest value do not reach it (n below 6 for 95 %)
 * Source: binomial sums, David and Nagaraja, Order Statistics (2003), 7.1.
 */
export function medianRanks(n: number, level = 0.95): Ranks | null {
  // P(fewer than `lo` of n values lie below the median), summed term by term from n 1/2s.
  let term = 0.5 ** n;
  let below = 0;
  let lo = 0;
  for (let i = 0; i < n / 2; i += 1) {
    below += term;
    if (2 * below > 1 - level) break;
    lo = i + 1;
    term *= (n - i) / (i + 1);
  }
  return lo === 0 ? null : { lo, hi: n + 1 - lo };
}
