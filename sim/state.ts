/**
 * The whole changing state of a run: one flat record of numbers from one declared list, latches included.
 * So a copy is one literal, a hash is a walk of the list, a snapshot is a row of doubles. Flags are 0 and 1.
 * Ticks that have not come are -1. `left` and `right` come in pairs and are always treated alike.
 */
export const initialState = () => ({
  tick: 0, //                   ticks done since the start of the run

  // switchgear and hands
  guardOpen: 0, //              guard of the standby switch
  armed: 0, //                  guard open and arm commanded
  drive: 0, //                  place of the drive switch: 1 extend, 0 off, -1 retract
  contactor: 0, //              way the motor is fed: 1, 0, -1
  contactorTicks: 0, //         ticks for which the wish has differed from the contactor
  limiterTripped: 0, //         latched until the switch is let go
  cutOutOpen: 0, //             heat cut-out, until cooled below the reset
  heldTicks: 0, //              ticks for which the drive has been held in all
  flapLeverDeg: 0,
  leftTlaDeg: 0,
  rightTlaDeg: 0,
  gearLever: 0, //              1 down

  // drive and sides
  rateDegPerS: 0, //            rate of the drive, extend positive
  motorNm: 0, //                torque of the motor at the tube, middle of the last tick
  driveDeg: 0, //               position of the drive
  leftDeg: 0, //                true travel
  rightDeg: 0,
  leftWindDeg: 0, //            wind-up against a jammed side, along the drive's way
  rightWindDeg: 0,
  motorHeat: 0, //              1 is the cut-out
  leadingEdge: 0, //            0 in, 1 out
  leadingEdgeGoing: 0, //       latched by the first run in the extend direction
  leadingEdgeStop: 1, //        where it stops, below 1 by a fault
  mainDrive: 0, //              normal drive: 0 lost, 1 back

  // fault terms in force
  driveDead: 0, //              motor does not run
  driveFactor: 1, //            motor speed over healthy speed
  contactorStuck: 0, //         contactor stays closed after release
  leftCut: 0,
  rightCut: 0,
  leftRatio: 1, //              rate of the side over rate of the drive
  rightRatio: 1,
  leftJam: 0,
  rightJam: 0,
  leftBlown: 0, //              no-back brake failed
  rightBlown: 0,
  leftSlip: 0, //               1 + place in the file of the fault that makes the side slip
  rightSlip: 0,
  leftSlipTicks: 0, //          ticks the slip has been in force
  rightSlipTicks: 0,
  leftStuck: 0, //              pointer stuck
  rightStuck: 0,
  leftStuckDeg: 0, //           where
  rightStuckDeg: 0,
  leftBiasDeg: 0, //            pointer off by
  rightBiasDeg: 0,
  leftDriftDegPerS: 0, //       pointer drifts while the drive moves
  rightDriftDegPerS: 0,

  // flight
  speedMps: 0, //               true airspeed
  casKt: 0, //                  calibrated airspeed
  heightM: 0, //                above sea level
  pathSin: 0, //                sine of the path angle
  levelAtM: 0, //               height selected: level off here
  selectedKt: 0,
  speedHold: 0,
  goAround: 0,
  leftThrust: 0, //             part of the thrust available
  rightThrust: 0,
  leftLive: 1, //               engine runs
  rightLive: 1,
  fuelKg: 0, //                 burnt since the start
  distanceM: 0, //              flown through the air since the start
  turnRad: 0, //                bank to hold
  turnedRad: 0, //              turned since the start, right positive, whole turns included
  turnToRad: 0, //              where turning ends that the autopilot does
  headingHold: 0, //            the autopilot turns to a heading selected

  // roll
  rollRate: 0, //               rad/s, right positive
  bankRad: 0,
  control: 0, //                part of full control, right positive
  controlSum: 0, //             integral of the autopilot
  autopilot: 1,
  limitTicks: 0, //             ticks the autopilot has stood at its limit
  handControl: 0, //            control by hand
  gustKnot: 0, //               place in the table of the natural disturbance
  lostTicks: 0, //              ticks for which roll authority has been used up

  // gear and horn
  gear: 0, //                   0 up, 1 locked down
  horn: 0, //                   0 silent, 1 sounds, 2 sounds and cannot be silenced
  hornSilenced: 0,

  // agenda
  agendaNext: 0, //             next timed entry
  pending0: 0, //               watchers that fired and act in the next tick, entries 0 to 29
  pending1: 0, //               entries 30 to 59
  done0: 0, //                  watchers that have fired
  done1: 0,
  leaf0: 0, //                  crossings seen, leaves 0 to 29
  leaf1: 0, //                  leaves 30 to 59
  memo0: -1, //                 tick in which a thing that `after` names acted
  memo1: -1,
  memo2: -1,
  memo3: -1,
  memo4: -1,
  memo5: -1,
  memo6: -1,
  memo7: -1,

  // the run
  settingNext: 0, //            how many settings of the task have been reached
  onsetTick: -1, //             first tick in which a fault acted while the drive moved
  onsetSign: 0, //              which way the shown difference began to grow
  onsetBaseDeg: 0, //           shown difference then
  pressTick: -1, //             last press of the drive
  pressLeadingEdge: 0, //       leading edge then
  ranSincePress: 0, //          motor was fed since
  releaseTick: -1, //           the scored release
  repressTick: -1, //           first press behind it
  stillTicks: 0, //             ticks for which all settings are reached and nothing moves
  splitCallTick: -1, //         first call of a split
  clearCallTick: -1, //         last call: clear
  failedCallTick: -1, //        first call: drive failed
  movingCallTick: -1, //        first call: still moving
  endTick: -1,
  endWhy: 0, //                 index in END_WHYS
});

