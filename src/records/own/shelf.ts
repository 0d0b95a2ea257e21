/** The shelf of a person's own files: kept, listed, renamed, doubled, taken off and put back. Each act is one transaction. */
import { troubleOf } from '../logbook/store.js';
import type { KeptFile, OwnEntry, OwnFile, OwnFlight, OwnStore } from './store.js';

/** Made by `ownShelfOn`. Times are ms since 1970. */
export interface OwnShelf {
  /** What is on the shelf, changed last first. */
  list(): Promise<OwnEntry[]>;
  /** null where it is not on the shelf. */
  file(id: string): Promise<OwnFile | null>;
  /** Keeps a file; one of the same id gives way to it. */
  keep(file: OwnFile): Promise<void>;
  /** A new name; when it was changed stays. */
  rename(id: string, name: string): Promise<void>;
  /** A copy under another id, its name saying so. @returns null where the file is not there */
  duplicate(id: string, newId: string, nowMs: number): Promise<OwnFile | null>;
  /** Takes a file off; `putBack` undoes it until it is swept away. */
  remove(id: string, nowMs: number): Promise<void>;
  putBack(id: string): Promise<void>;
  /** Throws away for good what was taken off, and what was flown, before a moment. */
  sweepAway(removedBeforeMs: number, flownBeforeMs: number): Promise<void>;
  keepFlight(flight: OwnFlight): Promise<void>;
  flight(id: string): Promise<OwnFlight | null>;
  close(): void;
}

/** Longest name of a file, characters. */
export const LONGEST_NAME = 80;

/** A name as it is kept: one line, no air about it, never empty, no longer than it may be. */
export const nameIn = (typed: string): string => typed.replace(/[\p{C}\s]+/gu, ' ').trim().slice(0, LONGEST_NAME).trim() || 'untitled';

/** The name of a copy: one that none of the others has. */
export function copyName(name: string, others: ReadonlySet<string>): string {
  const stem = name.replace(/ \((?:copy|copy \d{1,4})\)$/, '');
  for (let count = 1; ; count += 1) {
    const end = count === 1 ? ' (copy)' : ` (copy ${count})`;
    const copy = `${stem.slice(0, LONGEST_NAME - end.length)}${end}`;
    if (!others.has(copy)) return copy;
  }
}

const plain = ({ removedMs: _removed, ...file }: KeptFile): OwnFile => file;
const entry = ({ id, kind, name, changedMs }: KeptFile): OwnEntry => ({ id, kind, name, changedMs });

/** The shelf on an open store. Every promise rejects with LogbookTrouble and nothing else. */
export function ownShelfOn(store: OwnStore): OwnShelf {
  const told = async <T>(done: () => Promise<T>): Promise<T> => {
    try {
      return await done();
    } catch (problem) {
      throw troubleOf(problem);
    }
  };
  const change = (id: string, to: (file: KeptFile) => KeptFile): Promise<void> => told(async () => {
    const work = store.transaction('files', 'readwrite');
    const file = await work.store.get(id);
    if (file !== undefined) await work.store.put(to(file));
    await work.done;
  });
  return {
    list: () => told(async () => (await store.getAll('files')).filter(({ removedMs }) => removedMs === null)
      .sort((a, b) => b.changedMs - a.changedMs || (a.id < b.id ? -1 : 1)).map(entry)),
    file: (id) => told(async () => {
      const file = await store.get('files', id);
      return file === undefined || file.removedMs !== null ? null : plain(file);
    }),
    keep: (file) => told(async () => { await store.put('files', { ...file, name: nameIn(file.name), removedMs: null }); }),
    rename: (id, name) => change(id, (file) => ({ ...file, name: nameIn(name) })),
    duplicate: (id, newId, changedMs) => told(async () => {
      const work = store.transaction('files', 'readwrite');
      const all = await work.store.getAll();
      const file = all.find((one) => one.id === id && one.removedMs === null);
      if (file === undefined) return null;
      const copy: KeptFile = { ...file, id: newId, changedMs, name: copyName(file.name, new Set(all.map(({ name }) => name))) };
      await work.store.put(copy);
      await work.done;
      return plain(copy);
    }),
    remove: (id, nowMs) => change(id, (file) => ({ ...file, removedMs: nowMs })),
    putBack: (id) => change(id, (file) => ({ ...file, removedMs: null })),
    sweepAway: (removedBeforeMs, flownBeforeMs) => told(async () => {
      const work = store.transaction(['files', 'flights'], 'readwrite');
      const [files, flights] = [work.objectStore('files'), work.objectStore('flights')];
      for (const { id, removedMs } of await files.getAll()) if (removedMs !== null && removedMs < removedBeforeMs) await files.delete(id);
      for (const { id, atMs } of await flights.getAll()) if (atMs < flownBeforeMs) await flights.delete(id);
      await work.done;
    }),
    keepFlight: (flight) => told(async () => { await store.put('flights', flight); }),
    flight: (id) => told(async () => await store.get('flights', id) ?? null),
    close: () => store.close(),
  };
}
