/** The limit of growth that a set should have: tied to what it costs in roll authority at the set's own point. */
import { expand } from '../expand.js';
import { authorityNow } from '../score/facts.js';
import { copyState } from '../state.js';
import type { ReadySet } from './ready.js';

/** Share of roll authority at the limit, %, and the grid of limits, deg. */
const AT_LIMIT_PCT = 20;
const GRID_DEG = 0.5;

/**
 * Roll authority used by a split at the set's point, %: speed, height, mass and one side as at the start, the other so
 * far on along the way of the drive. @throws RangeError for a set without a rate
 */
export function authorityAtPoint({ scenarios, airframe }: ReadySet, splitDeg: number): number {
  const [scenario] = scenarios;
  if (scenario === undefined) throw new RangeError('a set has at least one rate');
  const { fixed, state } = expand({ ...scenario, pointerNoise: false }, airframe, 1);
  const s = copyState(state);
  const way = (scenario.task.settings[0] as number) > s.driveDeg ? 1 : -1;
  s.leftDeg += way * splitDeg;
  return authorityNow(s, fixed);
}

/** The largest multiple of half a degree that uses at most 20 % of the roll authority at the set's point, deg. */
export function tiedLimitDeg(of: ReadySet): number {
  let deg = GRID_DEG;
  while (deg < 20 && authorityAtPoint(of, deg + GRID_DEG) <= AT_LIMIT_PCT) deg += GRID_DEG;
  return deg;
}
