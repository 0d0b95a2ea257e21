/** What a debrief says of one run, as figures and plain words of the trade; sentences are made by the page. */
import type { RunRecord } from '../files/record.js';
import { withDesk } from '../desk/plan.js';
import { expand } from '../expand.js';
import { fly, type Flight, type FlightRequest } from './flight.js';
import { commandsOfRecord, requestOf } from './replayed.js';
import { calloutWatcher, type Callout } from './callouts.js';
import { toldWatcher, type Told } from './told.js';
import { debriefRow, type DebriefRow } from './debrief-row.js';
import { rowsOf } from './trace.js';

/** Made by `debriefOf`. Rows stand ten a second unless asked otherwise, both ends included; what a desk took back is in them. */
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
  /** The same with the hand off one second sooner; null where that would be before onset or the run has no such release. */
  readonly oneSecondSooner: Debrief['oneSecondMore'];
  readonly callouts: readonly Callout[];
  /** Messages and the word to go around, in the order in which they came. */
  readonly told: readonly Told[];
  readonly rows: readonly DebriefRow[];
}

const SECOND = 100;

/** Debriefs a record by playing it again. */
export function debriefOf(record: RunRecord, everyTicks = 10): Debrief {
  const request = requestOf(record);
  const log = commandsOfRecord(record);
  const flight = fly(request, log);
  const { fixed } = withDesk(expand(request.scenario, request.airframe, request.seed, request.whole), log);
  const heard = calloutWatcher(fixed);
  const read = toldWatcher(fixed);
  const rows = rowsOf(request, log, flight.ticks, 1, (s, all) => {
    heard.see(s);
    read.see(s);
    return s.tick % everyTicks === 0 || s.tick === flight.ticks ? debriefRow(s, all, request) : null;
  }).filter((row) => row !== null);
  return {
    flight,
    fault: faultOf(flight, fixed.agenda.entries),
    oneDegreeS: flight.events.find((event) => event.what === 'oneDegree')?.atS ?? null,
    limitDeg: fixed.task.limitDeg,
    oneSecondMore: shifted(request, log, flight, SECOND),
    oneSecondSooner: shifted(request, log, flight, -SECOND),
    callouts: heard.callouts(log, flight.ticks),
    told: read.told(),
    rows,
  };
}

type Entries = ReturnType<typeof expand>['fixed']['agenda']['entries'];

/** The last splitting fault that acted at or before onset. */
export function faultOf(flight: Flight, entries: Entries): Debrief['fault'] {
  const { onsetS } = flight.score;
  if (onsetS === null) return null;
  const acted = flight.events.filter((event) => event.what === 'fault' && event.atS <= onsetS);
  for (const event of acted.reverse()) {
    const fault = entries.find((entry) => (entry.name ?? String(entry.place)) === event.name)?.fault;
    if (fault !== null && fault !== undefined && 'side' in fault) return { kind: fault.kind, side: fault.side };
  }
  return null;
}

/**
 * The same run with the scored release and all that the hand did behind it so many ticks later, or sooner; what a desk did
 * stays where it was. Null where a moment came back behind the release: that would be another run.
 */
function shifted(request: FlightRequest, log: ReturnType<typeof commandsOfRecord>, flight: Flight, ticks: number): Debrief['oneSecondMore'] {
  const { releaseS, onsetS } = flight.score;
  // A stopped run ends where it stopped, whatever the hand would have done.
  if (request.stopTick !== undefined || releaseS === null || onsetS === null || releaseS + Math.min(0, ticks / SECOND) < onsetS) return null;
  const from = Math.floor(releaseS * SECOND);
  if (log.some(({ do: what, tick }) => what === 'reposition' && tick >= from + Math.min(0, ticks))) return null;
  const moved = log.map((command) => (command.rank === 2 && command.tick >= from ? { ...command, tick: command.tick + ticks } : command));
  const { score } = fly(request, moved);
  return { finalSplitDeg: score.finalSplitDeg, rollAuthorityPct: score.rollAuthorityPct };
}
