/** Points of a trial: for motivation, never the report. Caught 100 (1 - growth / limit); the rest by fixed amounts. */
import { pointsOf as pointsOfRun } from '../set/points.js';
import type { JudgedTrial } from './trial.js';

export interface PointRule {
  /** Taken for a false release. */
  readonly falseRelease: number;
  /** Taken for late and for missed. */
  readonly missed: number;
  /** Given for a quiet run held through. */
  readonly held: number;
}

/** What false releases must cost so that no blind policy pays is worked out for each set; 75 is for rates that are mixed and hidden. */
export const POINT_RULE: PointRule = { falseRelease: 75, missed: 100, held: 50 };

/** Points of one trial, -100 to 100; undecided and void give none. */
export const pointsOf = ({ outcome, growthDeg, limitDeg }: JudgedTrial, rule: PointRule): number =>
  pointsOfRun(outcome, growthDeg, { points: rule, limitDeg });

/** Mean over all trials that are not void; null without one. */
export function meanPoints(trials: readonly JudgedTrial[], rule: PointRule): number | null {
  const scored = trials.filter(({ outcome }) => outcome !== 'void');
  return scored.length === 0 ? null : scored.reduce((sum, one) => sum + pointsOf(one, rule), 0) / scored.length;
}
