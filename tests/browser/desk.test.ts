// A desk and a run in two windows of one browser, as an instructor and a trainee use them.
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { verify, type RunRecord } from '../../sim/files/index.js';
import { clockByHand, goTo, startByHand } from './clock.js';
import { axe, makeReady, middleOf, reading, save, startRun } from './drilling.js';
import { openScenario, plain } from './flying.js';
import { appUrl, openApp } from './harness.js';
import { look } from './alike.js';

/** A second window of the same browser, at the desk. A tab would not do: the one behind it is drawn once a second, and each such frame is a stall. */
async function deskBeside(page: Page, problems: string[]): Promise<Page> {
  const [own, all] = await Promise.all([page.context().newCDPSession(page), page.context().browser()!.newBrowserCDPSession()]);
  const { targetInfo: { browserContextId } } = await own.send('Target.getTargetInfo');
  const [desk] = await Promise.all([
    page.context().waitForEvent('page'), all.send('Target.createTarget', { url: 'about:blank', newWindow: true, ...(browserContextId === undefined ? {} : { browserContextId }) }),
  ]);
  desk.on('console', (message) => { if (message.type() === 'error' || message.type() === 'warning') problems.push(`desk: ${message.text()}`); });
  desk.on('pageerror', (error) => problems.push(`desk: ${error.stack ?? error.message}`));
  await desk.goto(new URL('#/desk', appUrl()).href);
  return desk;
}
const follow = async (desk: Page, title = 'Drill 1'): Promise<void> => {
  await desk.getByRole('button', { name: `Follow ${title}` }).click();
  await desk.getByRole('heading', { name: 'Pointers and sides' }).waitFor();
};
const happened = (desk: Page, words: string | RegExp) => desk.locator('.desk-happened li').filter({ hasText: words });
/** A clock in a text: 1:04.3. */
function secondsIn(text: string): number {
  const [, minutes, seconds] = /(\d+):(\d+\.\d)/.exec(text) ?? [];
  return 60 * Number(minutes) + Number(seconds);
}
const figure = async (desk: Page, name: string, at: number): Promise<number> =>
  Number.parseFloat((await desk.locator('.desk-figures > div').filter({ hasText: name }).locator('dd').nth(at).innerText()));

test('followed, acted in, ended and graded: all of it in the record, and the record verifies', async () => {
  const { page, problems, close } = await openScenario(plain());
  const desk = await deskBeside(page, problems);
  await desk.getByText('No run on this machine.').waitFor();
  const warned = desk.getByText(/switch springs back and the run goes on, and both make a drill whose first release is scored void/);
  await warned.waitFor();
  await startRun(page);
  expect(await page.getByText('desk', { exact: false }).count()).toBe(0);
  await desk.getByRole('list', { name: 'Runs on this machine' }).waitFor();
  await warned.waitFor();
  await follow(desk);
  await page.locator('.drill-desk').waitFor();
  await makeReady(page);
  const extend = await middleOf(page, 'extend');
  await page.mouse.move(extend.x, extend.y);
  await page.mouse.down();
  await happened(desk, 'holds to extend').waitFor();
  // A fault now, by the form; the desk sees the side part, the trainee's gauge as well, and the text of the page does not say it.
  await desk.locator('#desk-put').selectOption({ label: 'side stops' });
  await desk.getByLabel('right', { exact: true }).check();
  await desk.getByRole('button', { name: 'Put in', exact: true }).click();
  await happened(desk, 'right side stops, now').waitFor();
  await expect.poll(() => figure(desk, 'Split shown, true', 1), { timeout: 25_000 }).toBeGreaterThan(0.1);
  await page.mouse.up();
  await happened(desk, 'lets go').waitFor();
  // Both stand: pointers of the two windows are the same.
  await desk.locator('h1').click();
  await desk.keyboard.press('f');
  await page.getByText('Frozen.').waitFor();
  await desk.locator('.desk-clock[data-stands=frozen]').waitFor();
  const said = await reading(page, 'leftPointer').innerText().catch(() => '');
  if (/\d/.test(said)) expect(await figure(desk, 'Left pointer', 0)).toBeCloseTo(Number.parseFloat(/[\d.]+/.exec(said)![0]), 0);
  for (const key of ['m', '2', 'p']) await desk.keyboard.press(key);
  await happened(desk, 'remark: gauge not watched').waitFor();
  await desk.keyboard.press('f');
  await expect.poll(() => page.getByText('Frozen.').count()).toBe(0);
  await desk.getByLabel('What is said').fill('Report the runway.');
  await desk.getByLabel('What is said').press('Enter');
  await page.getByText('Controller: Report the runway.').first().waitFor();
  // A question: only its own fields stand, it goes once it is whole, and the trainee answers it.
  await desk.getByLabel('What happens').selectOption('callout');
  await desk.getByText('Still wanted: a question.').waitFor();
  for (const [label, words] of [['The question', 'How many on board?'], ['Answer 1', '16'], ['Answer 2', '61']] as const) await desk.getByLabel(label, { exact: true }).fill(words);
  await desk.getByRole('radio', { name: 'Answer 2 is right' }).check();
  await desk.getByRole('button', { name: 'Send' }).click();
  await page.getByRole('button', { name: /61/ }).click();
  await happened(desk, 'answers 61').waitFor();
  // An act that cannot be done is told at the desk and nowhere else.
  await desk.locator('h1').click();
  await desk.keyboard.press('c');
  await happened(desk, 'clear all').waitFor();
  expect(await axe(desk)).toEqual([]);
  const saved = secondsIn(await desk.locator('[aria-keyshortcuts=b]').innerText());
  await expect.poll(async () => secondsIn(await desk.locator('.desk-clock').innerText()) - saved, { timeout: 15_000 }).toBeGreaterThan(1.2);
  await desk.keyboard.press('b');
  await happened(desk, 'desk back to').waitFor();
  await desk.keyboard.press('x');
  await desk.getByLabel('Why does it not count?').fill('a try');
  await desk.getByLabel('Why does it not count?').press('Enter');
  await desk.getByRole('heading', { name: 'The run is over' }).waitFor();
  await page.getByText('Was there a split?').waitFor();
  await desk.getByRole('group', { name: 'Letting go' }).getByLabel('4, Above the standard').check();
  await desk.getByLabel('A note on the whole run').fill('Quick hand.');
  await desk.getByRole('button', { name: 'Write into the record' }).click();
  await desk.getByText('It is in the record.').waitFor();
  // The grade stands through what the trainee says of the run.
  await page.getByText('Not sure').click();
  await page.getByRole('button', { name: 'Show the debrief' }).click();
  const record: RunRecord = await save(page);
  expect(verify(record).refused).toEqual([]);
  expect([record.source, record.outcome, record.desk]).toEqual(['live', 'void', { grades: [{ item: 'Letting go', anchor: 4 }], note: 'Quick hand.' }]);
  expect(record.commands.filter(({ rank }) => rank === 1).map((one) => one.do)).toEqual([
    'injectFault', 'freeze', 'saveMoment', 'remark', 'prompted', 'goOn', 'say', 'callout', 'clearFaults', 'reposition', 'voidRun',
  ]);
  expect(record.assessment?.split).toBe('unsure');
  await desk.getByRole('button', { name: 'Debrief' }).click();
  await desk.locator('.figures').waitFor();
  await close();
}, 150_000);

