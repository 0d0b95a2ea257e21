// A class on its page: files of several people dropped together, refusals told, order by name or by what is due, the table as a file; nothing kept.
import { gzipSync } from 'node:zlib';
import { expect, test } from 'vitest';
import { flownRecords } from '../stats/made-flight.js';
import { shippedSet } from '../set/shipped.js';
import { axe } from './drilling.js';
import { openApp } from './harness.js';

const short = shippedSet('short');
const hex = (text: string): string => Buffer.from(text).toString('hex').padEnd(32, '0').slice(0, 32);

function logbook(person: string, seed: number): { name: string; mimeType: string; buffer: Buffer } {
  const records = flownRecords(short, seed);
  const attempt = hex(`set ${person}`);
  const runs = records.map((record, at) => JSON.stringify({ id: hex(`${at} ${person}`), person, atMs: at, attempt, drill: null, abandoned: false, record }));
  const flight = { id: attempt, set: 'short', seed, person, name: '', startedMs: 1, runs: 12, blocks: 1, leftMs: null, done: records.map(({ outcome }, at) => ({ entry: hex(`${at} ${person}`), outcome })) };
  return { name: `${person}.jsonl.gz`, mimeType: 'application/gzip', buffer: gzipSync(`${[JSON.stringify({ evenhandLogbook: 1, app: 'x', runs: 12 }), ...runs, JSON.stringify({ flight })].join('\n')}\n`) };
}

test('two logbooks and a file that is none: a table by person, its order, its file; reloaded, nothing is left', async () => {
  const { page, close } = await openApp('#/class');
  await page.getByText('Open files', { exact: true }).waitFor();
  await page.setInputFiles('input[type=file]', [logbook('Cleo', 5), logbook('Ada', 6), { name: 'holiday.json', mimeType: 'application/json', buffer: Buffer.from('{}') }]);
  await page.getByText('2 people, 24 runs, each played again.').waitFor();
  await page.locator('.class-steps tbody tr').nth(1).waitFor();
  expect(await page.locator('.refused').textContent()).toContain('holiday.json');
  expect(await page.locator('.class-steps tbody th').allTextContents()).toEqual(['Ada', 'Cleo']);
  expect(await page.locator('.class-steps tbody tr').first().getByRole('img').nth(6).getAttribute('aria-label')).toBe('done'); // step 7 is the short set
  const flights = await page.locator('section[aria-labelledby=class-flights] tbody tr').allTextContents();
  expect(flights).toHaveLength(2);
  expect(flights.join(' ')).toMatch(/12 of 12/);
  expect(await axe(page)).toEqual([]);
  const [download] = await Promise.all([page.waitForEvent('download'), page.getByRole('button', { name: 'Table, CSV' }).click()]);
  expect(download.suggestedFilename()).toBe('evenhand-class.csv');
  await page.getByLabel('In order of').selectOption('due');
  expect(await page.locator('.class-steps tbody th').count()).toBe(2);
  await page.reload();
  await page.getByText('Open files', { exact: true }).waitFor();
  expect(await page.evaluate(async () => (await indexedDB.databases()).map(({ name }) => name))).not.toContain('evenhand class');
  await page.goto(`${new URL(page.url()).origin}/#/logbook`);
  await page.getByText('No run yet.').waitFor();
  await close();
});
