// The hold in a real browser: every way of taking the switch, and every way of losing it.
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { Page } from 'playwright-core';
import { control, endAndSave, isPressed, makeReady, middleOf, startRun } from './drilling.js';
import { appUrl, cdp, openApp, type App, type OpenOptions } from './harness.js';
import { rawBrowser, type RawBrowser, type RawPage } from './raw.js';

const held = (page: Page) => expect.poll(() => isPressed(page, 'extend')).toBe(true);
const free = (page: Page) => expect.poll(() => isPressed(page, 'extend')).toBe(false);

async function ready(options: OpenOptions = {}): Promise<App> {
  const app = await openApp('#/drill/1?seed=3', options);
  await startRun(app.page);
  return app;
}

describe('mouse', () => {
  test('press holds, slipping off keeps, letting go anywhere releases', async () => {
    const { page, close } = await ready();
    await makeReady(page);
    const { x, y } = await middleOf(page, 'extend');
    await page.mouse.move(x, y);
    await page.mouse.down();
    await held(page);
    await page.mouse.move(x + 500, y - 300, { steps: 5 });
    await page.waitForTimeout(150);
    expect(await isPressed(page, 'extend')).toBe(true);
    await page.mouse.up();
    await free(page);
    const record = await endAndSave(page);
    expect(record.commands.map((command) => command.do)).toEqual(['openGuard', 'arm', 'holdDrive', 'releaseDrive']);
    expect(record.device.input).toContain('mouse');
    await close();
  });

  test('the other buttons hold nothing, and no menu comes', async () => {
    const { page, close } = await ready();
    await makeReady(page);
    const prevented = page.evaluate(() => new Promise((done) => addEventListener('contextmenu', (event) => done(event.defaultPrevented), { once: true })));
    const { x, y } = await middleOf(page, 'extend');
    await page.mouse.move(x, y);
    await page.mouse.down({ button: 'right' });
    await page.mouse.up({ button: 'right' });
    expect(await prevented).toBe(true);
    expect(await isPressed(page, 'extend')).toBe(false);
    await close();
  });

  test('under a closed guard nothing moves; retract stays until it is put to off', async () => {
    const { page, close } = await ready();
    const { x, y } = await middleOf(page, 'extend');
    await page.mouse.move(x, y);
    await page.mouse.down();
    await page.waitForTimeout(150);
    expect(await isPressed(page, 'extend')).toBe(false);
    await page.mouse.up();
    await makeReady(page);
    await control(page, 'retract').click();
    await expect.poll(() => isPressed(page, 'retract')).toBe(true);
    await page.waitForTimeout(150);
    expect(await isPressed(page, 'retract')).toBe(true);
    await control(page, 'off').click();
    await expect.poll(() => isPressed(page, 'retract')).toBe(false);
    await close();
  });

  test('the flap lever goes to the setting that is touched', async () => {
    const { page, close } = await ready();
    const box = (await control(page, 'lever').boundingBox())!;
    await page.mouse.click(box.x + 30, box.y + (box.height * 2.5) / 6);
    await expect.poll(() => control(page, 'lever').getAttribute('aria-valuetext')).toBe('9');
    await control(page, 'lever').focus();
    await page.keyboard.press('ArrowDown');
    await expect.poll(() => control(page, 'lever').getAttribute('aria-valuetext')).toBe('16');
    await page.keyboard.press('ArrowUp');
    await page.keyboard.press('ArrowUp');
    await expect.poll(() => control(page, 'lever').getAttribute('aria-valuetext')).toBe('4');
    await close();
  });
});

describe('touch', () => {
  const touch = { hasTouch: true };
  test('finger down holds, a second finger changes nothing, finger up releases', async () => {
    const { page, close } = await ready(touch);
    await makeReady(page);
    const session = await cdp(page);
    const { x, y } = await middleOf(page, 'extend');
    const other = await middleOf(page, 'retract');
    const send = (type: string, points: { x: number; y: number; id: number }[]) => session.send('Input.dispatchTouchEvent', { type: type as 'touchStart', touchPoints: points });
    await send('touchStart', [{ x, y, id: 1 }]);
    await held(page);
    await send('touchStart', [{ x, y, id: 1 }, { x: x + 20, y, id: 2 }]);
    await send('touchMove', [{ x: x + 200, y: y - 200, id: 1 }, { x: other.x, y: other.y, id: 2 }]);
    await page.waitForTimeout(150);
    expect(await isPressed(page, 'extend')).toBe(true);
    await send('touchEnd', []);
    await free(page);
    const record = await endAndSave(page);
    expect(record.commands.filter((command) => command.do === 'holdDrive' || command.do === 'releaseDrive').map((command) => command.do)).toEqual(['holdDrive', 'releaseDrive']);
    expect(record.device.input).toContain('touch');
    await close();
  });

  test('a touch that the system takes away lets go, stops the clock and says so', async () => {
    const { page, close } = await ready(touch);
    await makeReady(page);
    const session = await cdp(page);
    const { x, y } = await middleOf(page, 'extend');
    await session.send('Input.dispatchTouchEvent', { type: 'touchStart', touchPoints: [{ x, y, id: 1 }] });
    await held(page);
    await session.send('Input.dispatchTouchEvent', { type: 'touchCancel', touchPoints: [] });
    await page.getByText('The switch was let go.').waitFor();
    await close();
  });
});

