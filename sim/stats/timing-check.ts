/** The optional check of a device: releases at a change that nobody can miss, and whether times by it mean anything. */

/** A device slower or more uneven than this is not fit for timing (measures 12.7). */
export const TIMING_LIMITS = { medianS: 0.6, sdS: 0.15 } as const;
/** Releases that make a check. */
export const TIMING_RELEASES = 20;

export interface TimingCheck {
  readonly releases: number;
  readonly medianS: number;
  /** Of the sample, with one degree of freedom less. */
  readonly sdS: number;
}

/** @param timesS from the frame that drew the change to the release, at least two */
export function timingCheck(timesS: readonly number[]): TimingCheck {
  const n = timesS.length;
  if (n < 2) throw new RangeError(`${n} releases have no spread`);
  const sorted = [...timesS].sort((a, b) => a - b);
  const middle = sorted.slice(Math.floor((n - 1) / 2), Math.floor(n / 2) + 1);
  const mean = timesS.reduce((sum, one) => sum + one, 0) / n;
  return {
    releases: n,
    medianS: middle.reduce((sum, one) => sum + one, 0) / middle.length,
    sdS: Math.sqrt(timesS.reduce((sum, one) => sum + (one - mean) ** 2, 0) / (n - 1)),
  };
}

export const isFit = ({ medianS, sdS }: Pick<TimingCheck, 'medianS' | 'sdS'>): boolean => medianS <= TIMING_LIMITS.medianS && sdS <= TIMING_LIMITS.sdS;
