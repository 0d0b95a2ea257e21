/** Speed and height along a given path: midpoint Runge-Kutta, so order 2 with the mid-tick thrust and flap. */
import type { State } from '../state.js';
import { DT, RAD, clamp } from '../units.js';
import { airAt, casOfMach, DELTA, RHO, SOUND } from './atmosphere.js';
import type { FlightNumbers } from './numbers.js';
import { fractionOfLever, spooled, stepSpeedHold, thrustAvailable } from './thrust.js';

/** sin^2 of a flap angle in deg as its series to x^6; good to 2e-3 of itself at 38 deg, and polynomial everywhere. */
function sine2(deg: number): number {
  const x2 = deg * RAD * (deg * RAD);
  return x2 * (1 - x2 / 3 + 2 * x2 * x2 / 45);
}

/** What of the state makes drag, the flaps apart. */
export type Shape = Pick<State, 'leadingEdge' | 'gear' | 'leftLive' | 'rightLive'>;

/** Drag, N, with the sides at `leftDeg` and `rightDeg`, at dynamic pressure `qPa` and lift `liftN`. */
export function drag(n: FlightNumbers, shape: Shape, leftDeg: number, rightDeg: number, qPa: number, liftN: number): number {
  const cl = liftN / (qPa * n.areaM2);
  const oswald = n.oswald + n.oswaldPerDeg * 0.5 * (leftDeg + rightDeg);
  const left = sine2(leftDeg);
  const cd = n.clean + n.leadingEdge * shape.leadingEdge
    + n.flapSine2 * 0.5 * (left + (rightDeg === leftDeg ? left : sine2(rightDeg)))
    + n.gear * shape.gear + (shape.leftLive + shape.rightLive < 2 ? n.engineOut : 0) + cl * cl * n.inversePiAspect / oswald;
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

/** Go-around: the path takes up the spare thrust and keeps the selected speed. */
function stepClimb(s: State, n: FlightNumbers, spareN: number): void {
  const wish = clamp(spareN / n.weightN + CLIMB_PER_KT * (s.casKt - s.selectedKt), 0, CLIMB_MOST);
  s.pathSin += clamp(wish - s.pathSin, -CLIMB_STEP, CLIMB_STEP);
}

/**
 * One tick of flight. Writes levers under speed hold, thrust, speed, height, fuel and distance.
 * @param leftMidDeg where the left side is predicted to be in the middle of the tick, deg: keeps the step at order 2
 * @returns dynamic pressure in the middle of the tick, Pa
 */
export function stepMotion(s: State, n: FlightNumbers, leftMidDeg: number, rightMidDeg: number): number {
  const cosine = Math.sqrt(1 - s.pathSin * s.pathSin);
  const lift = n.weightN * cosine;
  let air = airAt(s.heightM);
  const available = thrustAvailable(n, air[DELTA] as number, s.speedMps / (air[SOUND] as number));
  const dragNow = drag(n, s, s.leftDeg, s.rightDeg, 0.5 * (air[RHO] as number) * s.speedMps * s.speedMps, lift);
  stepSpeedHold(s, n, dragNow, available);

  const left = spooled(n, s.leftThrust, s.leftLive === 1 ? fractionOfLever(n, s.leftTlaDeg) : 0);
  const even = s.leftThrust === s.rightThrust && s.leftTlaDeg === s.rightTlaDeg && s.leftLive === s.rightLive;
  const right = even ? left : spooled(n, s.rightThrust, s.rightLive === 1 ? fractionOfLever(n, s.rightTlaDeg) : 0);
  const thrustNow = available * (s.leftThrust + s.rightThrust);
  if (s.goAround === 1) stepClimb(s, n, thrustNow - dragNow);
  const pull = -n.weightN * s.pathSin;

  const speedMid = s.speedMps + (DT / 2) * (thrustNow - dragNow + pull) / n.massKg;
  const heightMid = s.heightM + (DT / 2) * s.speedMps * s.pathSin;
  air = airAt(heightMid);
  const qMid = 0.5 * (air[RHO] as number) * speedMid * speedMid;
  const dragMid = drag(n, s, leftMidDeg, rightMidDeg, qMid, lift);
  const thrustMid = thrustAvailable(n, air[DELTA] as number, speedMid / (air[SOUND] as number)) * 0.5 * ((s.leftThrust + left) + (s.rightThrust + right));

  s.speedMps += DT * (thrustMid - dragMid + pull) / n.massKg;
  if (s.speedMps < LOWEST_MPS) s.speedMps = LOWEST_MPS;
  const climbsTo = s.heightM < s.levelAtM;
  s.heightM += DT * speedMid * s.pathSin;
  s.distanceM += DT * speedMid;
  s.fuelKg += DT * (thrustMid * n.fuelKgPerNs + n.fuelBaseKgPerS * (s.leftLive + s.rightLive));
  s.leftThrust = left;
  s.rightThrust = right;
  if (s.pathSin < 0 && s.heightM <= s.levelAtM) s.pathSin = 0;
  if (s.goAround === 1 && climbsTo && s.heightM >= s.levelAtM) s.goAround = s.pathSin = 0;
  air = airAt(s.heightM);
  s.casKt = casOfMach(s.speedMps / (air[SOUND] as number), air[DELTA] as number);
  return qMid;
}
