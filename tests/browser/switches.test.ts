// A switch box given its part by pressing it, flown by, and pulled out; what the record says of it.
import { expect, test } from 'vitest';
import type { Page } from 'playwright-core';
import { axe, control, endAndSave, isPressed, startRun } from './drilling.js';
import { appUrl, openApp } from './harness.js';
import { fakeBox, move, plug, press } from './pads.js';

const line = (page: Page, does: string) => page.locator(`[data-does="${does}"]`);
const said = (page: Page): Promise<string | null> => page.locator('.told [role="status"]').textContent();

/** Gives a switch its part: the line waits, the switch is pressed and let go. */
async function give(page: Page, does: string, button: number): Promise<void> {
  await line(page, does).click();
  await press(page, button, true);
  await expect.poll(() => line(page, does).textContent()).not.toBe('press it');
  await press(page, button, false);
}

test('parts are given by pressing and moving, conflicts told, all taken back; then the box flies, and pulled out it lets go', async () => {
  const { page, close } = await openApp('#/switches', { before: fakeBox });
  await page.getByText('No device is seen yet.').waitFor();
  expect(await axe(page)).toEqual([]);
  await plug(page, true);
  await page.getByRole('heading', { name: 'Panel of the test' }).waitFor();
  expect(await axe(page)).toEqual([]);
  await give(page, 'extend', 0);
  await expect.poll(() => said(page)).toBe('Extend: switch 1');
  await give(page, 'arm', 1);
  await line(page, 'guard').click();
  await press(page, 1, true);
  await page.getByText('That switch is for arm, disarm already.').waitFor();
  await press(page, 1, false);
  await page.getByRole('button', { name: 'Leave it' }).click();
  expect(await line(page, 'arm').textContent()).toBe('2');
  await give(page, 'guard', 2);
  await page.locator('.key-line', { has: line(page, 'guard') }).getByLabel('a switch that stays').check();
  await expect.poll(() => said(page)).toBe('Guard open, closed: a switch that stays');
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect.poll(() => page.locator('.key-line', { has: line(page, 'guard') }).getByLabel('a switch that stays').isChecked()).toBe(false);
  await page.locator('.key-line', { has: line(page, 'guard') }).getByLabel('a switch that stays').check();
  // A lever: to both ends, left at idle.
  await line(page, 'bothThrust').click();
  await move(page, 0, 0.9);
  await expect.poll(() => page.getByRole('button', { name: 'Done' }).isEnabled()).toBe(true);
  await move(page, 0, -1);
  await page.getByRole('img', { name: 'Lever A from -1.0 to 0.9' }).waitFor();
  await page.getByRole('button', { name: 'Done' }).click();
  await expect.poll(() => said(page)).toBe('Both thrust levers: lever A');
  expect(await axe(page)).toEqual([]);
  await page.goto('about:blank');

  await page.goto(`${appUrl()}#/drill/1?seed=3`);
  await plug(page, true);
  await startRun(page);
  await page.evaluate(() => new Promise((done) => { requestAnimationFrame(() => requestAnimationFrame(done)); }));
  await press(page, 2, true);
  await page.locator('[data-control="guard"][aria-pressed="true"]').waitFor();
  await press(page, 1, true);
  await page.locator('[data-control="arm"][aria-pressed="true"]').waitFor();
  const pressed = await press(page, 0, true);
  await page.locator('[data-control="extend"][aria-pressed="true"]').waitFor();
  const released = await press(page, 0, false);
  await page.locator('[data-control="extend"][aria-pressed="false"]').waitFor();
  await press(page, 0, true, false);
  await page.locator('[data-control="extend"][aria-pressed="true"]').waitFor();
  await plug(page, false);
  await page.getByText('The window or the device lost your hand.').waitFor();
  expect(await isPressed(page, 'extend')).toBe(false);
  // Back with its switch on: it must be let go first.
  await plug(page, true);
  await page.getByRole('button', { name: 'Go on' }).click();
  await page.evaluate(() => new Promise((done) => { requestAnimationFrame(() => requestAnimationFrame(() => requestAnimationFrame(done))); }));
  expect(await isPressed(page, 'extend')).toBe(false);
  const record = await endAndSave(page);
  expect(record.device.input).toBe('gamepad, gamepad by frames');
  const stamps = (what: string) => record.commands.filter((one) => one.do === what).map(({ stampMs }) => stampMs);
  expect(record.commands.map((one) => one.do)).toEqual(['openGuard', 'arm', 'holdDrive', 'releaseDrive', 'holdDrive', 'releaseDrive']);
  // The box's own time to the bit; the frame's where it told none.
  expect([stamps('holdDrive')[0], stamps('releaseDrive')[0]]).toEqual([pressed, released]);
  expect(record.marks.map(({ what }) => what)).toContain('focusLost');
  await close();
});

test('a thrust lever that is moved moves the drawn one; one that trembles moves nothing', async () => {
  const { page, close } = await openApp('#/drill/1?seed=3', {
    before: fakeBox,
  });
  await page.evaluate(() => localStorage.setItem('evenhand.pads', JSON.stringify({ 'Panel of the test (Vendor: 1234 Product: abcd)': [{ does: 'bothThrust', axis: 0, from: -1, to: 1, dead: 0 }] })));
  await page.reload();
  await plug(page, true);
  await startRun(page);
  await page.evaluate(() => new Promise((done) => { requestAnimationFrame(() => requestAnimationFrame(done)); }));
  await move(page, 0, -0.95);
  await page.evaluate(() => new Promise((done) => { requestAnimationFrame(() => requestAnimationFrame(done)); }));
  expect(await isPressed(page, 'speedHold')).toBe(true);
  await move(page, 0, 0);
  await page.locator('[data-control="speedHold"][aria-pressed="false"]').waitFor();
  // Half of 55 degrees, in whole degrees: 28 both.
  await expect.poll(() => control(page, 'bothThrust').getAttribute('aria-valuetext')).toContain('28');
  await close();
});
