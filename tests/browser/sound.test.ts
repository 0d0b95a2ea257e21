// The sounds as a real browser renders them: the numbers that the plan promises, measured on what comes out.
import { fileURLToPath } from 'node:url';
import type { Page } from 'playwright-core';
import { beforeAll, describe, expect, test } from 'vitest';
import { build } from 'vite';
import { PLANS, type SoundName } from '../../src/sound/plan.js';
import { levels, likeness, modulationHz, onsets, peaks } from '../sound/spectrum.js';
import { axe, reading, startRun } from './drilling.js';
import { openApp } from './harness.js';

const RATE = 48_000;
let code = '';

beforeAll(async () => {
  const entry = fileURLToPath(new URL('sound-entry.ts', import.meta.url));
  const built = await build({ configFile: false, logLevel: 'error', build: { write: false, minify: false, lib: { entry, formats: ['iife'], name: 'sound' } } });
  const [bundle] = (Array.isArray(built) ? built : [built]) as { output: { code: string }[] }[];
  code = bundle!.output[0]!.code;
});

/** Puts what `src/sound` exports into the page, as `sound`. */
const withSound = async (page: Page): Promise<void> => { await page.evaluate(`${code};globalThis.sound = sound;`); };

/** Renders a sound by the browser's own engine, off line; cut at a time or left alone. */
async function rendered(page: Page, name: SoundName, lastsS: number, cutS: number | null = null): Promise<number[]> {
  return page.evaluate(async ({ plan, rate, seconds, cut }) => {
    const { render } = (globalThis as unknown as { sound: { render(context: BaseAudioContext, into: AudioNode, plan: unknown, atS: number): { cut(atS: number): void } } }).sound;
    const context = new OfflineAudioContext(1, seconds * rate, rate);
    const voice = render(context, context.destination, plan, 0.1);
    if (cut !== null) voice.cut(cut);
    return [...(await context.startRendering()).getChannelData(0)];
  }, { plan: PLANS[name], rate: RATE, seconds: lastsS, cut: cutS });
}

describe('rendered', () => {
  test('the horn: fundamental, harmonics, changes a second, rise, and it goes on', async () => {
    const { page, close } = await openApp();
    await withSound(page);
    const horn = await rendered(page, 'horn', 4);
    await close();
    const since = horn.slice(0.1 * RATE);
    const strong = peaks(since.slice(0, 2 * RATE), RATE, 20);
    expect(strong[0]!.hz).toBeGreaterThan(500);
    expect(strong[0]!.hz).toBeLessThan(3000);
    // MIL-STD-1472E: fundamental 500 to 3000 Hz. FAA human-factors course: four or more from 1000 to 4000 Hz, harmonic; 1 to 3 changes a second.
    expect(Math.min(...strong.map(({ hz }) => hz))).toBeCloseTo(560, -1);
    const ofLow = strong.filter(({ hz }) => hz >= 1000 && hz <= 4000 && Math.abs(hz / 560 - Math.round(hz / 560)) < 0.01);
    expect(ofLow.length).toBeGreaterThanOrEqual(4);
    const changes = modulationHz(since, RATE);
    expect(changes).toBeGreaterThanOrEqual(1);
    expect(changes).toBeLessThanOrEqual(3);
    // Silent before its start, then nothing to full within 50 ms.
    expect(horn.slice(0, 0.1 * RATE).every((one) => one === 0)).toBe(true);
    const loud = levels(since, RATE, 0.005);
    const full = Math.max(...loud);
    expect(loud.findIndex((one) => one > 0.8 * full) * 0.005).toBeLessThanOrEqual(0.05);
    expect(onsets(horn, RATE).length).toBe(8);
  });

  test('the autopilot-off sound ends by itself after 1.6 s, and its first half second is not the horn’s', async () => {
    const { page, close } = await openApp();
    await withSound(page);
    const [horn, off] = [await rendered(page, 'horn', 1), await rendered(page, 'autopilotOff', 3)];
    await close();
    const half = (samples: number[]): number[] => samples.slice(0.1 * RATE, 0.6 * RATE);
    expect(likeness(half(horn), half(off), RATE)).toBeLessThan(0.2);
    expect([onsets(half(horn), RATE).length, onsets(half(off), RATE).length]).toEqual([1, 4]);
    expect(onsets(off, RATE)).toHaveLength(8);
    expect(off.slice(1.71 * RATE).every((one) => one === 0)).toBe(true);
  });

  test('cut: silent within 20 ms, no step larger than the sound itself makes', async () => {
    const { page, close } = await openApp();
    await withSound(page);
    const [whole, cut] = [await rendered(page, 'horn', 1), await rendered(page, 'horn', 1, 0.25)];
    await close();
    const steps = (samples: number[]): number => samples.reduce((most, one, at) => Math.max(most, Math.abs(one - (samples[at - 1] ?? 0))), 0);
    expect(cut.slice(0, 0.25 * RATE)).toEqual(whole.slice(0, 0.25 * RATE));
    expect(cut.slice(0.271 * RATE).every((one) => one === 0)).toBe(true);
    expect(steps(cut)).toBeLessThanOrEqual(steps(whole));
  });
});

