/**
 * The bench as an instructor uses it: form, text and picture are three hands on one document, with one way back.
 */
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { parsedValue, readScenario } from '../../src/text/index.js';
import { lookup } from '../files/shipped.js';
import { axe } from './drilling.js';
import { openApp, type OpenOptions } from './harness.js';

const shipped = `{
  "format": 1, // kept
  "title": "T", "brief": "Hold, and watch both pointers.",
  "airframe": "airframe-a",
  "start": { "massT": 48, "altitudeFt": 5600, "speedKt": 167, "flapDeg": 4 },
  "task": { "settings": [16], "limitS": 180 },
  "faults": [
    // first of all
    { "name": "stop", "kind": "disconnect", "side": "right", "when": { "flapDeg": 8 } }
  ]
}
`;

/** The bench with a document on it, as if it had been written there before. */
async function openBench(text: string | null, options: OpenOptions = {}) {
  const app = await openApp('', options);
  if (text !== null) await app.page.evaluate((kept) => localStorage.setItem('evenhand.bench', kept), JSON.stringify({ kind: 'scenario', name: 'written', text, own: null, base: '' }));
  await app.page.goto(`${app.page.url().split('#')[0]}#/bench`);
  if (text !== null) await app.page.locator('.bench-bar').waitFor();
  return app;
}

/** The text that is written, as the document has it: what is kept of it once the hand rests. */
const textOf = (page: Page): Promise<string> => page.evaluate(() => {
  dispatchEvent(new PageTransitionEvent('pagehide'));
  return (JSON.parse(localStorage.getItem('evenhand.bench') ?? '{}') as { text?: string }).text ?? '';
});
const valueOf = async (page: Page): Promise<Record<string, any>> => parsedValue(await textOf(page)) as Record<string, any>; // oxlint-disable-line typescript/no-explicit-any
const mark = (page: Page, name: string) => page.locator(`[data-mark="${name}"]`);

test('a figure in the form is a figure in the text, comments stay, and one way back leads through form, text and picture alike', async () => {
  const { page, close } = await openBench(shipped);
  await page.getByLabel('Mass').fill('51.5');
  expect(await textOf(page)).toBe(shipped.replace('48', '51.5'));
  await page.keyboard.press('ArrowUp');
  expect((await valueOf(page))['start'].massT).toBe(52);

  await page.getByRole('button', { name: 'Text', exact: true }).click();
  await page.locator('.cm-line', { hasText: '"limitS"' }).click();
  await page.keyboard.press('End');
  for (let step = 0; step < 3; step += 1) await page.keyboard.press('ArrowLeft');
  await page.keyboard.press('Backspace');
  await page.keyboard.type('9');
  expect((await valueOf(page))['task'].limitS).toBe(189);
  await page.getByRole('button', { name: 'Form', exact: true }).click();
  expect(await page.getByLabel('Ends at the latest').inputValue()).toBe('189');

  await mark(page, 'stop').focus();
  await page.keyboard.press('ArrowRight');
  await page.keyboard.press('Shift+ArrowRight');
  expect((await valueOf(page))['faults'][0].when.flapDeg).toBe(13.5);

  const wayBack = [13.5, 8];
  expect((await valueOf(page))['faults'][0].when.flapDeg).toBe(wayBack[0]);
  await page.keyboard.press('Control+z');
  expect((await valueOf(page))['faults'][0].when.flapDeg).toBe(wayBack[1]);
  for (let steps = 0; (await page.getByRole('button', { name: 'Undo', exact: true }).isEnabled()) && steps < 8; steps += 1) await page.keyboard.press('Control+z');
  expect(await textOf(page)).toBe(shipped);
  for (let steps = 0; (await page.getByRole('button', { name: 'Redo', exact: true }).isEnabled()) && steps < 8; steps += 1) await page.keyboard.press('Control+Shift+z');
  expect(await valueOf(page)).toMatchObject({ start: { massT: 52 }, task: { limitS: 189 }, faults: [{ when: { flapDeg: 13.5 } }] });
  await close();
});

test('all problems at their lines as one types; a press leads there; a broken text leaves the form readable and says why it waits', async () => {
  const { page, close } = await openBench(shipped);
  await page.getByLabel('Speed', { exact: true }).fill('500');
  await page.getByLabel('Mass').fill('0');
  const problems = page.locator('.problem');
  await expect.poll(() => problems.count()).toBe(2);
  expect(await problems.allTextContents()).toEqual([expect.stringMatching(/5:23.*start\.massT.*from 1 to 700 t/), expect.stringMatching(/5:\d+.*start\.speedKt.*from 60 to 400 kt/)]);
  expect(await page.locator('.field.wrong', { hasText: 'Speed' }).locator('.field-wrong').textContent()).toMatch(/Is 500; allowed: a number from 60 to 400 kt/);

  await problems.nth(1).focus();
  await page.keyboard.press('Enter');
  await page.locator('.cm-activeLineGutter', { hasText: '5' }).waitFor();
  // The caret stands at the figure itself: typed over, it is right.
  for (let digit = 0; digit < 3; digit += 1) await page.keyboard.press('Delete');
  await page.keyboard.type('160');
  await expect.poll(() => problems.count()).toBe(1);
  expect((await valueOf(page))['start'].speedKt).toBe(160);

  await page.keyboard.press('End');
  await page.keyboard.type(',,');
  await page.getByRole('button', { name: 'Form', exact: true }).click();
  expect(await page.locator('.form-waits').textContent()).toMatch(/The form waits: the text cannot be read at line 5/);
  expect(await page.getByLabel('Speed', { exact: true }).inputValue()).toBe('160');
  expect(await page.getByLabel('Speed', { exact: true }).isDisabled()).toBe(true);
  await page.keyboard.press('Control+z');
  await expect.poll(() => page.getByLabel('Speed', { exact: true }).isDisabled()).toBe(false);
  await close();
});

