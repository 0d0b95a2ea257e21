// The debrief of a live run: the desk's marks on the replay, the instructor's report beside the machine's, each moment one press away.
import { expect, test } from 'vitest';
import { liveRun } from '../pages/live.js';
import { axe } from './drilling.js';
import { openApp } from './harness.js';

test('a live record opened: marks, prompts, grades apart from what the machine found; a press leads to the moment', async () => {
  const { page, close } = await openApp('');
  await page.getByText('Open a record').waitFor();
  await page.setInputFiles('input[type=file]', { name: 'live.json', mimeType: 'application/json', buffer: Buffer.from(JSON.stringify(liveRun().record)) });
  const report = page.locator('.desk-report');
  await report.waitFor();
  expect(await report.locator('tbody tr').allTextContents()).toEqual(expect.arrayContaining([expect.stringMatching(/^Letting go2 Below the standardWaited to be sure\.caught, /), expect.stringMatching(/^Scan of the gaugenot seen–$/)]));
  await page.locator('.jumps').getByRole('button', { name: /good scan/ }).click();
  expect(await page.locator('output.clock').textContent()).toBe('4.00 s');
  await report.getByRole('button', { name: 'at 11.0 s' }).click();
  expect(await page.locator('output.clock').textContent()).toBe('11.00 s');
  await report.getByRole('button', { name: /late release/ }).click();
  expect(await page.locator('output.clock').textContent()).toBe('14.50 s');
  expect(await axe(page)).toEqual([]);
  await close();
});
