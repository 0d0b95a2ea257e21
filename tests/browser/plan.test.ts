// The plan as a trainee meets it: blank, entered by keys, nothing told before it is asked, then checked; on one sheet of paper; along with the run; and beside what was flown.
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { verify } from '../../sim/files/index.js';
import { control, makeReady, save, startRun } from './drilling.js';
import { openApp } from './harness.js';

/** Pages of a PDF: each has an object of its own. */
const sheets = (pdf: Buffer): number => (pdf.toString('latin1').match(/\/Type\s*\/Page\b(?!s)/g) ?? []).length;

const item = (page: Page, name: string) => page.locator('.plan-item').filter({ hasText: name });

test('blank first: no value stands in the page before it is entered or asked for; then item by item', async () => {
  const { page, close } = await openApp('#/drill/6');
  await page.getByRole('link', { name: 'Plan it first' }).click();
  await page.getByRole('button', { name: 'Show the rest' }).waitFor();
  const before = await page.locator('.plan-group').allInnerTexts();
  for (const told of ['191.2', '166.3', '= ', 'silent.', 'right within', 'worked out']) expect(before.join(' ')).not.toContain(told);
  expect(await page.locator('.plan-card, .plan-figure').count()).toBe(0);
  expect(await page.locator('.plan-settled').count()).toBe(0);
  // By keys alone: into the first field, a figure, Enter.
  await page.getByLabel('Manoeuvre speed, flaps up').focus();
  await page.keyboard.type('191');
  await page.keyboard.press('Enter');
  await page.locator('.plan-settled').first().waitFor();
  expect(await item(page, 'Manoeuvre speed, flaps up').innerText()).toMatch(/191\s*kt[\s\S]*right[\s\S]*1\.43 × stall 133\.7 = 191\.2/);
  expect(await page.locator('.plan-settled').count()).toBe(1);
  // Near, off, and shown: three words.
  await page.getByLabel('Manoeuvre speed, flaps 4').fill('170');
  await page.getByLabel('Manoeuvre speed, flaps 9').fill('140,0');
  await page.getByLabel('landing setting, then the gear').check();
  await page.getByLabel('sounds, may not be silenced').check();
  await page.getByRole('button', { name: 'Check all that is filled in' }).click();
  expect(await item(page, 'Manoeuvre speed, flaps 4').innerText()).toMatch(/near: 4\s*kt too much/);
  expect(await item(page, 'Manoeuvre speed, flaps 9').innerText()).toMatch(/off: 14\s*kt too little/);
  expect(await item(page, 'Gear and landing setting').innerText()).toContain('near');
  expect(await item(page, 'The gear horn').innerText()).toContain('right');
  await page.getByRole('button', { name: 'Show me Motor on' }).click();
  expect(await item(page, 'Motor on, in all').innerText()).toMatch(/108\s*s[\s\S]*shown/);
  expect(await page.locator('.plan-card').count()).toBe(0);
  // A reload keeps it.
  await page.reload();
  await page.locator('.plan-settled').nth(5).waitFor();
  expect(await page.getByText('6 of 18 items stand').count()).toBe(1);
  await page.getByRole('button', { name: 'Show the rest' }).click();
  await page.locator('.plan-card').waitFor();
  expect(await page.locator('.plan-figure svg').count()).toBe(2);
  expect(await page.locator('.plan-card').innerText()).toMatch(/no credit/);
  expect(sheets(await page.pdf({ preferCSSPageSize: true }))).toBe(1);
  expect(sheets(await page.pdf({ format: 'A4', preferCSSPageSize: false }))).toBe(1);
  // Another figure begins it anew.
  await page.getByText('What it is made for').click();
  await page.getByLabel('Head wind, kt').fill('30');
  await page.keyboard.press('Tab');
  await page.getByRole('button', { name: 'Show the rest' }).waitFor();
  expect(await page.locator('.plan-settled').count()).toBe(0);
  await close();
});

test('it goes along: on the brief, in the record, and in the debrief beside what was flown', async () => {
  const { page, close } = await openApp('#/drill/1/plan');
  await page.getByLabel('Manoeuvre speed, flaps 4').fill('160');
  await page.getByLabel('Motor on, in all').fill('90');
  await page.getByLabel('gear, then the landing setting').check();
  await page.getByRole('link', { name: 'On to the brief' }).click();
  await page.getByRole('heading', { name: 'Your plan' }).waitFor();
  expect(await page.locator('.plan-brief').innerText()).toMatch(/4 160[\s\S]*gear, then setting[\s\S]*90 s/);
  await startRun(page);
  await makeReady(page);
  await control(page, 'extend').focus();
  await page.keyboard.down(' ');
  await page.locator('[data-control="extend"][aria-pressed="true"]').waitFor();
  // Longer than the contactor takes to pick up: a shorter press never feeds the motor.
  await page.evaluate(() => new Promise<void>((done) => {
    let left = 20;
    const next = (): void => { if ((left -= 1) > 0) requestAnimationFrame(next); else done(); };
    requestAnimationFrame(next);
  }));
  await page.keyboard.up(' ');
  await page.keyboard.press('Escape');
  await page.getByRole('button', { name: 'End the run' }).click();
  await page.getByText('Not sure').click();
  await page.getByRole('button', { name: 'Show the debrief' }).click();
  const flown = page.locator('.plan-flown');
  await flown.waitFor();
  expect(await flown.innerText()).toMatch(/Motor on\s+90\s*s\s+0\s*s\s+−90\s*s/);
  expect(await flown.innerText()).toMatch(/Order\s+gear first\s+–/);
  const record = await save(page);
  expect(record.plan).toMatchObject({ motorOnS: 90, order: 'gearFirst', referenceKt: null, shown: [] });
  expect(verify(record)).toMatchObject({ ok: true });
  await close();
});
