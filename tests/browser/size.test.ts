// True size as a person sets it: a card matched by keys, checked, kept for this screen; then a run whose record tells all of it.
import { expect, test } from 'vitest';
import type { Page } from 'playwright-core';
import { visualDeg } from '../../sim/stats/visual.js';
import { layout } from '../../src/view/layout.js';
import { apartPx } from '../../src/view/place.js';
import type { RunRecord } from '../../sim/files/index.js';
import { axe, control, endAndSave, startRun } from './drilling.js';
import { appUrl, cdp, openApp } from './harness.js';

const edge = (page: Page, side: 'long' | 'short') => page.getByRole('slider', { name: `Edge of the ${side} side` });
const valueOf = async (page: Page, side: 'long' | 'short'): Promise<number> => Number(await edge(page, side).getAttribute('aria-valuenow'));

/** Moves the edge with arrow keys until it stands there, px. */
async function matchByKeys(page: Page, side: 'long' | 'short', px: number): Promise<void> {
  await edge(page, side).focus();
  for (let left = Math.round((px - await valueOf(page, side)) * 2); left !== 0;) {
    const many = Math.abs(left) >= 20;
    await page.keyboard.press(left > 0 ? (many ? 'Shift+ArrowRight' : 'ArrowRight') : many ? 'Shift+ArrowLeft' : 'ArrowLeft');
    left -= Math.sign(left) * (many ? 20 : 1);
  }
  await expect.poll(() => valueOf(page, side)).toBeCloseTo(px, 0);
}

test('the card by keys, its check, the gauge drawn true, and a record that tells mm, distance, angle and length', async () => {
  const { page, close } = await openApp('#/size');
  await page.getByText('Millimetres and minutes of arc appear once').waitFor();
  // 360 px for 85.60 mm: 4.2056 px a millimetre; the short side is 227.02 px.
  await matchByKeys(page, 'long', 360);
  await page.getByRole('button', { name: 'The long side fits' }).click();
  expect(await valueOf(page, 'short')).toBeCloseTo(227 * 1.09, 0);
  await page.getByRole('button', { name: 'The short side fits' }).click();
  await page.getByRole('alert').getByText('9.0 % too long').waitFor();
  expect(await axe(page)).toEqual([]);
  await matchByKeys(page, 'short', 227);
  await page.getByRole('button', { name: 'The short side fits' }).click();
  await page.getByText('This screen: 4.21 px a millimetre').waitFor();
  await page.getByRole('radio', { name: 'True size' }).check();
  await page.getByLabel('From the eye to the screen, mm').fill('600');
  await page.keyboard.press('Tab');
  await page.getByText('Eye to screen: 600 mm').waitFor();
  await page.getByText('60.0 mm', { exact: true }).waitFor();
  expect(await axe(page)).toEqual([]);
  // Undone and done again: a step back takes the distance alone.
  await page.getByRole('button', { name: 'Undo' }).click();
  expect(await page.getByLabel('From the eye to the screen, mm').inputValue()).toBe('710');
  await page.getByLabel('From the eye to the screen, mm').fill('600');
  await page.keyboard.press('Tab');
  await page.reload();
  await page.getByText('4.21 px').waitFor();

  await page.goto(`${appUrl()}#/drill/1?seed=3`);
  await startRun(page);
  const { gauge } = await endAndSave(page);
  const pxPerMm = (await page.evaluate(() => JSON.parse(localStorage.getItem('evenhand.size') ?? '') as { screens: Record<string, number> })).screens['1280x720@1']!;
  expect(pxPerMm).toBeCloseTo(360 / 85.6, 2);
  expect(gauge.mmPerPx).toBeCloseTo(85.6 / 360, 3);
  expect(gauge).toMatchObject({ distanceMm: 600, widthPx: 1280, heightPx: 720, pixelRatio: 1 });
  expect(gauge.radiusMm).toBeCloseTo(60, 9);
  // A dial of 86 degrees for 38 of flap: a degree at the tip of 60 mm is 60 x 86 / 38 x pi / 180 = 2.370 mm.
  expect(gauge.pxPerDeg * gauge.mmPerPx!).toBeCloseTo(2.37, 3);
  const apart = apartPx(layout(1280, 720, { radius: 60 * pxPerMm, apart: null }));
  expect(gauge.apartPx).toBeCloseTo(apart, 6);
  expect(gauge.apartDeg).toBeCloseTo(visualDeg(apart / pxPerMm, 600), 6);
  expect(gauge.changed).toBeUndefined();
  await page.getByText('60.0 mm long').waitFor();
  await close();
});

test('another zoom is another screen: told, and the card asked for again; coming back, the old measure holds', async () => {
  const { page, close } = await openApp('#/size', { before: () => localStorage.setItem('evenhand.size', '{"screens":{"1280x720@1":4},"isTrue":true}') });
  await page.getByText('4.00 px').waitFor();
  const session = await cdp(page);
  // As a zoom does it: fewer and larger CSS px in the same window.
  const zoom = (by: number) => session.send('Emulation.setDeviceMetricsOverride', { width: 1280 / by, height: 720 / by, deviceScaleFactor: by, mobile: false, screenWidth: 1280, screenHeight: 720 });
  await zoom(1.25);
  await page.getByText('This is another screen, or another zoom').waitFor();
  await page.getByRole('button', { name: 'The long side fits' }).waitFor();
  await zoom(1);
  await page.getByText('4.00 px').waitFor();
  await close();
});

