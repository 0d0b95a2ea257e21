// The aeroplane's own controls in a real browser: what a hand does to them is what the record holds.
import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { verify, type RunRecord } from '../../sim/files/index.js';
import { axe, control, endAndSave, isPressed, makeReady, reading } from './drilling.js';
import { flyScenario, plain } from './flying.js';
import { cdp } from './harness.js';

const said = async (page: Page, id: string): Promise<string> => (await reading(page, id).textContent()) ?? '';
const boxOf = async (page: Page, id: string) => (await control(page, id).boundingBox())!;
const acts = (record: RunRecord, what: string) => record.commands.filter((command) => command.do === what);
const pause = (page: Page, ms = 150) => page.waitForTimeout(ms);

describe('thrust levers', () => {
  test('a drag takes both, an end takes one; a press on the track does it without a drag; a touch that does not move leaves the speed hold', async () => {
    const { page, close } = await flyScenario(plain());
    const both = await boxOf(page, 'bothThrust');
    const x = both.x + both.width / 2;
    // 12 px of inset at either end, 55 degrees of travel between them.
    const yOf = (deg: number): number => both.y + both.height - 12 - (deg / 55) * (both.height - 24);
    const start = Number(/left (\d+)/.exec(await said(page, 'thrust'))?.[1]);
    await page.mouse.move(x, yOf(start));
    await page.mouse.down();
    await page.mouse.up();
    await pause(page);
    expect(await isPressed(page, 'speedHold')).toBe(true);
    await page.mouse.down();
    await page.mouse.move(x, yOf(start) - 20, { steps: 4 });
    await page.mouse.up();
    await expect.poll(() => isPressed(page, 'speedHold')).toBe(false);
    expect(await said(page, 'alerts')).toMatch(/caution: speed hold off/);
    const perPx = 55 / (both.height - 24);
    const angles = async (): Promise<number[]> => /left (\d+), right (\d+)/.exec(await said(page, 'thrust'))!.slice(1).map(Number);
    await expect.poll(async () => Math.abs((await angles())[0]! - (start + 20 * perPx))).toBeLessThanOrEqual(1.5);
    const [left, right] = await angles();
    expect(left).toBe(right);
    const right_ = await boxOf(page, 'rightThrust');
    await page.mouse.click(right_.x + right_.width / 2, yOf(5));
    await expect.poll(() => said(page, 'thrust')).toBe(`Thrust-lever angle: left ${left}, right 5 degrees`);
    await control(page, 'leftThrust').focus();
    await page.keyboard.press('Home');
    await page.keyboard.press('ArrowUp');
    await expect.poll(() => said(page, 'thrust')).toBe('Thrust-lever angle: left 2, right 5 degrees');
    const record = await endAndSave(page);
    expect(new Set(acts(record, 'setThrust').map((act) => ('lever' in act ? act.lever : '')))).toEqual(new Set(['both', 'right', 'left']));
    expect(verify(record).refused).toEqual([]);
    await close();
  });

  test('by keys from anywhere; a key kept down goes on', async () => {
    const { page, close } = await flyScenario(plain());
    for (let time = 0; time < 4; time += 1) await page.keyboard.down('i');
    await page.keyboard.up('i');
    await page.keyboard.press('n');
    await page.keyboard.press('h');
    await expect.poll(() => isPressed(page, 'speedHold')).toBe(true);
    await pause(page);
    const record = await endAndSave(page);
    expect(acts(record, 'setThrust')).toHaveLength(4);
    expect(record.commands.map((command) => command.do)).toEqual(['setThrust', 'setThrust', 'setThrust', 'setThrust', 'goAround', 'setSpeedHold']);
    await close();
  });
});

