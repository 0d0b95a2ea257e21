/**
 * A class looked at together: record files and exported logbooks of several people, opened on one machine. Every record is
 * played again before anything is told of it, and nothing is kept: what was read is gone with the page.
 */
import type { RunRecord } from '../../sim/files/index.js';
import { MODEL_VERSION } from '../../sim/index.js';
import { openRecord } from './file.js';
import { entryOf, type Attempt, type Entry } from './logbook/index.js';
import { linesOf } from './logbook/import.js';
import { attemptOf, BOOK_FORMAT, headOf } from './logbook/lines.js';
import { proofOf, runIn } from './logbook/run-in.js';
import type { RunsOf } from './runs.js';

export interface ClassRefusal {
  readonly file: string;
  /** Line of a logbook; null for a file as a whole. */
  readonly line: number | null;
  readonly why: string;
}

/** What was read so far. */
export interface ClassBook {
  readonly people: ReadonlyMap<string, RunsOf>;
  /** Files that were taken, in order. */
  readonly files: readonly string[];
  readonly runs: number;
  /** Runs that stand in another of the files as well. */
  readonly twice: number;
  /** Runs of another model version: shown with what they say, not proved. */
  readonly unproved: number;
  readonly refused: readonly ClassRefusal[];
  /** Refusals beyond those listed. */
  readonly more: number;
  readonly stopped: boolean;
}

export interface Reading {
  /** Name of who flew the records that are files of their own: a record carries none. */
  readonly named: string;
  /** Called with runs read and runs that are known to come. */
  readonly progress: (done: number, all: number) => void;
  readonly stop: () => boolean;
}

const MOST_TOLD = 50;

/** Gives the page a turn between two replays. */
const breathe = (): Promise<void> => new Promise((done) => { setTimeout(done); });

/** Reads files into what was read before; that stays as it was. Never rejects for a file: it is refused with why. */
export async function readClass(before: ClassBook, files: readonly File[], { named, progress, stop }: Reading): Promise<ClassBook> {
  const people = new Map([...before.people].map(([name, { entries, attempts, record }]) => [name, { entries: [...entries], attempts: [...attempts], record }]));
  const records = new Map<string, RunRecord>();
  const byDigest = new Map([...before.people.values()].flatMap(({ entries }) => entries.map(({ digest, id }) => [digest, id] as const)));
  const count = { runs: before.runs, twice: before.twice, unproved: before.unproved, more: before.more };
  const refused = [...before.refused];
  const taken = [...before.files];
  let [done, all, stopped] = [0, files.length, false];
  const refuse = (file: string, line: number | null, why: string): void => { if (refused.length < MOST_TOLD) refused.push({ file, line, why }); else count.more += 1; };
  const of = (name: string): { entries: Entry[]; attempts: Attempt[]; record: RunsOf['record'] } => {
    const known = people.get(name);
    if (known !== undefined) return known;
    const made = { entries: [], attempts: [], record: (id: string) => Promise.resolve(records.get(id) ?? null) };
    people.set(name, made);
    return made;
  };
  /** @returns the id under which the run stands here */
  const take = (name: string, run: RunRecord, { atMs, attempt, drill, abandoned }: Pick<Entry, 'atMs' | 'attempt' | 'drill' | 'abandoned'>): string => {
    const there = byDigest.get(run.digest);
    if (there !== undefined) {
      count.twice += 1;
      return there;
    }
    const id = `${taken.length}-${byDigest.size}`;
    byDigest.set(run.digest, id);
    records.set(id, run);
    of(name).entries.push(entryOf(run, { id, person: name, imported: true, atMs, attempt, drill, abandoned }));
    count.runs += 1;
    if (run.model !== MODEL_VERSION) count.unproved += 1;
    return id;
  };
  const tick = async (): Promise<boolean> => {
    done += 1;
    progress(done, Math.max(all, done));
    await breathe();
    return stop();
  };
  for (const file of files) {
    if (stopped) break;
    if (!await isGzip(file)) {
      const opened = await openRecord(file);
      if (opened.ok) {
        take(named, opened.record, { atMs: file.lastModified, attempt: null, drill: null, abandoned: false });
        taken.push(file.name);
      } else {
        const [problem] = opened.problems;
        refuse(file.name, null, problem === undefined ? 'it is no record' : `${problem.path === '' ? '' : `${problem.path}: `}found ${problem.found}, allowed ${problem.allowed}`);
      }
      stopped = await tick();
      continue;
    }
    const lines = linesOf(file);
    const first = await lines.next();
    const head = first.done === true || typeof first.value !== 'string' ? null : headOf(first.value);
    if (head === null || head.evenhandLogbook > BOOK_FORMAT) {
      refuse(file.name, null, head === null ? 'it is no file of a logbook' : `it is of format ${head.evenhandLogbook}, for a later Evenhand; this one reads format ${BOOK_FORMAT}`);
      stopped = await tick();
      continue;
    }
    taken.push(file.name);
    all += Math.max(0, head.runs - 1);
    const places = new Map<string, string>();
    let line = 1;
    for await (const text of lines) {
      line += 1;
      if (typeof text !== 'string') {
        refuse(file.name, line, text.why);
        break;
      }
      const attempt = attemptOf(text);
      if (attempt !== null) {
        const known = of(attempt.person).attempts;
        if (!known.some(({ id }) => id === attempt.id)) known.push({ ...attempt, done: attempt.done.map(({ entry, outcome }) => ({ entry: places.get(entry) ?? entry, outcome })) });
        continue;
      }
      const run = provedIn(text);
      if ('why' in run) refuse(file.name, line, run.why);
      else {
        const id = take(run.person, run.record, run);
        if (run.id !== null) places.set(run.id, id);
      }
      if (await tick()) {
        stopped = true;
        break;
      }
    }
  }
  for (const own of people.values()) own.entries.sort((a, b) => a.atMs - b.atMs);
  // Each person's runs are found among all that were read, before and now.
  const found = async (id: string): Promise<RunRecord | null> => {
    const now = records.get(id);
    if (now !== undefined) return now;
    for (const { record } of before.people.values()) {
      const was = await record(id);
      if (was !== null) return was;
    }
    return null;
  };
  return { people: new Map([...people].map(([name, own]) => [name, { ...own, record: found }])), files: taken, refused, ...count, stopped };
}

async function isGzip(file: File): Promise<boolean> {
  const [a, b] = new Uint8Array(await file.slice(0, 2).arrayBuffer());
  return a === 0x1f && b === 0x8b;
}

type Line = { readonly record: RunRecord; readonly id: string | null; readonly person: string; readonly atMs: number; readonly attempt: string | null; readonly drill: number | null; readonly abandoned: boolean };

/** The run of a line of a logbook, played again; or why it is refused. */
function provedIn(text: string): Line | { readonly why: string } {
  const found = runIn(text);
  if ('why' in found) return found;
  const proof = proofOf(found.record);
  return 'why' in proof ? proof : { record: found.record, id: found.id, ...found.told };
}
