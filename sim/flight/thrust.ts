/**
 * Thrust and the levers. Thrust available: form and pressure polynomials after Bartel and Young (2008), in p/p0 and Mach
 * number; lever map and spool are airframe data.
 */
import type { InTick } from '../in-tick.js';
import type { State } from '../state.js';
import { DT, KT, clamp } from '../units.js';
import type { FlightNumbers } from './numbers.js';

/** Greatest thrust of one engine, N, at p/p0 `delta` and Mach number `mach`. */
export function thrustAvailable(n: FlightNumbers, delta: number, mach: number): number {
  const a = (-0.4327 * delta + 1.3855) * delta + 0.0472;
  const z = ((0.9106 * delta - 1.7736) * delta + 1.8697) * delta;
  const x = ((0.1377 * delta - 0.4374) * delta + 1.3003) * delta;
  return n.staticThrustN * (a - n.machLoss * z * mach + n.machGain * x * mach * mach);
}

/** Commanded fraction of thrust at a lever angle, straight between knots. */
export function fractionOfLever(n: FlightNumbers, tlaDeg: number): number {
  return between(n.leverTlaDeg, n.leverFraction, tlaDeg);
}

/** Lever angle that commands a fraction; the stops outside the map. */
export function leverOfFraction(n: FlightNumbers, fraction: number): number {
  return between(n.leverFraction, n.leverTlaDeg, fraction);
}

/** Straight lines through the points (xs, ys), xs rising; the end values outside. */
function between(xs: Float64Array, ys: Float64Array, x: number): number {
  let from = xs[0] as number;
  let low = ys[0] as number;
  if (x <= from) return low;
  for (let k = 1; k < xs.length; k += 1) {
    const to = xs[k] as number;
    const high = ys[k] as number;
    if (x <= to) return low + (high - low) * (x - from) / (to - from || 1);
    from = to;
    low = high;
  }
  return low;
}

/** Lower lever of a live engine, deg. */
export const lowerLiveTla = (s: State): number =>
  s.latched.leftLive === 0 ? s.rightTlaDeg : s.latched.rightLive === 0 ? s.leftTlaDeg : Math.min(s.leftTlaDeg, s.rightTlaDeg);

/** Fraction after one tick of spooling toward `wish`: Crank-Nicolson, time constant at the predicted middle. */
export function spooled(n: FlightNumbers, fraction: number, wish: number): number {
  const early = n.spoolBaseS + n.spoolSlopeS * (1 - fraction);
  const middle = fraction + (DT / 2) * (wish - fraction) / early;
  const a = DT / (2 * (n.spoolBaseS + n.spoolSlopeS * (1 - middle)));
  return (fraction * (1 - a) + 2 * a * wish) / (1 + a);
}

/** Acceleration asked for each kt of speed error, m/s2: 0.12 of the error a second. */
const HOLD_GAIN = 0.12 * KT;
/** Greatest acceleration asked for, m/s2. */
const HOLD_MOST = 0.6;
/** Lever speed of the speed hold, deg a tick: 10 deg/s. */
const HOLD_LEVER = 0.1;

/**
 * Speed hold: both live levers go toward the angle whose thrust gives the drag, the path, and an acceleration that
 * closes the speed error. Our own law: lever angles in steady flight follow from drag alone.
 */
export function stepSpeedHold(s: State, n: FlightNumbers, t: InTick): void {
  if (s.latched.speedHold === 0) return;
  const live = s.latched.leftLive + s.latched.rightLive;
  if (live === 0) return;
  const pull = clamp((s.latched.selectedKt - s.casKt) * HOLD_GAIN, -HOLD_MOST, HOLD_MOST);
  const needN = t.dragN + n.weightN * s.pathSin + n.massKg * pull;
  const wish = leverOfFraction(n, needN / (live * t.availableN));
  if (s.latched.leftLive === 1) s.leftTlaDeg += clamp(wish - s.leftTlaDeg, -HOLD_LEVER, HOLD_LEVER);
  if (s.latched.rightLive === 1) s.rightTlaDeg += clamp(wish - s.rightTlaDeg, -HOLD_LEVER, HOLD_LEVER);
}
