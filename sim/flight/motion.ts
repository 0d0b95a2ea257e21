/** Speed and height along a given path: midpoint Runge-Kutta, so order 2 with the mid-tick thrust and flap. */
import { latch, type State } from '../state.js';
import { DT, RAD, clamp } from '../units.js';
import { airAt, casOfMach, DELTA, RHO, SOUND } from './atmosphere.js';
import type { InTick } from '../in-tick.js';
import type { FlightNumbers } from './numbers.js';
import { fractionOfLever, spooled, stepSpeedHold, thrustAvailable } from './thrust.js';

/** sin^2 of a flap angle in deg as its series to x^6; good to 2e-3 of itself at 38 deg, and polynomial everywhere. */
function sine2(deg: number): number {
  const x2 = deg * RAD * (deg * RAD);
  return x2 * (1 - x2 / 3 + 2 * x2 * x2 / 45);
}

/** What of the state makes drag, the flaps apart. */
export type Shape = Pick<State, 'leadingEdge' | 'gear'> & { readonly latched: Pick<State['latched'], 'leftLive' | 'rightLive'> };

/** Drag, N, with the sides at `leftDeg` and `rightDeg`, at dynamic pressure `qPa` and lift `liftN`. */
export function drag(n: FlightNumbers, shape: Shape, leftDeg: number, rightDeg: number, qPa: number, liftN: number): number {
  const cl = liftN / (qPa * n.areaM2);
  const oswald = n.oswald + n.oswaldPerDeg * 0.5 * (leftDeg + rightDeg);
  const left = sine2(leftDeg);
  const cd = n.clean + n.leadingEdge * shape.leadingEdge
    + n.flapSine2 * 0.5 * (left + (rightDeg === leftDeg ? left : sine2(rightDeg)))
    + n.gear * shape.gear + (shape.latched.leftLive + shape.latched.rightLive < 2 ? n.engineOut : 0) + cl * cl * n.inversePiAspect / oswald;
  return cd * qPa * n.areaM2;
}

/** Dynamic pressure, Pa. */
export const dynamicPressure = (speedMps: number, heightM: number): number => 0.5 * (airAt(heightM)[RHO] as number) * speedMps * speedMps;

/** The model has no stall: level flight without thrust would end in a standstill. Far below any stall, the speed stays here, m/s. */
const LOWEST_MPS = 20;

/** Steepest climb path of a go-around, speed that is given for a steeper path, and how fast the path may change a tick. */
const CLIMB_MOST = 0.25;
const CLIMB_PER_KT = 0.01;
const CLIMB_STEP = 0.0004;

/** One tick of the engines behind `feelStart`. Writes levers under speed hold, and the path in a go-around; the thrust at the end of the tick waits in `t`. */
export function stepThrust(s: State, n: FlightNumbers, t: InTick): void {
  stepSpeedHold(s, n, t);
  spool(s, n, t);
  if (s.latched.goAround === 1) stepClimb(s, n, t);
}

/**
 * One tick of flight behind `stepThrust`. Writes thrust, speed, height, fuel and distance.
 * @param t with the sides predicted for the middle of the tick; gets the dynamic pressure there
 */
export function stepMotion(s: State, n: FlightNumbers, t: InTick): void {
  const climbsTo = s.heightM < s.latched.levelAtM;
  throughMiddle(s, n, t);
  if (s.pathSin < 0 && s.heightM <= s.latched.levelAtM) s.pathSin = 0;
  if (s.latched.goAround === 1 && climbsTo && s.heightM >= s.latched.levelAtM) {
    latch(s, 'goAround', 0);
    s.pathSin = 0;
  }
  readSpeed(s);
}

/** Air, thrust there is and drag, where `t` says: at a height and a speed, with the sides so far out. */
function feel(s: State, n: FlightNumbers, t: InTick): void {
  const air = airAt(t.atM);
  t.qPa = 0.5 * (air[RHO] as number) * t.atMps * t.atMps;
  t.availableN = thrustAvailable(n, air[DELTA] as number, t.atMps / (air[SOUND] as number));
  t.dragN = drag(n, s, t.atLeftDeg, t.atRightDeg, t.qPa, t.liftN);
}

/** Lift, drag and the thrust there is, at the start of the tick. */
export function feelStart(s: State, n: FlightNumbers, t: InTick): void {
  t.liftN = n.weightN * Math.sqrt(1 - s.pathSin * s.pathSin);
  t.atM = s.heightM;
  t.atMps = s.speedMps;
  t.atLeftDeg = s.leftDeg;
  t.atRightDeg = s.rightDeg;
  feel(s, n, t);
}

/** Thrust of both engines at the end of the tick. */
function spool(s: State, n: FlightNumbers, t: InTick): void {
  t.leftThrust = spooled(n, s.leftThrust, s.latched.leftLive === 1 ? fractionOfLever(n, s.leftTlaDeg) : 0);
  const even = s.leftThrust === s.rightThrust && s.leftTlaDeg === s.rightTlaDeg && s.latched.leftLive === s.latched.rightLive;
  t.rightThrust = even ? t.leftThrust : spooled(n, s.rightThrust, s.latched.rightLive === 1 ? fractionOfLever(n, s.rightTlaDeg) : 0);
}

/** Go-around: the path takes up the spare thrust and keeps the selected speed. */
function stepClimb(s: State, n: FlightNumbers, t: InTick): void {
  const spareN = t.availableN * (s.leftThrust + s.rightThrust) - t.dragN;
  const wish = clamp(spareN / n.weightN + CLIMB_PER_KT * (s.casKt - s.latched.selectedKt), 0, CLIMB_MOST);
  s.pathSin += clamp(wish - s.pathSin, -CLIMB_STEP, CLIMB_STEP);
}

/** Half a tick by what is at its start, then the whole of it by what is in its middle. */
function throughMiddle(s: State, n: FlightNumbers, t: InTick): void {
  const pull = -n.weightN * s.pathSin;
  t.atMps = s.speedMps + (DT / 2) * (t.availableN * (s.leftThrust + s.rightThrust) - t.dragN + pull) / n.massKg;
  t.atM = s.heightM + (DT / 2) * s.speedMps * s.pathSin;
  t.atLeftDeg = t.leftMidDeg;
  t.atRightDeg = t.rightMidDeg;
  feel(s, n, t);
  const thrustMid = t.availableN * 0.5 * ((s.leftThrust + t.leftThrust) + (s.rightThrust + t.rightThrust));

  s.speedMps += DT * (thrustMid - t.dragN + pull) / n.massKg;
  if (s.speedMps < LOWEST_MPS) s.speedMps = LOWEST_MPS;
  s.heightM += DT * t.atMps * s.pathSin;
  s.distanceM += DT * t.atMps;
  s.fuelKg += DT * (thrustMid * n.fuelKgPerNs + n.fuelBaseKgPerS * (s.latched.leftLive + s.latched.rightLive));
  s.leftThrust = t.leftThrust;
  s.rightThrust = t.rightThrust;
}

/** What the airspeed indicator reads. */
function readSpeed(s: State): void {
  const air = airAt(s.heightM);
  s.casKt = casOfMach(s.speedMps / (air[SOUND] as number), air[DELTA] as number);
}
