/**
 * What the rules of one tick hand on to one another: written in every tick before it is read, and nothing of it lasts. A record, since
 * a number given to a call or brought back by one is made anew each time, and a tick of forty such numbers makes more of them than it
 * works out. `sim/world.ts` owns the one there is.
 */
export interface InTick {
  // before the tick
  driveDeg: number;
  casKt: number;
  heightM: number;
  leftDeg: number;
  rightDeg: number;
  speedMps: number;

  /** Rate of a side over the rate of the drive in this tick: 0 when cut or jammed. */
  leftFollow: number;
  rightFollow: number;

  // predicted for the middle of the tick, which keeps the steps at order 2
  leftMidDeg: number;
  rightMidDeg: number;

  // flight, first at the start of the tick, then in its middle
  /** Where it is looked at: height above sea level, true airspeed, travel of the sides. */
  atM: number;
  atMps: number;
  atLeftDeg: number;
  atRightDeg: number;
  /** Dynamic pressure there, Pa. */
  qPa: number;
  /** Lift, N. */
  liftN: number;
  /** Drag, N. */
  dragN: number;
  /** Greatest thrust of one engine, N. */
  availableN: number;
  /** Part of the thrust available at the end of the tick. */
  leftThrust: number;
  rightThrust: number;

  /** Natural disturbance in roll, part of full control. */
  disturbance: number;

  // at the end of the tick
  /** Growth since onset as shown, deg; 0 where the run's rule does not ask for it. */
  growthDeg: number;
  /** Roll authority used, %. */
  usedPct: number;
}

/** A fresh one. Halves, so that engines see doubles in it from the first. */
export const inTick = (): InTick => ({
  driveDeg: 0.5, casKt: 0.5, heightM: 0.5, leftDeg: 0.5, rightDeg: 0.5, speedMps: 0.5, leftFollow: 0.5, rightFollow: 0.5,
  leftMidDeg: 0.5, rightMidDeg: 0.5, atM: 0.5, atMps: 0.5, atLeftDeg: 0.5, atRightDeg: 0.5, qPa: 0.5,
  liftN: 0.5, dragN: 0.5, availableN: 0.5, leftThrust: 0.5, rightThrust: 0.5,
  disturbance: 0.5, growthDeg: 0.5, usedPct: 0.5,
});
