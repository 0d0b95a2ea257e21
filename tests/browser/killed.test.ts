// The page is killed at moments that nobody chose: nothing that was finished is lost, and the logbook is whole. Eight of them
// here, one at each kind of moment; `npm run fuzz -- kills` takes two hundred.
import { gzipSync } from 'node:zlib';
import { expect, test } from 'vitest';
import type { BrowserContext, Page } from 'playwright-core';
import { headLine, runLine } from '../../src/records/logbook/lines.js';
import { flown } from '../pages/flown.js';
import { control } from './drilling.js';
import { appUrl, cdp, openApp } from './harness.js';
import { seed } from '../seed.js';

const KILLS = Number(process.env.EVENHAND_KILLS ?? 8);
const IMPORTED = 12;

/** A small generator for this test's moments: from the seed of the test run, so that a failure comes again. */
function moments(from: number): () => number {
  let state = from >>> 0;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 4294967296;
  };
}

interface Kept {
  /** Ids of the entries, and of the records. */
  readonly entries: readonly string[];
  readonly records: readonly string[];
  /** Ids of the entries that nobody has taken off: the others go for good ten minutes later. */
  readonly standing: readonly string[];
  /** Ids of the runs that came to their end. */
  readonly ended: readonly string[];
  /** Runs done in each flight of a set, and whether each of them stands in the book. */
  readonly done: readonly { readonly runs: number; readonly there: boolean }[];
}

/** What the browser's own store holds. */
const kept = (page: Page): Promise<Kept> => page.evaluate(async () => {
  if (!(await indexedDB.databases()).some(({ name }) => name === 'evenhand')) return { entries: [], records: [], standing: [], ended: [], done: [] };
  return new Promise<Kept>((done) => {
    const opening = indexedDB.open('evenhand');
    opening.addEventListener('success', () => {
      const work = opening.result.transaction(['entries', 'records', 'attempts']);
      const entries = work.objectStore('entries').getAllKeys();
      const whole = work.objectStore('entries').getAll();
      const records = work.objectStore('records').getAllKeys();
      const attempts = work.objectStore('attempts').getAll();
      work.addEventListener('complete', () => {
        opening.result.close();
        const all = whole.result as { id: string; removedMs: number | null; abandoned: boolean }[];
        const flights = attempts.result as { done: { entry: string }[] }[];
        done({
          entries: entries.result as string[], records: records.result as string[],
          standing: all.filter(({ removedMs }) => removedMs === null).map(({ id }) => id),
          ended: all.filter(({ abandoned }) => !abandoned).map(({ id }) => id),
          done: flights.map(({ done: runs }) => ({ runs: runs.length, there: runs.every(({ entry }) => (entries.result as string[]).includes(entry)) })),
        });
      });
    });
  });
});

const to = (page: Page, fragment: string): Promise<unknown> => page.goto(new URL(fragment, appUrl()).href);
const button = (page: Page, name: string | RegExp) => page.getByRole('button', { name });
/** So many frames of the page and no more: a moment that is no multiple of anything in it. */
const frames = (page: Page, count: number): Promise<void> => page.evaluate((wished) => new Promise<void>((done) => {
  const one = (left: number): void => { if (left <= 0) done(); else requestAnimationFrame(() => one(left - 1)); };
  one(wished);
}), count);
async function endRun(page: Page): Promise<void> {
  await control(page, 'guard').click();
  await page.keyboard.press('Escape');
  await button(page, 'End the run').click();
}

const file = {
  name: 'book.jsonl.gz', mimeType: 'application/gzip',
  buffer: gzipSync(headLine({ evenhandLogbook: 1, app: 'test', runs: IMPORTED }) + Array.from({ length: IMPORTED }, (_, at) =>
    runLine({ id: at.toString(16).padStart(32, 'e'), person: 'ada', atMs: 1000 + at, attempt: null, drill: null, abandoned: false }, flown({ start: { flapDeg: 15 }, limitS: 30, seed: at + 1 }, 'prompt').record)).join('')),
};

/** Brings a page to a moment. What it gives back looks, with the page dead, at what must be there. */
type Moment = (page: Page, next: () => number, context: BrowserContext) => Promise<(after: Kept, look: Page) => Promise<void> | void>;
const nothingMore = (): void => undefined;

