// A set on the page: begun by a press, flown run by run without figures, gone on with after a closed page, left off and counted.
import { expect, test } from 'vitest';
import type { Page } from 'playwright-core';
import { flownSet, forecastScore } from '../../sim/index.js';
import { shippedSet } from '../set/shipped.js';
import { flownRecords } from '../stats/made-flight.js';
import { axe, control } from './drilling.js';
import { appUrl, openApp } from './harness.js';
import { keepFlights } from './kept.js';

/** Into the next run and out of it again: paused, so void, which is counted as any outcome is. */
async function flyVoid(page: Page): Promise<void> {
  await control(page, 'extend').waitFor();
  await page.keyboard.press('Escape');
  await page.getByRole('button', { name: 'End the run' }).click();
  await page.getByRole('heading', { name: 'Was there a split?' }).waitFor();
}
const toSet = (page: Page): Promise<unknown> => page.goto(new URL('#/set/1', appUrl()).href);

test('begun, judged, gone on with, left off', async () => {
  const { page, close } = await openApp('#/set/1');
  await page.getByText('Laboratory set: a side driven back is an impossible picture.').waitFor();
  await page.getByText('Your first set?').waitFor();
  expect(await axe(page)).toEqual([]);
  await page.getByLabel(/^Name this set/).fill('before');
  await page.getByRole('button', { name: 'Start the set' }).click();
  await page.waitForURL(/#\/set\/1\/run/);
  await control(page, 'extend').waitFor();
  expect(await page.title()).toBe('Run 1 of 12 · Evenhand');
  await flyVoid(page);
  expect(await axe(page)).toEqual([]);
  // No figure and no outcome, but that a run did not count.
  await page.keyboard.press('Enter');
  await page.getByRole('heading', { name: 'Next' }).waitFor();
  expect(await page.locator('main').innerText()).not.toMatch(/\d[.,]\d|°|%|caught|late|missed/);
  await page.getByRole('button', { name: 'Run 2' }).click();
  await control(page, 'extend').waitFor();
  expect(await page.title()).toBe('Run 2 of 12 · Evenhand');
  await flyVoid(page);
  await page.getByRole('button', { name: 'No', exact: true }).click();
  await page.getByRole('link', { name: 'Stop here for now' }).click();
  await page.getByText('2 of 12 runs flown.').waitFor();
  await page.reload();
  await page.getByText('2 of 12 runs flown.').waitFor();
  expect(await axe(page)).toEqual([]);
  await page.getByRole('button', { name: 'Leave this set off' }).click();
  await page.getByRole('button', { name: 'Leave it off' }).click();
  await page.getByText('left off with 10 of 12 runs not flown').waitFor();
  await page.getByText('shown from 8 decided runs on: 8 more').waitFor();
  expect(await page.locator('main').innerText()).toContain('2 runs: 0 caught');
  expect(await axe(page)).toEqual([]);
  await close();
});

test('a page that goes away in mid-run: the run is done and void, and the set goes on behind it', async () => {
  const { page, close } = await openApp('#/set/1');
  await page.getByRole('button', { name: 'Start the set' }).click();
  await control(page, 'guard').click();
  const noted = () => page.evaluate(async () => {
    if (!(await indexedDB.databases()).some(({ name }) => name === 'evenhand')) return 0;
    return new Promise<number>((done) => {
      const opening = indexedDB.open('evenhand');
      opening.addEventListener('success', () => {
        const count = opening.result.transaction('journal').objectStore('journal').count();
        count.addEventListener('success', () => { opening.result.close(); done(count.result); });
      });
    });
  });
  await expect.poll(noted).toBe(1);
  await page.close({ runBeforeUnload: false });
  const again = await page.context().newPage();
  await toSet(again);
  await again.getByText('1 of 12 runs flown.').waitFor();
  await again.getByRole('button', { name: 'Run 2' }).waitFor();
  await close();
});

test('an address does not begin a run', async () => {
  const { page, close } = await openApp('#/set/1/run');
  await page.waitForURL(/#\/set\/1$/);
  await page.getByRole('button', { name: 'Start the set' }).waitFor();
  await close();
});

test('a forecast said beforehand is kept with the flight, and scored apart from it', async () => {
  const { page, close } = await openApp('#/set/1');
  await page.getByLabel('I catch, of 10 splits').fill('9');
  await page.getByText('Not kept yet').waitFor();
  await page.getByLabel('My median split from (°)').fill('0.1');
  await page.getByLabel('to (°)', { exact: true }).fill('0.2');
  await page.getByText('It is scored by itself').waitFor();
  expect(await axe(page)).toEqual([]);
  await page.getByRole('button', { name: 'Start the set' }).click();
  await page.waitForURL(/#\/set\/1\/run/);
  await flyVoid(page);
  await toSet(page);
  await page.getByText('1 of 12 runs flown.').waitFor();
  await page.getByRole('button', { name: 'Leave this set off' }).click();
  await page.getByRole('button', { name: 'Leave it off' }).click();
  await page.getByText('You expected 9 of 10 caught, and a median split between 0.10° and 0.20°. It is scored from 8 decided runs on.').waitFor();
  // Another flight, flown through.
  const short = shippedSet('short');
  const records = flownRecords(short, 5);
  await keepFlights(page, [{ id: 'later', set: 'short', records, startedMs: Date.now() + 1e6, forecast: { caughtOf10: 9, fromDeg: 0.1, toDeg: 0.2 } }]);
  await page.reload();
  const { person } = flownSet(short, records);
  const { brier, range } = forecastScore({ caughtOf10: 9, fromDeg: 0.1, toDeg: 0.2 }, person)!;
  await page.getByText(`You expected 9 of 10 caught; ${person.caught!.k} of ${person.caught!.n} were. Score ${brier.toFixed(2)}`).waitFor();
  await page.getByText(`Score ${range!.score.toFixed(2)}: 0.10 for the width of the range and ${range!.fineDeg.toFixed(2)} for missing it.`).waitFor();
  expect(await axe(page)).toEqual([]);
  await close();
});
