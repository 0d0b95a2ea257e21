// Set-up: every choice by mouse, keyboard and touch, said as it is made, kept, and taken back.
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { axe, isPressed, startRun } from './drilling.js';
import { appUrl, openApp } from './harness.js';

const said = (page: Page) => page.getByRole('status').textContent();
const key = (page: Page, does: string) => page.getByRole('button', { name: new RegExp(`^${does}: (key|press)`) });
const kept = (page: Page, name: string) => page.evaluate((key) => localStorage.getItem(`evenhand.${key}`), name);
const paper = (page: Page) => page.evaluate(() => getComputedStyle(document.documentElement).backgroundColor);

test('reached from the head of every page, and back', async () => {
  const { page, close } = await openApp('#/drill/1?seed=3');
  await page.getByRole('link', { name: 'Set-up', exact: true }).click();
  await page.getByRole('heading', { level: 1, name: 'Set-up' }).waitFor();
  expect(await page.getByRole('link', { name: 'Set-up', exact: true }).getAttribute('aria-current')).toBe('page');
  await page.getByRole('link', { name: 'Back to where you were' }).click();
  await page.getByRole('button', { name: 'Start' }).waitFor();
  expect(page.url()).toBe(`${appUrl()}#/drill/1?seed=3`);
  await page.goto('about:blank');
  await page.goto(`${appUrl()}#/settings`);
  await page.getByRole('link', { name: 'Drills', exact: true }).click();
  await page.getByRole('link', { name: /Flaps from/ }).first().waitFor();
  await close();
});

test('colours: three plain choices, said, kept, and undone', async () => {
  const { page, close } = await openApp('#/settings', { colorScheme: 'dark' });
  await page.getByLabel('System').waitFor();
  expect(await page.getByLabel('System').isChecked()).toBe(true);
  const night = await paper(page);
  await page.getByLabel('Day', { exact: true }).check();
  await expect.poll(() => said(page)).toBe('Colours: day');
  const day = await paper(page);
  expect(day).not.toBe(night);
  await page.reload();
  await page.getByLabel('System').waitFor();
  await expect.poll(async () => [await paper(page), await kept(page, 'look')]).toEqual([day, 'day']);
  await page.getByLabel('Night', { exact: true }).check();
  await expect.poll(() => paper(page)).toBe(night);
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect.poll(async () => [await paper(page), await said(page)]).toEqual([day, 'Taken back']);
  await close();
});

test('a key is changed by pressing it, acts in a run, is on the brief, and is kept', async () => {
  const { page, close } = await openApp('#/settings');
  await key(page, 'extend').click();
  await expect.poll(() => said(page)).toBe('Press the new key for extend. Esc leaves it.');
  await page.keyboard.press('w');
  await expect.poll(() => said(page)).toBe('Extend: key W');
  await expect.poll(() => key(page, 'extend').textContent()).toBe('W');
  expect(JSON.parse((await kept(page, 'keys')) ?? '')).toEqual({ extend: { code: 'KeyW', shift: false } });
  await page.goto('about:blank');
  await page.goto(`${appUrl()}#/drill/1?seed=3`);
  await page.getByRole('button', { name: 'Start' }).waitFor();
  expect(await page.locator('kbd', { hasText: /^W$/ }).count()).toBe(1);
  expect(await page.locator('kbd', { hasText: /^E$/ }).count()).toBe(0);
  await startRun(page);
  await page.keyboard.press('g');
  await page.keyboard.press('a');
  await page.keyboard.down('e');
  await page.locator('[data-control="arm"][aria-pressed="true"]').waitFor();
  expect(await isPressed(page, 'extend')).toBe(false);
  await page.keyboard.up('e');
  await page.keyboard.down('w');
  await page.locator('[data-control="extend"][aria-pressed="true"]').waitFor();
  await page.keyboard.up('w');
  await page.locator('[data-control="extend"][aria-pressed="false"]').waitFor();
  await close();
});

test('a key that is taken: told, left or exchanged; then each back to its own', async () => {
  const { page, close } = await openApp('#/settings');
  await key(page, 'call split').click();
  await page.keyboard.press('g');
  await expect.poll(() => said(page)).toBe('That key is for guard open, closed.');
  const group = page.getByRole('group', { name: 'That key is taken' });
  expect(await group.textContent()).toMatch(/^G is for guard open, closed\./);
  expect(await axe(page)).toEqual([]);
  await group.getByRole('button', { name: 'Leave it' }).click();
  await expect.poll(async () => [await key(page, 'call split').textContent(), await key(page, 'guard open, closed').textContent(), await said(page)]).toEqual(['S', 'G', 'Left as it was']);
  await key(page, 'call split').click();
  await page.keyboard.press('g');
  await group.getByRole('button', { name: 'Exchange' }).click();
  await expect.poll(async () => [await key(page, 'call split').textContent(), await key(page, 'guard open, closed').textContent()]).toEqual(['G', 'S']);
  await expect.poll(() => key(page, 'call split').evaluate((button) => button === document.activeElement)).toBe(true);
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect.poll(async () => [await key(page, 'call split').textContent(), await key(page, 'guard open, closed').textContent()]).toEqual(['S', 'G']);
  // What cannot have the other's key in return is not exchanged.
  await key(page, 'flap lever forward').click();
  await page.keyboard.press('e');
  expect(await group.textContent()).toMatch(/E is for extend\. It cannot have Shift and F in return\./);
  expect(await group.getByRole('button').allTextContents()).toEqual(['Leave it']);
  await close();
});