const MOMENTS: Readonly<Record<string, Moment>> = {
  async 'in a drill'(page, next) {
    await to(page, '#/drill/1?seed=3');
    await button(page, 'Start').click();
    await control(page, 'guard').click();
    await frames(page, Math.floor(next() * 40));
    return nothingMore;
  },
  async 'behind a drill'(page) {
    const before = (await kept(page)).ended;
    const isNew = (id: string): boolean => !before.includes(id);
    await to(page, '#/drill/1?seed=3');
    await button(page, 'Start').click();
    await endRun(page);
    // Counts as finished once the page asks for the trainee's own judgement.
    await button(page, 'Show the debrief').waitFor();
    await expect.poll(async () => (await kept(page)).ended.filter(isNew)).toHaveLength(1);
    return (after) => { expect(after.ended.filter(isNew)).toHaveLength(1); };
  },
  async 'between two runs of a set'(page, next) {
    await to(page, '#/set/1');
    const begin = button(page, /^(Start the set|First run|Run \d+)$/);
    const again = button(page, 'Fly the set again');
    await begin.or(again).first().waitFor();
    if (await again.isVisible()) await again.click();
    const before = (await kept(page)).done.reduce((sum, { runs }) => sum + runs, 0);
    await begin.first().click();
    await endRun(page);
    await page.getByRole('heading', { name: 'Was there a split?' }).waitFor();
    if (next() < 0.5) await button(page, /^No$/).click();
    await frames(page, Math.floor(next() * 8));
    return (after) => { expect(after.done.reduce((sum, { runs }) => sum + runs, 0)).toBe(before + 1); };
  },
  async 'while practice writes'(page, next) {
    await to(page, '#/practice');
    await button(page, /^(First|Next) run$/).click();
    await endRun(page);
    await frames(page, Math.floor(next() * 6));
    return async (_, look) => {
      // The practice comes back with its level, or begins: it is never a page that cannot be flown from.
      await to(look, '#/practice');
      await button(look, /^(First|Next) run$/).waitFor();
      await to(look, '#/help');
    };
  },
  async 'in an import'(page, next, context) {
    await to(page, '#/logbook');
    await page.locator('input[type=file]').setInputFiles(file);
    await frames(page, Math.floor(next() * 30));
    return async (after) => {
      const there = after.entries.filter((id) => id.startsWith('eeee')).length;
      const again = await context.newPage();
      await to(again, '#/logbook');
      await again.locator('input[type=file]').setInputFiles(file);
      // What was taken before is known, the rest is taken now.
      const [taken, known] = [IMPORTED - there, there].map((runs) => (runs === 1 ? 'one run' : `${runs} runs`));
      if (there < IMPORTED) await again.getByText(`Imported: ${taken}`).waitFor();
      if (there > 0) await again.getByText(`here already: ${known}`).waitFor();
      await again.close();
      expect((await kept(context.pages()[0] as Page)).entries.filter((id) => id.startsWith('eeee'))).toHaveLength(IMPORTED);
    };
  },
  async 'while a run is taken off and put back'(page, next) {
    await to(page, '#/logbook');
    await page.getByRole('heading', { name: 'As a file' }).waitFor();
    const off = button(page, /^Take off/);
    if (await off.count() > 0) {
      await off.first().click();
      await button(page, 'Put back').waitFor();
      if (next() < 0.7) await button(page, 'Put back').click();
    }
    await frames(page, Math.floor(next() * 4));
    return nothingMore;
  },
  async 'while a bench is written on'(page, next) {
    await to(page, '#/bench');
    await button(page, /New scenario|All files/).first().waitFor();
    if (await button(page, 'All files').isVisible()) await button(page, 'All files').click();
    await button(page, 'New scenario').click();
    await page.getByLabel('Mass').fill('50');
    // What rested for a moment is kept; what is still being typed may be lost, but never the whole.
    const stored = () => page.evaluate(() => localStorage.getItem('evenhand.bench') ?? '');
    await expect.poll(stored).toContain('\\"massT\\": 50');
    await page.getByLabel('Mass').pressSequentially('.5');
    await frames(page, Math.floor(next() * 20));
    return async (_, look) => {
      await to(look, '#/bench');
      await look.getByLabel('Mass').first().waitFor();
      expect(await look.getByLabel('Mass').first().inputValue()).toMatch(/^50(\.|\.5)?$/);
      await to(look, '#/help');
    };
  },
  async 'with a desk beside it'(page, next, context) {
    await to(page, '#/drill/1?seed=3');
    const desk = await context.newPage();
    await to(desk, '#/desk');
    await page.bringToFront();
    await button(page, 'Start').click();
    await control(page, 'guard').click();
    await button(desk, 'Follow Drill 1').click();
    await desk.getByRole('heading', { name: 'Pointers and sides' }).waitFor();
    await frames(page, Math.floor(next() * 30));
    return async () => {
      // The desk outlives the run, and says that it is gone.
      await desk.getByText(/The trainee’s window has gone|The run has left/).first().waitFor();
      await desk.close();
    };
  },
};

test(`killed at ${KILLS} random moments, nothing finished is lost`, async () => {
  const next = moments(seed);
  const app = await openApp('#/help', { expected: [/crashed/, /ERR_/] });
  const context = app.page.context();
  const kinds = Object.keys(MOMENTS);
  let finished: readonly string[] = [];
  for (let kill = 0; kill < KILLS; kill += 1) {
    const kind = kinds[kill % kinds.length] as string;
    const page = await context.newPage();
    await to(page, '#/help');
    const look = await (MOMENTS[kind] as Moment)(page, next, context);
    const session = await cdp(page);
    void session.send('Page.crash').catch(() => undefined);
    await page.waitForEvent('crash');
    await page.close();
    const after = await kept(app.page);
    expect(after.records, kind).toEqual(after.entries);
    expect(after.done.every(({ there }) => there), kind).toBe(true);
    expect(after.entries, kind).toEqual(expect.arrayContaining([...finished]));
    await look(after, app.page);
    finished = (await kept(app.page)).standing;
  }
  // The runs that were killed are taken in as abandoned, by the next page that opens the book.
  await to(app.page, '#/logbook');
  await app.page.getByRole('heading', { name: 'As a file' }).waitFor();
  const { entries, records } = await kept(app.page);
  expect(records).toEqual(entries);
  expect(entries).toEqual(expect.arrayContaining([...finished]));
  await app.close();
}, 3_000_000);
