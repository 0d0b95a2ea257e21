// The replay of the debrief: played, stepped, scrubbed by keyboard, led to a mark; instruments, charts and readings go together.
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { timelineOf } from '../../sim/index.js';
import { momentsOf } from '../../src/pages/debrief/moments.js';
import { FAULTS_OF_THE_JOB, flown, type FlownRun } from '../pages/flown.js';
import { axe, flyOut } from './drilling.js';
import { openApp } from './harness.js';

async function openRecord(page: Page, { record }: FlownRun): Promise<void> {
  await page.setInputFiles('input[type=file]', { name: 'run.json', mimeType: 'application/json', buffer: Buffer.from(JSON.stringify(record)) });
  await page.locator('.instruments canvas').waitFor();
}

const run = flown({ fault: FAULTS_OF_THE_JOB.disconnect }, 'prompt');
const timeline = timelineOf(run.record);
const scrub = (page: Page) => page.getByRole('slider', { name: 'Moment of the replay' });
const at = async (page: Page): Promise<number> => Math.round(Number(await scrub(page).inputValue()) * 100);
const reading = (page: Page, name: string) => page.locator('.readings-at dl > div', { has: page.locator(`dt:text-is("${name}")`) }).locator('dd').textContent();

/** Instruments, clock, readings and the cursor of the charts all stand at a tick. */
async function standsAt(page: Page, tick: number): Promise<void> {
  const row = timeline.rowAt(tick);
  expect(await at(page)).toBe(tick);
  expect(await page.locator('.clock').textContent()).toBe(`${(tick / 100).toFixed(2)} s`);
  expect(await page.locator('.instruments').getAttribute('aria-label')).toContain(`left ${row.leftPointerDeg.toFixed(2)}°, right ${row.rightPointerDeg.toFixed(2)}°`);
  expect(await reading(page, 'Left pointer')).toBe(`${row.leftPointerDeg.toFixed(2)}°`);
  expect(await reading(page, 'Right pointer')).toBe(`${row.rightPointerDeg.toFixed(2)}°`);
  // The cursor line lies over the time axis: its place is the part of the axis that has passed.
  const [x, from, to] = await page.locator('.figure').evaluate((figure) => {
    const grid = figure.querySelector('.grid')!;
    return [figure.querySelector('.cursor'), grid, grid].map((line, index) => Number(line!.getAttribute(index === 2 ? 'x2' : 'x1')));
  });
  expect((x! - from!) / (to! - from!)).toBeCloseTo(tick / timeline.endTick, 4);
}

const pixels = (page: Page): Promise<string> => page.locator('.instruments canvas').evaluate((canvas) => (canvas as HTMLCanvasElement).toDataURL());

test('single ticks by button and by key, both ends, and every one of them exact', async () => {
  const { page, close } = await openApp();
  await openRecord(page, run);
  const start = Math.round(run.record.score.releaseS! * 100);
  await standsAt(page, start);
  await page.getByRole('button', { name: /one tick on/ }).click();
  await standsAt(page, start + 1);
  await page.getByRole('button', { name: /one tick back/ }).dblclick();
  await standsAt(page, start - 1);
  await scrub(page).focus();
  await page.keyboard.press('ArrowLeft');
  await standsAt(page, start - 2);
  const before = await pixels(page);
  await page.keyboard.press('Home');
  await standsAt(page, 0);
  expect(await pixels(page)).not.toBe(before);
  expect(await page.getByRole('button', { name: /one tick back/ }).isDisabled()).toBe(true);
  await page.keyboard.press('End');
  await standsAt(page, timeline.endTick);
  expect(await page.getByRole('button', { name: /one tick on/ }).isDisabled()).toBe(true);
  expect(await axe(page)).toEqual([]);
  await close();
});

