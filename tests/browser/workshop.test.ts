// The airframe workshop: figures that follow the form, a relation that is broken and mended, another airframe beside it.
import type { Page } from 'playwright-core';
import { afterEach, expect, test } from 'vitest';
import { openApp } from './harness.js';

let close = async (): Promise<void> => undefined;
afterEach(() => close());

async function newAirframe(): Promise<Page> {
  const opened = await openApp('#/bench', {});
  close = opened.close;
  await opened.page.getByRole('button', { name: 'New airframe' }).click();
  await opened.page.getByText('All 32 relations hold.').waitFor();
  return opened.page;
}

/** Types a figure into a field of a part of the form. */
async function type(page: Page, label: string, figure: string): Promise<void> {
  const field = page.getByRole('spinbutton', { name: new RegExp(`^${label}`) }).first();
  await field.fill(figure);
  await field.press('Enter');
}

test('figures, relations and comparison follow what is typed, and undo takes it back', async () => {
  const page = await newAirframe();
  const glance = page.locator('.glance');
  await expect.poll(() => glance.getByRole('row', { name: /flaps up to landing setting/ }).textContent()).toContain('101.5 to 127.0 s');
  // Twice the rate without load, half the time.
  await type(page, 'Rate without load', '0.38');
  await expect.poll(() => glance.getByRole('row', { name: /flaps up to landing setting/ }).textContent()).toContain('50.8 to 63.5 s');
  await type(page, 'Reference factor', '1.22');
  await page.getByText('1 of 32 relations does not hold', { exact: false }).waitFor();
  await page.getByText('Look at the reference factor.').waitFor();
  await page.getByRole('button', { name: 'Undo' }).click();
  await page.getByText('All 32 relations hold.').waitFor();
  await page.getByLabel('Beside it').selectOption('airframe-b');
  await glance.getByRole('columnheader', { name: 'Airframe B (invented)' }).waitFor();
  await expect.poll(() => page.getByRole('region', { name: 'Release budget' }).textContent(), { timeout: 30_000 }).not.toContain('working');
});

test('what is not sound keeps the last figures and says so; a first scenario carries the airframe', async () => {
  const page = await newAirframe();
  await type(page, 'Landing mass', '20');
  await page.getByText('These are the figures of the last sound state').waitFor();
  await page.getByRole('button', { name: 'Undo' }).click();
  await page.getByRole('button', { name: 'New scenario on this airframe' }).click();
  await page.getByRole('heading', { level: 1, name: /hold-on-my-airframe/ }).waitFor();
  await page.getByText('No problem', { exact: false }).first().waitFor();
  await page.getByRole('button', { name: 'Undo' }).click();
  await page.getByText('All 32 relations hold.').waitFor();
});
