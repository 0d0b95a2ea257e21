// A live run for tests: a scripted hand, and a desk that remarks, prompts, asks and grades.
import { composeRecord, flownRecord, type DeskAct, type Grades, type RunRecord } from '../../sim/files/index.js';
import { debriefOf } from '../../sim/index.js';
import { FAULTS_OF_THE_JOB, flown, type FlownRun } from './flown.js';

const DESK_ACTS: readonly (readonly [atS: number, act: DeskAct])[] = [
  [4, { do: 'remark', label: 'good scan', text: 'Both pointers, then the speed, then back.' }],
  [6, { do: 'callout', text: 'How many on board?', answers: ['16', '61'], right: '61', withinS: 10 }],
  [11, { do: 'prompted' }],
  [14.5, { do: 'remark', label: 'late release' }],
];
const GRADES: Grades = { grades: [{ item: 'Letting go', anchor: 2, note: 'Waited to be sure.' }, { item: 'Workload', anchor: 3 }, { item: 'Cabin briefing', anchor: 4 }], note: 'Again with questions, next time.' };

/** @param grades null: none was given */
export function liveRun(grades: Grades | null = GRADES, desk: readonly (readonly [atS: number, act: DeskAct])[] = DESK_ACTS): FlownRun {
  const { record: { app, seed, airframe, scenario, device, gauge, commands, end } } = flown({ fault: FAULTS_OF_THE_JOB.disconnect }, 'prompt');
  const acts = desk.map(([atS, act], at) => ({ ...act, tick: Math.round(atS * 100), rank: 1, seq: 1000 + at, stampMs: atS * 1000, by: 'desk-1' }) as RunRecord['commands'][number]);
  const draft = { tick: end.tick, clock: [{ tick: 0, stampMs: 0 }], commands: [...commands, ...acts].sort((a, b) => a.tick - b.tick || a.rank - b.rank || a.seq - b.seq), marks: [], input: ['mouse'], live: true };
  const { format: _format, digest: _digest, ...made } = flownRecord({ app, seed, airframe, scenario, device, gauge }, draft, end);
  const record = composeRecord(grades === null ? made : { ...made, desk: grades });
  return { record, facts: debriefOf(record) };
}
