// The preview of the bench: the run that the command line flies, drawn within two frames of an edit; sweeps that say the same as
// the command line; the row of dice; a start from a moment; own files, links and the way into a run and back.
import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { ready, scenarioSchema, sweepOutput } from '../../sim/files/index.js';
import { flyTrainee } from '../../sim/index.js';
import { linkCode } from '../../src/records/link.js';
import { json } from '../cli/typed.js';
import { AIRFRAME, drill } from '../sim/bench.js';
import { axe, readAll } from './drilling.js';
import { plain } from './flying.js';
import { openApp, type App, type OpenOptions } from './harness.js';

const shipped = (name: string): string => readFileSync(new URL(`../../scenarios/drills/${name}.json`, import.meta.url), 'utf8');

/** The bench with a text on it, previewed. */
async function openBench(text: string, options: OpenOptions = {}): Promise<App> {
  const app = await openApp(`#/bench?s=${await linkCode(text)}`, options);
  await app.page.locator('[data-hash]').waitFor();
  return app;
}

const hashShown = (page: Page): Promise<string | null> => page.locator('[data-hash]').getAttribute('data-hash');

test('shows the very run that `run` flies, and another within two frames of an edit', async () => {
  const { page, close } = await openBench(shipped('set-16-from-4'));
  expect(new URL(page.url()).hash).toBe('#/bench');
  const hashOf = (trainee: 'steady' | 'never', seed: number): string => flyTrainee(drill('set-16-from-4'), AIRFRAME, seed, trainee).flight.hash;
  expect(await hashShown(page)).toBe(hashOf('steady', 1));
  await page.getByRole('button', { name: 'Next seed' }).click();
  await expect.poll(() => hashShown(page)).toBe(hashOf('steady', 2));
  await page.getByLabel('Flown by').selectOption('never');
  await expect.poll(() => hashShown(page)).toBe(hashOf('never', 2));
  await page.getByText('The hand stayed on').waitFor();
  // An edit, made at the beginning of a frame: counted are the frames that begin before the new run is in the page.
  const measured = await page.evaluate(async () => {
    const frame = (): Promise<number> => new Promise((done) => { requestAnimationFrame(done); });
    const shown = (): string => document.querySelector('[data-hash]')?.getAttribute('data-hash') ?? '';
    const field = document.querySelector<HTMLInputElement>('.who input')!;
    const frames: number[] = [];
    const ms: number[] = [];
    for (let seed = 11; seed < 31; seed += 1) {
      await frame();
      const before = shown();
      const fromMs = performance.now();
      field.value = String(seed);
      field.dispatchEvent(new InputEvent('input', { bubbles: true }));
      let waited = 0;
      while (shown() === before && waited < 100) {
        await frame();
        waited += 1;
      }
      frames.push(waited);
      ms.push(performance.now() - fromMs);
    }
    return { frames, ms: ms.sort((a, b) => a - b) };
  });
  console.log(`edit to drawn, frames: ${measured.frames.join(' ')}; ms: median ${measured.ms[10]?.toFixed(1)}, worst ${measured.ms.at(-1)?.toFixed(1)}`);
  expect(Math.max(...measured.frames)).toBeLessThanOrEqual(2);
  await close();
});

test('a run of an hour is flown by a worker: the page goes on, and what is asked last is what is shown', async () => {
  const text = JSON.stringify(plain({ faults: [{ name: 'd', kind: 'dead', when: { atS: 0 } }], task: { limitS: 3600 } }));
  const { page, close } = await openBench(text);
  await page.getByLabel('Flown by').selectOption('never');
  // Five edits while the worker is at the first; none of them may hold a frame up for as long as a run takes.
  const longest = await page.evaluate(async () => {
    const field = document.querySelector<HTMLInputElement>('.who input')!;
    let [last, most] = [performance.now(), 0];
    for (let seed = 2; seed < 7; seed += 1) {
      field.value = String(seed);
      field.dispatchEvent(new InputEvent('input', { bubbles: true }));
      await new Promise(requestAnimationFrame);
      const now = performance.now();
      most = Math.max(most, now - last);
      last = now;
    }
    return most;
  });
  console.log(`longest frame while a run of an hour is asked for: ${longest.toFixed(0)} ms`);
  await page.getByText('Flying a long run').waitFor({ state: 'detached' });
  const { hash } = flyTrainee(ready(scenarioSchema.parse(JSON.parse(text)), AIRFRAME), AIRFRAME, 6, 'never').flight;
  expect(await hashShown(page)).toBe(hash);
  await close();
}, 90_000);

test('a text with problems keeps the last sound run, and says so', async () => {
  const { page, close } = await openBench(shipped('set-16-from-4'));
  const before = await hashShown(page);
  await page.getByLabel('Speed').first().fill('9999');
  await page.getByText('This is what it came to before').waitFor();
  expect(await hashShown(page)).toBe(before);
  await page.getByRole('button', { name: 'Undo' }).click();
  await page.getByText('This is what it came to before').waitFor({ state: 'detached' });
  await close();
});

test('a sweep says what `sweep --json` says, can be stopped, and is marked when the scenario has changed', async () => {
  const { page, close } = await openBench(shipped('set-16-from-4'));
  await page.locator('.sweep select').selectOption('10000');
  await page.getByRole('button', { name: /^Sweep/ }).click();
  await page.getByRole('progressbar', { name: 'Runs flown' }).waitFor();
  await page.getByRole('button', { name: 'Stop', exact: true }).click();
  await page.getByRole('progressbar').waitFor({ state: 'detached' });
  expect(await page.locator('[data-sweep]').count()).toBe(0);
  await page.locator('.sweep select').selectOption('100');
  await page.getByRole('button', { name: /^Sweep/ }).click();
  await page.locator('[data-sweep]').waitFor({ timeout: 40_000 });
  const [download] = await Promise.all([page.waitForEvent('download'), page.getByRole('button', { name: 'Save these figures' }).click()]);
  const saved = sweepOutput.parse(JSON.parse(await readAll(download)));
  const { value } = await json(sweepOutput, 'sweep', 'set-16-from-4', '--trainee', 'steady', '--runs', '100', '--seed', '1', '--workers', '1');
  expect({ ...saved, scenario: value.scenario }).toEqual(value);
  expect(await axe(page)).toEqual([]);
  await page.getByRole('button', { name: 'Next seed' }).click();
  await page.getByText('These are the figures from before').waitFor();
  await page.getByText('The same with other dice').click();
  await page.getByText('Fly seed 8').waitFor();
  const { outcome, score } = flyTrainee(drill('set-16-from-4'), AIRFRAME, 4, 'steady').flight;
  const row = page.locator('.variants li').filter({ hasText: 'Fly seed 4' });
  await row.filter({ hasText: outcome }).filter({ hasText: `onset ${score.onsetS?.toFixed(1)}` }).waitFor();
  await row.getByRole('button').first().click();
  expect(await page.getByLabel('Seed', { exact: true }).inputValue()).toBe('4');
  await close();
}, 120_000);