test('what a desk has armed shows in no pixel and no word before it acts', async () => {
  async function watch(arm: string | null): Promise<{ looks: Record<string, string>[]; behind: string }> {
    const { page, problems, requests, close } = await openScenario(plain(), { before: clockByHand, expected: [/willReadFrequently/] });
    const desk = await deskBeside(page, problems);
    await startByHand(page);
    await goTo(page, 1200);
    await follow(desk);
    const asked = requests.length;
    if (arm !== null) {
      await desk.locator('#desk-put').selectOption({ label: arm });
      await desk.getByLabel('Seconds of further holding').fill('2');
      await desk.getByRole('button', { name: 'Arm', exact: true }).click();
    } else {
      await desk.getByRole('button', { name: /good scan/ }).click();
    }
    await desk.locator('.desk-sent').waitFor({ state: 'hidden' });
    await goTo(page, 1500);
    for (const key of ['g', 'a']) await page.keyboard.press(key);
    await goTo(page, 1700);
    await page.keyboard.down('e');
    const looks = [];
    for (const ms of [2200, 2800, 3400]) {
      await goTo(page, ms);
      looks.push(await look(page));
    }
    expect(requests.length).toBe(asked);
    await goTo(page, 9000);
    const behind = (await look(page))['pixels']!;
    await close();
    return { looks, behind };
  }
  const without = await watch(null);
  expect(new Set(without.looks.map(({ pixels }) => pixels)).size).toBe(3);
  for (const arm of ['side stops', 'drive quits']) {
    const { looks, behind } = await watch(arm);
    looks.forEach((seen, index) => expect(seen, `${arm}, look ${index}`).toEqual(without.looks[index]));
    expect(behind, arm).not.toBe(without.behind);
  }
}, 120_000);

test('a desk that is loaded anew sees all; a trainee who is, has gone; a set is flown alone, and a window that is closed to desks', async () => {
  const { page, problems, close } = await openScenario(plain());
  const desk = await deskBeside(page, problems);
  await startRun(page);
  await follow(desk);
  await desk.getByRole('button', { name: /good scan/ }).click();
  await happened(desk, 'good scan').waitFor();
  await desk.reload();
  await follow(desk);
  await happened(desk, /desk-[0-9a-f]+-1 remark: good scan/).waitFor();
  await page.reload();
  await desk.getByText('The trainee’s window has gone.').waitFor();
  await desk.getByRole('button', { name: 'Runs on this machine' }).click();
  await page.goto(new URL('#/set/1', appUrl()).href);
  await page.getByRole('button', { name: 'Start the set' }).click();
  await desk.getByText('A run of a set is measured: it is flown alone.').waitFor();
  expect(await desk.getByRole('button', { name: /^Follow/ }).isDisabled()).toBe(true);
  await close();
  const closed = await openApp('#/settings');
  await closed.page.getByLabel('A desk may follow').uncheck();
  await closed.page.goto(new URL('#/drill/1?seed=3', appUrl()).href);
  await startRun(closed.page);
  const other = await deskBeside(closed.page, closed.problems);
  await other.getByText('The trainee has closed this window to desks, in set-up.').waitFor();
  await closed.close();
}, 90_000);
