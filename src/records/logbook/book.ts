/** The logbook: every run, kept on this machine. Each act is one transaction, so a page that dies loses nothing finished. */
import type { RunRecord } from '../../../sim/files/index.js';
import { withRun, type Attempt } from './attempt.js';
import { entryOf, type About, type Entry } from './entry.js';
import { isOf, type Filter } from './filter.js';
import { troubleOf, type Kept, type Store, type Unfinished } from './store.js';

export interface PageOf {
  readonly entries: readonly Entry[];
  /** Where the next page goes on; null: there is no more. */
  readonly next: Cursor | null;
}
/** The entry behind which a page goes on. */
export type Cursor = Pick<Entry, 'atMs' | 'id'>;

/** Made by `bookOn`. Times are ms since 1970; an id is that of an entry. */
export interface Book {
  /** Notes how far a run has come, in case its page goes away. Keeping its record ends the note. */
  note(unfinished: Unfinished): Promise<void>;
  unfinished(): Promise<Unfinished[]>;
  /** Ends the note of a run that left nothing to keep. */
  forget(id: string): Promise<void>;
  /** Keeps a run, or keeps its newer record under the same id. */
  keep(record: RunRecord, about: About): Promise<Entry>;
  /** The record behind an entry; null where it is not there any more. */
  record(id: string): Promise<RunRecord | null>;
  /** Id of the entry whose record has this digest; null where none is on the list. */
  idOf(digest: string): Promise<string | null>;
  /** At most `most` entries, newest first, behind `after`. */
  list(filter: Filter, after: Cursor | null, most?: number): Promise<PageOf>;
  count(): Promise<number>;
  /** Takes entries off the list; `putBack` undoes it until they are swept away. */
  remove(ids: readonly string[], nowMs: number): Promise<void>;
  putBack(ids: readonly string[]): Promise<void>;
  /** Deletes for good what was taken off before a moment. @returns how many */
  sweepAway(beforeMs: number): Promise<number>;
  /** Flights of sets, the latest first. */
  attempts(): Promise<Attempt[]>;
  keepAttempt(attempt: Attempt): Promise<void>;
  people(): Promise<string[]>;
  addPerson(name: string, nowMs: number): Promise<void>;
  /** The dice of a person in a course: `fresh` the first time, and the same ever after. */
  courseSeed(course: string, person: string, fresh: number): Promise<number>;
  lastExportMs(): Promise<number | null>;
  noteExport(nowMs: number): Promise<void>;
  close(): void;
}

const PAGE = 50;
/** Entries read at a time where most may not fit. */
const STEP = 500;
/** Above every id and every time. */
const LAST: [number, string] = [Infinity, '\uffff'];

const listed = (entry: Entry): Kept => ({ ...entry, back: -entry.atMs });
const plain = ({ back: _back, ...entry }: Kept): Entry => entry;

/** The logbook on an open store. Every promise rejects with LogbookTrouble and nothing else. */
export function bookOn(store: Store): Book {
  const told = async <T>(done: () => Promise<T>): Promise<T> => {
    try {
      return await done();
    } catch (problem) {
      throw troubleOf(problem);
    }
  };
  const change = (ids: readonly string[], to: (entry: Entry) => Kept): Promise<void> => told(async () => {
    const work = store.transaction('entries', 'readwrite');
    await Promise.all(ids.map(async (id) => {
      const entry = await work.store.get(id);
      if (entry !== undefined) await work.store.put(to(plain(entry)));
    }));
    await work.done;
  });
  return {
    note: (unfinished) => told(async () => { await store.put('journal', unfinished, unfinished.about.id); }),
    unfinished: () => told(() => store.getAll('journal')),
    forget: (id) => told(() => store.delete('journal', id)),
    keep: (record, about) => told(() => keepRun(store, record, about)),
    record: (id) => told(async () => {
      const text = await store.get('records', id);
      return text === undefined ? null : JSON.parse(text) as RunRecord;
    }),
    idOf: (digest) => told(async () => {
      const found = await store.getAllFromIndex('entries', 'byDigest', digest);
      return found.find(({ removedMs }) => removedMs === null)?.id ?? null;
    }),
    list: (filter, after, most = PAGE) => told(() => page(store, filter, after, most)),
    count: () => told(() => store.countFromIndex('entries', 'byTime')),
    remove: (ids, nowMs) => change(ids, (entry) => ({ ...entry, removedMs: nowMs })),
    putBack: (ids) => change(ids, (entry) => listed({ ...entry, removedMs: null })),
    sweepAway: (beforeMs) => told(() => sweep(store, beforeMs)),
    attempts: () => told(async () => (await store.getAll('attempts')).sort((a, b) => b.startedMs - a.startedMs)),
    keepAttempt: (attempt) => told(async () => { await store.put('attempts', attempt); }),
    people: () => told(async () => (await store.getAll('people')).sort((a, b) => a.addedMs - b.addedMs).map(({ name }) => name)),
    addPerson: (name, addedMs) => told(async () => { await store.put('people', { name, addedMs }); }),
    courseSeed: (course, person, fresh) => told(async () => {
      const work = store.transaction('meta', 'readwrite');
      const key = `course ${course} ${person}`;
      const seed = await work.store.get(key) ?? fresh;
      await work.store.put(seed, key);
      await work.done;
      return seed;
    }),
    lastExportMs: () => told(async () => (await store.get('meta', 'lastExportMs')) ?? null),
    noteExport: (nowMs) => told(async () => { await store.put('meta', nowMs, 'lastExportMs'); }),
    close: () => store.close(),
  };
}

