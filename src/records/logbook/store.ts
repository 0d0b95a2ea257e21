/** The store of the logbook in the browser: small entries to list, whole records to open, both in one transaction. */
import { openDB, type DBSchema, type IDBPDatabase } from 'idb';
import type { FlownDraft, FlownSetting } from '../../../sim/files/index.js';
import type { Attempt } from './attempt.js';
import type { About, Entry } from './entry.js';

const VERSION = 2;

/**
 * An entry as it is kept. `back` is the time negated, so that a plain read of an index comes newest first; an entry that
 * was taken off the list has none, and no index shows it.
 */
export type Kept = Entry & { readonly back?: number };

/** A run that is being flown, or was when its page went away. */
export interface Unfinished {
  readonly about: About;
  readonly model: number;
  readonly setting: FlownSetting;
  readonly draft: FlownDraft;
  /** When it was noted last, ms since 1970. */
  readonly notedMs: number;
}

interface Stores extends DBSchema {
  entries: {
    key: string;
    value: Kept;
    indexes: {
      byTime: [number, string]; byPerson: [string, number, string]; byOutcome: [string, number, string];
      byBoth: [string, string, number, string]; byDigest: string;
    };
  };
  /** The text of a record by the id of its entry. */
  records: { key: string; value: string };
  /** Runs that are being flown, by the id their entry will have. */
  journal: { key: string; value: Unfinished };
  attempts: { key: string; value: Attempt };
  people: { key: string; value: { readonly name: string; readonly addedMs: number } };
  meta: { key: string; value: number };
}
export type Store = IDBPDatabase<Stores>;

/** Why the logbook cannot keep a run, in a word the page has a sentence for. */
export type Trouble = 'denied' | 'full' | 'newer' | 'closed';

/** Thrown by everything here that cannot be done. */
export class LogbookTrouble extends Error {
  constructor(readonly trouble: Trouble, cause: unknown) {
    super(`the logbook is ${trouble}`, { cause });
  }
}

/** What a failure of the browser's store means. */
export function troubleOf(problem: unknown): LogbookTrouble {
  if (problem instanceof LogbookTrouble) return problem;
  const name = problem instanceof Error ? problem.name : '';
  if (name === 'QuotaExceededError') return new LogbookTrouble('full', problem);
  if (name === 'VersionError') return new LogbookTrouble('newer', problem);
  if (name === 'InvalidStateError' || name === 'AbortError') return new LogbookTrouble('closed', problem);
  return new LogbookTrouble('denied', problem);
}

/**
 * Opens the store; another page of Evenhand may have it open as well.
 * @throws LogbookTrouble denied (private windows, storage off), newer (a later Evenhand wrote it)
 */
export async function openStore(name = 'evenhand'): Promise<Store> {
  try {
    const store = await openDB<Stores>(name, VERSION, {
      upgrade(made, from) {
        if (from < 2) made.createObjectStore('attempts', { keyPath: 'id' });
        if (from >= 1) return;
        const entries = made.createObjectStore('entries', { keyPath: 'id' });
        // One index a filter, so that a page is one read however long the book. The id orders runs of one millisecond.
        entries.createIndex('byTime', ['back', 'id']);
        entries.createIndex('byPerson', ['person', 'back', 'id']);
        entries.createIndex('byOutcome', ['outcome', 'back', 'id']);
        entries.createIndex('byBoth', ['person', 'outcome', 'back', 'id']);
        entries.createIndex('byDigest', 'digest');
        made.createObjectStore('records');
        made.createObjectStore('journal');
        made.createObjectStore('people', { keyPath: 'name' });
        made.createObjectStore('meta');
      },
      // A page with a later version wants in: this one lets go, and says so at its next act.
      blocking: (_from, _to, event) => (event.target as IDBDatabase).close(),
    });
    return store;
  } catch (problem) {
    throw troubleOf(problem);
  }
}
