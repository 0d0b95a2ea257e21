// Two runs in one debrief: from a file and from the logbook, told apart, taken away; and what cannot lie beside it, told why.
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { FAULTS_OF_THE_JOB, flown, type FlownRun } from '../pages/flown.js';
import { axe, flyOut } from './drilling.js';
import { openApp, appUrl } from './harness.js';

const file = (text: string) => ({ name: 'run.json', mimeType: 'application/json', buffer: Buffer.from(text) });
const fileOf = ({ record }: FlownRun) => file(JSON.stringify(record));

async function openRecord(page: Page, run: FlownRun): Promise<void> {
  await page.setInputFiles('input[type=file]', fileOf(run));
  await page.locator('.compare').waitFor();
}
async function choose(page: Page, one: ReturnType<typeof file>): Promise<void> {
  const [chooser] = await Promise.all([page.waitForEvent('filechooser'), page.getByRole('button', { name: 'From a file' }).click()]);
  await chooser.setFiles(one);
}

const run = flown({ fault: FAULTS_OF_THE_JOB.disconnect }, 'prompt');
const slow = flown({ fault: FAULTS_OF_THE_JOB.disconnect }, 'slow');

test('from a file: dashed and named in every chart, figures side by side, and away again', async () => {
  const { page, close } = await openApp();
  await openRecord(page, run);
  await page.getByText('The logbook has no other run of this task.').waitFor();
  expect(await page.locator('.trace-other').count()).toBe(0);
  await choose(page, fileOf(slow));
  await page.getByText('Aligned at onset.').waitFor();
  // Pointers have two, and each other chart one.
  expect(await page.locator('.trace-other').count()).toBe(6);
  expect(await page.locator('.trace-other').evaluateAll((lines) => lines.every((line) => getComputedStyle(line).strokeDasharray !== 'none' && !/NaN/.test(line.getAttribute('d') ?? 'NaN')))).toBe(true);
  expect(await page.locator('.figure').getByText('other release', { exact: true }).count()).toBe(1);
  expect(await page.locator('.figure .end').allTextContents()).toEqual(expect.arrayContaining(['other left', 'other right', 'other', 'this run']));
  const row = page.locator('.compare tr', { hasText: 'From onset to release' });
  expect(await row.locator('td').allTextContents()).toEqual([run, slow].map(({ record }) => `${record.score.afterOnsetS!.toFixed(1)} s`));
  expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(0);
  expect(await axe(page)).toEqual([]);
  // On paper the lines and the figures stay, and what only a screen can do goes.
  await page.emulateMedia({ media: 'print' });
  expect(await page.locator('.compare table').isVisible()).toBe(true);
  expect(await page.locator('.compare-choice').isVisible()).toBe(false);
  const [table, notes] = await Promise.all([page.locator('.compare').boundingBox(), page.locator('.notes').boundingBox()]);
  expect(table!.y + table!.height, 'nothing lies over it').toBeLessThanOrEqual(notes!.y);
  await page.emulateMedia({ media: 'screen' });
  await page.getByRole('button', { name: 'Take it away' }).click();
  expect(await page.locator('.trace-other').count()).toBe(0);
  expect(await page.locator('.compare table').count()).toBe(0);
  await close();
});

test('what cannot lie beside it is told why, and changes nothing', async () => {
  const { page, close } = await openApp();
  await openRecord(page, run);
  await choose(page, fileOf(run));
  await page.getByText('That is this very run.').waitFor();
  await choose(page, fileOf(flown({ settings: [9, 16], fault: FAULTS_OF_THE_JOB.disconnect }, 'prompt')));
  await page.getByText('That run had another task: flaps from 4 to 9, then 16.').waitFor();
  await choose(page, file('{ "format": 1 '));
  await page.getByText('run.json is no record that holds.').waitFor();
  expect(await page.locator('.trace-other').count()).toBe(0);
  await choose(page, fileOf(flown({}, 'prompt')));
  await page.getByText('Aligned at the start: not both runs have an onset.').waitFor();
  expect(await page.getByRole('alert').count()).toBe(0);
  await close();
});

test('from the logbook: the runs of this task, and none chosen again', async () => {
  const { page, close } = await openApp('#/drill/1?seed=3');
  await flyOut(page);
  await page.goto(appUrl());
  await openRecord(page, run);
  const list = page.getByRole('combobox', { name: 'From the logbook' });
  await list.waitFor();
  expect(await list.locator('option').count()).toBe(2);
  await list.selectOption({ index: 1 });
  await page.getByText('Aligned at the start').waitFor();
  expect(await page.locator('.compare tr', { hasText: 'Outcome' }).locator('td').allTextContents()).toEqual(['caught', 'void']);
  await list.selectOption({ index: 0 });
  await page.locator('.compare table').waitFor({ state: 'detached' });
  expect(await page.locator('.trace-other').count()).toBe(0);
  await close();
});