interface Speaking {
  unlock(): void;
  begin(): void;
  hear(heard: { horn: boolean; autopilotOff: boolean } | null): void;
  loudness(part: number): void;
  close(): void;
}

test('the speaker: unlocked by a press, heard within 100 ms of its cause, one at a time, silent when blanked, closed', async () => {
  const { page, close } = await openApp('', { before: spy });
  await withSound(page);
  await page.evaluate(() => {
    const all = globalThis as unknown as { sound: { openSpeaker(): Speaking }; speaker: Speaking };
    all.speaker = all.sound.openSpeaker();
    document.addEventListener('click', () => { all.speaker.unlock(); all.speaker.begin(); }, { once: true });
  });
  await page.locator('h1').click();
  await page.waitForFunction(() => (globalThis as unknown as Spied).contexts[0]?.state === 'running');
  const told = await page.evaluate(async () => {
    const { speaker, starts, cuts, contexts, gains } = globalThis as unknown as Spied & { speaker: Speaking };
    const context = contexts[0]!;
    const QUIET = { horn: false, autopilotOff: false };
    speaker.hear(QUIET);
    const asked = context.currentTime;
    speaker.hear({ ...QUIET, horn: true });
    speaker.hear({ ...QUIET, horn: true });
    const horn = { begun: starts.length, waitS: starts[0]! - asked, latencyS: context.baseLatency + context.outputLatency };
    // Into the first cycle, and not near its end.
    while (context.currentTime < starts[0]! + 0.2) await new Promise(requestAnimationFrame);
    speaker.hear({ horn: true, autopilotOff: true });
    const both = { begun: starts.length, gap: starts[1]! - cuts[0]! };
    speaker.loudness(0);
    while (gains[0]!.gain.value > 0.001) await new Promise(requestAnimationFrame);
    speaker.hear(null);
    const blanked = { begun: starts.length, cuts: cuts.length };
    const closed = new Promise((done) => context.addEventListener('statechange', done, { once: true }));
    speaker.close();
    await closed;
    return { horn, both, blanked, state: context.state };
  });
  expect(told.horn.begun).toBe(1);
  expect(told.horn.waitS + told.horn.latencyS).toBeLessThan(0.1);
  // The second begins where the first is cut: never both.
  expect(told.both).toEqual({ begun: 2, gap: 0 });
  expect(told.blanked).toEqual({ begun: 2, cuts: 2 });
  expect(told.state).toBe('closed');
  await close();
});

test('without any sound device the speaker is silent and nothing else fails', async () => {
  const { page, close } = await openApp('', { before: () => { (globalThis as unknown as { AudioContext: unknown }).AudioContext = function none() { throw new Error('no device'); }; } });
  await withSound(page);
  await page.evaluate(() => {
    const speaker = (globalThis as unknown as { sound: { openSpeaker(): Speaking } }).sound.openSpeaker();
    speaker.unlock();
    speaker.begin();
    speaker.hear({ horn: true, autopilotOff: true });
    speaker.loudness(0.5);
    speaker.close();
  });
  await close();
});

