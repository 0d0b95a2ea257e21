/** A run as it stands in a line of a logbook's file, and why one is not believed; told alike wherever a logbook is read. */
import { verify, type RunRecord } from '../../../sim/files/index.js';
import { readRecord } from '../../text/index.js';
import { toldOf } from './lines.js';

type Told = NonNullable<ReturnType<typeof toldOf>>;

/** What a line holds, its record read and not yet proved. */
export function runIn(line: string): (Pick<Told, 'told' | 'id'> & { readonly record: RunRecord }) | { readonly why: string } {
  const found = toldOf(line);
  if (found === null) return { why: 'no run stands in this line' };
  const read = readRecord(found.recordText, 'record');
  if (read.ok) return { told: found.told, id: found.id, record: read.value };
  const [problem] = read.problems;
  return { why: `its record is wrong${problem === undefined ? '' : ` at ${problem.path === '' ? 'its beginning' : problem.path}: found ${problem.found}, allowed ${problem.allowed}`}` };
}

/** Plays a record again. One of another model version cannot be, and is not refused for it. */
export function proofOf(record: RunRecord): { readonly proved: boolean } | { readonly why: string } {
  const { replayable, refused: [refusal] } = verify(record);
  if (replayable && refusal !== undefined) return { why: `its record does not follow from its inputs: ${refusal.path === '' ? refusal.code : refusal.path}` };
  return { proved: replayable };
}
