/** Where a person's own files live in the browser: texts as they were written, and what was handed on to be flown. */
import { openDB, type DBSchema, type IDBPDatabase } from 'idb';
import { troubleOf } from '../logbook/store.js';

const OWN_KINDS = ['scenario', 'set', 'trainee', 'course', 'airframe'] as const;
type OwnKind = (typeof OWN_KINDS)[number];

/** A file of one's own, without its text. */
export interface OwnEntry {
  /** Opaque: it stands in addresses. */
  readonly id: string;
  readonly kind: OwnKind;
  /** What the person calls it. */
  readonly name: string;
  /** When it was changed last, ms since 1970. */
  readonly changedMs: number;
}

export interface OwnFile extends OwnEntry {
  readonly text: string;
}

/** A file on the shelf, or taken off it and not yet thrown away. */
export interface KeptFile extends OwnFile {
  readonly removedMs: number | null;
}

/** What is flown: a sealed scenario as text, with its dice where they are chosen. */
export interface OwnFlight {
  /** Opaque: it stands in the address of the run. */
  readonly id: string;
  readonly text: string;
  /** null: new dice for each run. */
  readonly seed: number | null;
  /** Who handed it on: the bench, to which one goes back, or a link. */
  readonly from: 'bench' | 'link';
  readonly atMs: number;
}

interface Stores extends DBSchema {
  files: { key: string; value: KeptFile };
  flights: { key: string; value: OwnFlight };
}
export type OwnStore = IDBPDatabase<Stores>;

const VERSION = 1;

/** Opens the store, apart from the logbook's. @throws LogbookTrouble denied, newer */
export async function openOwnStore(name = 'evenhand own'): Promise<OwnStore> {
  try {
    return await openDB<Stores>(name, VERSION, {
      upgrade(made) {
        made.createObjectStore('files', { keyPath: 'id' });
        made.createObjectStore('flights', { keyPath: 'id' });
      },
      blocking: (_from, _to, event) => (event.target as IDBDatabase).close(),
    });
  } catch (problem) {
    throw troubleOf(problem);
  }
}
