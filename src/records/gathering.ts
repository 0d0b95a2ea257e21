/** Runs of several people, gathered out of files: each under its person and once, with every refusal told. */
import type { RunRecord } from '../../sim/files/index.js';
import { MODEL_VERSION } from '../../sim/index.js';
import { entryOf, type Attempt, type Entry } from './logbook/index.js';
import type { RunsOf } from './runs.js';

interface ClassRefusal {
  readonly file: string;
  /** Line of a logbook; null for a file as a whole. */
  readonly line: number | null;
  readonly why: string;
}

export interface Gathered {
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
  /** The record of any run that was gathered; null where there is none. */
  readonly record: RunsOf['record'];
}

/** What is known of a run beside its record. */
type Told = Pick<Entry, 'person' | 'atMs' | 'attempt' | 'drill' | 'abandoned'>;

export interface Gathering {
  /** @returns the id under which the run stands here */
  take(run: RunRecord, told: Told): string;
  /** A flight of a set; one that is here already is passed over. */
  fly(attempt: Attempt): void;
  /** The file was taken. */
  took(file: string): void;
  refuse(refusal: ClassRefusal): void;
  /** All that is gathered by now; nothing may be taken behind it. */
  done(): Gathered;
}

const MOST_TOLD = 50;

/** Goes on from what was gathered before, which stays as it was. */
export function gatheringOn(before: Gathered): Gathering {
  const people = new Map([...before.people].map(([name, { entries, attempts }]) => [name, { entries: [...entries], attempts: [...attempts] }]));
  const records = new Map<string, RunRecord>();
  const ids = new Map([...before.people.values()].flatMap(({ entries }) => entries.map(({ digest, id }) => [digest, id] as const)));
  const files = [...before.files];
  const refused = [...before.refused];
  const count = { runs: before.runs, twice: before.twice, unproved: before.unproved, more: before.more };
  const of = (name: string): { entries: Entry[]; attempts: Attempt[] } => {
    const own = people.get(name) ?? { entries: [], attempts: [] };
    people.set(name, own);
    return own;
  };
  /** Among all that were read, now and before: a step for each time that files were opened. */
  const record: RunsOf['record'] = async (id) => records.get(id) ?? before.record(id);
  return {
    take(run, told) {
      const there = ids.get(run.digest);
      if (there !== undefined) {
        count.twice += 1;
        return there;
      }
      const id = `${files.length}-${ids.size}`;
      ids.set(run.digest, id);
      records.set(id, run);
      of(told.person).entries.push(entryOf(run, { ...told, id, imported: true }));
      count.runs += 1;
      if (run.model !== MODEL_VERSION) count.unproved += 1;
      return id;
    },
    fly(attempt) {
      const { attempts } = of(attempt.person);
      if (!attempts.some(({ id }) => id === attempt.id)) attempts.push(attempt);
    },
    took: (file) => { files.push(file); },
    refuse(refusal) {
      if (refused.length < MOST_TOLD) refused.push(refusal);
      else count.more += 1;
    },
    done() {
      for (const { entries } of people.values()) entries.sort((a, b) => a.atMs - b.atMs);
      return { people: new Map([...people].map(([name, own]) => [name, { ...own, record }])), files, refused, record, ...count };
    },
  };
}