test('by keyboard alone a fault is written in the text by taking what is offered', async () => {
  const { page, close } = await openBench(shipped.replace(/\[\n.*\n.*\n {2}\]/, '[]'));
  await page.getByRole('button', { name: 'Text', exact: true }).click();
  await page.locator('.cm-line', { hasText: '"faults"' }).click();
  await page.keyboard.press('End');
  await page.keyboard.press('ArrowLeft');
  const options = page.locator('.cm-tooltip-autocomplete li');
  const take = async (typed: string, label: string): Promise<void> => {
    await page.keyboard.type(typed);
    await options.filter({ hasText: label }).first().waitFor();
    await expect.poll(() => options.first().textContent()).toContain(label);
    await page.keyboard.press('Enter');
    await expect.poll(() => options.count()).toBe(0);
  };
  await page.keyboard.type('{ ');
  await take('ki', 'kind');
  await take('"la', 'lag');
  await page.keyboard.type(', "name": "x", ');
  await take('rat', 'ratio');
  await page.keyboard.type('0.5, ');
  await take('si', 'side');
  await take('"ri', 'right');
  await page.keyboard.type(', ');
  await take('whe', 'when');
  await take('flapD', 'flapDeg');
  await page.keyboard.type('9');
  expect((await valueOf(page))['faults']).toEqual([{ kind: 'lag', name: 'x', ratio: 0.5, side: 'right', when: { flapDeg: 9 } }]);
  // And the key at the caret is told, for whoever has no mouse to rest on it.
  expect(await page.locator('.told-key').textContent()).toMatch(/flapDeg.*The drive .*passes.*from 0 to 60 deg/);
  await close();
});

test('a mark is drawn to another place, by mouse and by touch; a press on the ruler adds one; Delete takes it away', async () => {
  const { page, close } = await openBench(shipped, { hasTouch: true });
  const box = async (name: string) => (await mark(page, name).boundingBox())!;
  const at = await box('stop');
  const [x, y] = [at.x + 22, at.y + 22];
  const room = (await page.locator('[data-ruler=travel]').boundingBox())!;
  // From 4 to 16 over the ruler less its two ends of 22 px.
  const degPx = (room.width - 44) / 12;
  await page.mouse.move(x, y);
  await page.mouse.down();
  for (let part = 1; part <= 4; part += 1) await page.mouse.move(x + degPx * 3.1 * (part / 4), y);
  expect((await valueOf(page))['faults'][0].when.flapDeg).toBe(11);
  expect(await mark(page, 'stop').textContent()).toContain('11°');
  await page.mouse.up();
  await page.keyboard.press('Control+z');
  expect((await valueOf(page))['faults'][0].when.flapDeg).toBe(8);

  const session = await page.context().newCDPSession(page);
  const touch = (type: 'touchStart' | 'touchMove' | 'touchEnd', toX: number) => session.send('Input.dispatchTouchEvent', { type, touchPoints: type === 'touchEnd' ? [] : [{ x: toX, y }] });
  await touch('touchStart', x);
  for (let part = 1; part <= 3; part += 1) await touch('touchMove', x - degPx * 2 * (part / 3));
  await touch('touchEnd', 0);
  await expect.poll(async () => (await valueOf(page))['faults'][0].when.flapDeg).toBe(6);

  const time = (await page.locator('[data-ruler=time]').boundingBox())!;
  await page.locator('[data-ruler=time]').click({ position: { x: 22 + (time.width - 44) * (60 / 180), y: 20 } });
  // It goes as soon as the focus goes on, so it is looked at here and not among all pages.
  await page.getByRole('dialog', { name: 'Add at 60 s' }).waitFor();
  expect(await axe(page)).toEqual([]);
  await page.getByRole('dialog', { name: 'Add at 60 s' }).getByLabel('Add event here').selectOption('level');
  expect((await valueOf(page))['events']).toEqual([{ name: 'level', when: { atS: 60 }, do: 'level' }]);
  await mark(page, 'level').focus();
  await page.keyboard.press('Delete');
  expect((await valueOf(page))['events']).toEqual([]);
  await close();
});

