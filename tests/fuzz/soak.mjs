// Hours of running: one page that lives all the time and goes round as a person would, watched for what it keeps and complains of.
// Figures, not a test: node tests/fuzz/soak.mjs [--minutes 120] [--seed 1] [--log FILE]. Exits 1 when anything complained, a record
// did not verify, or the heap of the last quarter is more than a tenth above that of the second.
import { spawnSync } from 'node:child_process';
import { appendFileSync, cpSync, mkdirSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { parseArgs } from 'node:util';
import { chromium } from 'playwright-core';
import { dist, isFresh, top } from '../../src/tools/fresh.mjs';
import { findChromium, flags } from '../browser/chromium.mjs';

const { values } = parseArgs({ options: { minutes: { type: 'string', default: '120' }, seed: { type: 'string', default: '1' }, log: { type: 'string' } } });
const until = Date.now() + Number(values.minutes) * 60_000;
const log = values.log ?? join(top, '.cache/fuzz/soak.log');
mkdirSync(dirname(log), { recursive: true });
const say = (line) => { console.log(line); appendFileSync(log, `${line}\n`); };

/** A small generator, so that a round comes again by its seed. */
let state = Number(values.seed) >>> 0;
const dice = () => { state = (Math.imul(state, 1664525) + 1013904223) >>> 0; return state / 4294967296; };
const upTo = (most) => Math.floor(dice() * most);

if (!isFresh()) {
  const { status } = spawnSync(process.execPath, [join(top, 'src/tools/build.mjs'), '--no-types'], { stdio: 'inherit' });
  if (status !== 0) process.exit(1);
}
// What is served is a copy: a build meanwhile changes nothing under the page's feet.
const folder = mkdtempSync(join(tmpdir(), 'evenhand-soak-'));
cpSync(dist, join(folder, 'dist'), { recursive: true });
for (const one of ['package.json', 'scenarios', 'public']) cpSync(join(top, one), join(folder, one), { recursive: true });
const cli = join(folder, 'dist/cli.js');
const { serve } = await import(pathToFileURL(join(folder, 'dist/serve.js')).href);
const served = await serve({ root: join(folder, 'dist'), port: 0 });
const browser = await chromium.launch({ executablePath: await findChromium(), args: flags });
const page = await browser.newPage({ viewport: { width: 1024, height: 700 } });
page.setDefaultTimeout(30_000);
const session = await page.context().newCDPSession(page);
await session.send('Performance.enable');

const problems = [];
const complain = (line) => { problems.push(line); say(`! ${line}`); };
page.on('console', (message) => { if (['error', 'warning'].includes(message.type())) complain(`console ${message.type()}: ${message.text()}`); });
page.on('pageerror', (error) => complain(`page error: ${error.stack ?? error.message}`));
page.on('crash', () => complain('the page crashed'));
page.on('requestfailed', (request) => { const why = request.failure()?.errorText ?? ''; if (why !== 'net::ERR_ABORTED') complain(`request failed: ${request.url()} ${why}`); });
page.on('response', (response) => { if (response.status() >= 400) complain(`answer ${response.status()}: ${response.url()}`); });

const measured = [];
const counts = { rounds: 0, runs: 0, records: 0, stumbles: 0, reloads: 0, entries: 0 };
let measuredAt = 0;

/** Entries of the logbook, by the browser's own store. */
const inBook = () => page.evaluate(() => new Promise((done) => {
  const opening = indexedDB.open('evenhand');
  opening.addEventListener('success', () => {
    if (!opening.result.objectStoreNames.contains('entries')) { opening.result.close(); done(0); return; }
    const count = opening.result.transaction('entries').objectStore('entries').count();
    count.addEventListener('success', () => { opening.result.close(); done(count.result); });
  });
}));

/** About once a minute, always on the first page, so that like is compared with like. */
async function measure() {
  if (Date.now() - measuredAt < 60_000) return;
  measuredAt = Date.now();
  await go('#/');
  await page.getByRole('heading', { level: 1 }).first().waitFor();
  await page.waitForTimeout(500);
  counts.entries = await inBook();
  await session.send('HeapProfiler.collectGarbage');
  const { metrics } = await session.send('Performance.getMetrics');
  const of = (name) => metrics.find((one) => one.name === name)?.value ?? 0;
  const row = { minute: Math.round((Number(values.minutes) * 60_000 - (until - Date.now())) / 60_000), heapMB: of('JSHeapUsedSize') / 1e6, nodes: of('Nodes'), listeners: of('JSEventListeners'), documents: of('Documents'), workers: page.workers().length, ...counts, problems: problems.length };
  measured.push(row);
  say(`${String(row.minute).padStart(4)} min  heap ${row.heapMB.toFixed(1)} MB  nodes ${row.nodes}  listeners ${row.listeners}  documents ${row.documents}  workers ${row.workers}  entries ${row.entries}  rounds ${row.rounds}  runs ${row.runs}  records verified ${row.records}  stumbles ${row.stumbles}  problems ${row.problems}`);
}

const control = (id) => page.locator(`[data-control="${id}"]`);
/** By the fragment alone, as a link does: the page itself lives on. */
const go = async (fragment) => { await page.evaluate((to) => { location.hash = to; }, fragment); };
const button = (name) => page.getByRole('button', { name });

/** The hand: guard, arm, a lever, holds of the switch with a call behind some of them. A run that ends meanwhile is over. */
async function hand() {
  await control('extend').waitFor();
  counts.runs += 1;
  const flying = () => control('extend').isVisible();
  for (const key of ['KeyG', 'KeyA', 'KeyF']) { await page.keyboard.press(key); await page.waitForTimeout(150 + upTo(500)); }
  for (let holds = 1 + upTo(3); holds > 0 && (await flying()); holds -= 1) {
    const key = dice() < 0.8 ? 'KeyE' : 'KeyR';
    await page.keyboard.down(key);
    await page.waitForTimeout(1000 + upTo(9000));
    await page.keyboard.up(key);
    await page.waitForTimeout(upTo(800));
    if (dice() < 0.5 && (await flying())) await page.keyboard.press(['KeyS', 'KeyC', 'KeyX', 'KeyV', 'Digit7', 'Digit8'][upTo(6)]);
  }
  await page.waitForTimeout(upTo(1500));
}

/** Out of the run, or already out of it: `beyond` is what stands behind it. */
async function endRun(beyond) {
  await page.keyboard.press('Escape');
  await button('End the run').or(beyond).first().waitFor();
  if (await button('End the run').isVisible()) await button('End the run').click();
  await beyond.first().waitFor();
}

async function verified() {
  const [download] = await Promise.all([page.waitForEvent('download'), button('Save record').click()]);
  const file = await download.path();
  const { status, stdout, stderr } = spawnSync(process.execPath, [cli, 'verify', file], { encoding: 'utf8' });
  if (status !== 0) complain(`a record does not verify: ${stdout}${stderr}`.slice(0, 400));
  counts.records += 1;
  await download.delete();
}

const visits = {
  async drill() {
    await go(`#/drill/${1 + upTo(28)}?seed=${upTo(1000)}`);
    await button('Start').click();
    await hand();
    await endRun(page.getByText('Was there a split?'));
    await page.getByText(['Yes', 'No', 'Not sure'][upTo(3)], { exact: true }).first().click();
    await button('Show the debrief').click();
    await button('Save record').waitFor();
    await verified();
    const scrub = page.getByRole('slider', { name: 'Moment of the replay' });
    await scrub.focus();
    for (let presses = 5 + upTo(30); presses > 0; presses -= 1) await page.keyboard.press(['ArrowRight', 'PageDown', 'Home', 'End', 'ArrowLeft'][upTo(5)]);
  },
  async practice() {
    await go('#/practice');
    await button(/^(First|Next) run$/).click();
    await hand();
    await endRun(button('Next run'));
  },
  async set() {
    await go('#/set/1');
    const again = button('Fly the set again');
    const begin = button('Start the set').or(button(/^(First run|Run \d+)$/));
    await begin.or(again).first().waitFor();
    if (await again.isVisible()) await again.click();
    await begin.first().click();
    await hand();
    await endRun(page.getByRole('heading', { name: 'Was there a split?' }));
    await page.getByRole('button', { name: ['Yes', 'No'][upTo(2)], exact: true }).click();
    await page.getByRole('heading', { name: 'Was there a split?' }).waitFor({ state: 'hidden' });
  },
  async bench() {
    await go('#/bench');
    await button('New scenario').or(button('All files')).first().waitFor();
    if (await button('All files').isVisible()) await button('All files').click();
    await button('New scenario').click();
    await page.getByLabel('Add a fault').selectOption(['lag', 'disconnect', 'slip', 'pointer'][upTo(4)]);
    for (const mass of ['44', '46', '50', '48']) { await page.getByLabel('Mass').first().fill(mass); await page.waitForTimeout(250); }
    await button('Undo').first().click();
    if (await button('Discard').isVisible()) await button('Discard').click();
  },
  async pages() {
    for (const [fragment, heading] of [['#/', 1], ['#/plan', 1], ['#/course', 1], ['#/course/1', 1], ['#/logbook', 1], ['#/person', 1], ['#/help', 1], ['#/class', 1], ['#/settings', 1], ['#/size', 1], ['#/desk', 1]]) {
      await go(fragment);
      await page.getByRole('heading', { level: heading }).first().waitFor();
      await page.waitForTimeout(400);
    }
  },
};

/** To the first page as a link goes there; a page that cannot even do that is opened anew, and that is told. */
async function home() {
  try {
    await go('#/');
    await page.getByRole('heading', { level: 1 }).first().waitFor({ timeout: 10_000 });
  } catch {
    complain(`the first page does not come: ${page.url()}`);
    counts.reloads += 1;
    await page.goto('about:blank');
    await page.goto(served.url);
  }
}

say(`soak: ${values.minutes} minutes, seed ${values.seed}, ${new Date().toISOString()}`);
await page.goto(served.url);
while (Date.now() < until) {
  for (const [name, visit] of Object.entries(visits)) {
    if (Date.now() >= until) break;
    try {
      await visit();
    } catch (trouble) {
      // A drill that asked for something else than this hand gives; told, counted, and gone on from the first page.
      counts.stumbles += 1;
      say(`~ ${name}: ${String(trouble.message).split('\n')[0]} at ${page.url().replace(served.url, '')}`);
      for (const key of ['KeyE', 'KeyR']) await page.keyboard.up(key);
      await home();
    }
    await measure();
  }
  counts.rounds += 1;
}
await browser.close();
await served.close();
rmSync(folder, { recursive: true });

const mean = (rows) => rows.reduce((sum, { heapMB }) => sum + heapMB, 0) / Math.max(1, rows.length);
const quarter = Math.max(1, Math.floor(measured.length / 4));
const [second, last] = [measured.slice(quarter, 2 * quarter), measured.slice(-quarter)];
say(`heap ${mean(measured.slice(0, quarter)).toFixed(1)} MB in the first quarter, ${mean(second).toFixed(1)} in the second, ${mean(last).toFixed(1)} in the last; ${JSON.stringify(counts)}; problems ${problems.length}`);
process.exitCode = problems.length > 0 || mean(last) > 1.1 * mean(second) ? 1 : 0;
