// A whole run from the first page to the saved record by mouse alone, by touch alone, by keyboard alone (design 7): hold, let
// go, call, and on the way the gear, a speed, a lever of thrust and an answer.
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { verify, type RunRecord } from '../../sim/files/index.js';
import { control, isPressed, middleOf, readSaved } from './drilling.js';
import { openScenario, plain } from './flying.js';
import { cdp, type OpenOptions } from './harness.js';

const SCENARIO = plain({
  task: { afterS: 3 },
  events: [{ when: { atS: 1 }, do: 'callout', text: 'Say altitude.', answers: ['5600 ft', '6500 ft'], right: '5600 ft', withinS: 60 }],
  faults: [{ name: 'stop', kind: 'disconnect', side: 'drawn', when: { heldS: 3 } }],
  recognition: { limitDeg: 2.5 },
});

/** What a hand of one kind does. */
interface Hand {
  /** A link, a button or a choice of a page, by what it says. */
  choose(page: Page, words: RegExp | string): Promise<void>;
  /** A control of the drill, once. */
  press(page: Page, id: string): Promise<void>;
  /** The switch, held until the answer is called. */
  hold(page: Page): Promise<() => Promise<void>>;
}

const named = (page: Page, words: RegExp | string) =>
  page.getByRole('link', { name: words }).or(page.getByRole('button', { name: words })).or(page.getByRole('radio', { name: words })).first();

const mouse: Hand = {
  choose: (page, words) => named(page, words).click(),
  press: (page, id) => control(page, id).click(),
  async hold(page) {
    const { x, y } = await middleOf(page, 'extend');
    await page.mouse.move(x, y);
    await page.mouse.down();
    return () => page.mouse.up();
  },
};

const touch: Hand = {
  choose: (page, words) => named(page, words).tap(),
  press: (page, id) => control(page, id).tap(),
  async hold(page) {
    const { x, y } = await middleOf(page, 'extend');
    const session = await cdp(page);
    await session.send('Input.dispatchTouchEvent', { type: 'touchStart', touchPoints: [{ x, y, id: 1 }] });
    return async () => { await session.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] }); };
  },
};

/** Tab goes there, and nothing else: a control that it does not reach is not for the keyboard. */
async function tabTo(page: Page, there: () => Promise<boolean>): Promise<void> {
  for (let tab = 0; tab < 120; tab += 1) {
    if (await there()) return;
    await page.keyboard.press('Tab');
  }
  throw new Error('Tab does not lead there');
}

const KEYS: Readonly<Record<string, string>> = { guard: 'g', arm: 'a', gear: 'l', speedDown: 'j', call: 's', answer1: '7' };
const key: Hand = {
  async choose(page, words) {
    const wanted = named(page, words);
    await wanted.waitFor();
    await tabTo(page, () => wanted.evaluate((one) => one === document.activeElement));
    const radio = (await wanted.getAttribute('type')) === 'radio';
    await page.keyboard.press(radio ? 'Space' : 'Enter');
  },
  press: (page, id) => page.keyboard.press(KEYS[id]!),
  async hold(page) {
    await page.keyboard.down('e');
    return () => page.keyboard.up('e');
  },
};

/** From the first page to a saved record. */
async function fly(hand: Hand, options: OpenOptions, narrow: boolean): Promise<RunRecord> {
  const { page, close } = await openScenario(SCENARIO, options, '');
  await hand.choose(page, /Drill 1 Flaps/);
  await hand.choose(page, 'Start');
  await control(page, 'extend').waitFor();
  await hand.press(page, 'guard');
  await hand.press(page, 'arm');
  await page.getByText('Say altitude.').waitFor();
  await hand.press(page, 'answer1');
  await expect.poll(() => page.getByText('Say altitude.').count()).toBe(0);
  if (narrow) await page.locator('[data-tab=gear]').tap();
  await hand.press(page, 'gear');
  if (narrow) await page.locator('[data-tab=thrust]').tap();
  await hand.press(page, 'speedDown');
  await expect.poll(() => isPressed(page, 'arm')).toBe(true);
  const letGo = await hand.hold(page);
  await expect.poll(() => isPressed(page, 'extend')).toBe(true);
  await page.waitForTimeout(5_200);
  await letGo();
  await expect.poll(() => isPressed(page, 'extend')).toBe(false);
  await hand.press(page, 'call');
  await page.getByText('Was there a split?').waitFor({ timeout: 40_000 });
  await hand.choose(page, /^Yes/);
  await hand.choose(page, 'Show the debrief');
  const [download] = await Promise.all([page.waitForEvent('download'), hand.choose(page, 'Save record')]);
  const record = await readSaved(download);
  await close();
  return record;
}

test.each([
  ['mouse', mouse, {}, false], ['touch', touch, { hasTouch: true }, false], ['touch', touch, { hasTouch: true, width: 390, height: 844 }, true], ['key', key, {}, false],
] as const)('by %s alone, from the first page to the saved record', async (name, hand, options, narrow) => {
  const record = await fly(hand, options, narrow);
  expect(record.device.input).toBe(name);
  expect(verify(record).refused).toEqual([]);
  expect(record.commands.map((command) => command.do)).toEqual(['openGuard', 'arm', 'answer', 'setGear', 'selectSpeed', 'holdDrive', 'releaseDrive', 'callSplit']);
  // A machine too busy to draw for a quarter of a second voids a run, and the record says so.
  expect(record.outcome).toBe(record.marks.some(({ what }) => what === 'stall' || what === 'late') ? 'void' : 'caught');
  expect(record.assessment).toMatchObject({ split: 'yes' });
}, 120_000);