test('in a run: the horn is heard with its caption, is muted by M apart from its own silence, is quiet in a pause, and leaves with the run', async () => {
  const { page, close } = await openApp('#/drill/8?seed=3', { before: spy });
  await startRun(page, 8);
  const spied = <T>(read: (one: Spied) => T): Promise<T> => page.evaluate(`(${String(read)})(globalThis)`) as Promise<T>;
  expect(await spied(({ contexts }) => contexts.map(({ state }) => state))).toEqual(['running']);
  // The levers come back on the path down; the alert is told by the twins as soon as it is drawn.
  await page.evaluate(() => {
    const told = document.querySelector('[data-reading="alerts"]')!;
    const spied = globalThis as unknown as Spied;
    new MutationObserver((_, watch) => {
      if (!/horn/i.test(told.textContent ?? '')) return;
      spied.toldMs = performance.now();
      watch.disconnect();
    }).observe(told, { childList: true, characterData: true, subtree: true });
  });
  await page.waitForFunction(() => { const { toldMs, calledMs } = globalThis as unknown as Spied; return toldMs > 0 && calledMs.length > 0; }, undefined, { timeout: 50_000 });
  expect(Math.abs(await spied(({ toldMs, calledMs }) => calledMs[0]! - toldMs))).toBeLessThan(100);
  const volume = () => spied(({ gains }) => gains[0]!.gain.value);
  expect(await volume()).toBeCloseTo(0.49, 2);
  await page.keyboard.press('m');
  await page.getByRole('button', { name: 'Sound off' }).waitFor();
  await expect.poll(volume).toBeLessThan(0.001);
  // The aeroplane still sounds its horn: only the page is quiet.
  expect(await reading(page, 'alerts').textContent()).toMatch(/gear horn/);
  expect(await spied(({ cuts }) => cuts.length)).toBe(0);
  await page.keyboard.press('m');
  await expect.poll(volume).toBeGreaterThan(0.48);
  expect(await axe(page)).toEqual([]);
  // A pause is silent, and going on sounds it again.
  await page.keyboard.press('Escape');
  await expect.poll(() => spied(({ cuts }) => cuts.length)).toBe(1);
  await page.getByRole('button', { name: 'Go on' }).click();
  await expect.poll(() => spied(({ starts }) => starts.length)).toBe(2);
  await page.goBack();
  await expect.poll(() => spied(({ contexts }) => contexts.map(({ state }) => state))).toEqual(['closed']);
  await close();
});

interface Spied {
  contexts: AudioContext[];
  gains: GainNode[];
  /** Of the page's clock: when a sound was started, and when the alert was told. */
  calledMs: number[];
  toldMs: number;
  /** Times of the contexts at which sounds start, and are cut. */
  starts: number[];
  cuts: number[];
}

/** Runs in the page: notes every context, start and cut. */
function spy(): void {
  const spied = globalThis as unknown as Spied & { AudioContext: typeof AudioContext; GainNode: typeof GainNode };
  Object.assign(spied, { contexts: [], gains: [], starts: [], cuts: [], calledMs: [], toldMs: 0 });
  const { AudioContext: Context, GainNode: Gain } = spied;
  spied.AudioContext = class extends Context {
    constructor(options?: AudioContextOptions) {
      super(options);
      spied.contexts.push(this);
    }
  };
  spied.GainNode = class extends Gain {
    constructor(context: BaseAudioContext, options?: GainOptions) {
      super(context, options);
      spied.gains.push(this);
    }
  };
  const start = AudioBufferSourceNode.prototype.start;
  AudioBufferSourceNode.prototype.start = function noted(at = 0) {
    spied.starts.push(at);
    spied.calledMs.push(performance.now());
    start.call(this, at);
  };
  const ramp = AudioParam.prototype.linearRampToValueAtTime;
  AudioParam.prototype.linearRampToValueAtTime = function noted(value, at) {
    spied.cuts.push(at - 0.02);
    return ramp.call(this, value, at);
  };
}
