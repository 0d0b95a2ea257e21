/** Puts a record together and digests it: for runs flown on the page and for those flown without one. */
import type { Command } from '../command.js';
import type { Airframe } from './airframe.js';
import { digestOf } from './digest.js';
import type { ReadyScenario } from '../ready.js';
import type { RunRecord } from './record.js';

/** What a record is made of, but its format and its digest. */
export type RecordParts = Omit<RunRecord, 'format' | 'digest'>;

/** The record of a run. @throws TypeError when a part holds NaN or an infinity, which no file can hold. */
export function composeRecord(parts: RecordParts): RunRecord {
  const record = { format: 1 as const, ...parts };
  return { ...record, digest: digestOf(record) };
}

/** A run without a page: the tick's own time stands for the stamp, 10 ms a tick from 0. */
export interface ScriptedRun extends Pick<RunRecord, 'model' | 'app' | 'seed' | 'end' | 'hash' | 'outcome' | 'score'> {
  airframe: Airframe;
  scenario: ReadyScenario;
  commands: readonly Command[];
}

const MS_A_TICK = 10;

/** The record of a run flown by a script: no device, no gauge, no frames, no assessment. */
export function scriptedRecord({ commands, ...run }: ScriptedRun): RunRecord {
  return composeRecord({
    ...run,
    source: 'scripted',
    device: { isolated: false, clockGrainMs: 0, renderer: 'none', input: 'script' },
    gauge: { pxPerDeg: 0, pixelRatio: 1, mmPerPx: null },
    clock: [{ tick: 0, stampMs: 0 }],
    // What was filed for the end or behind it never acted.
    commands: commands.filter(({ rank, tick }) => rank > 0 && tick < run.end.tick).map((command) => ({ ...command, stampMs: command.tick * MS_A_TICK }) as RunRecord['commands'][number]),
    marks: [],
    assessment: null,
  });
}
