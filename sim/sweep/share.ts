/** A share with its interval. */

/** `k` of `n`, and the ends `lo` and `hi` of Wilson's 95 % interval of the share, 0 to 1. */
export interface Share {
  readonly k: number;
  readonly n: number;
  readonly lo: number;
  readonly hi: number;
}

/** Normal quantile of .975. */
const Z = 1.959963984540054;

/** `k` of `n`, whole, 0 to n, with Wilson's interval (Wilson 1927; Newcombe, Statistics in Medicine 17 (1998) 857). Without a trial it is 0 to 1. */
export function shareOf(k: number, n: number): Share {
  if (n === 0) return { k, n, lo: 0, hi: 1 };
  const z2 = Z * Z;
  const p = k / n;
  const middle = p + z2 / (2 * n);
  const half = Math.sqrt(z2 * (p * (1 - p) / n + z2 / (4 * n * n)));
  const under = 1 + z2 / n;
  return { k, n, lo: k === 0 ? 0 : (middle - half) / under, hi: k === n ? 1 : (middle + half) / under };
}
