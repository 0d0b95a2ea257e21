/**
 * What a split does in roll: its moment, how much of the roll control it uses up, bank, and the autopilot that hides it.
 * Linear lifting-line constants from the airframe; the less extended side sets the stall and so the control left.
 */
import type { InTick } from '../in-tick.js';
import { latch, type State } from '../state.js';
import { DT, KT, RAD, clamp } from '../units.js';
import { RHO0 } from './atmosphere.js';
import type { FlightNumbers } from './numbers.js';

/** Effective twist, deg, of a flap angle: thin-aerofoil effectiveness that fades with angle. Sign kept. */
const effectiveDeg = (n: FlightNumbers, deg: number): number =>
  n.flapEffect * deg * (n.flapEffectBase + n.flapEffectPerDeg2 * deg * deg);

/** Roll moment coefficient of the split: left side further out rolls right (positive). */
export const splitMoment = (n: FlightNumbers, leftDeg: number, rightDeg: number): number =>
  0.5 * n.liftingSurface * n.clFlap * (effectiveDeg(n, leftDeg) - effectiveDeg(n, rightDeg)) * RAD;

/** Greatest lift coefficient at a flap position; the leading edge counts below the first setting. */
export function clMax(n: FlightNumbers, deg: number, leadingEdge: number): number {
  const { clMaxFlapDeg: degs, clMaxCl: cls } = n;
  let from = degs[0] as number;
  let low = cls[0] as number;
  const first = degs[1] as number;
  if (deg < first) {
    const up = leadingEdge >= 1 ? n.clMaxFlapUpLeadingEdgeOut : low;
    return up + ((cls[1] as number) - up) * Math.max(0, deg) / first;
  }
  for (let k = 1; k < degs.length; k += 1) {
    const to = degs[k] as number;
    const high = cls[k] as number;
    if (deg <= to) return low + (high - low) * (deg - from) / (to - from);
    from = to;
    low = high;
  }
  return low;
}

/**
 * The law is linear up to the speed at which wing twist cancels the control, and says nothing beyond: so much of the control is left
 * there, and a split counts as using far more than all of it. No limit speed of an airframe lies so high; thrust without any bound may.
 */
const LEAST_CONTROL = 0.01;

/** Roll moment coefficient of full control at pressure `qPa`, Pa: less with wing twist at speed, less near the stall. */
export function controlMoment(n: FlightNumbers, qPa: number, lowerDeg: number, leadingEdge: number): number {
  const part = n.weightN / (qPa * n.areaM2) / clMax(n, lowerDeg, leadingEdge);
  const fade = part <= n.stallKnee ? 1 : Math.max(n.stallControl, 1 - (1 - n.stallControl) * (part - n.stallKnee) / (1 - n.stallKnee));
  return n.control * Math.max(LEAST_CONTROL, 1 - qPa / n.reversalPa) * fade;
}

/**
 * Roll authority used, %: moment of the split over moment of full control. 0 exactly when the sides are even.
 * @param qPa dynamic pressure, Pa
 */
export function rollAuthorityPct(n: FlightNumbers, qPa: number, leftDeg: number, rightDeg: number, leadingEdge: number): number {
  if (leftDeg === rightDeg) return 0;
  const lower = Math.min(leftDeg, rightDeg);
  return 100 * Math.abs(splitMoment(n, leftDeg, rightDeg)) / controlMoment(n, qPa, lower, leadingEdge);
}

/** Gains of the invented autopilot: control for each rad of bank, each rad/s of roll, and of the integral a second. */
const BANK_GAIN = 3;
const RATE_GAIN = 2;
const SUM_GAIN = 0.6;

/** Where the control is asked to be: by the autopilot within its limit, or by hand. Writes controlSum, limitTicks, autopilot. */
function wishedControl(s: State, n: FlightNumbers): number {
  if (s.latched.autopilot === 0) return s.latched.handControl;
  const bank = s.bankRad - s.turnRad;
  const free = -(BANK_GAIN * bank + RATE_GAIN * s.rollRate + s.controlSum);
  const wish = clamp(free, -n.autopilotLimit, n.autopilotLimit);
  if (wish === free) s.controlSum += SUM_GAIN * bank * DT;
  s.limitTicks = Math.abs(s.control) >= n.autopilotLimit ? s.limitTicks + 1 : 0;
  if (s.limitTicks >= n.autopilotOffTicks) latch(s, 'autopilot', 0);
  return wish;
}

/**
 * One tick of roll by Crank-Nicolson. Writes rollRate, bankRad, control and the autopilot's own numbers.
 * Speed, pressure and sides are those of the middle of the tick, which keeps the step at order 2.
 */
export function stepRoll(s: State, n: FlightNumbers, t: InTick): void {
  const step = n.controlRatePerS * DT;
  s.control += clamp(wishedControl(s, n) - s.control, -step, step);
  const { qPa } = t;
  const speedMps = 0.5 * (t.speedMps + s.speedMps);
  const leftDeg = 0.5 * (t.leftDeg + s.leftDeg);
  const rightDeg = 0.5 * (t.rightDeg + s.rightDeg);
  const full = controlMoment(n, qPa, Math.min(leftDeg, rightDeg), s.leadingEdge);
  const gain = qPa * n.areaM2 * n.spanM * n.inverseRollInertia;
  const damping = gain * n.liftingSurface * n.clDamping * n.spanM / (2 * speedMps);
  const moment = gain * (splitMoment(n, leftDeg, rightDeg) + full * (s.control + t.disturbance));
  const before = s.rollRate;
  const half = damping * (DT / 2);
  s.rollRate = (before * (1 + half) + DT * moment) / (1 - half);
  s.bankRad += (before + s.rollRate) * (DT / 2);
}

/** Stall speed, kt equivalent, at a lift coefficient. */
export const stallKt = (n: FlightNumbers, cl: number): number => Math.sqrt(2 * n.weightN / (RHO0 * n.areaM2 * cl)) / KT;
