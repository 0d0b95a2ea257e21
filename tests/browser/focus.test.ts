// The harness itself: a page that is left must really learn of it, or every test of a lost hold would pass for nothing.
import { afterAll, beforeAll, expect, test } from 'vitest';
import { appUrl } from './harness.js';
import { rawBrowser, type RawBrowser } from './raw.js';

let browser: RawBrowser;
beforeAll(async () => {
  browser = await rawBrowser();
});
afterAll(() => browser.close());

test('leaving the page fires blur and visibilitychange, and coming back undoes both', async () => {
  const page = await browser.open(appUrl());
  await page.until('document.hasFocus()');
  await page.evaluate(`
    globalThis.seen = [];
    addEventListener('blur', () => seen.push('blur'));
    addEventListener('focus', () => seen.push('focus'));
    document.addEventListener('visibilitychange', () => seen.push(document.visibilityState));
    0`);
  await page.leave();
  expect(await page.evaluate('seen.splice(0).sort()')).toEqual(['blur', 'hidden']);
  expect(await page.evaluate('document.hasFocus()')).toBe(false);
  await page.comeBack();
  expect(await page.evaluate('seen.splice(0).sort()')).toEqual(['focus', 'visible']);
  expect(await page.evaluate('document.hasFocus()')).toBe(true);
});
