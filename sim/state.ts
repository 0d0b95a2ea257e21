/**
 * The whole changing state of a run: numbers from one declared list. A hash is a walk of the list, a snapshot a row of
 * doubles. Flags are 0 and 1. Ticks that have not come are -1. `left` and `right` come in pairs and are always treated alike.
 *
 * What moves in nearly every tick stands in the state itself; all else is latched: `latched` is never written but replaced
 * (`latch`), so that copies share it. A copy for a frame of two ticks makes a third of the bytes that 109 numbers would.
 */
const INITIAL = {
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
};

/** A name of one number of the state. */
export type StateKey = keyof typeof INITIAL;
type All = Readonly<Record<StateKey, number>>;
/** Some numbers of a state by their names. */
export type Numbers = Partial<All>;

/** Every key, in the order of hash and snapshot. */
export const STATE_KEYS = Object.keys(INITIAL) as StateKey[];

/** What changes when something happens. One literal, which engines make in one step where a spread takes one a key. */
const latchedOf = (s: All) => ({
  guardOpen: s.guardOpen, armed: s.armed, drive: s.drive, contactor: s.contactor, limiterTripped: s.limiterTripped,
  cutOutOpen: s.cutOutOpen, flapLeverDeg: s.flapLeverDeg, gearLever: s.gearLever, leadingEdgeGoing: s.leadingEdgeGoing,
  leadingEdgeStop: s.leadingEdgeStop, mainDrive: s.mainDrive, driveDead: s.driveDead, driveFactor: s.driveFactor,
  contactorStuck: s.contactorStuck, leftCut: s.leftCut, rightCut: s.rightCut, leftRatio: s.leftRatio, rightRatio: s.rightRatio,
  leftJam: s.leftJam, rightJam: s.rightJam, leftBlown: s.leftBlown, rightBlown: s.rightBlown, leftSlip: s.leftSlip,
  rightSlip: s.rightSlip, leftStuck: s.leftStuck, rightStuck: s.rightStuck, leftStuckDeg: s.leftStuckDeg,
  rightStuckDeg: s.rightStuckDeg, leftDriftDegPerS: s.leftDriftDegPerS, rightDriftDegPerS: s.rightDriftDegPerS, levelAtM: s.levelAtM,
  selectedKt: s.selectedKt, speedHold: s.speedHold, goAround: s.goAround, leftLive: s.leftLive, rightLive: s.rightLive,
  turnToRad: s.turnToRad, headingHold: s.headingHold, autopilot: s.autopilot, handControl: s.handControl, horn: s.horn,
  hornSilenced: s.hornSilenced, agendaNext: s.agendaNext, pending0: s.pending0, pending1: s.pending1, done0: s.done0, done1: s.done1,
  leaf0: s.leaf0, leaf1: s.leaf1, memo0: s.memo0, memo1: s.memo1, memo2: s.memo2, memo3: s.memo3, memo4: s.memo4, memo5: s.memo5,
  memo6: s.memo6, memo7: s.memo7, settingNext: s.settingNext, onsetTick: s.onsetTick, onsetSign: s.onsetSign,
  onsetBaseDeg: s.onsetBaseDeg, pressTick: s.pressTick, pressLeadingEdge: s.pressLeadingEdge, ranSincePress: s.ranSincePress,
  releaseTick: s.releaseTick, repressTick: s.repressTick, splitCallTick: s.splitCallTick, clearCallTick: s.clearCallTick,
  failedCallTick: s.failedCallTick, movingCallTick: s.movingCallTick, endTick: s.endTick, endWhy: s.endWhy,
});
type Latched = ReturnType<typeof latchedOf>;
type LatchedKey = keyof Latched;

/** What moves, and what is latched. */
const stateOf = (s: Omit<All, LatchedKey>, latched: Readonly<Latched>) => ({
  tick: s.tick, contactorTicks: s.contactorTicks, heldTicks: s.heldTicks, leftTlaDeg: s.leftTlaDeg, rightTlaDeg: s.rightTlaDeg,
  rateDegPerS: s.rateDegPerS, motorNm: s.motorNm, driveDeg: s.driveDeg, leftDeg: s.leftDeg, rightDeg: s.rightDeg,
  leftWindDeg: s.leftWindDeg, rightWindDeg: s.rightWindDeg, motorHeat: s.motorHeat, leadingEdge: s.leadingEdge,
  leftSlipTicks: s.leftSlipTicks, rightSlipTicks: s.rightSlipTicks, leftBiasDeg: s.leftBiasDeg, rightBiasDeg: s.rightBiasDeg,
  speedMps: s.speedMps, casKt: s.casKt, heightM: s.heightM, pathSin: s.pathSin, leftThrust: s.leftThrust, rightThrust: s.rightThrust,
  fuelKg: s.fuelKg, distanceM: s.distanceM, turnRad: s.turnRad, turnedRad: s.turnedRad, rollRate: s.rollRate, bankRad: s.bankRad,
  control: s.control, controlSum: s.controlSum, limitTicks: s.limitTicks, gustKnot: s.gustKnot, lostTicks: s.lostTicks, gear: s.gear,
  stillTicks: s.stillTicks,
  latched,
});

/** The state of a run. Only rules inside a tick write to it; everyone else copies first. */
export type State = ReturnType<typeof stateOf>;

/** The state that nothing has happened to. */
export const initialState = (): State => stateOf(INITIAL, latchedOf(INITIAL));

/** A copy: what moves anew, what is latched shared. */
export const copyState = (s: Readonly<State>): State => stateOf(s, s.latched);

/** Writes one latched number, `value` in the unit of its key: the record that copies share is left, and one of this state's own takes its place. */
export function latch(s: State, key: LatchedKey, value: number): void {
  if (s.latched[key] === value) return;
  const own = latchedOf(s.latched as All);
  own[key] = value;
  s.latched = own;
}

const LATCHED: ReadonlySet<StateKey> = new Set(Object.keys(latchedOf(INITIAL)) as StateKey[]);
const isLatched = (key: StateKey): key is LatchedKey => LATCHED.has(key);

/** One number of a state by its name. */
export const numberOf = (s: Readonly<State>, key: StateKey): number => (isLatched(key) ? s.latched[key] : s[key]);

/** Writes one number of a state by its name, wherever it stands. */
function setNumber(s: State, key: StateKey, value: number): void {
  if (isLatched(key)) latch(s, key, value);
  else s[key] = value;
}

/** A copy with some numbers changed: "what if the leading edge were out". */
export function withNumbers(s: Readonly<State>, numbers: Numbers): State {
  const changed = copyState(s);
  for (const key of STATE_KEYS) {
    const value = numbers[key];
    if (value !== undefined) setNumber(changed, key, value);
  }
  return changed;
}

/** Takes all numbers of another state over: where a run is taken back. */
export function takeOver(s: State, from: Readonly<State>): void {
  Object.assign(s, from);
}

/** The state as a row of doubles in the order of STATE_KEYS. */
export function snapshot(state: Readonly<State>): Float64Array {
  return Float64Array.from(STATE_KEYS, (key) => numberOf(state, key));
}

/** The state of a snapshot. */
export function restore(row: Float64Array): State {
  return withNumbers(initialState(), Object.fromEntries(STATE_KEYS.map((key, at) => [key, row[at] as number])));
}