describe('selected speed', () => {
  test('by 1 and by 5 knots, on the strip by 5 toward the finger, and by its bug', async () => {
    const { page, close } = await flyScenario(plain());
    for (const id of ['speedUp5', 'speedDown', 'speedDown', 'speedDown5', 'speedUp']) await control(page, id).click();
    await expect.poll(() => said(page, 'selected')).toBe('Selected speed: 166 knots, speed hold on');
    const strip = await boxOf(page, 'selectSpeed');
    const x = strip.x + strip.width / 2;
    await page.mouse.click(x, strip.y + strip.height - 20);
    await expect.poll(() => said(page, 'selected')).toMatch(/161 knots/);
    const [low, high] = await control(page, 'selectSpeed').evaluate((slider) => [Number(slider.ariaValueMin), Number(slider.ariaValueMax)]) as [number, number];
    const pxPerKt = (strip.height - 20) / (high - low);
    const yOf = (kt: number): number => strip.y + strip.height - 10 - (kt - low) * pxPerKt;
    await page.mouse.move(x, yOf(161));
    await page.mouse.down();
    await page.mouse.move(x, yOf(143), { steps: 6 });
    await page.mouse.up();
    await expect.poll(() => said(page, 'selected')).toMatch(/143 knots/);
    await page.keyboard.press('u');
    await expect.poll(() => said(page, 'selected')).toMatch(/144 knots/);
    await close();
  });
});

describe('gear and its horn', () => {
  const low = { start: { altitudeFt: 1500, speedKt: 150, flapDeg: 9 } };

  test('down is told when it is locked and not before; the lever is touched where it is to go', async () => {
    const { page, close } = await flyScenario(plain(low));
    expect(await said(page, 'gearState')).toBe('Gear: up');
    const box = await boxOf(page, 'gear');
    await page.mouse.click(box.x + 30, box.y + box.height * 0.8);
    await expect.poll(() => said(page, 'gearState')).toBe('Gear: moving');
    await page.mouse.click(box.x + 30, box.y + box.height * 0.8);
    await pause(page);
    expect(await isPressed(page, 'gear')).toBe(true);
    await expect.poll(() => said(page, 'gearState'), { timeout: 25_000 }).toBe('Gear: down and locked');
    const record = await endAndSave(page);
    expect(acts(record, 'setGear')).toHaveLength(1);
    await close();
  }, 60_000);

  test('silence takes two steps, and neither is the space bar or Enter; it is told while it lasts (14 CFR 25.729(e)(4), 25.1322(d))', async () => {
    const { page, close } = await flyScenario(plain(low));
    await control(page, 'bothThrust').focus();
    await page.keyboard.press('Home');
    await expect.poll(() => said(page, 'alerts')).toMatch(/warning: gear horn, can be silenced/);
    await control(page, 'silence').click();
    for (const id of ['silenceCover', 'silence']) {
      await control(page, id).focus();
      await page.keyboard.press('Space');
      await page.keyboard.press('Enter');
    }
    await page.keyboard.press('y');
    await pause(page);
    expect(await isPressed(page, 'silenceCover')).toBe(false);
    await control(page, 'silenceCover').click();
    await expect.poll(() => isPressed(page, 'silenceCover')).toBe(true);
    // Left alone, the cover falls shut by itself, and nothing has been silenced.
    await expect.poll(() => isPressed(page, 'silenceCover'), { timeout: 9_000 }).toBe(false);
    expect(await said(page, 'alerts')).toMatch(/gear horn/);
    await page.keyboard.press('p');
    await expect.poll(() => isPressed(page, 'silenceCover')).toBe(true);
    await page.keyboard.press('y');
    await expect.poll(() => said(page, 'alerts')).toMatch(/advisory: horn silenced/);
    expect(await said(page, 'alerts')).not.toMatch(/gear horn/);
    const record = await endAndSave(page);
    expect(acts(record, 'silenceHorn')).toHaveLength(1);
    await close();
  }, 60_000);

  test('with the letters off their own keys still silence while the control has the focus', async () => {
    const { page, close } = await flyScenario(plain(low), { before: () => localStorage.setItem('evenhand.letters', 'off') });
    await page.keyboard.press('p');
    await pause(page);
    expect(await isPressed(page, 'silenceCover')).toBe(false);
    await control(page, 'silenceCover').focus();
    await page.keyboard.press('p');
    await expect.poll(() => isPressed(page, 'silenceCover')).toBe(true);
    await close();
  });

  test('in the landing band the horn says that it cannot be silenced, and is not', async () => {
    const { page, close } = await flyScenario(plain({ start: { altitudeFt: 1500, speedKt: 150, flapDeg: 16 } }));
    await control(page, 'bothThrust').focus();
    await page.keyboard.press('Home');
    await expect.poll(() => said(page, 'alerts')).toMatch(/warning: gear horn, cannot be silenced/);
    await page.keyboard.press('p');
    await expect.poll(() => isPressed(page, 'silenceCover')).toBe(true);
    await page.keyboard.press('y');
    await pause(page, 300);
    expect(await said(page, 'alerts')).toMatch(/warning: gear horn, cannot be silenced/);
    await close();
  });
});