describe('key', () => {
  test('down holds, repeats change nothing, up releases; the space bar works on the focused switch', async () => {
    const { page, close } = await ready();
    await page.keyboard.press('g');
    await page.keyboard.press('a');
    for (let time = 0; time < 4; time += 1) await page.keyboard.down('e');
    await held(page);
    await page.keyboard.up('e');
    await free(page);
    await control(page, 'extend').focus();
    await page.keyboard.down('Space');
    await held(page);
    await page.keyboard.up('Space');
    await free(page);
    const record = await endAndSave(page);
    expect(record.commands.map((command) => command.do)).toEqual(['openGuard', 'arm', 'holdDrive', 'releaseDrive', 'holdDrive', 'releaseDrive']);
    await close();
  });

  test('focus that moves on lets a key go', async () => {
    const { page, close } = await ready();
    await makeReady(page);
    await control(page, 'extend').focus();
    await page.keyboard.down('Space');
    await held(page);
    await page.keyboard.press('Tab');
    await free(page);
    await page.keyboard.up('Space');
    await close();
  });

  test('the call is a key of its own: neither space nor Enter on the switch calls', async () => {
    const { page, close } = await ready();
    await makeReady(page);
    await control(page, 'extend').focus();
    await page.keyboard.press('Space');
    await page.keyboard.press('Enter');
    await page.keyboard.press('s');
    // An act of the very tick in which a run is stopped never acts.
    await page.waitForTimeout(300);
    const record = await endAndSave(page);
    expect(record.commands.filter((command) => command.do === 'callSplit')).toHaveLength(1);
    await close();
  });

  test('with the letters switched off they do nothing', async () => {
    const { page, close } = await openApp('#/drill/1?seed=3');
    await page.getByLabel('Letter keys act').uncheck();
    await startRun(page);
    await page.keyboard.press('g');
    await page.waitForTimeout(150);
    expect(await isPressed(page, 'guard')).toBe(false);
    await control(page, 'guard').focus();
    await page.keyboard.press('Enter');
    await expect.poll(() => isPressed(page, 'guard')).toBe(true);
    await close();
  });
});

describe('page lost', () => {
  let browser: RawBrowser;
  beforeAll(async () => {
    browser = await rawBrowser();
  });
  afterAll(() => browser.close());

  async function holding(): Promise<RawPage> {
    const page = await browser.open(`${appUrl()}#/drill/1?seed=3`);
    await page.until("document.querySelector('.start button')");
    await page.evaluate("document.querySelector('.start button').click(); 0");
    await page.until("document.querySelector('[data-control=extend]')");
    for (const code of ['KeyG', 'KeyA']) {
      await key(page, 'keyDown', code);
      await key(page, 'keyUp', code);
    }
    await page.until("document.querySelector('[data-control=arm]').ariaPressed === 'true'");
    await key(page, 'keyDown', 'KeyE');
    await page.until("document.querySelector('[data-control=extend]').ariaPressed === 'true'");
    return page;
  }
  const key = (page: RawPage, type: string, code: string) => page.send('Input.dispatchKeyEvent', { type, code, key: code.slice(3).toLowerCase() });

  test('leaving the page with a key held lets go, blanks, and coming back does not take it up again', async () => {
    const page = await holding();
    await page.leave();
    await page.comeBack();
    await page.until("document.querySelector('.paused')");
    expect(await page.evaluate("document.querySelector('[data-control=extend]').ariaPressed")).toBe('false');
    expect(await page.evaluate("document.querySelector('[data-reading=leftPointer]').textContent")).toMatch(/blank/);
    expect(await page.evaluate("document.querySelector('.paused').textContent")).toMatch(/let go/);
  });

  test('a window that loses its focus lets go', async () => {
    const page = await holding();
    await page.evaluate("dispatchEvent(new Event('blur')); 0");
    await page.until("document.querySelector('.paused')");
    await page.until("document.querySelector('[data-control=extend]').ariaPressed === 'false'");
  });
});