test('it never plays by itself; played it goes on at its rate, pauses where it is, and stops at the end', async () => {
  const { page, close } = await openApp('', { reducedMotion: 'reduce' });
  await openRecord(page, run);
  await page.getByRole('button', { name: /^onset/ }).click();
  const from = await at(page);
  expect(await page.getByRole('button', { name: 'Play', exact: true }).count()).toBe(1);
  // Ticks against the time of the page, over many frames, at one rate and at four times as much.
  const measure = (): Promise<number> => page.evaluate(() => new Promise<number>((done) => {
    const value = (): number => Number(document.querySelector<HTMLInputElement>('.moment-scrub')!.value);
    requestAnimationFrame((startMs) => {
      const first = value();
      const go = (nowMs: number): void => { if (nowMs - startMs < 900) requestAnimationFrame(go); else done(((value() - first) * 1000) / (nowMs - startMs)); };
      requestAnimationFrame(go);
    });
  }));
  expect(await measure()).toBe(0);
  await page.getByRole('button', { name: 'Play', exact: true }).click();
  const rate = await measure();
  expect(rate).toBeGreaterThan(0.85);
  expect(rate).toBeLessThan(1.15);
  await page.getByRole('button', { name: 'Pause' }).click();
  const paused = await at(page);
  expect(paused).toBeGreaterThan(from);
  expect(await measure()).toBe(0);
  await standsAt(page, paused);
  await page.getByLabel('Rate').selectOption('0.25');
  await page.getByRole('button', { name: 'Play', exact: true }).click();
  const slow = await measure();
  expect(slow).toBeGreaterThan(0.2);
  expect(slow).toBeLessThan(0.3);
  // Moved by hand while it plays, it goes on from there, and ends at the end.
  await page.getByLabel('Rate').selectOption('4');
  await scrub(page).evaluate((slider: HTMLInputElement, s) => { slider.value = String(s); slider.dispatchEvent(new Event('input', { bubbles: true })); }, timeline.endTick / 100 - 2);
  await page.getByRole('button', { name: 'Play', exact: true }).waitFor();
  await standsAt(page, timeline.endTick);
  // From the end it begins anew.
  await page.getByRole('button', { name: 'Play', exact: true }).click();
  await page.getByRole('button', { name: 'Pause' }).click();
  expect(await at(page)).toBeLessThan(timeline.endTick);
  await close();
}, 60_000);

test('as flown: over the whole window, led by the same controls, and back where it was', async () => {
  const { page, close } = await openApp('#/drill/1?seed=3');
  await flyOut(page);
  await page.getByText('Not sure').click();
  await page.getByRole('button', { name: 'Show the debrief' }).click();
  const lengthOf = (): Promise<number> => page.locator('.instruments canvas').evaluate((canvas) => canvas.clientWidth);
  await page.locator('.instruments canvas').waitFor();
  const column = await lengthOf();
  await page.getByRole('button', { name: /^As flown/ }).click();
  const whole = page.getByRole('dialog', { name: 'Replay, as flown' });
  await whole.locator('canvas').waitFor();
  await whole.getByText('Pointers as long as flown').waitFor();
  expect(await lengthOf()).toBeGreaterThan(column);
  await whole.getByRole('slider').focus();
  await page.keyboard.press('Home');
  expect(await at(page)).toBe(0);
  await whole.getByRole('button', { name: /one tick on/ }).click();
  expect(await whole.locator('.instruments').getAttribute('aria-label')).toContain('The instruments at 0.0 s');
  expect(await axe(page)).toEqual([]);
  await page.setViewportSize({ width: 700, height: 420 });
  await whole.getByText('Pointers shorter than flown').waitFor();
  await page.setViewportSize({ width: 1280, height: 720 });
  await page.keyboard.press('Escape');
  await whole.waitFor({ state: 'detached' });
  expect(await page.evaluate(() => document.activeElement?.textContent)).toContain('As flown');
  await page.locator('.instruments canvas').waitFor();
  expect([await at(page), await lengthOf()]).toEqual([1, column]);
  await close();
});

test('marks: from the list, one after the other, in the charts, from the procedure, and by a press on the charts', async () => {
  const { page, close } = await openApp();
  await openRecord(page, run);
  const moments = momentsOf(run.facts, run.record);
  const tickOf = (word: string): number => Math.ceil(moments.find((one) => one.word === word)!.atS * 100 - 1e-6);
  for (const word of ['onset', 'release', 'split called']) {
    await page.getByRole('button', { name: new RegExp(`^${word}`) }).click();
    await standsAt(page, tickOf(word));
  }
  await scrub(page).focus();
  await page.keyboard.press('Home');
  const ticks = [...new Set(moments.map(({ atS }) => Math.ceil(atS * 100 - 1e-6)))].filter((tick) => tick > 0);
  for (const tick of ticks) {
    await page.getByRole('button', { name: /mark after/ }).click();
    expect(await at(page)).toBe(tick);
  }
  expect(await page.getByRole('button', { name: /mark after/ }).isDisabled()).toBe(true);
  await page.getByRole('button', { name: /mark before/ }).click();
  expect(await at(page)).toBe(ticks.at(-2));
  await page.locator('.figure .moment', { hasText: 'onset' }).locator('text').click();
  await standsAt(page, tickOf('onset'));
  await page.getByRole('button', { name: /Lever before drive/ }).click();
  expect(await at(page)).toBe(Math.round(run.facts.flight.procedure.find(({ item }) => item === 'leverFirst')!.atS! * 100));
  const box = (await page.locator('.figure svg').boundingBox())!;
  await page.mouse.click(box.x + 200, box.y + 150);
  const pressed = await at(page);
  await page.mouse.move(box.x + 300, box.y + 150);
  expect(await at(page), 'a mouse that only passes moves nothing').toBe(pressed);
  await standsAt(page, pressed);
  await close();
});