describe('words of the outside', () => {
  const asks = (atS: number, text: string, answers: string[]) => ({ when: { atS }, do: 'callout', text, answers, right: answers[0], withinS: 20 });

  test.each([[1280, 720], [1366, 650], [844, 390], [390, 844]])('a callout is answered by a press or by its key, away from the gauge, in %i x %i', async (width, height) => {
    const { page, close } = await flyScenario(plain({ events: [asks(0.5, 'Say altitude.', ['5600 ft', '6500 ft']), asks(0.6, 'Which runway?', ['two six', 'one six'])] }), { width, height });
    await page.getByText('Say altitude.').waitFor();
    await expect.poll(() => page.locator('.talk').textContent()).toMatch(/1 more/);
    const [talk, flaps] = [(await page.locator('.talk').boundingBox())!, (await reading(page, 'leftPointer').boundingBox())!];
    expect(talk.x + talk.width < flaps.x || talk.y > flaps.y + flaps.height).toBe(true);
    expect(await axe(page)).toEqual([]);
    await page.getByRole('button', { name: '6500 ft' }).click();
    await page.getByText('Which runway?').waitFor();
    await page.keyboard.press('7');
    await expect.poll(() => page.locator('.talk').count()).toBe(0);
    const record = await endAndSave(page);
    expect(acts(record, 'answer')).toMatchObject([{ text: '6500 ft' }, { text: 'two six' }]);
    expect(verify(record).refused).toEqual([]);
    await close();
  });

  test('where it stands over the levers it can be put aside, and is found again', async () => {
    const { page, close } = await flyScenario(plain({ events: [asks(0.5, 'Say altitude.', ['5600 ft', '6500 ft'])] }), { width: 390, height: 844 });
    await page.getByText('Say altitude.').waitFor();
    expect(await control(page, 'lever').count()).toBe(0);
    expect(await control(page, 'extend').count()).toBe(1);
    await page.locator('[data-tab=thrust]').click();
    await expect.poll(() => page.locator('.talk').count()).toBe(0);
    expect(await control(page, 'bothThrust').count()).toBe(1);
    await page.getByRole('button', { name: 'Question' }).click();
    await page.getByText('Say altitude.').waitFor();
    await close();
  });

  test('a key that holds goes on holding while the mouse turns a tab, puts words aside or mutes the page', async () => {
    const { page, close } = await flyScenario(plain({ events: [asks(2.5, 'Say altitude.', ['5600 ft', '6500 ft'])] }), { width: 390, height: 844 });
    await makeReady(page);
    await page.keyboard.down('e');
    await expect.poll(() => isPressed(page, 'extend')).toBe(true);
    await page.locator('[data-tab=gear]').click();
    await page.getByRole('button', { name: /Sound/ }).click();
    await page.getByText('Say altitude.').waitFor();
    await page.locator('[data-tab=thrust]').click();
    await page.getByRole('button', { name: 'Question' }).click();
    await page.getByRole('button', { name: '5600 ft' }).click();
    await pause(page);
    expect(await isPressed(page, 'extend')).toBe(true);
    await page.keyboard.up('e');
    await close();
  });

  test('a message is shown without a question, and is heard', async () => {
    const { page, close } = await flyScenario(plain({ events: [{ when: { atS: 0.5 }, do: 'message', text: 'Runway two six in use.' }] }));
    await expect.poll(() => page.locator('[role=alert]', { hasText: 'Runway two six in use.' }).count()).toBe(1);
    expect(await page.locator('.talk button').count()).toBe(0);
    await close();
  });
});

