// The logbook in a real browser: what was flown is there, whatever becomes of the page; and out and in again as one file.
import { gzipSync } from 'node:zlib';
import { describe, expect, test } from 'vitest';
import type { Download, Page } from 'playwright-core';
import { axe, control, makeReady, startRun } from './drilling.js';
import { appUrl, openApp } from './harness.js';

const rows = (page: Page) => page.locator('.log tbody tr');
const openBook = async (page: Page): Promise<void> => {
  await page.goto(new URL('#/logbook', appUrl()).href);
  await page.getByRole('heading', { name: 'As a file' }).waitFor();
};

async function bytesOf(download: Download): Promise<Buffer> {
  const parts: Buffer[] = [];
  for await (const part of await download.createReadStream()) parts.push(part as Buffer);
  return Buffer.concat(parts);
}

/** Runs that are noted, by the browser's own store; it is not made by asking. */
const noted = (page: Page): Promise<number> => page.evaluate(async () => {
  if (!(await indexedDB.databases()).some(({ name }) => name === 'evenhand')) return 0;
  return new Promise<number>((done, failed) => {
    const opening = indexedDB.open('evenhand');
    opening.addEventListener('error', () => failed(opening.error as Error));
    opening.addEventListener('success', () => {
      const count = opening.result.transaction('journal').objectStore('journal').count();
      count.addEventListener('success', () => { opening.result.close(); done(count.result); });
    });
  });
});

/** Into a run with the drive armed, and out of it again after a moment of holding. */
async function flyABit(page: Page): Promise<void> {
  await startRun(page);
  await makeReady(page);
  await page.keyboard.down('KeyE');
  await page.locator('[data-control="extend"][aria-pressed="true"]').waitFor();
  await page.keyboard.up('KeyE');
}
async function endRun(page: Page): Promise<void> {
  await page.keyboard.press('Escape');
  await page.getByRole('button', { name: 'End the run' }).click();
  await page.getByRole('button', { name: 'Show the debrief' }).waitFor();
}

