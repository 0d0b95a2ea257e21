/**
 * A class looked at together: record files and exported logbooks of several people, opened on one machine. Every record is
 * played again before anything is told of it, and nothing is kept: what was read is gone with the page.
 */
import { openRecord } from './file.js';
import { gatheringOn, type Gathered, type Gathering } from './gathering.js';
import { linesOf } from './logbook/import.js';
import { attemptOf, BOOK_FORMAT, headOf } from './logbook/lines.js';
import { proofOf, runIn } from './logbook/run-in.js';

/** What was read so far. */
export interface ClassBook extends Gathered {
  readonly stopped: boolean;
}

export interface Reading {
  /** Name of who flew the records that are files of their own: a record carries none. */
  readonly named: string;
  /** Called with runs read and runs that are known to come. */
  readonly progress: (done: number, all: number) => void;
  readonly stop: () => boolean;
}

/** Reads files into what was read before; that stays as it was. Never rejects for a file: it is refused with why. */
export async function readClass(before: ClassBook, files: readonly File[], reading: Reading): Promise<ClassBook> {
  const gathering = gatheringOn(before);
  const pace = paceOf(reading, files.length);
  let stopped = false;
  for (const file of files) {
    stopped = await isGzip(file) ? await readLogbook(file, gathering, pace) : await readSingle(file, reading.named, gathering, pace);
    if (stopped) break;
  }
  return { ...gathering.done(), stopped };
}

/** How far the reading is. */
interface Pace {
  /** So many more runs are known to come. */
  more(runs: number): void;
  /** One more is read; the page gets a turn. @returns whether to stop */
  next(): Promise<boolean>;
}

function paceOf({ progress, stop }: Reading, files: number): Pace {
  let [done, all] = [0, files];
  return {
    more: (runs) => { all += runs; },
    async next() {
      done += 1;
      progress(done, Math.max(all, done));
      await new Promise((turn) => { setTimeout(turn); });
      return stop();
    },
  };
}

/** A record that is a file of its own. @returns whether to stop */
async function readSingle(file: File, person: string, gathering: Gathering, pace: Pace): Promise<boolean> {
  const opened = await openRecord(file);
  if (opened.ok) {
    gathering.take(opened.record, { person, atMs: file.lastModified, attempt: null, drill: null, abandoned: false });
    gathering.took(file.name);
  } else {
    const [problem] = opened.problems;
    gathering.refuse({ file: file.name, line: null, why: problem === undefined ? 'it is no record' : `${problem.path === '' ? '' : `${problem.path}: `}found ${problem.found}, allowed ${problem.allowed}` });
  }
  return pace.next();
}

/** An exported logbook, line by line. @returns whether to stop */
async function readLogbook(file: File, gathering: Gathering, pace: Pace): Promise<boolean> {
  const refuse = (line: number | null, why: string): void => gathering.refuse({ file: file.name, line, why });
  const lines = linesOf(file);
  const first = await lines.next();
  const head = first.done === true || typeof first.value !== 'string' ? null : headOf(first.value);
  if (head === null || head.evenhandLogbook > BOOK_FORMAT) {
    refuse(null, head === null ? 'it is no file of a logbook' : `it is of format ${head.evenhandLogbook}, for a later Evenhand; this one reads format ${BOOK_FORMAT}`);
    return pace.next();
  }
  gathering.took(file.name);
  pace.more(Math.max(0, head.runs - 1)); // the file counts as one already
  /** Where a run of the file stands here, by its id in the file. */
  const places = new Map<string, string>();
  let line = 1;
  for await (const text of lines) {
    line += 1;
    if (typeof text !== 'string') {
      refuse(line, text.why);
      break;
    }
    const attempt = attemptOf(text);
    if (attempt !== null) {
      gathering.fly({ ...attempt, done: attempt.done.map(({ entry, outcome }) => ({ entry: places.get(entry) ?? entry, outcome })) });
      continue;
    }
    const why = takeLine(text, gathering, places);
    if (why !== null) refuse(line, why);
    if (await pace.next()) return true;
  }
  return false;
}

/** Takes the run of a line, played again. @returns why it is refused; null where it is taken */
function takeLine(text: string, gathering: Gathering, places: Map<string, string>): string | null {
  const found = runIn(text);
  if ('why' in found) return found.why;
  const proof = proofOf(found.record);
  if ('why' in proof) return proof.why;
  const id = gathering.take(found.record, found.told);
  if (found.id !== null) places.set(found.id, id);
  return null;
}

async function isGzip(file: File): Promise<boolean> {
  const [a, b] = new Uint8Array(await file.slice(0, 2).arrayBuffer());
  return a === 0x1f && b === 0x8b;
}
