/**
 * Motor, load and travel of each side over one tick.
 *
 * Torques at the torque tube. Extending, the motor carries friction and both sides' air loads; retracting, the air aids
 * and the no-back brakes turn a part of it into drag. Rate by Crank-Nicolson on the linear motor line, loads at the
 * predicted middle of the tick, position by trapezoid: order 2, and the energy balance closes to rounding.
 * Loads are summed as friction + (left + right), so that mirrored faults give mirrored states to the last bit.
 */
import type { InTick } from '../in-tick.js';
import { latch, type State } from '../state.js';
import { DT, RAD, clamp } from '../units.js';
import type { DriveNumbers } from './numbers.js';

/** Air load of one side at the tube, N m. `hinge` falls to 0 only below flap 0, which no side reaches. */
export const airLoad = (n: DriveNumbers, qPa: number, deg: number): number =>
  n.loadPerPa * qPa * (n.hinge + n.hingePerDeg * deg);

/** Ratio at which a side follows the drive in this tick: 0 when cut or jammed. */
export const followed = (cut: number, jam: number, ratio: number): number => (cut === 1 || jam === 1 ? 0 : ratio);

/** What one side asks of the tube, N m, at the predicted middle of the tick. */
function sideLoad(n: DriveNumbers, qPa: number, way: number, deg: number, cut: number, jam: number, windDeg: number): number {
  if (cut === 1) return 0;
  if (jam === 1) return Math.max(0, way * n.windUpNmPerDeg * windDeg);
  return way > 0 ? airLoad(n, qPa, deg) : n.noBackFactor * airLoad(n, qPa, deg);
}

/**
 * One tick of the drive.
 * @param t with the dynamic pressure in the middle of the tick and the rates of the sides, by `followed`
 */
export function stepTravel(s: State, n: DriveNumbers, t: InTick): void {
  const way = s.latched.contactor !== 0 ? s.latched.contactor : s.rateDegPerS > 0 ? 1 : s.rateDegPerS < 0 ? -1 : 0;
  if (way === 0) {
    s.motorNm = 0;
    return;
  }
  const { qPa } = t;
  const half = s.rateDegPerS * (DT / 2);
  const leftLoad = sideLoad(n, qPa, way, s.leftDeg + t.leftFollow * half, s.latched.leftCut, s.latched.leftJam, s.leftWindDeg + half);
  const rightLoad = sideLoad(n, qPa, way, s.rightDeg + t.rightFollow * half, s.latched.rightCut, s.latched.rightJam, s.rightWindDeg + half);
  const loadNm = n.frictionNm + (leftLoad + rightLoad);
  const rate = Math.abs(s.rateDegPerS);
  const fed = s.latched.contactor !== 0 && s.latched.driveDead === 0;

  let next: number;
  let moved: number;
  if (fed && s.latched.limiterTripped === 1) {
    // The limiter holds the tube; the motor goes on pulling against it and heats.
    s.motorNm = n.limiterNm;
    next = 0;
    moved = 0;
  } else if (fed) {
    const stallNm = n.stallTorqueNm;
    const step = n.rateStep / s.latched.driveFactor;
    next = Math.max(0, (rate * (1 - step) + DT * (stallNm - loadNm) / n.inertia) / (1 + step));
    moved = (rate + next) * (DT / 2);
    s.motorNm = stallNm * (1 - (rate + next) * 0.5 * n.inverseNoLoadRate / s.latched.driveFactor);
    if (loadNm >= n.limiterNm) latch(s, 'limiterTripped', 1);
  } else {
    const slowing = (n.brakeNm + loadNm) / n.inertia;
    next = rate - DT * slowing;
    s.motorNm = 0;
    moved = next > 0 ? (rate + next) * (DT / 2) : rate * rate / (2 * slowing);
    if (next < 0) next = 0;
  }
  move(s, n, t, way, next, moved);
}

/** Carries the movement of the drive to both sides, up to the stops. */
function move(s: State, n: DriveNumbers, t: InTick, way: number, rate: number, moved: number): void {
  let by = way * moved;
  s.rateDegPerS = s.latched.limiterTripped === 1 || rate === 0 ? 0 : way * rate;
  const to = s.driveDeg + by;
  if (to >= n.stopDeg || to <= 0) {
    const stopped = clamp(to, 0, n.stopDeg);
    by = stopped - s.driveDeg;
    s.driveDeg = stopped;
    s.rateDegPerS = 0;
    if (s.latched.contactor !== 0) latch(s, 'limiterTripped', 1); // against the stop the torque rises at once
  } else {
    s.driveDeg = to;
  }
  s.leftDeg = clamp(s.leftDeg + t.leftFollow * by, 0, n.stopDeg);
  s.rightDeg = clamp(s.rightDeg + t.rightFollow * by, 0, n.stopDeg);
  if (s.latched.leftJam === 1 && s.latched.leftCut === 0) {
    s.leftWindDeg += by;
    if (n.windUpNmPerDeg * Math.abs(s.leftWindDeg) >= n.shearNm) { latch(s, 'leftCut', 1); s.leftWindDeg = 0; }
  }
  if (s.latched.rightJam === 1 && s.latched.rightCut === 0) {
    s.rightWindDeg += by;
    if (n.windUpNmPerDeg * Math.abs(s.rightWindDeg) >= n.shearNm) { latch(s, 'rightCut', 1); s.rightWindDeg = 0; }
  }
}

/** A side whose no-back brake has failed is pushed up by the air, drive or no drive. Crank-Nicolson on the linear law. */
export function stepBlowBack(s: State, n: DriveNumbers, t: InTick): void {
  if (s.latched.leftBlown === 1 && s.latched.leftCut === 1) s.leftDeg = blownDeg(n, t.qPa, s.leftDeg);
  if (s.latched.rightBlown === 1 && s.latched.rightCut === 1) s.rightDeg = blownDeg(n, t.qPa, s.rightDeg);
}

function blownDeg(n: DriveNumbers, qPa: number, deg: number): number {
  const hold = n.blowBackHoldKNm * 1000;
  const damping = n.blowBackDampingKNmSPerDeg * 1000;
  const perHinge = qPa * n.flapAreaM2 * n.flapChordM;
  const push = perHinge * (n.hinge + n.hingePerDeg * deg) - hold;
  if (push <= 0) return deg;
  const a = perHinge * n.hingePerDeg / damping;
  return Math.max(0, deg - DT * (push / damping) / (1 + a * (DT / 2)));
}

/** Air work of one side between two positions at constant pressure, J, over the efficiency: a check value of the drive. */
export const airWork = (n: DriveNumbers, qPa: number, fromDeg: number, toDeg: number): number =>
  qPa * n.flapAreaM2 * n.flapChordM * RAD / n.efficiency
  * (n.hinge * (toDeg - fromDeg) + n.hingePerDeg * (toDeg * toDeg - fromDeg * fromDeg) / 2);