/** The state of a run. Only rules inside a tick write to it; everyone else copies first. */
export type State = ReturnType<typeof initialState>;
/** A name of one number of the state. */
export type StateKey = keyof State;

/** Every key, in the order of hash and snapshot. */
export const STATE_KEYS = Object.keys(initialState()) as StateKey[];

/** A copy: one literal, which engines make in one step where a spread takes one a key. A test holds it to the list. */
export const copyState = (s: State): State => ({
  tick: s.tick, guardOpen: s.guardOpen, armed: s.armed, drive: s.drive, contactor: s.contactor,
  contactorTicks: s.contactorTicks, limiterTripped: s.limiterTripped, cutOutOpen: s.cutOutOpen, heldTicks: s.heldTicks,
  flapLeverDeg: s.flapLeverDeg, leftTlaDeg: s.leftTlaDeg, rightTlaDeg: s.rightTlaDeg, gearLever: s.gearLever,
  rateDegPerS: s.rateDegPerS, motorNm: s.motorNm, driveDeg: s.driveDeg, leftDeg: s.leftDeg, rightDeg: s.rightDeg,
  leftWindDeg: s.leftWindDeg, rightWindDeg: s.rightWindDeg, motorHeat: s.motorHeat, leadingEdge: s.leadingEdge,
  leadingEdgeGoing: s.leadingEdgeGoing, leadingEdgeStop: s.leadingEdgeStop, mainDrive: s.mainDrive,
  driveDead: s.driveDead, driveFactor: s.driveFactor, contactorStuck: s.contactorStuck, leftCut: s.leftCut,
  rightCut: s.rightCut, leftRatio: s.leftRatio, rightRatio: s.rightRatio, leftJam: s.leftJam, rightJam: s.rightJam,
  leftBlown: s.leftBlown, rightBlown: s.rightBlown, leftSlip: s.leftSlip, rightSlip: s.rightSlip,
  leftSlipTicks: s.leftSlipTicks, rightSlipTicks: s.rightSlipTicks, leftStuck: s.leftStuck, rightStuck: s.rightStuck,
  leftStuckDeg: s.leftStuckDeg, rightStuckDeg: s.rightStuckDeg, leftBiasDeg: s.leftBiasDeg,
  rightBiasDeg: s.rightBiasDeg, leftDriftDegPerS: s.leftDriftDegPerS, rightDriftDegPerS: s.rightDriftDegPerS,
  speedMps: s.speedMps, casKt: s.casKt, heightM: s.heightM, pathSin: s.pathSin, levelAtM: s.levelAtM,
  selectedKt: s.selectedKt, speedHold: s.speedHold, goAround: s.goAround, leftThrust: s.leftThrust,
  rightThrust: s.rightThrust, leftLive: s.leftLive, rightLive: s.rightLive, fuelKg: s.fuelKg, distanceM: s.distanceM,
  turnRad: s.turnRad, turnedRad: s.turnedRad,
  turnToRad: s.turnToRad, headingHold: s.headingHold, rollRate: s.rollRate, bankRad: s.bankRad, control: s.control, controlSum: s.controlSum,
  autopilot: s.autopilot, limitTicks: s.limitTicks, handControl: s.handControl, gustKnot: s.gustKnot,
  lostTicks: s.lostTicks, gear: s.gear, horn: s.horn, hornSilenced: s.hornSilenced, agendaNext: s.agendaNext,
  pending0: s.pending0, pending1: s.pending1, done0: s.done0, done1: s.done1, leaf0: s.leaf0, leaf1: s.leaf1,
  memo0: s.memo0, memo1: s.memo1, memo2: s.memo2, memo3: s.memo3, memo4: s.memo4, memo5: s.memo5, memo6: s.memo6,
  memo7: s.memo7, settingNext: s.settingNext, onsetTick: s.onsetTick, onsetSign: s.onsetSign,
  onsetBaseDeg: s.onsetBaseDeg, pressTick: s.pressTick, pressLeadingEdge: s.pressLeadingEdge,
  ranSincePress: s.ranSincePress, releaseTick: s.releaseTick, repressTick: s.repressTick, stillTicks: s.stillTicks,
  splitCallTick: s.splitCallTick, clearCallTick: s.clearCallTick, failedCallTick: s.failedCallTick,
  movingCallTick: s.movingCallTick, endTick: s.endTick, endWhy: s.endWhy,
});

/** The state as a row of doubles in the order of STATE_KEYS. */
export function snapshot(state: State): Float64Array {
  const row = new Float64Array(STATE_KEYS.length);
  STATE_KEYS.forEach((key, index) => { row[index] = state[key]; });
  return row;
}

/** The state of a snapshot. */
export function restore(row: Float64Array): State {
  const state = initialState();
  STATE_KEYS.forEach((key, index) => { state[key] = row[index] as number; });
  return state;
}
