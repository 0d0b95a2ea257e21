/** What the logbook page shows: the entries read so far, the filter, and what went wrong. */
import { signal } from '@preact/signals';
import { EVERY_RUN } from '../../records/logbook/filter.js';
import type { Book, Cursor, Entry, Filter, Trouble } from '../../records/logbook/index.js';
import type { House } from '../house.js';
import { placesInSets } from '../set/of-set.js';

export const filter = signal<Filter>(EVERY_RUN);
export const entries = signal<readonly Entry[] | null>(null);
export const next = signal<Cursor | null>(null);
export const total = signal(0);
export const people = signal<readonly string[]>([]);
export const lastExportMs = signal<number | null>(null);
/** Where the runs of sets stood in them, by their entries. */
export const places = signal<ReadonlyMap<string, string>>(new Map());
export const trouble = signal<Trouble | null>(null);
/** The shipped drills by number, as the filter names them; empty until they are fetched. */
export const drills = signal<readonly string[]>([]);
/** Taken off last, until something else happens. */
export const removed = signal<Entry | null>(null);

export const TROUBLES: Readonly<Record<Trouble, string>> = {
  denied: 'This browser keeps nothing for this page (a private window, or storage is switched off). Runs can still be saved as files, from their debrief.',
  full: 'There is no room left on this machine for more runs. Export the logbook, take old runs off it, and try again.',
  newer: 'The logbook on this machine was written by a later Evenhand. It is left as it is.',
  closed: 'Another page of Evenhand has taken the logbook over. Reload this page to go on here.',
};

/** Works on the book, and tells what keeps it from working. @returns undefined where it could not */
export async function withBook<T>(house: House, work: (book: Book) => Promise<T>): Promise<T | undefined> {
  try {
    const done = await work(await house.logbook());
    trouble.value = null;
    return done;
  } catch (problem) {
    trouble.value = troubleIn(problem);
    return undefined;
  }
}

export const troubleIn = (problem: unknown): Trouble =>
  (typeof problem === 'object' && problem !== null && 'trouble' in problem && typeof problem.trouble === 'string' && problem.trouble in TROUBLES ? problem.trouble as Trouble : 'denied');

/** Reads the first page anew. */
export const refresh = (house: House): Promise<void | undefined> => withBook(house, async (book) => {
  const [page, count, names, exported, flights, sets] = await Promise.all([book.list(filter.value, null), book.count(), book.people(), book.lastExportMs(), book.attempts(), house.sets()]);
  places.value = placesInSets(flights, await Promise.all(sets.map(({ number }) => house.setName(number))));
  entries.value = page.entries;
  next.value = page.next;
  total.value = count;
  people.value = names;
  lastExportMs.value = exported;
});

export const readOn = (house: House): Promise<void | undefined> => withBook(house, async (book) => {
  const page = await book.list(filter.value, next.value);
  entries.value = [...entries.value ?? [], ...page.entries];
  next.value = page.next;
});
