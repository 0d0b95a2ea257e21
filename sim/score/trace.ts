/** Rows of a run for charts and tables: every so many ticks, both ends included. */
import { byOrder, type Command } from '../command.js';
import { withDesk } from '../desk/plan.js';
import { expand } from '../expand.js';
import { copyState, type State } from '../state.js';
import { firstAt, step } from '../world.js';
import type { Fixed } from '../fixed.js';
import { lowerLiveTla } from '../flight/thrust.js';
import { leftPointer, rightPointer } from '../pointers.js';
import { FT, RAD } from '../units.js';
import { authorityNow } from './facts.js';
import type { FlightRequest } from './flight.js';

/** One moment of a run. Bank and roll right positive, speed calibrated, height above sea level. */
export interface TraceRow {
  readonly atS: number;
  /** True travel, deg. */
  readonly leftDeg: number;
  readonly rightDeg: number;
  /** As shown, deg. */
  readonly leftPointerDeg: number;
  readonly rightPointerDeg: number;
  /** Rate of the drive, extend positive, deg/s. */
  readonly rateDegPerS: number;
  readonly speedKt: number;
  readonly altitudeFt: number;
  /** Lower lever of a live engine, deg. */
  readonly tlaDeg: number;
  readonly horn: boolean;
  readonly leadingEdge: 'in' | 'moving' | 'out';
  readonly gear: 'up' | 'moving' | 'down';
  /** 1 is the cut-out. */
  readonly motorHeat: number;
  readonly rollAuthorityPct: number;
  readonly bankDeg: number;
}

const placeOf = <L, H>(x: number, low: L, high: H): L | 'moving' | H => (x <= 0 ? low : x >= 1 ? high : 'moving');

/** One row of a state. */
export function traceRow(s: State, fixed: Fixed): TraceRow {
  return {
    atS: s.tick / 100,
    leftDeg: s.leftDeg, rightDeg: s.rightDeg,
    leftPointerDeg: leftPointer(s, fixed.noise), rightPointerDeg: rightPointer(s, fixed.noise),
    rateDegPerS: s.rateDegPerS,
    speedKt: s.casKt, altitudeFt: s.heightM / FT, tlaDeg: lowerLiveTla(s),
    horn: s.latched.horn !== 0,
    leadingEdge: placeOf(s.leadingEdge, 'in', 'out'),
    gear: placeOf(s.gear, 'up', 'down'),
    motorHeat: s.motorHeat,
    rollAuthorityPct: authorityNow(s, fixed),
    bankDeg: s.bankRad / RAD,
  };
}

/**
 * Rows every `everyTicks` ticks from the start to `untilTick`, both included.
 * @param everyTicks whole number, 1 or more
 */
export const traceRows = (request: FlightRequest, log: readonly Command[], untilTick: number, everyTicks: number): TraceRow[] =>
  rowsOf(request, log, untilTick, everyTicks, traceRow);

/** The same with a row of one's own, made of the state and never keeping it. */
export function rowsOf<Row>(
  request: FlightRequest, log: readonly Command[], untilTick: number, everyTicks: number, rowOf: (s: State, fixed: Fixed) => Row,
): Row[] {
  const { fixed, state } = withDesk(expand(request.scenario, request.airframe, request.seed, request.whole), log);
  const s = copyState(state);
  const sorted = [...log].sort(byOrder);
  const rows = [rowOf(s, fixed)];
  let next = firstAt(sorted, 0);
  while (s.tick < untilTick) {
    next = step(fixed, s, sorted, next);
    if (s.tick % everyTicks === 0 || s.tick === untilTick) rows.push(rowOf(s, fixed));
  }
  return rows;
}
