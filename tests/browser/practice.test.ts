// Practice: a run, told at once, and the next; a false release moves nothing, and the level is kept over a reload.
import { expect, test } from 'vitest';
import { axe, control, makeReady } from './drilling.js';
import { openApp } from './harness.js';

test('a run is told at once, and moves on from where it stood', async () => {
  const { page, close } = await openApp('#/practice');
  await page.getByRole('button', { name: 'First run' }).click();
  await page.waitForURL(/#\/practice\/run/);
  await makeReady(page);
  await page.keyboard.down('KeyE');
  await page.locator('[data-control="extend"][aria-pressed="true"]').waitFor();
  await page.keyboard.up('KeyE');
  await page.keyboard.press('Escape');
  await page.getByRole('button', { name: 'End the run' }).click();
  await page.waitForURL(/#\/practice$/);
  await page.getByRole('heading', { name: /^Void: the clock stopped .* The level stays\.$/ }).waitFor();
  const level = page.getByText(/The next split opens by about/);
  const words = await level.innerText();
  expect(words).toMatch(/0\.1[45]° a second/);
  expect(await axe(page)).toEqual([]);
  await page.reload();
  await page.getByRole('button', { name: 'Next run' }).waitFor();
  expect(await level.innerText()).toBe(words);
  await page.getByRole('button', { name: 'Next run' }).click();
  await control(page, 'extend').waitFor();
  await page.goBack();
  await page.getByRole('button', { name: 'Next run' }).waitFor();
  await page.getByRole('button', { name: 'Start over' }).click();
  await page.getByRole('button', { name: 'First run' }).waitFor();
  await close();
});
