/** The runs of one person, wherever they are kept: the logbook of this machine, or files that were opened for a look. */
import type { RunRecord } from '../../sim/files/index.js';
import { EVERY_RUN } from './logbook/filter.js';
import type { Attempt, Book, Cursor, Entry } from './logbook/index.js';

export interface RunsOf {
  /** Oldest first. */
  readonly entries: readonly Entry[];
  /** Flights of sets. */
  readonly attempts: readonly Attempt[];
  /** The record behind an entry; null where it is not there any more. */
  record(id: string): Promise<RunRecord | null>;
}

const PAGE = 500;

/** @throws LogbookTrouble */
export async function runsIn(book: Book, person: string): Promise<RunsOf> {
  const entries: Entry[] = [];
  let after: Cursor | null = null;
  do {
    const page = await book.list({ ...EVERY_RUN, person }, after, PAGE);
    entries.push(...page.entries);
    after = page.next;
  } while (after !== null);
  return { entries: entries.reverse(), attempts: (await book.attempts()).filter((one) => one.person === person), record: (id) => book.record(id) };
}
