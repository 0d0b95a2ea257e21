// Steps that several browser tests take: start a run, look at a control, leave with a record in hand.
import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import type { Download, Page } from 'playwright-core';
import { readRecord } from '../../src/text/index.js';
import type { RunRecord } from '../../sim/files/index.js';

/** From its brief into a run with known dice, up to the first drawn picture. */
export async function startRun(page: Page, number = 1): Promise<void> {
  await page.getByRole('button', { name: 'Start' }).click();
  await page.waitForURL(new RegExp(`#/drill/${number}/run`));
  await control(page, 'extend').waitFor();
}

export const control = (page: Page, id: string) => page.locator(`[data-control="${id}"]`);
export const reading = (page: Page, id: string) => page.locator(`[data-reading="${id}"]`);
export const isPressed = async (page: Page, id: string): Promise<boolean> => (await control(page, id).getAttribute('aria-pressed')) === 'true';

/** Guard open and armed, by the mouse. */
export async function makeReady(page: Page): Promise<void> {
  await control(page, 'guard').click();
  await page.locator('[data-control="guard"][aria-pressed="true"]').waitFor();
  await control(page, 'arm').click();
  await page.locator('[data-control="arm"][aria-pressed="true"]').waitFor();
}

/** The middle of a control, px of the window. */
export async function middleOf(page: Page, id: string): Promise<{ x: number; y: number }> {
  const box = await control(page, id).boundingBox();
  if (box === null) throw new Error(`${id} is not on the page`);
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
}

/** From the brief of drill 1 into a run, made ready, and out of it again: to where the trainee is asked first. */
export async function flyOut(page: Page): Promise<void> {
  await startRun(page);
  await makeReady(page);
  await page.keyboard.press('Escape');
  await page.getByRole('button', { name: 'End the run' }).click();
  await page.getByText('Was there a split?').waitFor();
}

/** Ends the run that is on the page, answers, and saves the record of it. */
export async function endAndSave(page: Page): Promise<RunRecord> {
  await page.keyboard.press('Escape');
  await page.getByRole('button', { name: 'End the run' }).click();
  await page.getByText('Not sure').click();
  await page.getByRole('button', { name: 'Show the debrief' }).click();
  return save(page);
}

/** Saves the record that is debriefed and reads it as any file is read. */
export async function save(page: Page): Promise<RunRecord> {
  const [download] = await Promise.all([page.waitForEvent('download'), page.getByRole('button', { name: 'Save record' }).click()]);
  return readSaved(download);
}

/** The record that was saved. */
export async function readSaved(download: Download): Promise<RunRecord> {
  const read = readRecord(await readAll(download), download.suggestedFilename());
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return read.value;
}

/** The text of a file that was saved. */
export async function readAll(download: Download): Promise<string> {
  let text = '';
  for await (const part of await download.createReadStream()) text += String(part);
  return text;
}

const axeFile = createRequire(import.meta.url).resolve('axe-core/axe.min.js');

/** What axe-core (https://github.com/dequelabs/axe-core) finds wrong by its rules for WCAG 2.2 A and AA and best practice. */
export async function axe(page: Page): Promise<string[]> {
  await page.evaluate(await readFile(axeFile, 'utf8'));
  return page.evaluate(async () => {
    const { violations } = await (globalThis as unknown as { axe: { run(): Promise<{ violations: { id: string; nodes: { html: string; failureSummary: string }[] }[] }> } }).axe.run();
    return violations.flatMap(({ id, nodes }) => nodes.map(({ html, failureSummary }) => `${id}: ${html.slice(0, 160)} ${failureSummary}`));
  });
}
