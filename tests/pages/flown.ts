// Runs flown without a page, as records with their debriefs: what the pages' words and charts are tested on.
import { readFileSync } from 'node:fs';
import { ready, scenarioSchema, scriptedRecord, type Airframe, type Fault, type Inputs, type RunRecord, type Scenario } from '../../sim/files/index.js';
import { debriefOf, flyInputs, flyTrainee, MODEL_VERSION, type Debrief, type TraineeName } from '../../sim/index.js';
import { readAirframe } from '../../src/text/index.js';

const file = 'scenarios/airframes/airframe-a.json';
const read = readAirframe(readFileSync(file, 'utf8'), file);
if (!read.ok) throw new Error('airframe A has a problem');
export const airframe: Airframe = read.value;

export interface FlownRun {
  readonly facts: Debrief;
  readonly record: RunRecord;
}

export interface Change {
  readonly fault?: Fault;
  /** true: the first release is scored. */
  readonly scored?: boolean;
  readonly start?: Partial<Scenario['start']>;
  readonly settings?: number[];
  readonly limitS?: number;
  readonly events?: unknown[];
  readonly seed?: number;
}

function scenarioOf({ fault, scored = true, start = {}, settings = [16], limitS = 120, events = [] }: Change): Scenario {
  return scenarioSchema.parse({
    format: 1, title: 'trial', brief: '', airframe,
    start: { massT: 48, altitudeFt: 5600, groundFt: 700, speedKt: 167, flapDeg: 4, flapLeverDeg: 16, leadingEdge: 'out', ...start },
    task: { settings, limitS }, faults: fault === undefined ? [] : [fault], events, ...(scored ? { recognition: {} } : {}),
  });
}

/** Flown by a scripted trainee, or by inputs, which last the whole time. */
export function flown(change: Change, by: TraineeName | Inputs): FlownRun {
  const { seed = 3 } = change;
  const scenario = ready(scenarioOf(change), airframe);
  const { commands, flight } = typeof by === 'string' ? flyTrainee(scenario, airframe, seed, by) : flyInputs(scenario, airframe, seed, by);
  const { end, hash, outcome, score } = flight;
  const record = scriptedRecord({ model: MODEL_VERSION, app: 'test', seed, airframe, scenario, commands, end, hash, outcome, score });
  return { facts: debriefOf(record), record };
}

/** The same run as if a person had flown it. */
export const byPerson = ({ facts, record }: FlownRun): FlownRun => ({ facts, record: { ...record, source: 'flown' } });

const when = { heldS: 10 };

/** One fault of every kind. */
export const FAULTS_OF_THE_JOB = {
  disconnect: { name: 'x', kind: 'disconnect', side: 'left', when },
  lag: { name: 'x', kind: 'lag', side: 'left', ratio: -3, when },
  jam: { name: 'x', kind: 'jam', side: 'left', when },
  slip: { name: 'x', kind: 'slip', side: 'right', ratio: 0, periodS: 6, onS: 3, when },
  blowback: { name: 'x', kind: 'blowback', side: 'left', when },
  pointer: { name: 'x', kind: 'pointer', side: 'right', mode: 'stuck', when },
  dead: { name: 'x', kind: 'dead', when: { atS: 0 } },
  quits: { name: 'x', kind: 'quits', when },
  slow: { name: 'x', kind: 'slow', factor: 0.4, when },
  runsOn: { name: 'x', kind: 'runsOn', when },
  leadingEdge: { name: 'x', kind: 'leadingEdge', stopsAt: 0.6, when: { atS: 0 } },
} as const satisfies { [K in Fault['kind']]: Extract<Fault, { kind: K }> };
