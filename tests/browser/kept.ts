// Puts flights of sets into the page's logbook as the page itself would have kept them.
import type { Page } from 'playwright-core';
import { entryOf, type Entry } from '../../src/records/logbook/entry.js';
import type { Attempt } from '../../src/records/logbook/attempt.js';
import type { RunRecord } from '../../sim/files/index.js';

export interface KeptFlight extends Partial<Attempt> {
  readonly id: string;
  readonly set: string;
  readonly records: readonly RunRecord[];
}

/** The page must have opened its logbook once. */
export async function keepFlights(page: Page, flights: readonly KeptFlight[]): Promise<void> {
  const rows = flights.map(({ records, ...told }) => {
    const done = records.map((record, at) => ({ entry: `${told.id}-${at}`, outcome: record.outcome }));
    const attempt: Attempt = { seed: 1, person: '', name: '', startedMs: 0, runs: records.length, blocks: 1, leftMs: null, done, ...told };
    const entries = records.map((record, at) => {
      const entry = entryOf(record, { id: `${told.id}-${at}`, person: attempt.person, atMs: attempt.startedMs + at, drill: null, attempt: attempt.id, imported: false, abandoned: false });
      return { ...entry, back: -entry.atMs };
    });
    return { attempt, entries, texts: records.map((record) => JSON.stringify(record)) };
  });
  await put(page, rows);
}

/** Runs of drills by one person, in this order. */
export async function keepRuns(page: Page, person: string, records: readonly RunRecord[]): Promise<void> {
  const entries = records.map((record, at) => {
    const entry = entryOf(record, { id: `${person}-run-${at}`, person, atMs: 1 + at, drill: null, attempt: null, imported: false, abandoned: false });
    return { ...entry, back: -entry.atMs };
  });
  await put(page, [{ attempt: null, entries, texts: records.map((record) => JSON.stringify(record)) }]);
}

interface Row {
  readonly attempt: Attempt | null;
  readonly entries: readonly (Entry & { readonly back: number })[];
  readonly texts: readonly string[];
}

async function put(page: Page, rows: readonly Row[]): Promise<void> {
  await page.evaluate((all) => new Promise<void>((done, failed) => {
    const opening = indexedDB.open('evenhand');
    opening.addEventListener('error', () => failed(opening.error as Error));
    opening.addEventListener('success', () => {
      const work = opening.result.transaction(['attempts', 'entries', 'records', 'people'], 'readwrite');
      for (const { attempt, entries, texts } of all) {
        if (attempt !== null) work.objectStore('attempts').put(attempt);
        entries.forEach((entry, at) => {
          if (entry.person !== '') work.objectStore('people').put({ name: entry.person, addedMs: 1 });
          work.objectStore('entries').put(entry);
          work.objectStore('records').put(texts[at], entry.id);
        });
      }
      work.addEventListener('complete', () => { opening.result.close(); done(); });
      work.addEventListener('error', () => failed(work.error as Error));
    });
  }), rows);
}
