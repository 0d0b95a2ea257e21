// The states of the bench, for tests that look at every page.
import type { Page } from 'playwright-core';

/** Calls `look` in each; the page stands at the app's address. */
export async function benchStates(page: Page, to: (path: string) => Promise<void>, look: (page: Page, name: string) => Promise<void>): Promise<void> {
  await to('#/bench');
  await page.getByRole('button', { name: 'New scenario' }).waitFor();
  await look(page, 'bench');
  await page.getByRole('button', { name: 'New scenario' }).click();
  await page.getByLabel('Add a fault').selectOption('pointer');
  await page.getByLabel('Add a fault').selectOption('lag');
  await page.getByRole('button', { name: 'and …', exact: true }).click();
  await page.getByLabel('Add an event').selectOption('callout');
  await page.getByLabel('Acts').last().selectOption('hazardPerS');
  await page.getByLabel('Mass').fill('0');
  await page.locator('.problem').waitFor();
  await look(page, 'bench, scenario with a problem');
  await page.getByRole('button', { name: 'Undo', exact: true }).click();
  const tab = page.getByRole('button', { name: 'Text', exact: true });
  if (await tab.isVisible()) await tab.click();
  await page.locator('.cm-content').focus();
  await page.keyboard.press('Control+f');
  await page.getByLabel('Find', { exact: true }).fill('flap');
  await page.getByText('1 of ').waitFor();
  await look(page, 'bench, text, words found');
  await page.getByRole('button', { name: 'Close', exact: true }).click();
  await page.getByRole('button', { name: 'Discard' }).click();
  await page.getByRole('button', { name: 'New set' }).click();
  await page.locator('.bench-form form').waitFor({ state: 'attached' });
  if (await tab.isVisible()) await page.getByRole('button', { name: 'Form', exact: true }).click();
  await look(page, 'bench, set');
  await page.getByRole('button', { name: 'Discard' }).click();
  await page.getByText('The bench is empty.').waitFor();
}