test('a run is there before anything is said of it, over a reload, and with what was said', async () => {
  const { page, close } = await openApp('#/drill/1?seed=3');
  await flyABit(page);
  await endRun(page);
  // Not judged, not debriefed: the page is simply left.
  await openBook(page);
  await page.reload();
  await expect.poll(() => rows(page).count()).toBe(1);
  expect(await rows(page).first().innerText()).toMatch(/Drill 1\. Flaps from 4 to 16[^]*void/);
  expect(await axe(page)).toEqual([]);
  await page.getByRole('button', { name: /^Drill 1/ }).click();
  await page.waitForURL(/#\/debrief/);
  await page.getByRole('button', { name: 'Save record' }).waitFor();
  await close();
});

test('taken off, put back; by whom it was flown', async () => {
  const { page, close } = await openApp('#/logbook');
  await page.getByLabel('or by someone new').fill('Ada');
  await page.getByRole('button', { name: 'Add' }).click();
  await expect.poll(() => page.getByRole('combobox', { name: 'The next runs are flown by' }).inputValue()).toBe('Ada');
  await page.goto(new URL('#/drill/1?seed=3', appUrl()).href);
  await flyABit(page);
  await endRun(page);
  await openBook(page);
  await expect.poll(() => rows(page).count()).toBe(1);
  expect(await rows(page).first().innerText()).toContain('Ada');
  await page.getByRole('combobox', { name: /^Flown by/ }).selectOption('');
  await page.getByText('No run fits.').waitFor();
  await page.getByRole('button', { name: 'Show all runs' }).click();
  const of = page.getByRole('combobox', { name: /^Run/ });
  await of.selectOption({ label: 'Drill 2. Flaps from 4 to 9, then 16' });
  await page.getByText('No run fits.').waitFor();
  await of.selectOption('1');
  await expect.poll(() => rows(page).count()).toBe(1);
  await page.getByRole('button', { name: /^Take off/ }).click();
  await page.getByText('No run yet.').waitFor();
  await page.getByRole('button', { name: 'Put back' }).click();
  await expect.poll(() => rows(page).count()).toBe(1);
  await close();
});

test('exported from one browser, imported into another; what is there already is passed over', async () => {
  const one = await openApp('#/drill/1?seed=3');
  await flyABit(one.page);
  await endRun(one.page);
  await openBook(one.page);
  const [download] = await Promise.all([one.page.waitForEvent('download'), one.page.getByRole('button', { name: 'Export' }).click()]);
  const file = { name: download.suggestedFilename(), mimeType: 'application/gzip', buffer: await bytesOf(download) };
  expect(file.name).toMatch(/^evenhand-logbook-\d{4}-\d\d-\d\d\.jsonl\.gz$/);
  await one.page.getByText(/last exported on/).waitFor();
  const other = await openApp('#/logbook');
  await other.page.getByText('No run yet.').waitFor();
  await other.page.locator('input[type=file]').setInputFiles(file);
  await other.page.getByText('Imported: one run.').waitFor();
  expect(await rows(other.page).first().innerText()).toContain('from a file');
  await other.page.locator('input[type=file]').setInputFiles(file);
  await other.page.getByText('here already: one run').waitFor();
  await other.page.locator('input[type=file]').setInputFiles({ ...file, buffer: Buffer.from('hello') });
  await other.page.getByText('Nothing was taken from it.').waitFor();
  // Damaged: what came before the damage is kept. Huge: a line that would fill the memory ends the work.
  await other.page.locator('input[type=file]').setInputFiles({ ...file, buffer: file.buffer.subarray(0, file.buffer.length - 40) });
  await other.page.getByText('the file is damaged from here on').waitFor();
  const bomb = gzipSync(`{"evenhandLogbook":1,"app":"x","runs":1}\n${'x'.repeat(40_000_000)}`);
  await other.page.locator('input[type=file]').setInputFiles({ ...file, buffer: bomb });
  await other.page.getByText(/a line is longer than/).waitFor();
  expect(await rows(other.page).count()).toBe(1);
  await one.close();
  await other.close();
});

describe('a page that goes away in mid-run', () => {
  test('leaves the run to the next page, as abandoned; one that still flies leaves nothing', async () => {
    const { page, close } = await openApp('#/drill/1?seed=3');
    await flyABit(page);
    await expect.poll(() => noted(page)).toBe(1);
    const second = await page.context().newPage();
    await openBook(second);
    await second.getByText('No run yet.').waitFor();
    expect(await control(page, 'extend').isVisible()).toBe(true);
    await second.close();
    await page.close({ runBeforeUnload: false });
    const third = await page.context().newPage();
    await openBook(third);
    await expect.poll(() => rows(third).count()).toBe(1);
    expect(await rows(third).first().innerText()).toMatch(/page left in mid-run[^]*void/);
    await close();
  });
});

test('a browser that keeps nothing says so, and the run goes on to its debrief', async () => {
  const { page, close } = await openApp('#/drill/1?seed=3', {
    before: () => { indexedDB.open = () => { throw new DOMException('no', 'SecurityError'); }; },
  });
  await flyABit(page);
  await endRun(page);
  await page.getByText('The last run is not in the logbook.').waitFor();
  await page.goto(new URL('#/logbook', appUrl()).href);
  await page.getByText('This browser keeps nothing for this page').first().waitFor();
  await close();
});

test('two pages at once: each keeps its run, and neither takes the other for left', async () => {
  const { page, close } = await openApp('#/drill/1?seed=3');
  const other = await page.context().newPage();
  await other.goto(new URL('#/drill/3?seed=3', appUrl()).href);
  await startRun(other, 3);
  await other.keyboard.press('Escape');
  await other.getByRole('dialog').waitFor();
  await page.bringToFront();
  await flyABit(page);
  await endRun(page);
  await other.bringToFront();
  await other.getByRole('button', { name: 'End the run' }).click();
  await other.getByRole('button', { name: 'Show the debrief' }).waitFor();
  await openBook(page);
  await expect.poll(() => rows(page).count()).toBe(2);
  expect(await page.locator('.log').innerText()).not.toContain('page left');
  await close();
});

test('a machine without room says so, and the record can still be saved as a file', async () => {
  const { page, close } = await openApp('#/drill/1?seed=3', {
    before: () => {
      const put = IDBObjectStore.prototype.put;
      IDBObjectStore.prototype.put = function full(this: IDBObjectStore, ...given: Parameters<typeof put>) {
        if (this.name === 'records') throw new DOMException('no room', 'QuotaExceededError');
        return put.apply(this, given);
      };
    },
  });
  await flyABit(page);
  await endRun(page);
  await page.getByText('There is no room left on this machine for more runs.').waitFor();
  await page.getByText('Not sure').click();
  await page.getByRole('button', { name: 'Show the debrief' }).click();
  await page.getByRole('button', { name: 'Save record' }).waitFor();
  await close();
});
