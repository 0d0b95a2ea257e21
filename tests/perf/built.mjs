// What is shipped: dist, built anew where it is stale, and served.
import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { chromium } from 'playwright-core';
import { dist, isFresh, top } from '../../src/tools/fresh.mjs';
import { findChromium, flags } from '../browser/chromium.mjs';

export { dist };
export const cli = join(dist, 'cli.js');

export function built() {
  if (isFresh()) return;
  const { status } = spawnSync(process.execPath, [join(top, 'src/tools/build.mjs'), '--no-types'], { stdio: ['ignore', 'ignore', 'inherit'] });
  if (status !== 0) throw new Error('The app does not build.');
}

/** A folder served as the app is, in a browser of its own; all closed behind the work. */
export async function inBrowser(folder, work, more = []) {
  built();
  const executablePath = await findChromium();
  const { serve } = await import(pathToFileURL(join(dist, 'serve.js')).href);
  const served = await serve({ root: folder, port: 0 });
  const browser = await chromium.launch({ executablePath, args: [...flags, ...more] });
  try {
    return await work(browser, served.url);
  } finally {
    await browser.close();
    await served.close();
  }
}

const FIRST = 'A side stops on the way to 16';

/** A page in which the first drill is a scenario of the bench's own: its text is replaced on its way, and nothing else. */
export async function withDrill(browser, scenario) {
  const page = await browser.newPage({ viewport: { width: 1280, height: 720 } });
  const text = JSON.stringify(scenario);
  await page.route('**/assets/*.js', async (route) => {
    const response = await route.fetch();
    const body = await response.text();
    const at = body.indexOf(FIRST);
    await route.fulfill({ response, body: at < 0 ? body : body.slice(0, body.lastIndexOf('`', at) + 1) + text + body.slice(body.indexOf('`', at)) });
  });
  return page;
}

/** A drill with nothing in it that would end it soon. */
export const LONG = {
  format: 1, order: 1, title: 'bench', brief: 'bench', airframe: 'airframe-a', task: { settings: [16], limitS: 600 },
  start: { massT: 48, altitudeFt: 5600, groundFt: 700, speedKt: 167, flapDeg: 4, flapLeverDeg: 16, leadingEdge: 'out' },
};

/** From its brief into a run. */
export async function started(page, url) {
  await page.goto(`${url}#/drill/1?seed=3`);
  await page.getByRole('button', { name: 'Start' }).click();
  await page.locator('[data-control="extend"]').waitFor();
}
