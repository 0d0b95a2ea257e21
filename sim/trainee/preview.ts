/** What a scripted trainee makes of a scenario, as a debrief has it, in one flight: quick enough to follow an edit. */
import { hasActed } from '../latches.js';
import type { Command } from '../command.js';
import type { Airframe } from '../files/airframe.js';
import type { Fixed } from '../fixed.js';
import type { ReadyScenario } from '../ready.js';
import { runBy } from '../replay.js';
import { calloutWatcher } from '../score/callouts.js';
import { toldWatcher } from '../score/told.js';
import { debriefRow, type DebriefRow } from '../score/debrief-row.js';
import { faultOf, type Debrief } from '../score/debrief.js';
import { judge } from '../score/flight.js';
import type { State } from '../state.js';
import { ticksOf } from '../units.js';
import { pilotOf, type Trainee } from './fly.js';

/** When each fault and event of the file acted first, s, in its order; null for never. */
export interface Acted {
  readonly faults: readonly (number | null)[];
  readonly events: readonly (number | null)[];
}

/** A debrief without what a second more or less would have cost: those are four flights of their own. */
export interface Preview extends Debrief {
  readonly commands: readonly Command[];
  readonly acted: Acted;
}

/** Rows a preview has at most, about; ten a second where the run is short enough. */
const MOST_ROWS = 3000;
const LEAST_TICKS = 10;

/** Flies a trainee through a scenario once. @param seed unsigned 32-bit whole number */
export function previewOf(scenario: ReadyScenario, airframe: Airframe, seed: number, trainee: Trainee): Preview {
  const commands: Command[] = [];
  const rows: DebriefRow[] = [];
  const everyTicks = LEAST_TICKS * Math.max(1, Math.floor(ticksOf(scenario.task.limitS) / (LEAST_TICKS * MOST_ROWS)));
  const request = { scenario, airframe, seed };
  let entries: Fixed['agenda']['entries'] = [];
  let callouts: Debrief['callouts'] = [];
  let told: Debrief['told'] = [];
  let limitDeg = 0;
  let acted: readonly (number | null)[] = [];
  const flight = judge(request, (world, see) => {
    const { fixed } = world;
    const heard = calloutWatcher(fixed);
    const read = toldWatcher(fixed);
    const watching = actedWatcher(fixed);
    rows.push(debriefRow(world.state, fixed, request));
    const flown = runBy(world, pilotOf(scenario, airframe, seed, trainee, fixed), commands, (s) => {
      see(s);
      heard.see(s);
      read.see(s);
      watching.see(s);
      if (s.tick % everyTicks === 0) rows.push(debriefRow(s, fixed, request));
    });
    if (flown.ticks % everyTicks !== 0) rows.push(debriefRow(flown.state, fixed, request));
    ({ agenda: { entries }, task: { limitDeg } } = fixed);
    callouts = heard.callouts(commands, flown.ticks);
    told = read.told();
    acted = watching.times;
    return flown;
  });
  return {
    flight, commands, rows, limitDeg, callouts, told,
    fault: faultOf(flight, entries),
    oneDegreeS: flight.events.find((event) => event.what === 'oneDegree')?.atS ?? null,
    oneSecondMore: null, oneSecondSooner: null,
    acted: { faults: acted.slice(0, scenario.faults.length), events: acted.slice(scenario.faults.length, scenario.faults.length + scenario.events.length) },
  };
}

/** Notes when each entry acts. It looks only in ticks in which something was latched, which is where the agenda moves. */
function actedWatcher(fixed: Fixed): { readonly times: readonly (number | null)[]; see(s: State): void } {
  const { entries } = fixed.agenda;
  const times: (number | null)[] = entries.map(() => null);
  let seen: State['latched'] | null = null;
  return {
    times,
    see(s) {
      if (s.latched === seen) return;
      seen = s.latched;
      entries.forEach((entry, place) => {
        if (times[place] === null && hasActed(s, fixed, entry)) times[place] = (s.tick - 1) / 100;
      });
    },
  };
}
