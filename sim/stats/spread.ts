/** From masses at scattered values to a median and an interval: each mass is spread over the width of its cell. */

/** `median`, and `lo` and `hi`, the ends of the central 95 % interval, in the unit of what is estimated. */
export interface Estimate {
  readonly median: number;
  readonly lo: number;
  readonly hi: number;
}

/** The first `count` of each row are in use. */
export interface Spread {
  /** Finite. */
  readonly value: Float64Array;
  /** Over which the mass is spread, from 0, same unit. */
  readonly width: Float64Array;
  /** Above 0; their sum is taken for the whole. */
  readonly mass: Float64Array;
  count: number;
}

const BINS = 2000;

/** The quantiles .5, .025 and .975 of the spread masses. @param spread at least one mass */
export function estimateOf(spread: Spread): Estimate {
  let [low, high] = [Infinity, -Infinity];
  for (let at = 0; at < spread.count; at += 1) {
    const half = (spread.width[at] as number) / 2;
    low = Math.min(low, (spread.value[at] as number) - half);
    high = Math.max(high, (spread.value[at] as number) + half);
  }
  if (!(high > low)) return { median: low, lo: low, hi: low };
  const cumulative = cumulated(spread, low, BINS / (high - low));
  const quantile = (p: number): number => low + (high - low) / BINS * placeOf(cumulative, p * (cumulative[BINS] as number));
  return { median: quantile(0.5), lo: quantile(0.025), hi: quantile(0.975) };
}

/** The distribution at the edges of the bins: the second sum of the bends with which each spread mass begins and ends. */
function cumulated({ value, width, mass, count }: Spread, low: number, perUnit: number): Float64Array {
  const bends = new Float64Array(BINS + 2);
  for (let at = 0; at < count; at += 1) {
    const middle = ((value[at] as number) - low) * perUnit;
    const half = Math.max((width[at] as number) * perUnit, 1e-3) / 2;
    const from = Math.max(0, middle - half);
    const to = Math.min(BINS, middle + half);
    const rise = (mass[at] as number) / (to - from);
    const [fromAt, toAt] = [Math.floor(from), Math.floor(to)];
    (bends[fromAt] as number) += rise * (1 - from + fromAt);
    (bends[fromAt + 1] as number) += rise * (from - fromAt);
    (bends[toAt] as number) -= rise * (1 - to + toAt);
    (bends[toAt + 1] as number) -= rise * (to - toAt);
  }
  const edges = new Float64Array(BINS + 1);
  let [slope, sum] = [0, 0];
  for (let at = 0; at <= BINS; at += 1) {
    edges[at] = sum;
    slope += bends[at] as number;
    sum += slope;
  }
  return edges;
}

/** Where a rising row passes a value, between its places. */
function placeOf(rising: Float64Array, wanted: number): number {
  let [low, high] = [0, rising.length - 1];
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if ((rising[middle] as number) < wanted) low = middle;
    else high = middle;
  }
  const [a, b] = [rising[low] as number, rising[high] as number];
  return low + (b > a ? (wanted - a) / (b - a) : 0);
}
