// The pictures of the README: the built app, flown by a hand as a trainee's, by day and at one size. `npm run pictures`
// writes them anew; look at them before a commit. A hand is never twice the same to the hundredth, so neither are they.
import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { chromium } from 'playwright-core';
import { dist, isFresh, top } from '../../src/tools/fresh.mjs';
import { findChromium, flags } from '../browser/chromium.mjs';

const SIZE = { width: 1280, height: 720 };
/** A split that a trainee sees, degrees; the hand lets go here. */
const SEEN_DEG = 1.5;

if (!isFresh() && spawnSync(process.execPath, [join(top, 'src/tools/build.mjs'), '--no-types'], { stdio: 'inherit' }).status !== 0) process.exit(1);
const { serve } = await import(join(dist, 'serve.js'));
const served = await serve({ root: dist, port: 0 });
const browser = await chromium.launch({ executablePath: await findChromium(), args: flags });
try {
  const page = await browser.newPage({ viewport: SIZE, colorScheme: 'light', reducedMotion: 'reduce' });
  const take = async (name, of = page) => {
    await of.evaluate(() => document.fonts.ready);
    await of.screenshot({ path: join(import.meta.dirname, `${name}.png`) });
    console.log(`tests/pictures/${name}.png`);
  };
  const control = (id) => page.locator(`[data-control="${id}"]`);
  const button = (name, of = page) => of.getByRole('button', { name });

  await flyToSplit();
  await take('drill');
  await page.keyboard.up('KeyE');
  // A picture takes longer than a page may stall in a scored run: the run that is debriefed is another.
  await page.goto('about:blank');
  await flyToSplit();
  await page.keyboard.up('KeyE');
  await page.keyboard.press('KeyS');
  await page.waitForURL(/say/, { timeout: 60_000 });
  await page.getByText('Yes', { exact: true }).first().click();
  await button('Show the debrief').click();
  await page.locator('.instruments canvas').waitFor();
  await take('debrief');

  await page.goto(`${served.url}#/bench`);
  await button('A side stops on the way to 16').first().click();
  await page.getByRole('heading', { name: 'Preview' }).waitFor();
  await take('bench');

  await page.goto(`${served.url}#/plan`);
  await button('Show the rest').click();
  await page.locator('.plan-axis').first().evaluate((axis) => {
    axis.closest('figure').scrollIntoView();
    scrollBy(0, -70); // its heading too
  });
  await take('plan');

  /** Drill 1 from its brief until the pointers stand well apart, switch held. */
  async function flyToSplit() {
    await page.goto(`${served.url}#/drill/1?seed=3`);
    await button('Start').click();
    await control('extend').waitFor();
    await control('guard').click();
    await page.locator('[data-control="guard"][aria-pressed="true"]').waitFor();
    await control('arm').click();
    await page.locator('[data-control="arm"][aria-pressed="true"]').waitFor();
    await page.keyboard.down('KeyE');
    // What the fan shows is also said for who cannot see it, to half a degree.
    await page.waitForFunction((seen) => {
      const [left, right] = ['left', 'right'].map((side) => Number.parseFloat(document.querySelector(`[data-reading="${side}Pointer"]`)?.textContent?.split(': ')[1] ?? 'NaN'));
      return Math.abs(left - right) >= seen;
    }, SEEN_DEG, { timeout: 120_000, polling: 'raf' });
  }
} finally {
  await browser.close();
  await served.close();
}
