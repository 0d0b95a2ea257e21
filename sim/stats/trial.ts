/** One trial, and what it comes to. */

/** What stands in a table of trials. */
export interface Trial {
  /** Growth of the split behind onset, deg/s; null where it is not steady, or in a quiet run. */
  readonly rateDegPerS: number | null;
  /** s; null: no onset. */
  readonly onsetS: number | null;
  /** s; null: never let go. */
  readonly releaseS: number | null;
  /** When the run ended, or would have ended without the release, s. */
  readonly endS: number;
  /** Growth from which on a release is late, deg. */
  readonly limitDeg: number;
}

/** In the order in which reports tell them. */
export const TRIAL_OUTCOMES = ['caught', 'late', 'missed', 'falseRelease', 'held', 'undecided', 'void'] as const;
/**
 * late: let go at the limit or beyond. missed: held through it. held: quiet, and not let go. undecided: over before the limit.
 * void: decides nothing; it is counted, and stands in no other figure.
 */
export type TrialOutcome = (typeof TRIAL_OUTCOMES)[number];

/** A trial judged: what a report is made of. */
export interface JudgedTrial extends Trial {
  readonly outcome: TrialOutcome;
  /** Growth at the release or, where it was held, at the end, deg; null without an onset and for a false release. */
  readonly growthDeg: number | null;
}

/** No release sooner behind onset is a reaction, s. Source: simple visual reactions, Woods et al. 2015, Front. Hum. Neurosci. 9:131. */
const SOONEST_S = 0.15;
const TOUCH = 1e-9;

/** Time behind onset from which on a release counts as a reaction, s. @param seenDeg growth below which nothing can be seen, deg */
export const soonest = (rateDegPerS: number | null, seenDeg: number): number => Math.max(SOONEST_S, rateDegPerS === null ? 0 : seenDeg / rateDegPerS);

/**
 * Judges a trial of steady growth.
 * @param seenDeg growth below which nothing can be seen, deg, from 0
 * @throws RangeError for an onset without a rate: growth that is not steady is read from the record of the run
 */
export function judgeTrial(trial: Trial, seenDeg: number): JudgedTrial {
  const { rateDegPerS: rate, onsetS, releaseS, endS, limitDeg } = trial;
  const judged = (outcome: TrialOutcome, growthDeg: number | null): JudgedTrial => ({ ...trial, outcome, growthDeg });
  if (onsetS !== null && rate === null) throw new RangeError('an onset without a rate of growth');
  if (onsetS === null || rate === null) return judged(releaseS === null ? 'held' : 'falseRelease', null);
  if (releaseS === null) {
    const grown = rate * (endS - onsetS);
    return judged(grown >= limitDeg * (1 - TOUCH) ? 'missed' : 'undecided', grown);
  }
  if (releaseS < onsetS + soonest(rate, seenDeg) - TOUCH) return judged('falseRelease', null);
  const grown = rate * (releaseS - onsetS);
  return judged(grown < limitDeg * (1 - TOUCH) ? 'caught' : 'late', grown);
}

/** Quiet holding of a trial, s: up to its release, to where a reaction begins, or to its end. */
export function quietSeconds({ rateDegPerS, onsetS, releaseS, endS }: Trial, seenDeg: number): number {
  return Math.max(0, Math.min(releaseS ?? Infinity, onsetS === null ? Infinity : onsetS + soonest(rateDegPerS, seenDeg), endS));
}
