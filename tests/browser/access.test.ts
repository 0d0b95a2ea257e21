/**
 * Access on every page and in every state. Limits: WCAG 2.2 (W3C Recommendation), success criteria named beside each;
 * the rules of axe-core; 44 px for a target is 2.5.5 and this project's own aim, above the 24 px of 2.5.8.
 */
import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { contrast, palettes, TEXT } from '../view/colours.js';
import { axe } from './drilling.js';
import { everywhere, isRun, withCallout } from './everywhere.js';
import { openApp } from './harness.js';
import { clipped, focusStops, moving, narrowTargets, systemPaper, textPairs, wider } from './seen.js';

const css = readFileSync(new URL('../../src/pages/look/tokens.css', import.meta.url), 'utf8');

const plain = palettes(css.slice(0, css.indexOf('@media')));
const MEASURED = new Set<string>(TEXT.map((pair) => pair.join(' on ')));

/** Tab goes through everything in order and out again, each stop seen whole with a ring of 3:1 (2.1.2, 2.4.3, 2.4.7, 2.4.11, 1.4.11). */
async function focusProblems(page: Page, upTo?: number): Promise<string[]> {
  const stops = await focusStops(page, upTo);
  return [
    ...(stops.length < 2 ? [`only ${stops.length} stops`] : []),
    ...stops.flatMap(({ what, order, hidden, ring }) => [
      ...(order <= 0 ? [`${what} is out of order`] : []),
      ...(hidden ? [`${what} is hidden while it has the focus`] : []),
      ...(ring === null ? [`${what} has no ring`] : ring.px < 2 || contrast(ring.ink, ring.paper) < 3 ? [`${what}: a ring of ${ring.px} px, ${contrast(ring.ink, ring.paper).toFixed(2)}:1`] : []),
    ]),
  ];
}

/** Nothing is wider than the window, and no words are cut off. */
const cutProblems = async (page: Page): Promise<string[]> => [
  ...((await wider(page)) > 0 ? [`wider than the window by ${await wider(page)} px`] : []),
  ...(await clipped(page)).map((one) => `cut off: ${one}`),
];

const LONG_MS = 420_000;

type Findings = Record<'axe' | 'day' | 'night' | 'forced' | 'focus' | 'moves' | 'targets' | 'small' | 'narrow' | 'halved' | 'twice', string[]>;

/** Once the page has drawn itself anew. */
const drawn = (page: Page): Promise<unknown> => page.evaluate(() => new Promise((done) => { requestAnimationFrame(() => requestAnimationFrame(done)); }));

async function sized(page: Page, width: number, height: number): Promise<void> {
  await page.setViewportSize({ width, height });
  await drawn(page);
}

/** Every state is come to once and looked at in every way, since coming there is what takes time. */
async function walk(): Promise<{ found: Findings; pairs: number }> {
  const found: Findings = { axe: [], day: [], night: [], forced: [], focus: [], moves: [], targets: [], small: [], narrow: [], halved: [], twice: [] };
  let pairs = 0;
  await everywhere({ colorScheme: 'light' }, async (page, name) => {
    const note = (kind: keyof Findings, wrong: readonly string[]): void => { found[kind].push(...wrong.map((one) => `${name}: ${one}`)); };
    const colours = async (kind: 'day' | 'night', time: 0 | 1): Promise<void> => {
      const tokens = Object.fromEntries(Object.entries(plain).map(([token, both]) => [both[time], token]));
      const seen = await textPairs(page);
      pairs += seen.length;
      note(kind, seen.flatMap(({ text, ink, paper }) => {
        const pair = `${tokens[ink] ?? ink} on ${tokens[paper] ?? paper}`;
        return MEASURED.has(pair) ? [] : [`not measured: ${pair}: ${text}`];
      }));
    };
    note('axe', await axe(page));
    await colours('day', 0);
    note('targets', await narrowTargets(page));
    note('focus', await focusProblems(page));

    await page.emulateMedia({ colorScheme: 'dark' });
    await drawn(page);
    await colours('night', 1);
    note('focus', await focusProblems(page, SOME_STOPS));

    await page.emulateMedia({ colorScheme: 'dark', forcedColors: 'active', reducedMotion: 'reduce' });
    await drawn(page);
    note('forced', await forcedProblems(page));
    note('moves', await moving(page));
    note('focus', await focusProblems(page, SOME_STOPS));
    await page.emulateMedia({ colorScheme: 'light', forcedColors: 'none', reducedMotion: 'no-preference' });

    await page.evaluate(() => { document.documentElement.style.fontSize = '200%'; });
    await drawn(page);
    note('twice', await cutProblems(page));
    await page.evaluate(() => { document.documentElement.style.fontSize = ''; });

    await sized(page, 640, 360);
    note('halved', await cutProblems(page));
    await sized(page, 390, 844);
    note('small', [...(await narrowTargets(page)).map((one) => `narrow: ${one}`), ...(await axe(page))]);
    await sized(page, 320, 640);
    // A run is exempt as a drawing in two dimensions; its controls are looked at by their size above.
    if (!isRun(name)) note('narrow', await cutProblems(page));
    await sized(page, 1280, 720);
  });
  return { found, pairs };
}

