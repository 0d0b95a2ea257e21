/** The exact interval of a proportion, and the sums it comes from. Wilson's, for screens, is `shareOf` of sim/sweep/share.ts. */
import { bisect } from './bisect.js';

/** Lower limit `lo` and upper limit `hi`, in the unit of what they enclose. */
export interface Interval {
  readonly lo: number;
  readonly hi: number;
}

const needCounts = (k: number, n: number): void => {
  if (!(n > 0 && k >= 0 && k <= n && Number.isFinite(n))) throw new RangeError(`${k} of ${n} is no proportion`);
};

/** ln n! of whole numbers up to `n`. */
function lnFactorials(n: number): Float64Array {
  const table = new Float64Array(n + 1);
  for (let i = 2; i <= n; i += 1) table[i] = (table[i - 1] as number) + Math.log(i);
  return table;
}

/**
 * Chance of `k` or more successes in `n` trials.
 * @param k whole, 0 to n @param n whole @param p chance of one, 0 to 1
 */
export function binomialTail(k: number, n: number, p: number): number {
  if (k <= 0) return 1;
  if (p <= 0) return 0;
  if (p >= 1) return 1;
  const ln = lnFactorials(n);
  let sum = 0;
  for (let i = k; i <= n; i += 1) {
    sum += Math.exp((ln[n] as number) - (ln[i] as number) - (ln[n - i] as number) + i * Math.log(p) + (n - i) * Math.log(1 - p));
  }
  return Math.min(1, sum);
}

/**
 * Exact interval of Clopper and Pearson: for a claim that is passed or failed.
 * @param k whole, 0 to n @param n whole, above 0 @param level two-sided confidence
 * @throws RangeError for counts that are none
 * Source: Clopper and Pearson, Biometrika 26 (1934) 404.
 */
export function clopperPearson(k: number, n: number, level = 0.95): Interval {
  needCounts(k, n);
  const tail = (1 - level) / 2;
  return {
    lo: k === 0 ? 0 : bisect((p) => binomialTail(k, n, p) - tail, 0, k / n),
    hi: k === n ? 1 : bisect((p) => binomialTail(k + 1, n, p) - 1 + tail, k / n, 1),
  };
}
