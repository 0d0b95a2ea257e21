// Help, in a browser: a link leads to its key, a search finds words in any order, and the address can be handed on.
import { expect, test } from 'vitest';
import { openApp } from './harness.js';

test('an address leads to its key; the sections and the search are reached by keyboard', async () => {
  const { page, close } = await openApp('#/help?k=faults.when.hazardPerS');
  const here = page.locator('.help-entry.here');
  await here.waitFor();
  expect(await here.locator('dt').textContent()).toBe('faults[].when.hazardPerS');
  const inView = await here.evaluate((element) => { const { top, bottom } = element.getBoundingClientRect(); return top >= 0 && bottom <= innerHeight; });
  expect(inView).toBe(true);
  expect(await here.locator('pre').textContent()).toBe('{ "hazardPerS": 0.05 }');

  const search = page.getByLabel('Search');
  await search.focus();
  await page.keyboard.type('pushes BLOWBACK');
  await page.getByRole('status').filter({ hasText: 'found' }).waitFor();
  expect(await page.locator('.help-entry dt').allTextContents()).toContain('faults[].kind: "blowback"');
  await search.fill('qqqq');
  await page.getByText('Nothing has all of these words.').waitFor();

  await page.getByRole('link', { name: 'Keys of the drill' }).click();
  await page.getByRole('heading', { name: 'Keys of the drill' }).waitFor();
  expect(await search.inputValue()).toBe('');
  expect(page.url()).toContain('#/help?k=hand');
  await page.goBack();
  await page.locator('.help-entry.here').waitFor();
  await close();
});

test('by the head from one page that is fetched straight to the next: each is itself', async () => {
  const { page, close } = await openApp('#/help');
  for (const name of ['Bench', 'Desk', 'Class', 'Help', 'Plan', 'Course', 'Bench']) {
    await page.getByRole('navigation').first().getByRole('link', { name, exact: true }).click();
    await page.getByRole('heading', { level: 1, name, exact: true }).waitFor();
  }
  await close();
});

test('an address that leads nowhere says so and shows the beginning', async () => {
  const { page, close } = await openApp('#/help?k=faults.nothing');
  await page.getByRole('alert').filter({ hasText: 'faults.nothing' }).waitFor();
  await page.getByRole('heading', { name: 'What it is not' }).waitFor();
  await close();
});
