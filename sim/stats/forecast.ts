/** What a person expected of a set before its first run, scored by proper rules: apart from flying, and never added to it. */
import type { Person } from './person.js';
import { brier, intervalScore } from './scoring.js';

/** What a person says before the first run of a set. */
export interface Forecast {
  /** Caught of ten splits, whole, 0 to 10. */
  readonly caughtOf10: number;
  /** The median split at release lies between these, deg, four times in five. */
  readonly fromDeg: number;
  readonly toDeg: number;
}

/** No set lets the sides come further apart than this, deg. */
export const MOST_SPLIT_DEG = 40;
/** How often the range is meant to hold the median. */
const LEVEL = 0.8;

/** Made by `forecastScore`: `k` caught of `n` decided runs, and the range of the median where there is one. */
export interface ForecastScore {
  /** Mean Brier score over the decided runs, 0 to 1, smaller is better; and what the share as it was would have scored. */
  readonly brier: number;
  readonly bestBrier: number;
  readonly k: number;
  readonly n: number;
  /** null: the median lies beyond what was seen. */
  readonly range: { readonly score: number; readonly widthDeg: number; readonly fineDeg: number; readonly medianDeg: number } | null;
}

/** @returns null where there are too few decided runs for the numbers */
export function forecastScore({ caughtOf10, fromDeg, toDeg }: Forecast, { caught, median }: Pick<Person, 'caught' | 'median'>): ForecastScore | null {
  if (caught === null) return null;
  const { k, n } = caught;
  const mean = (said: number): number => (k * brier(said, true) + (n - k) * brier(said, false)) / n;
  const medianDeg = median?.deg ?? null;
  const score = medianDeg === null ? null : intervalScore(fromDeg, toDeg, medianDeg, LEVEL);
  return {
    brier: mean(caughtOf10 / 10), bestBrier: mean(k / n), k, n,
    range: score === null || medianDeg === null ? null : { score, widthDeg: toDeg - fromDeg, fineDeg: score - (toDeg - fromDeg), medianDeg },
  };
}