/** The system lays its own paper behind words, whatever the page has filled there. */
async function forcedProblems(page: Page): Promise<string[]> {
  const bare = await page.locator('.button, .key kbd, .answer, .paused').evaluateAll((all) => all.filter((one) => {
    const { borderTopStyle, borderTopWidth } = getComputedStyle(one);
    return borderTopStyle === 'none' || parseFloat(borderTopWidth) < 1;
  }).map((one) => one.textContent));
  const canvas = await systemPaper(page);
  const pale = (await textPairs(page)).filter(({ ink, paper }) => contrast(ink, paper) < 4.5 || contrast(ink, canvas) < 4.5);
  return [...pale.map(({ text, ink, paper }) => `${ink} on ${paper}: ${text}`), ...bare.map((one) => `no edge: ${one}`)];
}

/** In other colours the ring is the same thing in another token: a few stops tell. */
const SOME_STOPS = 12;

let walked: Promise<{ found: Findings; pairs: number }> | null = null;
/** The walk of this file; one that was broken off is walked anew. */
const findings = (): Promise<{ found: Findings; pairs: number }> => (walked ??= walk().catch((problem: unknown) => {
  walked = null;
  throw problem;
}));

test.each<[keyof Findings, string]>([
  ['axe', 'axe finds nothing'],
  ['day', 'by day every pair of colours of a text is a measured one (1.4.3)'], ['night', 'by night too'],
  ['targets', 'targets are 44 px (2.5.5)'], ['focus', 'the focus is seen wherever Tab goes, in order and round'],
  ['forced', 'in forced colours edges and words are the system’s'], ['moves', 'with less movement nothing moves by itself (2.3.3)'],
  ['small', 'on a small screen targets are 44 px and axe finds nothing'], ['narrow', 'at 320 px nothing is cut off and nothing scrolls sideways (1.4.10)'],
  ['halved', 'at 200 %, a window of half the size, nothing is lost (1.4.4)'], ['twice', 'at 200 %, text of twice the size, nothing is lost (1.4.4)'],
])('everywhere, %s: %s', async (kind) => {
  expect((await findings()).found[kind]).toEqual([]);
}, LONG_MS);

test('the walk has seen words', async () => {
  expect((await findings()).pairs).toBeGreaterThan(400);
}, LONG_MS);

test('a callout and its answers: axe finds nothing, targets of 44 px, the focus is seen', async () => {
  const wrong: string[] = [];
  await withCallout({}, async (page) => { wrong.push(...(await axe(page)), ...(await narrowTargets(page)), ...(await focusProblems(page))); });
  expect(wrong).toEqual([]);
}, LONG_MS);

test('the measures of this file find what is wrong', async () => {
  const { page, close } = await openApp('#/nowhere');
  await page.locator('h1').waitFor();
  await page.evaluate(() => {
    document.querySelector('main')!.insertAdjacentHTML('beforeend', '<div id="wrong"><button>x</button><p>words that are cut off by their box</p><a href="#/">over</a><p>pale words</p></div>');
    const style = (index: number, rules: Partial<CSSStyleDeclaration>) => Object.assign((document.getElementById('wrong')!.children[index] as HTMLElement).style, rules);
    style(0, { width: '20px', height: '20px', outline: 'none', transition: 'color 1s' });
    style(1, { width: '50px', height: '10px', overflow: 'hidden', whiteSpace: 'nowrap' });
    style(2, { position: 'absolute', left: '100vw' });
    style(3, { color: 'rgb(200, 200, 200)' });
  });
  expect((await narrowTargets(page)).some((one) => one.startsWith('x'))).toBe(true);
  expect((await clipped(page)).some((one) => one.startsWith('words that'))).toBe(true);
  expect(await wider(page)).toBeGreaterThan(0);
  expect(await moving(page)).toEqual(['BUTTON x']);
  expect((await textPairs(page)).find(({ text }) => text === 'pale words')).toMatchObject({ ink: '#c8c8c8' });
  expect((await focusStops(page)).find(({ what }) => what === 'BUTTON x')).toMatchObject({ ring: null });
  await close();
});
