/** What blind releases would catch by luck, and what is left without them. */

export interface GuessCorrected {
  /** Chance that a release without cause falls into the window. */
  readonly guess: number;
  /** Catch rate without that luck (Abbott's form); can fall below 0. */
  readonly corrected: number;
}

/**
 * @param catchRate 0 to 1 @param falsePerS releases without cause, 1/s @param windowS time in which a release counts, s
 * Derived: independent race of watching and releasing at random; the idea in Hsu 2005, British J. Math. Stat. Psych. 58:259.
 */
export function guessCorrected(catchRate: number, falsePerS: number, windowS: number): GuessCorrected {
  const guess = 1 - Math.exp(-falsePerS * windowS);
  return { guess, corrected: (catchRate - guess) / (1 - guess) };
}
