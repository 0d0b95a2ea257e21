// The timing check with a clock by hand: releases of known lateness give the median and the spread that were worked out by hand.
import { expect, test } from 'vitest';
import type { Page } from 'playwright-core';
import { clockByHand, goTo, startByHand } from './clock.js';
import { axe, save } from './drilling.js';
import { appUrl, openApp } from './harness.js';

const said = (page: Page): Promise<string | null> => page.locator('.timing-check [role="status"]').textContent();
const nowMs = (page: Page): Promise<number> => page.evaluate(() => performance.now());

/** Holds by Space until the ring has filled, and lets go so many seconds behind the frame that drew it. */
async function release(page: Page, behindS: number): Promise<void> {
  await page.keyboard.down('Space');
  const drawn = await page.evaluate(() => {
    for (let frame = 0; frame < 450 && document.querySelector('.ring-full') === null; frame += 1) (globalThis as unknown as { goTo(ms: number, frameMs: number): void }).goTo(performance.now() + 10, 10);
    return document.querySelector('.ring-full') === null ? null : performance.now();
  });
  if (drawn === null) throw new Error('the ring did not fill within 4.5 s');
  await goTo(page, drawn + behindS * 1000, 10);
  await page.keyboard.up('Space');
  await goTo(page, drawn + behindS * 1000 + 50, 10);
}

async function check(page: Page, timesS: readonly number[]): Promise<void> {
  await page.getByRole('button', { name: 'Hold' }).focus();
  for (const s of timesS) await release(page, s);
}

test('twenty releases: median, spread and verdict as by hand, kept, in the record of a run, undone; too soon and too late count for nothing', async () => {
  const { page, close } = await openApp('#/timing', { before: clockByHand });
  await page.getByRole('button', { name: 'Hold' }).waitFor();
  await goTo(page, 1100);
  expect(await axe(page)).toEqual([]);
  await page.getByRole('button', { name: 'Hold' }).focus();
  await page.keyboard.down('Space');
  await goTo(page, await nowMs(page) + 500, 10);
  await page.keyboard.up('Space');
  await expect.poll(() => said(page)).toBe('Too soon: nothing had changed. It does not count; hold again.');
  await release(page, 3.1);
  await expect.poll(() => said(page)).toBe('Not seen: the ring had filled. It does not count; hold again.');
  // Ten at 0.2 s and ten at 0.4: the median is 0.3, the spread sqrt(20 x 0.01 / 19) = 0.1026.
  await check(page, Array.from({ length: 20 }, (_, at) => (at % 2 === 0 ? 0.2 : 0.4)));
  await page.getByText('Fit for timing.').waitFor();
  expect((await page.locator('.timing-result dd strong').allTextContents())).toEqual(['0.30 s', '0.10 s', '20']);
  expect(await axe(page)).toEqual([]);

  await page.goto('about:blank');
  await page.goto(`${appUrl()}#/drill/1?seed=3`);
  await startByHand(page);
  await goTo(page, 1500);
  await page.keyboard.press('Escape');
  await page.getByRole('button', { name: 'End the run' }).click();
  await goTo(page, 1600);
  await page.getByText('Not sure').click();
  await page.getByRole('button', { name: 'Show the debrief' }).click();
  const { device: { timing } } = await save(page);
  expect(timing).toMatchObject({ releases: 20, input: 'key' });
  expect(timing?.medianS).toBeCloseTo(0.3, 9);
  expect(timing?.sdS).toBeCloseTo(Math.sqrt(0.2 / 19), 9);
  await page.getByText('fit: median 0.30 s, sd 0.10 s, by key').waitFor();

  await page.goto(`${appUrl()}#/timing`);
  await page.getByText('The last check').waitFor();
  await goTo(page, await nowMs(page) + 100);
  await check(page, Array.from({ length: 20 }, () => 0.61));
  await page.getByText('Not fit for timing.').waitFor();
  await page.getByText('Hand and device together are slow').waitFor();
  await page.getByRole('button', { name: 'Undo' }).click();
  await page.getByText('Fit for timing.').waitFor();
  await close();
});
