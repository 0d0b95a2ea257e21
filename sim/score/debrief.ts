/** What a debrief says of one run, as figures and plain words of the trade; sentences are made by the page. */
import type { RunRecord } from '../files/record.js';
import { expand } from '../expand.js';
import { fly, type Flight, type FlightRequest } from './flight.js';
import { commandsOfRecord, requestOf } from './replayed.js';
import { traceRows, type TraceRow } from './trace.js';

export interface Debrief {
  readonly flight: Flight;
  /** The fault whose onset is scored: kind and drawn side; null for a quiet run. */
  readonly fault: { readonly kind: string; readonly side: 'left' | 'right' | null } | null;
  /** First time that 1 degree was shown behind onset, s; null for never. */
  readonly oneDegreeS: number | null;
  /** Growth at which a release is late, deg. */
  readonly limitDeg: number;
  /** What the run would have come to with the hand off one second later: final true split and roll authority. */
  readonly oneSecondMore: { readonly finalSplitDeg: number; readonly rollAuthorityPct: number } | null;
  readonly rows: readonly TraceRow[];
}

const SECOND = 100;

/** Debriefs a record by playing it again. */
export function debriefOf(record: RunRecord, everyTicks = 10): Debrief {
  const request = requestOf(record);
  const log = commandsOfRecord(record);
  const flight = fly(request, log);
  const { fixed } = expand(request.scenario, request.airframe, request.seed, request.whole);
  return {
    flight,
    fault: faultOf(flight, fixed.agenda.entries),
    oneDegreeS: flight.events.find((event) => event.what === 'oneDegree')?.atS ?? null,
    limitDeg: fixed.task.limitDeg,
    oneSecondMore: oneSecondMore(request, log, flight),
    rows: traceRows(request, log, flight.ticks, everyTicks),
  };
}

type Entries = ReturnType<typeof expand>['fixed']['agenda']['entries'];

/** The last splitting fault that acted at or before onset. */
function faultOf(flight: Flight, entries: Entries): Debrief['fault'] {
  const { onsetS } = flight.score;
  if (onsetS === null) return null;
  const acted = flight.events.filter((event) => event.what === 'fault' && event.atS <= onsetS);
  for (const event of acted.reverse()) {
    const fault = entries.find((entry) => (entry.name ?? String(entry.place)) === event.name)?.fault;
    if (fault !== null && fault !== undefined && 'side' in fault) return { kind: fault.kind, side: fault.side };
  }
  return null;
}

/** The same run with the scored release and all behind it one second later. */
function oneSecondMore(request: FlightRequest, log: ReturnType<typeof commandsOfRecord>, flight: Flight): Debrief['oneSecondMore'] {
  const { releaseS, onsetS } = flight.score;
  // A stopped run ends where it stopped, whatever the hand would have done.
  if (request.stopTick !== undefined || releaseS === null || onsetS === null || releaseS < onsetS) return null;
  const from = Math.floor(releaseS * SECOND);
  const later = log.map((command) => (command.tick >= from ? { ...command, tick: command.tick + SECOND } : command));
  const { score } = fly(request, later);
  return { finalSplitDeg: score.finalSplitDeg, rollAuthorityPct: score.rollAuthorityPct };
}
