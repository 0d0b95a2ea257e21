/**
 * How fast the standby drive runs, and how long a travel takes, at one dynamic pressure: the motor's line against the
 * load, in closed form. Both sides whole, steady running: the fractions of a second of starting and stopping are left out.
 */
import { airLoad } from '../../drive/travel.js';
import type { DriveNumbers } from '../../drive/numbers.js';
import { ln } from '../../portable.js';

/** Torque at the tube with both sides at a position, N m. Retracting, the air aids and the no-back brakes drag. */
export function loadNm(n: DriveNumbers, qPa: number, deg: number, way: 'extend' | 'retract'): number {
  return n.frictionNm + 2 * airLoad(n, qPa, deg) * (way === 'extend' ? 1 : n.noBackFactor);
}

/**
 * Steady rate, deg/s, 0 or more; 0 where the limiter has tripped.
 * @param qPa dynamic pressure, Pa @param deg position of both sides
 */
export function steadyRate(n: DriveNumbers, qPa: number, deg: number, way: 'extend' | 'retract'): number {
  const load = loadNm(n, qPa, deg, way);
  return load >= n.limiterNm ? 0 : n.noLoadRateDegPerS * (1 - load / n.stallTorqueNm);
}

/** The same while one side is cut from the drive: the other is all the load there is. */
export function oneSideRate(n: DriveNumbers, qPa: number, deg: number): number {
  const load = n.frictionNm + airLoad(n, qPa, deg);
  return load >= n.limiterNm ? 0 : n.noLoadRateDegPerS * (1 - load / n.stallTorqueNm);
}

/**
 * Time of extending from one position to another, s; null where the limiter trips on the way. The load is a straight
 * line in the position, so the rate falls as A - B d and the time is ln((A - B from) / (A - B to)) / B.
 */
export function travelS(n: DriveNumbers, qPa: number, fromDeg: number, toDeg: number): number | null {
  if (loadNm(n, qPa, toDeg, 'extend') >= n.limiterNm) return null;
  const perDeg = n.noLoadRateDegPerS * 2 * n.loadPerPa * qPa * n.hingePerDeg / n.stallTorqueNm;
  const [from, to] = [steadyRate(n, qPa, fromDeg, 'extend'), steadyRate(n, qPa, toDeg, 'extend')];
  // Without a slope the logarithm has nothing to say, and the line is flat.
  return perDeg < 1e-9 ? (toDeg - fromDeg) / from : ln(from / to) / perDeg;
}
