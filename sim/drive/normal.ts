/** The normal drive, once it is back: takes the flaps to the lever at its own rate, unless the standby drive is armed. */
import type { State } from '../state.js';
import { DT, clamp } from '../units.js';
import type { DriveNumbers } from './numbers.js';

/** One tick. Writes driveDeg, leftDeg, rightDeg; sides that are cut or jammed stay. */
export function stepNormalDrive(s: State, n: DriveNumbers): void {
  if (s.latched.mainDrive === 0 || s.latched.armed === 1 || s.latched.contactor !== 0 || s.rateDegPerS !== 0) return;
  const step = n.normalRateDegPerS * DT;
  const by = clamp(s.latched.flapLeverDeg - s.driveDeg, -step, step);
  if (by === 0) return;
  s.driveDeg += by;
  if (s.latched.leftCut === 0 && s.latched.leftJam === 0) s.leftDeg = clamp(s.leftDeg + s.latched.leftRatio * by, 0, n.stopDeg);
  if (s.latched.rightCut === 0 && s.latched.rightJam === 0) s.rightDeg = clamp(s.rightDeg + s.latched.rightRatio * by, 0, n.stopDeg);
}