test('dragged and by buttons; on a phone the card stands', async () => {
  const { page, close } = await openApp('#/size', { width: 390, height: 844, hasTouch: true });
  const from = await valueOf(page, 'long');
  await page.getByRole('button', { name: '+ 10 px' }).tap();
  await page.getByRole('button', { name: '− ½ px' }).tap();
  await expect.poll(() => valueOf(page, 'long')).toBeCloseTo(from + 9.5, 0);
  expect(await edge(page, 'long').getAttribute('aria-orientation')).toBe('vertical');
  await edge(page, 'long').evaluate((one) => one.scrollIntoView({ block: 'center' }));
  const box = (await edge(page, 'long').boundingBox())!;
  const [x, y] = [box.x + box.width / 2, box.y + box.height - 22];
  await page.mouse.move(x, y);
  await page.mouse.down();
  await page.mouse.move(x, y + 60);
  await page.mouse.up();
  await expect.poll(() => valueOf(page, 'long')).toBeCloseTo(from + 69.5, 0);
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(390);
  await close();
});

test('a window that changes in mid-run is told in the record', async () => {
  const { page, close } = await openApp('#/drill/1?seed=3');
  await startRun(page);
  await page.setViewportSize({ width: 1024, height: 768 });
  await expect.poll(async () => (await control(page, 'extend').boundingBox())?.x).toBeLessThan(640);
  const { gauge } = await endAndSave(page);
  expect(gauge).toMatchObject({ changed: true, widthPx: 1280, heightPx: 720 });
  await close();
});

/** Records in the page's logbook, as they are kept. */
const keptGauges = (page: Page) => page.evaluate(() => new Promise<RunRecord['gauge'][]>((done) => {
  const opening = indexedDB.open('evenhand');
  opening.addEventListener('success', () => {
    const [entries, records] = ['entries', 'records'].map((name) => opening.result.transaction(name).objectStore(name).getAll());
    const keys = opening.result.transaction('records').objectStore('records').getAllKeys();
    keys.addEventListener('success', () => {
      const at = new Map((entries!.result as { id: string; atMs: number }[]).map(({ id, atMs }) => [id, atMs]));
      const all = (records!.result as string[]).map((text, index) => ({ gauge: (JSON.parse(text) as RunRecord).gauge, atMs: at.get(String(keys.result[index])) ?? 0 }));
      opening.result.close();
      done(all.sort((a, b) => a.atMs - b.atMs).map(({ gauge }) => gauge));
    });
  });
}));

test('a set is flown at the size of its first run: a smaller window, a changed measure are told and wait; a larger window draws it as it was', async () => {
  const { page, close } = await openApp('#/set/1', { before: () => { if (localStorage.getItem('evenhand.size') === null) localStorage.setItem('evenhand.size', '{"screens":{"1280x720@1":4,"1600x900@1":4},"isTrue":false}'); } });
  await page.getByRole('button', { name: 'Start the set' }).click();
  const flyOut = async (): Promise<void> => {
    await control(page, 'extend').waitFor();
    await page.keyboard.press('Escape');
    await page.getByRole('button', { name: 'End the run' }).click();
    await page.getByRole('button', { name: 'No', exact: true }).click();
    await page.getByRole('heading', { name: 'Next' }).waitFor();
  };
  await flyOut();
  const run2 = page.getByRole('button', { name: 'Run 2' });
  await expect.poll(() => run2.isEnabled()).toBe(true);
  const session = await cdp(page);
  const windowOf = (width: number, height: number) => session.send('Emulation.setDeviceMetricsOverride', { width, height, deviceScaleFactor: 1, mobile: false, screenWidth: 1280, screenHeight: 720 });
  await windowOf(1024, 640);
  await page.getByText('This window has no room for it: it was 1280 × 720 px, and is 1024 × 640 px now.').waitFor();
  expect(await run2.isDisabled()).toBe(true);
  expect(await axe(page)).toEqual([]);
  await windowOf(1600, 900);
  await expect.poll(() => run2.isEnabled()).toBe(true);
  // Another measure of the same screen, on the page for it; then back to the set.
  await page.evaluate(() => localStorage.setItem('evenhand.size', '{"screens":{"1280x720@1":4.2},"isTrue":true}'));
  await page.reload();
  await page.goto(`${appUrl()}#/set/1`);
  await page.getByText('This screen has been measured anew.').waitFor();
  expect(await run2.isDisabled()).toBe(true);
  await page.getByRole('button', { name: 'Measure as in the first run' }).click();
  await expect.poll(() => run2.isEnabled()).toBe(true);
  await run2.click();
  await flyOut();
  const [first, second] = await keptGauges(page);
  expect(first).toMatchObject({ widthPx: 1280, mmPerPx: 0.25 });
  expect(second).toMatchObject({ widthPx: 1600, mmPerPx: 0.25 });
  expect(second!.pxPerDeg).toBeCloseTo(first!.pxPerDeg, 6);
  expect(second!.apartPx).toBeCloseTo(first!.apartPx!, 3);
  expect(second!.apartDeg).toBeCloseTo(first!.apartDeg!, 5);
  // In mid-run the clock stops: what is measured is measured at one size.
  await page.getByRole('button', { name: 'Run 3' }).click();
  await control(page, 'extend').waitFor();
  await windowOf(1024, 640);
  await page.getByText('The window or its zoom changed, and the gauge with it.').waitFor();
  await close();
});
