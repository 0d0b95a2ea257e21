// The first page of a logbook of ten thousand runs against a bare read of fifty through an index, in a real browser.
import { chromium } from 'playwright-core';
import { createServer } from 'vite';
import { join } from 'node:path';
import { top } from '../../src/tools/fresh.mjs';
import { findChromium, flags } from '../browser/chromium.mjs';

export async function logbook({ spoil }) {
  const executablePath = await findChromium();
  const server = await createServer({ configFile: join(top, 'vite.config.ts'), root: join(top, 'src'), server: { port: 0, hmr: false }, logLevel: 'error' });
  await server.listen();
  const browser = await chromium.launch({ executablePath, args: flags });
  try {
    const page = await browser.newPage();
    await page.goto(`${server.resolvedUrls.local[0]}#/nowhere`);
    const { list, bare } = await page.evaluate(measure, spoil ? 1 : 0);
    return [{ id: 'logbook', value: list / bare, notes: [`medians, ms: first page ${list.toFixed(2)}, bare read ${bare.toFixed(2)}`] }];
  } finally {
    await browser.close();
    await server.close();
  }
}

/** Runs in the page. */
async function measure(spoil) {
  const { bookOn, openStore } = await import('/records/logbook/index.ts');
  const store = await openStore('perf');
  const work = store.transaction(['entries', 'records'], 'readwrite');
  const text = 'x'.repeat(20_000); // about a record
  for (let at = 0; at < 10_000; at += 1) {
    const id = at.toString(16).padStart(32, '0');
    void work.objectStore('entries').put({
      id, digest: id, person: at % 3 === 0 ? 'bo' : 'ada', atMs: at, back: -at, attempt: null, drill: 1, task: 'Flaps from 4 to 16', outcome: 'caught', source: 'flown', model: 1,
      growthAtReleaseDeg: 1.1, afterOnsetS: 5.2, rollAuthorityPct: 8, imported: false, abandoned: false, removedMs: null,
    });
    void work.objectStore('records').put(text, id);
  }
  await work.done;
  const book = bookOn(store);
  const median = (times) => times.sort((a, b) => a - b)[Math.floor(times.length / 2)];
  const time = async (what, delay = 0) => {
    const from = performance.now();
    await what();
    for (const until = performance.now() + delay * (performance.now() - from); performance.now() < until;);
    return performance.now() - from;
  };
  const lists = [];
  const bares = [];
  // Turn about, so that both meet the same machine.
  for (let round = 0; round < 60; round += 1) {
    bares.push(await time(() => store.getAllFromIndex('entries', 'byTime', IDBKeyRange.lowerBound([-Infinity, '']), 50)));
    lists.push(await time(() => book.list({ person: null, outcome: null, of: null }, null), spoil));
  }
  return { list: median(lists), bare: median(bares) };
}
