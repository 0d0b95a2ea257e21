// The page is killed at moments that nobody chose: nothing that was finished is lost, and the logbook is whole. Ten of them
// here; EVENHAND_KILLS=50 takes as many.
import { expect, test } from 'vitest';
import type { Page } from 'playwright-core';
import { control } from './drilling.js';
import { appUrl, cdp, openApp } from './harness.js';
import { seed } from '../seed.js';

const KILLS = Number(process.env.EVENHAND_KILLS ?? 10);

/** A small generator for this test's moments: from the seed of the test run, so that a failure comes again. */
function moments(from: number): () => number {
  let state = from >>> 0;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 4294967296;
  };
}

/** Entries of the book and whether each has its record, by the browser's own store. */
const kept = (page: Page): Promise<{ ids: string[]; whole: boolean }> => page.evaluate(async () => {
  if (!(await indexedDB.databases()).some(({ name }) => name === 'evenhand')) return { ids: [], whole: true };
  return new Promise<{ ids: string[]; whole: boolean }>((done) => {
    const opening = indexedDB.open('evenhand');
    opening.addEventListener('success', () => {
      const work = opening.result.transaction(['entries', 'records']);
      const entries = work.objectStore('entries').getAllKeys();
      const records = work.objectStore('records').getAllKeys();
      work.addEventListener('complete', () => {
        opening.result.close();
        done({ ids: entries.result as string[], whole: JSON.stringify(entries.result) === JSON.stringify(records.result) });
      });
    });
  });
});

test(`killed at ${KILLS} random moments, nothing finished is lost`, async () => {
  const next = moments(seed);
  const app = await openApp('#/', { expected: [/crashed/, /ERR_/] });
  const context = app.page.context();
  let finished = 0;
  for (let kill = 0; kill < KILLS; kill += 1) {
    const page = await context.newPage();
    await page.goto(new URL('#/drill/1?seed=3', appUrl()).href);
    await page.getByRole('button', { name: 'Start' }).click();
    await control(page, 'guard').click();
    // Half of them end their run first, and count as finished once the page asks for the trainee's own judgement.
    if (next() < 0.5) {
      await page.keyboard.press('Escape');
      await page.getByRole('button', { name: 'End the run' }).click();
      await page.getByRole('button', { name: 'Show the debrief' }).waitFor();
      const before = finished;
      await expect.poll(async () => (await kept(app.page)).ids.length).toBeGreaterThan(before);
      finished = (await kept(app.page)).ids.length;
    } else {
      // A moment that is no multiple of anything in the page: so many frames and no more.
      await page.evaluate((frames) => new Promise<void>((done) => {
        const count = (left: number): void => { if (left <= 0) done(); else requestAnimationFrame(() => count(left - 1)); };
        count(frames);
      }), Math.floor(next() * 40));
    }
    const session = await cdp(page);
    void session.send('Page.crash').catch(() => undefined);
    await page.waitForEvent('crash');
    await page.close();
    const { ids, whole } = await kept(app.page);
    expect(whole).toBe(true);
    expect(ids.length).toBeGreaterThanOrEqual(finished);
  }
  // The runs that were killed are taken in as abandoned, by the next page that opens the book.
  await app.page.goto(new URL('#/logbook', appUrl()).href);
  await app.page.getByRole('heading', { name: 'As a file' }).waitFor();
  const { ids, whole } = await kept(app.page);
  expect(whole).toBe(true);
  expect(ids.length).toBeGreaterThanOrEqual(finished);
  expect(await app.page.locator('.log tbody tr').count()).toBe(Math.min(50, ids.length));
  await app.close();
}, 600_000);
