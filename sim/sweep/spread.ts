/** How one figure is spread over the runs of a sweep: quantiles and a histogram. Sums run in the order of the runs. */

interface Bin {
  readonly from: number;
  /** Not in it. */
  readonly to: number;
  readonly count: number;
}

/**
 * Of `n` values, in their own unit: `mean`, `least` and `most`, and the quantiles .05, .25, .5, .75 and .95, which are `q05`, `q25`,
 * `median`, `q75` and `q95`, by straight lines between ranks.
 */
export interface Spread {
  readonly n: number;
  readonly mean: number;
  readonly least: number;
  readonly q05: number;
  readonly q25: number;
  readonly median: number;
  readonly q75: number;
  readonly q95: number;
  readonly most: number;
  /** Bins of one width, with round ends. */
  readonly bins: Bin[];
}

/** Quantile of sorted values: straight line between the ranks at p (n - 1). */
export function quantileOf(sorted: readonly number[], p: number): number {
  const place = p * (sorted.length - 1);
  const k = Math.min(sorted.length - 2, Math.floor(place));
  if (k < 0) return sorted[0] as number;
  const low = sorted[k] as number;
  return low + ((sorted[k + 1] as number) - low) * (place - k);
}

/** Most bins of a histogram. */
const MOST_BINS = 12;

/** A ruler: marks at whole multiples of `times / under`, 1, 2 or 5 over or times a power of ten, so that marks are round numbers. */
interface Ruler { readonly times: number; readonly under: number }

const markAt = ({ times, under }: Ruler, k: number): number => k * times / under;

/** The last mark at or below a value. */
function markBelow(ruler: Ruler, value: number): number {
  const k = Math.floor(value * ruler.under / ruler.times);
  if (markAt(ruler, k) > value) return k - 1;
  return markAt(ruler, k + 1) <= value ? k + 1 : k;
}

/** The finest ruler that needs at most MOST_BINS bins from `least` to `most`. */
function rulerFor(least: number, most: number): Ruler {
  const fits = (ruler: Ruler): boolean => markBelow(ruler, most) - markBelow(ruler, least) < MOST_BINS;
  for (let under = 1e6; under >= 1; under /= 10) for (const times of [1, 2, 5]) if (fits({ times, under })) return { times, under };
  for (let times = 10; ; times *= 10) for (const more of [1, 2, 5]) if (fits({ times: times * more, under: 1 })) return { times: times * more, under: 1 };
}

function binsOf(sorted: readonly number[]): Bin[] {
  const ruler = rulerFor(sorted[0] as number, sorted[sorted.length - 1] as number);
  const first = markBelow(ruler, sorted[0] as number);
  const bins = new Array<number>(markBelow(ruler, sorted[sorted.length - 1] as number) - first + 1).fill(0);
  for (const value of sorted) {
    const at = markBelow(ruler, value) - first;
    bins[at] = (bins[at] as number) + 1;
  }
  return bins.map((count, at) => ({ from: markAt(ruler, first + at), to: markAt(ruler, first + at + 1), count }));
}

/** The spread of finite values; null where there are none. */
export function spreadOf(values: readonly number[]): Spread | null {
  if (values.length === 0) return null;
  const sorted = [...values].sort((a, b) => a - b);
  let sum = 0;
  for (const value of values) sum += value;
  return {
    n: values.length, mean: sum / values.length,
    least: sorted[0] as number, q05: quantileOf(sorted, 0.05), q25: quantileOf(sorted, 0.25), median: quantileOf(sorted, 0.5),
    q75: quantileOf(sorted, 0.75), q95: quantileOf(sorted, 0.95), most: sorted[sorted.length - 1] as number,
    bins: binsOf(sorted),
  };
}