test('the pointers as they were seen, and the true sides when they are asked for', async () => {
  const { page, close } = await openApp();
  const lying = flown({ fault: FAULTS_OF_THE_JOB.pointer }, 'prompt');
  await openRecord(page, lying);
  const tick = await at(page);
  const row = timelineOf(lying.record).rowAt(tick);
  expect(Math.abs(row.rightPointerDeg - row.rightDeg)).toBeGreaterThan(0.2);
  const label = () => page.locator('.instruments').getAttribute('aria-label');
  expect(await label()).toContain(`right ${row.rightPointerDeg.toFixed(2)}°`);
  const seen = await pixels(page);
  await page.locator('.transport').getByLabel('True sides').check();
  expect(await label()).toContain(`right ${row.rightDeg.toFixed(2)}°`);
  expect(await pixels(page)).not.toBe(seen);
  expect(await page.getByText('True travel, degrees').count()).toBe(1);
  await close();
});

test('what stands still is never left over from another moment: each is drawn as it would be drawn all anew', async () => {
  const { page, close } = await openApp();
  await openRecord(page, run);
  const frames = (): Promise<void> => page.evaluate(() => new Promise<void>((done) => { requestAnimationFrame(() => requestAnimationFrame(() => done())); }));
  const acts = run.record.commands.map(({ tick }) => tick);
  const drawn = new Set<string>();
  // To and fro, so that guard, arm, switch, lever and calls change both ways.
  for (const tick of [timeline.endTick, 0, ...acts.flatMap((one) => [one + 1, one]), Math.floor(timeline.endTick / 2)]) {
    await scrub(page).fill(String(tick / 100));
    await frames();
    const seen = await pixels(page);
    // Other colours and back: all of it is drawn anew.
    for (const colorScheme of ['dark', 'light'] as const) {
      await page.emulateMedia({ colorScheme });
      await frames();
    }
    expect(await pixels(page) === seen, `at tick ${tick}`).toBe(true);
    drawn.add(seen);
  }
  expect(drawn.size).toBeGreaterThan(acts.length);
  await close();
});

test('the page can be left at any moment: nothing is drawn into what is gone', async () => {
  const { page, close } = await openApp();
  for (const waits of [false, true]) {
    await page.setInputFiles('input[type=file]', { name: 'run.json', mimeType: 'application/json', buffer: Buffer.from(JSON.stringify(run.record)) });
    await page.locator('.figure > svg').waitFor();
    if (waits) await page.locator('.instruments canvas').waitFor();
    if (waits) await page.getByRole('button', { name: 'Play', exact: true }).click();
    await page.evaluate(() => { location.hash = '#/'; });
    await page.locator('.page-choose .opening').waitFor();
    // What was still to come comes within a few frames.
    await page.evaluate(() => new Promise<void>((done) => { requestAnimationFrame(() => requestAnimationFrame(() => requestAnimationFrame(() => done()))); }));
  }
  await close();
});

test('by day, by night and in a narrow window the instruments are drawn, none of them cut off', async () => {
  for (const [width, colorScheme] of [[1920, 'light'], [1024, 'dark'], [700, 'light'], [390, 'dark'], [320, 'light']] as const) {
    const { page, close } = await openApp('', { width, height: 800, colorScheme });
    await openRecord(page, run);
    const [canvas, place] = await page.locator('.instruments').evaluate((host) => [host.querySelector('canvas')!.clientWidth, host.clientWidth]);
    expect(canvas).toBe(place);
    expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(0);
    await close();
  }
});
