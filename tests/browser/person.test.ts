// One person over time on the page: nobody, too few runs, flights side by side; what the pictures show stands in the tables.
import { expect, test } from 'vitest';
import type { Page } from 'playwright-core';
import { flownSet, historyOf, marginOf } from '../../sim/index.js';
import { shippedSet } from '../set/shipped.js';
import { flownRecords, madeFlight } from '../stats/made-flight.js';
import { axe } from './drilling.js';
import { openApp } from './harness.js';
import { keepFlights } from './kept.js';

const short = shippedSet('short');
const DAY = 86_400_000;
const FROM = Date.UTC(2026, 8, 1, 9);

/** The page again, with what was kept meanwhile. */
async function openPerson(page: Page): Promise<void> {
  await page.reload();
  await page.getByRole('heading', { name: 'What to practise next' }).waitFor();
}

test('nobody, and a flight that is not over: nothing is told, and the first set is offered', async () => {
  const { page, close } = await openApp('#/person');
  await page.getByText('No set is flown to its end without a name').waitFor();
  await page.getByRole('link', { name: 'Fly set 1' }).waitFor();
  await keepFlights(page, [{ id: 'u', set: 'short', records: flownRecords(short, 3).slice(0, 9), runs: 12 }]);
  await openPerson(page);
  await page.getByText('One flight is not over').waitFor();
  expect(await page.locator('.person-group').count()).toBe(0);
  expect(await axe(page)).toEqual([]);
  await close();
});

test('flights side by side, apart by gauge and by person; the table tells what is drawn', async () => {
  const { page, close } = await openApp('#/person');
  await page.getByRole('heading', { name: 'What to practise next' }).waitFor();
  const [one, two] = [flownRecords(short, 3), flownRecords(short, 5)];
  const other = one.map((record) => ({ ...record, gauge: { ...record.gauge, pxPerDeg: 5.2 } }));
  const Ada = { set: 'short', person: 'Ada' };
  await keepFlights(page, [
    { id: 'a', ...Ada, records: one, name: 'before', startedMs: FROM }, { id: 'b', ...Ada, records: two, name: 'after', startedMs: FROM + 9 * DAY },
    { id: 'c', ...Ada, records: other, startedMs: FROM - 20 * DAY }, { id: 'd', ...Ada, records: two.slice(0, 4), runs: 12, leftMs: FROM, startedMs: FROM + 10 * DAY },
    { id: 'e', set: 'short', records: two, startedMs: FROM },
  ]);
  await openPerson(page);
  await page.getByLabel('Flown by').selectOption('Ada');
  await page.getByRole('heading', { name: 'Progress of Ada' }).waitFor();
  const groups = page.locator('.person-group');
  await expect.poll(() => groups.count()).toBe(2);
  expect(await groups.nth(1).locator('p.small').first().innerText()).toContain('here a gauge of 5.20 px a degree; there a gauge of 4.61 px a degree');
  const first = groups.first();
  await first.getByText('The flights as a table').click();
  const rows = await first.locator('.flights tbody tr').allInnerTexts();
  expect(rows.length).toBe(3);
  for (const [at, records] of [one, two].entries()) {
    const { person: { caught, falseReleases, median } } = flownSet(short, records);
    for (const [strip, words] of [`${caught!.k} of ${caught!.n}`, falseReleases!.perMin.toFixed(2), median!.deg!.toFixed(2)].entries()) {
      expect(rows[at]).toContain(words);
      expect(await first.locator('.flight-strip').nth(strip).locator('svg').getAttribute('aria-label')).toContain(words);
    }
  }
  expect(rows[2]).toContain('4 of 12, left off');
  expect(await first.locator('.pair').innerText()).toMatch(/From “before” to “after”:/);
  expect(await axe(page)).toEqual([]);
  await close();
});

const trueLoaded = shippedSet('true-drive-loaded');

test('the margin: not from calm flights, not from few runs', async () => {
  const { page, close } = await openApp('#/person');
  await page.getByText('which is not flown yet').waitFor();
  await keepFlights(page, [{ id: 'a', set: 'true-drive-calm', records: flownRecords(shippedSet('true-drive-calm'), 5, undefined, 4), startedMs: FROM }]);
  await openPerson(page);
  await page.getByText('The true drive was flown calm only.').waitFor();
  const some = flownRecords(trueLoaded, 5, undefined, 10);
  await keepFlights(page, [{ id: 'b', set: 'true-drive-loaded', records: some, startedMs: FROM }]);
  await openPerson(page);
  const decided = some.filter(({ outcome }) => ['caught', 'late', 'missed'].includes(outcome)).length;
  await page.getByText(new RegExp(`${decided} (is|are) here, ${20 - decided} more to go`)).waitFor();
  expect(await page.locator('.margin-figure').count()).toBe(0);
  expect(await axe(page)).toEqual([]);
  await close();
});

test('the margin: releases over the room, by the same figures in picture and table, anywhere', async () => {
  const { page, close } = await openApp('#/person');
  await page.getByText('which is not flown yet').waitFor();
  const flights = [7, 8].map((seed, at) => ({ id: `f${seed}`, set: 'true-drive-loaded', records: flownRecords(trueLoaded, seed), startedMs: FROM + at * DAY }));
  await keepFlights(page, flights);
  await openPerson(page);
  await page.locator('.margin-figure').waitFor();
  const { groups: [group] } = historyOf(flights.map(({ id, records, startedMs }) => madeFlight(trueLoaded, records, { id, startedMs, set: 3 })));
  const { massT, speedKt, flapDeg, altitudeFt } = trueLoaded.scenarios[0]!.start;
  const rows = marginOf(group!.flights.flatMap(({ trials }) => trials), 0.1, 'airframe-a', { airframe: trueLoaded.airframe, massT, speedKt, flapDeg, altitudeFt })!;
  await page.getByText('The sums as a table').click();
  const told = await page.locator('.margin-sums tbody tr').allInnerTexts();
  const picture = await page.locator('.margin-figure svg').getAttribute('aria-label');
  for (const [at, { at: { median }, room: { levels } }] of rows.entries()) {
    expect(told[at]).toContain(`${median!.splitDeg.toFixed(2)}°, ${median!.afterS.toFixed(1)} s, ${Math.round(median!.usedPct)} %`);
    expect(told[at]).toContain(levels[0]!.at === null ? 'not reached' : `${levels[0]!.at!.afterS.toFixed(0)} s`);
    expect(picture).toContain(`${Math.round(100 - median!.usedPct)} % left when you let go after ${median!.afterS.toFixed(1)} s`);
  }
  expect(await page.locator('.own-dot').count()).toBe(rows.reduce((sum, { releases }) => sum + releases.length, 0));
  expect(await page.locator('.margin .sentence').innerText()).toContain(`at 167 kt, you let go with ${Math.round(100 - rows[0]!.at.median!.usedPct)} %`);
  expect(await axe(page)).toEqual([]);
  // Elsewhere: faster, and brought inside what may be flown; another airframe has no dots.
  await page.getByLabel(/^Speed, kt/).fill('400');
  await page.getByLabel(/^Speed, kt/).press('Tab');
  await page.getByText('When one side stops at 230 kt').waitFor();
  await page.getByLabel('Airframe').selectOption('airframe-b');
  await expect.poll(() => page.locator('.own-dot').count()).toBe(0);
  expect(await axe(page)).toEqual([]);
  await close();
});
