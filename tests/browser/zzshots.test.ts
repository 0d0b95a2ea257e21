import { test } from 'vitest';
import { everywhere, withCallout } from './everywhere.js';
import type { Page } from 'playwright-core';
const out = '/tmp/s6';
const drawn = (page: Page) => page.evaluate(() => new Promise((d) => { requestAnimationFrame(() => requestAnimationFrame(d)); }));
let n = 0;
const look = async (page: Page, name: string) => {
  n += 1;
  const base = `${out}/${String(n).padStart(2, '0')}-${name.replaceAll(/[^a-z0-9]+/gi, '-')}`;
  const shot = async (k: string, w: number, h: number, media: object, full = false) => {
    await page.setViewportSize({ width: w, height: h }); await page.emulateMedia(media); await drawn(page);
    await page.screenshot({ path: `${base}.${k}.png`, fullPage: full });
  };
  await shot('a1280', 1280, 720, { colorScheme: 'light' }, !name.startsWith('run'));
  await shot('b1920', 1920, 1080, { colorScheme: 'dark' });
  await shot('c1024f', 1024, 768, { colorScheme: 'dark', forcedColors: 'active' });
  await page.emulateMedia({ colorScheme: 'light', forcedColors: 'none' });
  await page.setViewportSize({ width: 1280, height: 720 });
};
test('shots', async () => { await everywhere({ colorScheme: 'light' }, look); await withCallout({}, look); }, 600000);