async function keepRun(store: Store, record: RunRecord, about: About): Promise<Entry> {
  const entry = entryOf(record, about);
  const work = store.transaction(['entries', 'records', 'journal', 'attempts'], 'readwrite');
  // The run of a set and its being done are one: a page that dies loses both or none.
  const attempts = work.objectStore('attempts');
  const attempt = about.attempt === null ? undefined : await attempts.get(about.attempt);
  await Promise.all([
    ...(attempt === undefined ? [] : [attempts.put(withRun(attempt, entry.id, entry.outcome))]),
    work.objectStore('entries').put(listed(entry)), work.objectStore('records').put(JSON.stringify(record), entry.id),
    work.objectStore('journal').delete(entry.id), work.done,
  ]);
  return entry;
}

async function sweep(store: Store, beforeMs: number): Promise<number> {
  const work = store.transaction(['entries', 'records'], 'readwrite');
  const entries = await work.objectStore('entries').getAll();
  const old = entries.filter(({ removedMs }) => removedMs !== null && removedMs < beforeMs);
  await Promise.all(old.flatMap(({ id }) => [work.objectStore('entries').delete(id), work.objectStore('records').delete(id)]));
  await work.done;
  return old.length;
}

/** Reads on in the index of person and outcome until the page is full; one entry more than asked for tells whether there is more. */
async function page(store: Store, filter: Filter, after: Cursor | null, most: number): Promise<PageOf> {
  const found: Kept[] = [];
  // What a run was of has no index: a rare drill is looked for in steps, each one read.
  const step = filter.of === null ? most + 1 : Math.max(most + 1, STEP);
  for (let from: readonly [number, string] | null = after === null ? null : [-after.atMs, after.id]; found.length <= most;) {
    const read = await readOn(store, filter, from ?? [-Infinity, ''], from !== null, step);
    found.push(...read.filter((entry) => isOf(entry, filter.of)));
    const last = read.at(-1);
    if (last === undefined || read.length < step) break;
    from = [-last.atMs, last.id];
  }
  const entries = found.slice(0, most).map(plain);
  const last = entries.at(-1);
  return { entries, next: found.length <= most || last === undefined ? null : { atMs: last.atMs, id: last.id } };
}

function readOn(store: Store, { person, outcome }: Filter, from: readonly [number, string], open: boolean, most: number): Promise<Kept[]> {
  const range = (...fixed: string[]): IDBKeyRange => IDBKeyRange.bound([...fixed, ...from], [...fixed, ...LAST], open);
  if (person === null && outcome === null) return store.getAllFromIndex('entries', 'byTime', range(), most);
  if (outcome === null) return store.getAllFromIndex('entries', 'byPerson', range(person as string), most);
  if (person === null) return store.getAllFromIndex('entries', 'byOutcome', range(outcome), most);
  return store.getAllFromIndex('entries', 'byBoth', range(person, outcome), most);
}
