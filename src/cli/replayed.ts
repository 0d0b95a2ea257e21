/** `replay` and `verify`: a record played again, and proved. */
import { commandsOfRecord, MODEL_VERSION, replay as replayRecord, requestOf, traceRows } from '../../sim/index.js';
import { differences, type ReplayOutput, verify as verifyRecord, type VerifyOutput } from '../../sim/files/index.js';
import { readRecord } from '../text/index.js';
import { columns } from './columns.js';
import { flownLines, flownOutput } from './flown.js';
import { type Io, printJson, printLines } from './io.js';
import { openRecord } from './opened.js';
import { readText } from './paper.js';
import { counted, problemLines } from './problems.js';
import { DONE, FAILED, Trouble } from './trouble.js';

export function replay(io: Io, file: string, options: { trace?: number; json?: boolean }): number {
  const record = openRecord(file);
  if (record.model !== MODEL_VERSION) {
    throw new Trouble(`${file}: not replayable here: it is of model ${record.model}, this Evenhand has model ${MODEL_VERSION}. Its stored outcome: ${record.outcome}.`);
  }
  const flight = replayRecord(record);
  const trace = options.trace === undefined ? undefined : traceRows(requestOf(record), commandsOfRecord(record), flight.ticks, options.trace);
  const differ = differences(record, flight);
  const output: ReplayOutput = { ...flownOutput(record.scenario.title, flight, trace), agrees: differ.length === 0 };
  if (differ.length > 0) io.err(`The replay differs from what ${file} says; evenhand verify tells where.\n`);
  if (options.json === true) printJson(io, output);
  else printLines(io, flownLines(output, record.scenario.recognition?.limitDeg ?? null));
  return output.agrees ? DONE : FAILED;
}

type Proved = VerifyOutput['records'][number];

/** @throws Trouble for the first file that cannot be read */
export function verify(io: Io, files: readonly string[], json: boolean): number {
  const texts = files.map((file) => [file, readText(file)] as const);
  const records = texts.map(([file, text]) => proved(file, text));
  const output: VerifyOutput = { ok: records.every(({ ok }) => ok), records };
  if (json) printJson(io, output);
  else printLines(io, [...records.flatMap(verdictLines), `${counted(records.length, 'record')}, ${counted(records.filter(({ ok }) => !ok).length, 'failure')}`]);
  return output.ok ? DONE : FAILED;
}

function proved(file: string, text: string): Proved {
  const read = readRecord(text, file);
  if (!read.ok) return { file, ok: false, replayable: false, outcome: null, refused: [], notProvable: [], problems: read.problems, more: read.more };
  return { file, ...verifyRecord(read.value), outcome: read.value.outcome, problems: [], more: 0 };
}

function verdictLines({ file, ok, replayable, outcome, refused, notProvable, problems, more }: Proved): string[] {
  if (outcome === null) return [`${file}: no record`, ...problemLines({ problems, more })];
  const head = ok ? `${file}: follows from its inputs; outcome ${outcome}`
    : replayable ? `${file}: refused; it says ${outcome}` : `${file}: not replayable here; it says ${outcome}`;
  const rows = columns(refused.map(({ code, path, found, expected }) => [`  ${code}`, path, `found ${found}; expected: ${expected}`]));
  return [head, ...rows, ...(ok ? [`  not provable: ${notProvable.join(', ')}`] : [])];
}
