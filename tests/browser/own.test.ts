// A run that came by a link: flown from its brief to its debrief, and nothing that its instructor wrote about it is anywhere to be found.
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { verify } from '../../sim/files/index.js';
import { linkCode } from '../../src/records/link.js';
import { control, makeReady, save } from './drilling.js';
import { appUrl, openApp } from './harness.js';
import { plain } from './flying.js';

const SECRET = /secret/i;
/** With everything that an instructor may write, comments included, as an instructor's own link holds it. */
const WRITTEN = `// SECRET remark\n${JSON.stringify(plain({
  title: 'SECRET title', notes: 'SECRET notes', skill: 'SECRET skill', order: 7, brief: 'Set 16 from 4, and watch.',
  faults: [{ name: 'a', kind: 'disconnect', side: 'right', when: { flapDeg: 8 } }],
}))}`;

/** All that a page shows, says to assistive technology, or has in its address, its title and its stores. */
const everything = (page: Page): Promise<string> => page.evaluate(async () => {
  const answer = <T>(asked: IDBRequest<T>): Promise<T> => new Promise((done, fail) => {
    asked.addEventListener('success', () => done(asked.result));
    asked.addEventListener('error', () => fail(asked.error ?? new Error('no answer')));
  });
  const kept: string[] = [];
  for (const { name } of await indexedDB.databases()) {
    const store = await answer(indexedDB.open(name ?? ''));
    for (const one of store.objectStoreNames) kept.push(JSON.stringify(await answer(store.transaction(one).objectStore(one).getAll())));
    store.close();
  }
  for (const store of [localStorage, sessionStorage]) for (let at = 0; at < store.length; at += 1) kept.push(store.getItem(store.key(at) ?? '') ?? '');
  return [document.documentElement.outerHTML, document.title, location.href, JSON.stringify(history.state), ...kept].join('\n');
});

test('a link is flown under an opaque address, and gives nothing away before, during or behind the run', async () => {
  const { page, close } = await openApp(`#/own?s=${await linkCode(WRITTEN)}`);
  await page.getByText('Set 16 from 4, and watch.').waitFor();
  expect(new URL(page.url()).hash).toMatch(/^#\/own\/[0-9a-f]{32}$/);
  expect(await everything(page)).not.toMatch(SECRET);
  // A reload finds the run again.
  await page.reload();
  await page.getByRole('button', { name: 'Start' }).click();
  await page.waitForURL(/#\/own\/[0-9a-f]{32}\/run$/);
  await control(page, 'extend').waitFor();
  expect(await everything(page)).not.toMatch(SECRET);
  await makeReady(page);
  await page.keyboard.down('e');
  await page.locator('[data-control="extend"][aria-pressed="true"]').waitFor();
  await page.keyboard.up('e');
  await page.keyboard.press('Escape');
  await page.getByRole('button', { name: 'End the run' }).click();
  await page.getByText('Not sure').click();
  expect(await everything(page)).not.toMatch(SECRET);
  await page.getByRole('button', { name: 'Show the debrief' }).click();
  await page.locator('.figures').waitFor();
  expect(await everything(page)).not.toMatch(SECRET);
  const record = await save(page);
  expect(JSON.stringify(record)).not.toMatch(SECRET);
  expect(record.scenario).toMatchObject({ title: '', brief: 'Set 16 from 4, and watch.', faults: [{ name: 'a' }] });
  expect(verify(record).ok).toBe(true);
  await page.getByRole('link', { name: 'Logbook' }).first().click();
  await page.getByRole('button', { name: 'Flaps from 4 to 16', exact: true }).waitFor();
  expect(await everything(page)).not.toMatch(SECRET);
  await close();
});

test('the record of a shipped drill is as closed', async () => {
  const { page, close } = await openApp('#/drill/1?seed=3');
  await page.getByRole('button', { name: 'Start' }).click();
  await control(page, 'extend').waitFor();
  await page.keyboard.press('Escape');
  await page.getByRole('button', { name: 'End the run' }).click();
  await page.getByText('Not sure').click();
  await page.getByRole('button', { name: 'Show the debrief' }).click();
  const record = await save(page);
  expect(Object.keys(record.scenario)).not.toEqual(expect.arrayContaining(['skill']));
  expect([record.scenario.title, record.scenario.notes, record.scenario.passes]).toEqual(['', undefined, undefined]);
  expect(verify(record).ok).toBe(true);
  await close();
});

test('a link that is broken, or holds no run, says so and flies nothing', async () => {
  const { page, close } = await openApp('#/own?s=AAAA');
  await page.getByRole('alert').filter({ hasText: 'cut short or altered' }).waitFor();
  await page.goto('about:blank');
  await page.goto(new URL(`#/own?s=${await linkCode(WRITTEN.replace('"flapDeg":8', '"flapDeg":99'))}`, appUrl()).href);
  await page.getByText('faults[0].when.flapDeg').waitFor();
  expect(await page.getByRole('button', { name: 'Start' }).count()).toBe(0);
  await page.goto('about:blank');
  await page.goto(new URL('#/own/0123456789abcdef0123456789abcdef', appUrl()).href);
  await page.getByRole('heading', { name: 'This run is not here any more' }).waitFor();
  await close();
});
