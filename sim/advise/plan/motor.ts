/**
 * Motor-on time in closed form, a check beside the drive that is run: at constant pressure the load rises with flap in a
 * straight line, so the rate falls exponentially. Start and brake of the motor, a tenth of a second, are left out.
 */
import { airLoad } from '../../drive/travel.js';
import type { DriveNumbers } from '../../drive/numbers.js';
import { RHO0 } from '../../flight/atmosphere.js';
import { ln } from '../../portable.js';
import { KT } from '../../units.js';

/** Rate of the drive outward, both sides whole, deg/s. @param easKt equivalent airspeed, 0 on the ground */
export function rateAt(n: DriveNumbers, easKt: number, deg: number): number {
  const qPa = 0.5 * RHO0 * (easKt * KT) * (easKt * KT);
  return n.noLoadRateDegPerS * (1 - (n.frictionNm + 2 * airLoad(n, qPa, deg)) / n.stallTorqueNm);
}

/**
 * Seconds from one position to another, outward, at a constant equivalent airspeed, kt.
 * @returns Infinity where the motor stalls on the way
 */
export function motorOnS(n: DriveNumbers, easKt: number, fromDeg: number, toDeg: number): number {
  const [first, last] = [rateAt(n, easKt, fromDeg), rateAt(n, easKt, toDeg)];
  if (first <= 0 || last <= 0) return Infinity;
  const fallPerDeg = (first - last) / (toDeg - fromDeg || 1);
  // Without air the rate does not fall: the limit of the same expression.
  if (fallPerDeg < 1e-12) return (toDeg - fromDeg) / first;
  return ln(first / last) / fallPerDeg;
}
