// What stands beside a document on the bench: lesson sheet, coverage, parameters, a set's gates, what a trainee does.
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { openApp } from './harness.js';

const beside = (page: Page, name: string) => page.getByRole('group', { name: 'Beside it' }).getByRole('button', { name }).click();
const open = async (page: Page, title: string | RegExp): Promise<void> => { await page.getByRole('button', { name: title }).first().click(); };

test('lesson sheet: the trainee’s tells nothing, paper holds the sheet alone; coverage: an empty place begins one, undo brings back', async () => {
  const { page, close } = await openApp('#/bench');
  await open(page, 'A side stops on the way to 16');
  await beside(page, 'Lesson sheet');
  const sheet = page.locator('.lesson-sheet');
  await sheet.waitFor();
  expect(await sheet.textContent()).toContain('A side, drawn by the seed, stops while the other goes on when the drive has been held for 14 s in all.');
  await page.getByRole('group', { name: 'Whose sheet' }).getByRole('button', { name: 'Trainee' }).click();
  await page.getByRole('article', { name: 'Lesson sheet for the trainee' }).waitFor();
  const told = (await sheet.textContent())!;
  for (const secret of ['A side stops', 'drawn', '14 s', 'stays where it is']) expect(told).not.toContain(secret);
  expect(told).toContain('approved procedures and licensed instruction come first');
  await page.emulateMedia({ media: 'print' });
  for (const hidden of ['.bench-bar', '.bench-written', '.bench-problems', '.top']) expect(await page.locator(hidden).first().isVisible(), hidden).toBe(false);
  expect(await sheet.isVisible()).toBe(true);
  await page.emulateMedia({ media: 'screen' });

  await beside(page, 'Coverage');
  const place = page.getByRole('button', { name: 'The drive stops for good, in to 9: none, write one' });
  await place.waitFor();
  await place.click();
  const name = page.getByLabel('Name of the file');
  await page.waitForFunction(() => (document.querySelector('.bench-name') as HTMLInputElement).value === 'quits-in-to-9');
  await page.getByText('No problem', { exact: false }).first().waitFor();
  await page.getByRole('button', { name: 'Undo' }).click();
  expect(await name.inputValue()).toBe('set-16-from-4');
  await page.getByRole('button', { name: 'A side stops while the other goes on, in to 9: 1' }).click();
  await page.getByRole('region', { name: 'Scenarios of the place' }).getByRole('button', { name: 'back-in' }).click();
  await page.waitForFunction(() => (document.querySelector('.bench-name') as HTMLInputElement).value === 'back-in');
  await close();
});

test('a set: its gates follow what is typed; a trainee: the figures follow; a person without flights gives no trainee, and why', async () => {
  const { page, close } = await openApp('#/bench');
  await open(page, /STANDARD, calm/);
  await page.getByText('All gates hold: this set measures.').waitFor({ timeout: 30_000 });
  // 60 s of holding are too few for the slowest rate behind the latest onset.
  await page.getByLabel('Drive held in all').first().fill('60');
  await page.getByText('Every run with an onset is decided: does not hold').waitFor({ timeout: 30_000 });
  expect(await page.locator('.set-gates .fails').count()).toBe(1);

  await page.getByRole('button', { name: 'All files' }).click();
  await page.getByRole('button', { name: 'New trainee' }).click();
  const rows = page.locator('.release-table tbody tr');
  const cells = async (): Promise<string[]> => rows.nth(2).locator('td').allTextContents();
  await rows.first().waitFor();
  const before = await cells();
  // At 0.6 deg/s six seconds of reaction are 3.6 deg on top of one degree: half by about 4.6 deg.
  await page.getByRole('spinbutton', { name: 'Reaction', exact: true }).fill('6');
  await page.waitForFunction((was) => document.querySelector('.release-table tbody tr:nth-child(3) td')?.textContent !== was, before[0]);
  expect(Number((await cells())[0]!.replace('°', ''))).toBeCloseTo(4.6, 0);
  await page.getByRole('button', { name: 'Runs without a name' }).click();
  await page.getByText('No set is flown to its end by the person without a name', { exact: false }).waitFor();
  await close();
});

test('a parameter is set by its slider, drawn by its box, and taken by name in the form', async () => {
  const { page, close } = await openApp('#/bench');
  const text = `{ "format": 1, "title": "t", "brief": "b", "airframe": "airframe-a",
  "parameters": [ { "name": "held", "default": 14, "min": 10, "max": 20, "step": 0.5, "unit": "s", "meaning": "When it comes" } ],
  "start": { "massT": 48, "altitudeFt": 5600, "speedKt": 167, "flapDeg": 4 }, "task": { "settings": [16], "limitS": 100 },
  "faults": [ { "name": "stop", "kind": "disconnect", "side": "left", "when": { "heldS": { "parameter": "held" } } } ] }`;
  await page.getByRole('button', { name: 'New scenario' }).waitFor();
  await page.setInputFiles('input[type=file]', { name: 'held.json', mimeType: 'application/json', buffer: Buffer.from(text) });
  const slider = page.getByRole('slider', { name: /^held/ });
  await slider.waitFor();
  await slider.press('ArrowRight');
  await page.locator('.parameter output', { hasText: '14.5 s' }).waitFor();
  await page.getByLabel('Drawn by the seed').check();
  await page.locator('.parameter output', { hasText: 'drawn' }).waitFor();
  await page.getByRole('button', { name: 'Undo' }).click();
  await page.getByRole('button', { name: 'Undo' }).click();
  await page.locator('.parameter output', { hasText: '14 s' }).waitFor();
  await close();
});
