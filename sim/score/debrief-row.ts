/** A row of a debrief's charts: the trace, with the marks and thresholds that were in force. */
import type { Fixed } from '../fixed.js';
import { limitKtNow, lowestNow, manoeuvreKt } from '../marks.js';
import type { State } from '../state.js';
import { FT } from '../units.js';
import { hornAngle } from '../warning/horn.js';
import type { FlightRequest } from './flight.js';
import { traceRow, type TraceRow } from './trace.js';

/** Speeds are calibrated; marks and thresholds are those of this very tick. */
export interface DebriefRow extends TraceRow {
  /** Lowest limit in force, kt; null for none. */
  readonly limitKt: number | null;
  /** Stall warning of the side least out, kt. */
  readonly lowestKt: number;
  /** Manoeuvre speed of the lever's setting, kt. */
  readonly manoeuvreKt: number;
  readonly selectedKt: number;
  /** Lever angle below which the horn sounds, deg; null where no angle decides. */
  readonly hornTlaDeg: number | null;
}

export function debriefRow(s: State, fixed: Fixed, { airframe, scenario }: Pick<FlightRequest, 'airframe' | 'scenario'>): DebriefRow {
  const limit = limitKtNow(s, airframe);
  return {
    ...traceRow(s, fixed),
    limitKt: limit < Infinity ? limit : null,
    lowestKt: lowestNow(s, fixed),
    manoeuvreKt: manoeuvreKt(airframe, fixed, s.latched.flapLeverDeg, scenario.start.icing),
    selectedKt: s.latched.selectedKt,
    hornTlaDeg: hornAngle(fixed.horn, Math.max(s.leftDeg, s.rightDeg), s.latched.leftLive + s.latched.rightLive, s.gear, (s.heightM - fixed.groundM) / FT),
  };
}