test('Esc and Tab stay: one leaves the key, the other goes on; what is the browser’s is refused', async () => {
  const { page, close } = await openApp('#/settings');
  const wait = async () => { await key(page, 'gear up, down').click(); };
  await wait();
  await page.keyboard.press('Escape');
  await expect.poll(async () => [await key(page, 'gear up, down').textContent(), await said(page)]).toEqual(['L', 'Left as it was']);
  await wait();
  await page.keyboard.press('Tab');
  await expect.poll(() => key(page, 'roll left').evaluate((button) => button === document.activeElement)).toBe(true);
  await page.keyboard.press('d');
  await expect.poll(async () => [await key(page, 'gear up, down').textContent(), await kept(page, 'keys')]).toEqual(['L', '{}']);
  await wait();
  await page.keyboard.press('ArrowUp');
  await expect.poll(() => said(page)).toBe('Arrow up and down always move the flap lever.');
  await wait();
  await page.keyboard.press('Space');
  await expect.poll(() => said(page)).toBe('Space and Enter press what has the focus.');
  await wait();
  await page.keyboard.press('Control+d');
  await expect.poll(() => said(page)).toBe('Only a key by itself, or with Shift');
  await page.keyboard.press('Shift+d');
  await expect.poll(async () => [await said(page), await key(page, 'gear up, down').textContent()]).toEqual(['Gear up, down: key Shift and D', 'Shift D']);
  await page.getByRole('button', { name: 'gear up, down: the key it came with' }).click();
  await expect.poll(async () => [await key(page, 'gear up, down').textContent(), await kept(page, 'keys')]).toEqual(['L', '{}']);
  await close();
});

test('by the keyboard alone: volume, mute, helps; steps of the slide are one change', async () => {
  const { page, close } = await openApp('#/settings');
  await page.getByLabel('Volume').focus();
  await page.keyboard.press('ArrowLeft');
  await page.keyboard.press('ArrowLeft');
  await expect.poll(async () => [await said(page), await kept(page, 'volume')]).toEqual(['Volume: 60 percent', '0.6']);
  await page.getByRole('button', { name: 'Undo' }).focus();
  await page.keyboard.press('Enter');
  await expect.poll(() => kept(page, 'volume')).toBe('0.7');
  for (const [name, store] of [['Muted', 'muted'], ['Latched hold', 'latched'], ['Spoken pointers', 'spoken']] as const) {
    await page.getByRole('checkbox', { name }).focus();
    await page.keyboard.press('Space');
    await expect.poll(async () => [await said(page), await kept(page, store)]).toEqual([`${name}: on`, 'on']);
  }
  for (const name of ['Latched hold', 'Spoken pointers']) expect(await page.locator('label', { hasText: name }).textContent()).toMatch(/marked assisted in its record and kept apart/);
  await page.getByRole('button', { name: 'Reset everything' }).focus();
  await page.keyboard.press('Enter');
  await expect.poll(() => said(page)).toBe('Everything as it came');
  await expect.poll(async () => [await kept(page, 'muted'), await kept(page, 'latched'), await kept(page, 'spoken')]).toEqual(['off', 'off', 'off']);
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect.poll(async () => [await kept(page, 'muted'), await kept(page, 'latched'), await kept(page, 'spoken')]).toEqual(['on', 'on', 'on']);
  await close();
});

test('by touch: letters off and on', async () => {
  const { page, close } = await openApp('#/settings', { hasTouch: true, width: 390, height: 844 });
  await page.getByText('Letter keys act').tap();
  await expect.poll(async () => [await said(page), await kept(page, 'letters')]).toEqual(['Letter keys: off', 'off']);
  await page.getByRole('button', { name: 'Undo' }).tap();
  await expect.poll(() => kept(page, 'letters')).toBe('on');
  await close();
});

test('keys are named as they are printed on the board before the trainee', async () => {
  const { page, close } = await openApp('#/settings', {
    before: () => Object.defineProperty(navigator, 'keyboard', { value: { getLayoutMap: () => Promise.resolve(new Map([['KeyA', 'q'], ['KeyY', 'z']])) } }),
  });
  await expect.poll(() => key(page, 'arm, disarm').textContent()).toBe('Q');
  await expect.poll(() => key(page, 'silence the gear horn').textContent()).toBe('Z');
  await close();
});

test('whatever an older page left in the store, the page comes up as it was meant', async () => {
  const { page, close } = await openApp('#/settings', {
    before: () => {
      const wrong = { keys: '{"call":{"code":"Escape","shift":false},"nobody":1,"guard":{"code":"KeyE"', volume: '7', look: 'purple', letters: 'maybe' };
      for (const [name, value] of Object.entries(wrong)) if (localStorage.getItem(`evenhand.${name}`) === null) localStorage.setItem(`evenhand.${name}`, value);
    },
  });
  await page.getByLabel('System').waitFor();
  await expect.poll(async () => [await key(page, 'call split').textContent(), await page.getByLabel('Volume').inputValue(), await page.getByLabel('System').isChecked(), await page.getByLabel('Letter keys act').isChecked()]).toEqual(['S', '70', true, true]);
  await close();
});
