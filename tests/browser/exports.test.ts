// What the debrief saves is read back: the table by the reader of tables, the figures by a parser, the drawings by the browser itself.
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { readRows } from '../../src/text/csv.js';
import { FAULTS_OF_THE_JOB, flown, type FlownRun } from '../pages/flown.js';
import { openApp } from './harness.js';

async function openRecord(page: Page, { record }: FlownRun): Promise<void> {
  await page.setInputFiles('input[type=file]', { name: 'run.json', mimeType: 'application/json', buffer: Buffer.from(JSON.stringify(record)) });
  await page.locator('.save-as').waitFor();
}

const run = flown({ fault: FAULTS_OF_THE_JOB.lag }, 'slow');

async function saved(page: Page, words: string): Promise<{ name: string; bytes: Buffer }> {
  const [download] = await Promise.all([page.waitForEvent('download'), page.locator('.save-as').getByRole('button', { name: words, exact: true }).click()]);
  const chunks: Buffer[] = [];
  for await (const chunk of await download.createReadStream()) chunks.push(chunk as Buffer);
  return { name: download.suggestedFilename(), bytes: Buffer.concat(chunks) };
}

/** Draws a picture in the page and says how large it is, and how many of its pixels are unlike its corner. */
const look = (page: Page, mime: string, bytes: Buffer, times = 1) => page.evaluate(async ([address, scale]) => {
  const image = new Image();
  image.src = address;
  await image.decode();
  const canvas = document.createElement('canvas');
  [canvas.width, canvas.height] = [image.naturalWidth * scale, image.naturalHeight * scale];
  const drawn = canvas.getContext('2d', { willReadFrequently: true })!;
  drawn.drawImage(image, 0, 0, canvas.width, canvas.height);
  const { data } = drawn.getImageData(0, 0, canvas.width, canvas.height);
  let unlike = 0;
  for (let at = 0; at < data.length; at += 4) if (Math.abs(data[at]! - data[0]!) + Math.abs(data[at + 1]! - data[1]!) > 24) unlike += 1;
  return { width: canvas.width, height: canvas.height, corner: Array.from(data.subarray(0, 4)), part: unlike / (data.length / 4) };
}, [`data:${mime};base64,${bytes.toString('base64')}`, times] as const);

test('rows and figures: every row, units in the header, and nothing that the debrief does not say', async () => {
  const { page, close } = await openApp();
  await openRecord(page, run);
  const csv = await saved(page, 'rows, CSV');
  expect(csv.name).toBe(`evenhand-run-${run.record.digest.slice(0, 8)}-rows.csv`);
  const read = readRows(csv.bytes.toString('utf8'));
  if (!read.ok) throw new Error('no table');
  const [head, ...rows] = read.rows.map((row) => row.map(({ text }) => text));
  expect(rows.length).toBe(run.facts.rows.length);
  const column = (name: string): number => head!.indexOf(name);
  for (const [index, row] of run.facts.rows.entries()) {
    const cells = rows[index]!;
    expect(cells.length).toBe(head!.length);
    expect(Number(cells[column('time (s)')])).toBe(row.atS);
    expect(Number(cells[column('left pointer (deg)')])).toBeCloseTo(row.leftPointerDeg, 4);
    expect(Number(cells[column('right side (deg)')])).toBeCloseTo(row.rightDeg, 4);
    expect(Number(cells[column('speed (kt)')])).toBeCloseTo(row.speedKt, 2);
    expect(cells[column('horn below (deg)')] === '').toBe(row.hornTlaDeg === null);
  }
  const json = await saved(page, 'figures, JSON');
  expect(json.name).toBe(`evenhand-run-${run.record.digest.slice(0, 8)}-figures.json`);
  const figures = JSON.parse(json.bytes.toString('utf8')) as Record<string, unknown>;
  const { rows: _rows, ...facts } = run.facts;
  expect(figures).toMatchObject(JSON.parse(JSON.stringify(facts)) as object);
  expect(figures).toMatchObject({ record: { digest: run.record.digest }, caution: expect.stringContaining('invented') as string });
  expect(JSON.parse((await saved(page, 'record')).bytes.toString('utf8'))).toStrictEqual(JSON.parse(JSON.stringify(run.record)));
  await close();
});

test.each([['light', [247, 242, 232, 255]], ['dark', [17, 22, 29, 255]]] as const)('the charts as a drawing that stands by itself, and as pixels of it (%s)', async (colorScheme, paper) => {
  const { page, close } = await openApp('', { colorScheme });
  await openRecord(page, run);
  const svg = await saved(page, 'charts, SVG');
  expect(svg.name).toBe(`evenhand-run-${run.record.digest.slice(0, 8)}-charts.svg`);
  const text = svg.bytes.toString('utf8');
  expect(text).not.toMatch(/var\(|light-dark|class=|style=|<script|NaN|undefined|https?:(?!\/\/www\.w3\.org\/)/);
  expect(text).toContain('font-family="Inter,');
  const told = await page.evaluate((xml) => {
    const drawing = new DOMParser().parseFromString(xml, 'image/svg+xml');
    const all = [...drawing.querySelectorAll('text')].map((one) => one.textContent);
    return { wrong: drawing.querySelector('parsererror') !== null, title: drawing.querySelector('title')?.textContent, paths: drawing.querySelectorAll('path').length, all };
  }, text);
  expect(told.wrong).toBe(false);
  expect(told.title).toBe(`Charts of run ${run.record.digest.slice(0, 8)}`);
  expect(told.all).toEqual(expect.arrayContaining(['Pointers, degrees', 'Split, degrees', 'Speed, knots', 'onset', 'release', 'left', 'right']));
  expect(told.all.at(-1)).toContain('invented airframe');
  expect(told.paths).toBe(await page.locator('.figure > svg path').count());
  const drawn = await look(page, 'image/svg+xml', svg.bytes, 2);
  expect(drawn.corner).toEqual(paper);
  expect(drawn.part).toBeGreaterThan(0.02);
  // The picture carries the page's own typeface with it: an image fetches none.
  await page.evaluate(() => {
    const make = URL.createObjectURL.bind(URL);
    URL.createObjectURL = (of: Blob) => {
      if (of.type === 'image/svg+xml') void of.text().then((xml) => { document.body.dataset['drawn'] = xml.slice(0, 2000); });
      return make(of);
    };
  });
  const png = await saved(page, 'charts, PNG');
  expect(await page.locator('body').getAttribute('data-drawn')).toContain('<style>@font-face{font-family:Inter;font-weight:100 900;src:url(data:font/woff2;base64,');
  expect(png.name).toBe(`evenhand-run-${run.record.digest.slice(0, 8)}-charts.png`);
  expect([...png.bytes.subarray(0, 8)]).toEqual([137, 80, 78, 71, 13, 10, 26, 10]);
  const pixels = await look(page, 'image/png', png.bytes);
  expect([pixels.width, pixels.height]).toEqual([drawn.width, drawn.height]);
  expect(pixels.corner).toEqual(paper);
  expect(Math.abs(pixels.part - drawn.part)).toBeLessThan(0.01);
  await close();
});