test('what is being written outlives a reload, is told, can be discarded, and comes back', async () => {
  const { page, close } = await openBench(shipped);
  await page.getByLabel('Mass').fill('50');
  await page.reload();
  await page.getByText('when the page went away').waitFor();
  expect((await valueOf(page))['start'].massT).toBe(50);
  await page.getByRole('button', { name: 'Discard' }).click();
  await page.getByText('The bench is empty.').waitFor();
  expect(await page.evaluate(() => { dispatchEvent(new PageTransitionEvent('pagehide')); return localStorage.getItem('evenhand.bench'); })).toBeNull();
  await page.keyboard.press('Control+z');
  await page.getByLabel('Mass').waitFor();
  expect((await valueOf(page))['start'].massT).toBe(50);
  await close();
});

test('a list of faults: moved, copied, taken away; the focus follows, each is said, and undo brings it back', async () => {
  const { page, close } = await openBench(shipped);
  const names = async (): Promise<string[]> => ((await valueOf(page))['faults'] as { name: string }[]).map(({ name }) => name);
  const press = (name: string): Promise<void> => page.getByRole('button', { name, exact: true }).click();
  const told = page.locator('.things').filter({ has: page.getByLabel('Add a fault') }).locator('[role="status"]');
  /** Which head has the focus, from 0. */
  const focused = (): Promise<number> => page.evaluate(() => [...document.querySelectorAll('.thing-head')].indexOf(document.activeElement as Element));

  await page.getByLabel('Add a fault').selectOption('lag');
  await expect.poll(focused).toBe(1);
  expect(await told.textContent()).toMatch(/^Added: .+\.$/);
  expect(await names()).toEqual(['stop', 'lag']);
  await press('Move up');
  await expect.poll(focused).toBe(0);
  expect([await names(), await told.textContent()]).toEqual([['lag', 'stop'], 'Now 1 of 2.']);
  expect(await page.getByRole('button', { name: 'Move up', exact: true }).isDisabled()).toBe(true);
  await press('Duplicate');
  await expect.poll(focused).toBe(1);
  const copied = await names();
  expect([copied[0], copied[2], new Set(copied).size]).toEqual(['lag', 'stop', 3]);
  expect(await page.locator('.thing.open .thing-fields').count()).toBe(1);
  await press('Take away');
  await expect.poll(focused).toBe(1);
  expect([await names(), await told.textContent()]).toEqual([['lag', 'stop'], 'Taken away: the fault. Undo brings it back.']);
  await press('Undo');
  expect(await names()).toEqual(copied);
  await close();
});

test('from an empty bench to a link in 25 actions: the right side lags from 8 degrees while they slow through 160, and the calls come just then', async () => {
  const { page, close } = await openBench(null);
  let actions = 0;
  /** One press, one stroke of keys, or one field filled in; a list that is opened and chosen from counts twice. */
  const press = async (name: string | RegExp): Promise<void> => { actions += 1; await page.getByRole('button', { name, exact: typeof name === 'string' }).click(); };
  const fill = async (label: string, text: string, within: string): Promise<void> => { actions += 1; await page.locator(within).getByLabel(label, { exact: true }).fill(text); };
  const choose = async (label: string, value: string): Promise<void> => { actions += 2; await page.getByLabel(label, { exact: true }).selectOption(value); };

  await press('New scenario');
  await fill('Title the trainee never sees this', 'Lag while slowing, with calls', 'form');
  await choose('Add a fault', 'lag');
  await fill('Position', '8', '.thing.open');
  await press('and …');
  await fill('Speed', '160', '.condition-group');
  await choose('Add an event', 'selectSpeed');
  await fill('Speed', '150', '.thing.open');
  await choose('Add an event', 'callout');
  await choose('Acts', 'after');
  // Tried: it acts in the run beside it, and many runs tell how hard it is.
  await expect.poll(() => mark(page, 'lag').textContent()).toMatch(/lag \d+(\.\d)? s/);
  await press(/^Sweep/);
  await page.locator('[data-sweep]').waitFor();
  await press('Copy link');
  await page.locator('.handed input').waitFor();
  expect(actions).toBeLessThanOrEqual(25);

  const text = await textOf(page);
  expect(parsedValue(text)).toMatchObject({
    title: 'Lag while slowing, with calls',
    faults: [{ kind: 'lag', side: 'right', when: { all: [{ flapDeg: 8, edge: 'rising' }, { speedKt: 160, edge: 'falling' }] } }],
    events: [{ do: 'selectSpeed', speedKt: 150 }, { do: 'callout', when: { after: 'lag' } }],
  });
  // It can be flown, and the link holds this very text.
  expect(readScenario(text, 'x', lookup).ok).toBe(true);
  const link = await page.locator('.handed input').inputValue();
  await close();
  const follower = await openApp(link.slice(link.indexOf('#')));
  await follower.page.locator('.bench-bar').waitFor();
  expect(await textOf(follower.page)).toBe(text);
  await follower.close();
});
