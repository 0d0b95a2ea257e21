// The whole way from choosing a drill to its debrief, as a person goes it.
import { readdir, readFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { verify } from '../../sim/files/index.js';
import { axe, control, endAndSave, isPressed, makeReady, reading, save, startRun } from './drilling.js';
import { openScenario, plain } from './flying.js';
import { appUrl, openApp } from './harness.js';

const drills = fileURLToPath(new URL('../../scenarios/drills/', import.meta.url));

test('the first page says what the job is, warns, and is light', async () => {
  const { page, requests, close } = await openApp();
  await page.getByRole('link', { name: /Flaps from/ }).first().waitFor();
  expect(await page.locator('footer').textContent()).toMatch(/practice aid on an invented airframe.*no credit.*approved procedures and licensed instruction come first/i);
  // One press for each of those who come: who learns, who wants to be measured, who teaches.
  for (const [go, to] of [['Fly the first hold', '#/course/1/1'], ['Fly set 1', '#/set/1'], ['Write a run', '#/bench'], ['Follow a run', '#/desk']] as const) {
    expect(await page.getByRole('link', { name: go }).getAttribute('href'), go).toBe(to);
  }
  const heads = await page.locator('main :is(h1, h2, h3)').evaluateAll((all) => all.map(({ tagName, textContent }) => `${tagName} ${textContent}`));
  expect(heads.slice(1, 9)).toEqual(['H2 Trainee', 'H2 Pilot alone', 'H2 Instructor', 'H2 Drills', 'H3 Hold and let go', 'H3 Step by step', 'H3 While you fly', 'H3 Other conditions']);
  // The canvas library and the engine wait for a drill.
  expect(requests.filter((one) => /stage-|start-|hands-|Geometry-/.test(one))).toEqual([]);
  await close();
});

test('by keyboard alone: choose, brief, start, hold, let go, call, judge, debrief, save; the record follows from its inputs', async () => {
  const faults = [{ name: 'stop', kind: 'disconnect', side: 'drawn', when: { heldS: 3 } }];
  const { page, close } = await openScenario(plain({ task: { afterS: 3 }, faults, recognition: { limitDeg: 2.5 } }));
  await page.getByRole('button', { name: 'Start' }).focus();
  await page.keyboard.press('Enter');
  await control(page, 'extend').waitFor();
  await page.keyboard.press('g');
  await page.keyboard.press('a');
  await page.keyboard.down('e');
  await expect.poll(() => isPressed(page, 'extend')).toBe(true);
  // A side is cut after 3 s of holding; two seconds later the hand comes off.
  await page.waitForTimeout(5_200);
  await page.keyboard.up('e');
  await page.keyboard.press('s');
  await page.getByText('Was there a split?').waitFor({ timeout: 40_000 });
  await page.keyboard.press('Tab');
  for (let tab = 0; tab < 6 && !(await page.evaluate(() => document.activeElement?.matches('input[type=radio]'))); tab += 1) await page.keyboard.press('Tab');
  await page.keyboard.press('Space');
  await page.keyboard.press('Enter');
  await expect.poll(() => page.locator('h1').textContent()).toMatch(/^The (left|right) side stopped at \d\.\d°\. You let go \d\.\d s later, 0\.\d\d° further apart\.$/);
  const sentence = (await page.locator('h1').textContent()) ?? '';
  const record = await save(page);
  expect(verify(record)).toMatchObject({ ok: true, refused: [] });
  // A machine too busy to draw for a quarter of a second voids a run, and the record says so.
  expect(record.outcome).toBe(record.marks.some(({ what }) => what === 'stall' || what === 'late') ? 'void' : 'caught');
  expect(record.assessment).toEqual({ split: 'yes', growthDeg: null });
  expect(record.device.input).toBe('key');
  expect(sentence).toContain(`${record.score.growthAtReleaseDeg?.toFixed(2)}°`);
  await close();
});

test('a saved record opens again, by choice and by drop, and says the same', async () => {
  const { page, close } = await openApp('#/drill/1?seed=3');
  await startRun(page);
  await makeReady(page);
  const record = await endAndSave(page);
  const sentence = await page.locator('h1').textContent();
  const text = JSON.stringify(record);

  const second = await openApp();
  await second.page.setInputFiles('input[type=file]', { name: 'mine.json', mimeType: 'application/json', buffer: Buffer.from(text) });
  await expect.poll(() => second.page.locator('h1').textContent()).toBe(sentence);
  await second.close();

  const third = await openApp();
  await third.page.getByText('Open a record').waitFor();
  await third.page.evaluate((content) => {
    const data = new DataTransfer();
    data.items.add(new File([content], 'dropped.json'));
    for (const kind of ['dragover', 'drop']) document.body.dispatchEvent(new DragEvent(kind, { dataTransfer: data, bubbles: true, cancelable: true }));
  }, text);
  await expect.poll(() => third.page.locator('h1').textContent()).toBe(sentence);
  await third.close();
  await close();
});

test('a wrong file shows its problems with line and column, and nothing of it is used', async () => {
  const { page, close } = await openApp();
  const choose = (content: string) => page.setInputFiles('input[type=file]', { name: 'wrong.json', mimeType: 'application/json', buffer: Buffer.from(content) });
  await choose('{\n  "format": 1,\n  "model": "one"\n}');
  await expect.poll(() => page.getByRole('alert').textContent()).toMatch(/wrong\.json was not opened/);
  expect(await page.getByRole('alert').textContent()).toMatch(/line 3, column 12\s*model/);
  await choose('not json');
  await expect.poll(() => page.getByRole('alert').textContent()).toMatch(/line 1, column 1/);
  expect(page.url()).toBe(appUrl());
  expect(await axe(page)).toEqual([]);
  await close();
});

test('a record that was edited and digested anew is refused: it does not follow from its inputs', async () => {
  const { digestOf } = await import('../../sim/files/index.js');
  const { page, close } = await openApp('#/drill/1?seed=3');
  await startRun(page);
  const record = await endAndSave(page);
  const forged = { ...record, outcome: 'caught' as const };
  await page.goto(appUrl());
  await page.setInputFiles('input[type=file]', { name: 'forged.json', mimeType: 'application/json', buffer: Buffer.from(JSON.stringify({ ...forged, digest: digestOf(forged) })) });
  await expect.poll(() => page.getByRole('alert').textContent()).toMatch(/outcome.*found caught/);
  await close();
});

test('Back out of a run lets go, stops it, and says so', async () => {
  const { page, close } = await openApp('#/drill/1?seed=3');
  await startRun(page);
  await makeReady(page);
  await page.keyboard.down('e');
  await expect.poll(() => isPressed(page, 'extend')).toBe(true);
  await page.goBack();
  await page.getByText('You left the run. The switch was let go and the run stopped.').waitFor();
  await page.keyboard.up('e');
  await page.getByRole('button', { name: 'Its debrief' }).click();
  expect((await save(page)).end.why).toBe('stopped');
  // Forward does not lead into a run that nobody started.
  await page.goBack();
  await page.goForward();
  await page.goto(`${appUrl()}#/drill/1/run`);
  await page.getByRole('button', { name: 'Start' }).waitFor();
  await close();
});

test('pause blanks every instrument, and going on shows them again', async () => {
  const { page, close } = await openApp('#/drill/1?seed=3');
  await startRun(page);
  expect(await reading(page, 'speed').textContent()).toBe('Speed: 167 knots');
  await page.keyboard.press('Escape');
  await page.getByRole('dialog').waitFor();
  for (const text of await page.locator('[data-reading]').allTextContents()) expect(text).toMatch(/: blank$/);
  expect(await axe(page)).toEqual([]);
  await page.getByRole('button', { name: 'Go on' }).click();
  await expect.poll(() => reading(page, 'speed').textContent()).toBe('Speed: 167 knots');
  await close();
});

test('nothing on the way to a run tells what it holds: no title, note or file name in page, address or requests', async () => {
  const files = (await readdir(drills)).filter((file) => file.endsWith('.json'));
  const texts = await Promise.all(files.map((file) => readFile(drills + file, 'utf8')));
  const secrets = texts.flatMap((text) => ['title', 'notes', 'skill'].flatMap((key) => new RegExp(`"${key}": "([^"]+)"`).exec(text)?.[1] ?? []));
  expect(secrets.length).toBeGreaterThanOrEqual(4);
  const { page, requests, close } = await openApp();
  const seen: string[] = [];
  const look = async (): Promise<void> => { seen.push(await page.content(), await page.title(), page.url()); };
  await page.getByRole('link', { name: /Flaps from/ }).first().waitFor();
  await look();
  for (const number of [1, 2]) {
    await page.goto(`${appUrl()}#/drill/${number}`);
    await page.getByRole('button', { name: 'Start' }).waitFor();
    await look();
    await startRun(page, number);
    await look();
    await page.goBack();
  }
  for (const secret of [...secrets, ...files.map((file) => file.replace('.json', '')), 'disconnect']) {
    for (const text of [...seen, ...requests]) expect(text.includes(secret), `${secret} in ${text.slice(0, 80)}`).toBe(false);
  }
  await close();
});

test('day and night are chosen and kept', async () => {
  const { page, close } = await openApp('', { colorScheme: 'dark' });
  const paper = () => page.evaluate(() => getComputedStyle(document.documentElement).backgroundColor);
  expect(await paper()).toBe('rgb(17, 22, 29)');
  await page.getByRole('button', { name: 'Day colours' }).click();
  expect(await paper()).toBe('rgb(247, 242, 232)');
  await page.reload();
  await page.locator('h1').waitFor();
  expect(await paper()).toBe('rgb(247, 242, 232)');
  await close();
});

test.each([[1280, 720], [1024, 768], [844, 390], [390, 844], [640, 360]])('pages and drill fit a window of %i x %i without scrolling sideways', async (width, height) => {
  const { page, close } = await openApp('#/drill/1?seed=3', { width, height });
  const wide = () => page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
  await page.getByRole('button', { name: 'Start' }).waitFor();
  expect(await wide()).toBeLessThanOrEqual(0);
  await startRun(page);
  expect(await page.evaluate(() => [document.querySelector('.drill-page')!.scrollWidth - innerWidth, document.querySelector('.drill-page')!.scrollHeight - innerHeight])).toEqual([0, 0]);
  for (const twin of await page.locator('.twin').all()) {
    const box = (await twin.boundingBox())!;
    expect(Math.min(box.width, box.height)).toBeGreaterThanOrEqual(44);
  }
  const record = await endAndSave(page);
  expect(record.outcome).toBe('void');
  expect(await wide()).toBeLessThanOrEqual(0);
  await close();
});

test('forced colours and less movement: the drill is drawn, in colours of the system', async () => {
  const { page, close } = await openApp('#/drill/1?seed=3', { forcedColors: 'active', reducedMotion: 'reduce', colorScheme: 'dark' });
  await startRun(page);
  const colours = await page.evaluate(() => {
    const canvas = document.querySelector('canvas')!;
    const { data } = canvas.getContext('2d')!.getImageData(0, 0, canvas.width, canvas.height);
    const seen = new Set<string>();
    for (let at = 0; at < data.length; at += 4) seen.add(`${data[at]},${data[at + 1]},${data[at + 2]}`);
    return [...seen];
  });
  const canvas = await page.evaluate(() => {
    const probe = document.createElement('i');
    document.body.append(probe);
    return ['Canvas', 'CanvasText'].map((name) => {
      probe.style.color = name;
      return getComputedStyle(probe).color.replace(/[^\d,]/g, '');
    });
  });
  for (const colour of canvas) expect(colours).toContain(colour);
  await close();
});
