/** Heading: turned by the bank in a level turn; where a heading is selected, the autopilot banks toward it. */
import { sin } from '../portable.js';
import { latch, type State } from '../state.js';
import { DT, G0, PI, RAD, clamp } from '../units.js';

/** Bank for each rad still to turn, most bank, and how fast the bank to hold may change, rad a tick. Invented. */
const BANK_PER_RAD = 1.2;
const MOST_BANK_RAD = 20 * RAD;
const BANK_STEP_RAD = 3 * RAD * DT;
const WHOLE = 2 * PI;

/** An angle brought into 0 to below 2 pi. */
const within = (rad: number): number => {
  const rest = rad - WHOLE * Math.floor(rad / WHOLE);
  return rest >= WHOLE ? 0 : rest;
};

/** The heading of a state, deg, 0 to below 360. @param startRad heading at the start of the run */
export const headingDeg = (startRad: number, turnedRad: number): number => within(startRad + turnedRad) / RAD;

/** How far `toDeg` is from a heading, deg, the shorter way: right positive, -180 to 180. */
export function turnTo(fromDeg: number, toDeg: number): number {
  const way = within((toDeg - fromDeg) * RAD) / RAD;
  return way > 180 ? way - 360 : way;
}

/** Selects a heading, deg: the autopilot turns to it the shorter way. Writes turnToRad and headingHold. */
export function selectHeading(s: State, startRad: number, toDeg: number): void {
  latch(s, 'headingHold', 1);
  latch(s, 'turnToRad', s.turnedRad + turnTo(headingDeg(startRad, s.turnedRad), toDeg) * RAD);
}

/** One tick. Writes turnRad under heading hold, and turnedRad. Rate of a level turn: g tan(bank) / speed. */
export function stepHeading(s: State): void {
  if (s.latched.headingHold === 1) {
    const wish = clamp(BANK_PER_RAD * (s.latched.turnToRad - s.turnedRad), -MOST_BANK_RAD, MOST_BANK_RAD);
    s.turnRad += clamp(wish - s.turnRad, -BANK_STEP_RAD, BANK_STEP_RAD);
  }
  if (s.bankRad === 0) return;
  const up = sin(s.bankRad);
  s.turnedRad += DT * G0 * up / (Math.sqrt(Math.max(0.01, 1 - up * up)) * s.speedMps);
}
