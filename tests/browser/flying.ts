// A drill of a test's own in the built app: the text of the first drill is replaced on its way to the page, and nothing else.
import type { Page } from 'playwright-core';
import { startRun } from './drilling.js';
import { appUrl, openApp, type App, type OpenOptions } from './harness.js';

/** The first drill's own title, by which its text is found in the shelf. */
const FIRST = 'A side stops on the way to 16';

const START = { massT: 48, altitudeFt: 5600, groundFt: 700, speedKt: 167, flapDeg: 4, flapLeverDeg: 16, leadingEdge: 'out' };

/** A scenario with everything plain; each key open to change. */
export const plain = (keys: Record<string, unknown> = {}): Record<string, unknown> => {
  const { start, task, ...rest } = keys as { start?: object; task?: object };
  return {
    format: 1, order: 1, title: 'plain', brief: 'Set 16 from 4.', airframe: 'airframe-a',
    start: { ...START, ...start }, task: { settings: [16], limitS: 120, ...task }, ...rest,
  };
};

async function putFirst(page: Page, scenario: Record<string, unknown>): Promise<void> {
  const text = JSON.stringify(scenario).replaceAll('\\', '\\\\').replaceAll('`', '\\`').replaceAll('${', '\\${');
  // Which script carries the drills is the bundler's affair. The script is fetched by the test: an answer fetched by the page is gone with it,
  // and a page may be left while a later script is on its way.
  await page.route('**/assets/*.js', async (route) => {
    const response = await fetch(route.request().url());
    const body = await response.text();
    const answer = { status: response.status, headers: Object.fromEntries(response.headers) };
    const at = body.indexOf(FIRST);
    if (at < 0) return route.fulfill({ ...answer, body });
    const [from, to] = [body.lastIndexOf('`', at), body.indexOf('`', at)];
    if (from < 0 || to < 0) throw new Error('the first drill is not on the shelf as a text');
    await route.fulfill({ ...answer, body: body.slice(0, from + 1) + text + body.slice(to) });
  });
}

/** The app with this scenario as its first drill, at its brief. */
export async function openScenario(scenario: Record<string, unknown>, { before, ...options }: OpenOptions = {}, path = '#/drill/1?seed=3'): Promise<App> {
  const app = await openApp('about:blank', options);
  if (before) await app.page.addInitScript(before);
  await putFirst(app.page, scenario);
  await app.page.goto(new URL(path, appUrl()).href);
  return app;
}

/** The same, started. */
export async function flyScenario(scenario: Record<string, unknown>, options: OpenOptions = {}): Promise<App> {
  const app = await openScenario(scenario, options);
  await startRun(app.page);
  return app;
}
