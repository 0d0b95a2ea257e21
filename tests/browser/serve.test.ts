// The shipped server under a real browser: isolated, and with a content policy that bites.
import { expect, test } from 'vitest';
import { openApp } from './harness.js';

test('the page is cross-origin isolated and complains of nothing', async () => {
  const { page, close } = await openApp();
  expect(await page.evaluate(() => crossOriginIsolated)).toBe(true);
  expect(await page.title()).not.toBe('');
  await close();
});

test('what the policy forbids is refused, and the harness tells', async () => {
  const { page, problems, close } = await openApp();
  await page.evaluate(() => {
    const script = document.createElement('script');
    script.textContent = 'globalThis.smuggled = true';
    document.body.append(script);
  });
  expect(await page.evaluate(() => 'smuggled' in globalThis)).toBe(false);
  await expect.poll(() => problems.join('\n')).toMatch(/policy violation: script-src-elem inline/);
  await expect(close()).rejects.toThrow(/policy violation/);
});

test('a request to another host, a missing file, an error and a warning are all told', async () => {
  const { page, problems, close } = await openApp();
  await page.evaluate(async () => {
    await fetch('nowhere.json');
    await fetch('http://127.0.0.2:1/').catch(() => 0);
    console.warn('a warning');
    setTimeout(() => {
      throw new Error('a page error');
    });
  });
  await expect.poll(() => problems.join('\n')).toMatch(/a page error/);
  const told = problems.join('\n');
  expect(told).toMatch(/answer 404: .*nowhere\.json/);
  expect(told).toMatch(/127\.0\.0\.2/);
  expect(told).toMatch(/a warning/);
  await expect(close()).rejects.toThrow(/The page complained/);
});
