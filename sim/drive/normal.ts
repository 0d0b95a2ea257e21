/** The normal drive, once it is back: takes the flaps to the lever at its own rate, unless the standby drive is armed. */
import type { State } from '../state.js';
import { DT, clamp } from '../units.js';
import type { DriveNumbers } from './numbers.js';

/** One tick. Writes driveDeg, leftDeg, rightDeg; sides that are cut or jammed stay. */
export function stepNormalDrive(s: State, n: DriveNumbers): void {
  if (s.mainDrive === 0 || s.armed === 1 || s.contactor !== 0 || s.rateDegPerS !== 0) return;
  const step = n.normalRateDegPerS * DT;
  const by = clamp(s.flapLeverDeg - s.driveDeg, -step, step);
  if (by === 0) return;
  s.driveDeg += by;
  if (s.leftCut === 0 && s.leftJam === 0) s.leftDeg = clamp(s.leftDeg + s.leftRatio * by, 0, n.stopDeg);
  if (s.rightCut === 0 && s.rightJam === 0) s.rightDeg = clamp(s.rightDeg + s.rightRatio * by, 0, n.stopDeg);
}