test('a freeze stops the clock, leaves the instruments, lets the switch go, and Go on goes on', async () => {
  const { page, close } = await flyScenario(plain({ events: [{ when: { heldS: 1 }, do: 'freeze' }] }));
  await makeReady(page);
  await page.keyboard.down('e');
  await page.getByText('The clock stands.').waitFor();
  expect(await said(page, 'leftPointer')).not.toMatch(/blank/);
  const before = await said(page, 'altitude') + await said(page, 'leftPointer');
  await page.keyboard.press('l');
  await pause(page, 600);
  expect(await said(page, 'altitude') + await said(page, 'leftPointer')).toBe(before);
  expect(await axe(page)).toEqual([]);
  await page.getByRole('button', { name: 'Go on' }).click();
  await expect.poll(() => isPressed(page, 'extend')).toBe(false);
  // The key that is still down does not take the switch up again; a new press does.
  await page.keyboard.up('e');
  await page.keyboard.down('e');
  await expect.poll(() => isPressed(page, 'extend')).toBe(true);
  await page.keyboard.up('e');
  const record = await endAndSave(page);
  expect(record.marks.map(({ what }) => what)).toEqual(expect.arrayContaining(['freeze', 'resume']));
  expect(record.commands.map((command) => command.do)).not.toContain('setGear');
  expect(verify(record).refused).toEqual([]);
  await close();
});

test('once the autopilot is off it is told, and the roll is the hand\'s; before that no hand reaches it', async () => {
  const split = { name: 'back', kind: 'lag', side: 'left', ratio: -4, when: { heldS: 0.2 } };
  const { page, close } = await flyScenario(plain({ faults: [split] }));
  await page.keyboard.press('ArrowRight');
  await makeReady(page);
  await page.keyboard.down('e');
  await expect.poll(() => said(page, 'alerts'), { timeout: 40_000 }).toMatch(/warning: autopilot off, roll by hand/);
  await page.keyboard.up('e');
  for (let time = 0; time < 4; time += 1) await page.keyboard.press('ArrowRight');
  await expect.poll(() => control(page, 'roll').getAttribute('aria-valuenow')).toBe('0.2');
  const box = await boxOf(page, 'roll');
  await page.mouse.click(box.x + box.width * 0.85, box.y + box.height / 2);
  await expect.poll(async () => Number(await control(page, 'roll').getAttribute('aria-valuenow'))).toBeGreaterThan(0.5);
  await expect.poll(() => said(page, 'control')).toMatch(/right/);
  const record = await endAndSave(page);
  expect(acts(record, 'roll').length).toBeGreaterThanOrEqual(5);
  expect(verify(record).refused).toEqual([]);
  await close();
}, 90_000);

describe('hands that cannot hold', () => {
  const latched = { before: () => localStorage.setItem('evenhand.latched', 'on') };
  test.each(['mouse', 'touch', 'key'] as const)('by %s: press runs, press again stops, and the record says so', async (hand) => {
    const { page, close } = await flyScenario(plain(), { ...latched, hasTouch: hand === 'touch' });
    await makeReady(page);
    const box = await boxOf(page, 'extend');
    const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
    const session = await cdp(page);
    const press = async (): Promise<void> => {
      if (hand === 'mouse') await page.mouse.click(x, y);
      else if (hand === 'key') await page.keyboard.press('e');
      else {
        await session.send('Input.dispatchTouchEvent', { type: 'touchStart', touchPoints: [{ x, y, id: 1 }] });
        await session.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] });
      }
    };
    await press();
    await expect.poll(() => isPressed(page, 'extend')).toBe(true);
    await pause(page, 400);
    expect(await isPressed(page, 'extend')).toBe(true);
    await press();
    await expect.poll(() => isPressed(page, 'extend')).toBe(false);
    const record = await endAndSave(page);
    expect(record.device.assisted).toEqual(['latchedHold']);
    expect(record.commands.map((command) => command.do).slice(-2)).toEqual(['holdDrive', 'releaseDrive']);
    await close();
  });

  test('pointers are spoken only when that is asked for, and then the record says so', async () => {
    const quiet = await flyScenario(plain());
    await pause(quiet.page, 600);
    expect(await quiet.page.locator('[data-spoken]').count()).toBe(0);
    expect((await endAndSave(quiet.page)).device).not.toHaveProperty('assisted');
    await quiet.close();
    const { page, close } = await flyScenario(plain(), { before: () => localStorage.setItem('evenhand.spoken', 'on') });
    await expect.poll(() => page.locator('[data-spoken]').textContent()).toBe('left 4.0 degrees, right 4.0 degrees');
    expect((await endAndSave(page)).device.assisted).toEqual(['spokenPointers']);
    await close();
  });
});
