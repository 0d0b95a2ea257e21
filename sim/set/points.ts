/** Points of a run in a set: for play and pace. They are no skill, and no gate asks for them. */
import type { Outcome } from '../files/record.js';
import type { SetFile } from '../files/set.js';

/** What points are counted by. */
export type Stakes = Pick<SetFile, 'points' | 'limitDeg'>;

/**
 * Points of one run: caught, 100 less what the growth takes of the limit; late or missed, less M; false release, less F;
 * held through a quiet run, C; undecided or void, nothing.
 * @param growthDeg growth at the release, deg; asked for where the outcome is caught
 */
export function pointsOf(outcome: Outcome, growthDeg: number | null, { points, limitDeg }: Stakes): number {
  switch (outcome) {
    case 'caught': return 100 * (1 - (growthDeg ?? 0) / limitDeg);
    case 'late': case 'missed': return -points.missed;
    case 'falseRelease': return -points.falseRelease;
    case 'held': return points.held;
    default: return 0;
  }
}
