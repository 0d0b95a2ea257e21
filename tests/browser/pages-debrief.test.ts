// The debrief in a browser: runs of every kind as records, the cursor by mouse and keys, what proves an item, paper, and a reload.
import { expect, test } from 'vitest';
import type { Page } from 'playwright-core';
import { FAULTS_OF_THE_JOB, flown, type FlownRun } from '../pages/flown.js';
import { axe, flyOut, startRun } from './drilling.js';
import { appUrl, openApp } from './harness.js';

async function openRecord(page: Page, { record }: FlownRun): Promise<void> {
  await page.setInputFiles('input[type=file]', { name: 'run.json', mimeType: 'application/json', buffer: Buffer.from(JSON.stringify(record)) });
  await page.locator('.figure svg').waitFor();
}

const side = FAULTS_OF_THE_JOB.disconnect;
const reading = (page: Page, name: string) => page.locator('.readings-at dl > div', { has: page.locator(`dt:text-is("${name}")`) }).locator('dd').textContent();

test('every kind of run reads right: no hole in a sentence, nothing sideways, axe content', async () => {
  const { page, close } = await openApp();
  const { disconnect, lag, blowback, pointer, dead, runsOn, leadingEdge } = FAULTS_OF_THE_JOB;
  const runs: FlownRun[] = [
    flown({}, 'prompt'), flown({ limitS: 5 }, 'prompt'), flown({ limitS: 20 }, []), flown({ fault: disconnect }, 'prompt'), flown({ fault: pointer }, 'prompt'),
    flown({ fault: blowback, scored: false }, 'prompt'), flown({ fault: dead, scored: false, limitS: 40 }, 'prompt'), flown({ fault: runsOn, scored: false }, 'prompt'),
    flown({ fault: leadingEdge, scored: false, settings: [4], start: { flapDeg: 0, flapLeverDeg: 0, leadingEdge: 'in', speedKt: 195 } }, 'prompt'),
    flown({ settings: [9, 4], start: { flapDeg: 16, flapLeverDeg: 16, speedKt: 175 }, fault: disconnect }, 'slow'),
    flown({ fault: lag, scored: false, settings: [36], start: { flapLeverDeg: 36 } }, 'never'),
  ];
  for (const run of runs) {
    await openRecord(page, run);
    const text = (await page.locator('main').textContent()) ?? '';
    expect(text).not.toMatch(/NaN|undefined|Infinity|\bnull\b/);
    expect(await page.locator('.figure path').evaluateAll((paths) => paths.every((path) => !/NaN|Infinity/.test(path.getAttribute('d') ?? '')))).toBe(true);
    expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(0);
  }
  expect(await axe(page)).toEqual([]);
  await close();
}, 120_000);

test('the cursor: a mouse over the charts, arrow keys on the slider, and the gauge and readings follow', async () => {
  const { page, close } = await openApp();
  const run = flown({ fault: side }, 'prompt');
  await openRecord(page, run);
  const slider = page.getByRole('slider', { name: 'Time of the run' });
  const at = async (): Promise<number> => Number(await slider.inputValue());
  expect(await at()).toBeCloseTo(run.record.score.releaseS!, 1);
  await slider.focus();
  await page.keyboard.press('ArrowRight');
  await page.keyboard.press('ArrowRight');
  const now = Math.round((run.record.score.releaseS! + 0.2) * 10) / 10;
  expect(await at()).toBeCloseTo(now, 1);
  const row = run.facts.rows.find(({ atS }) => Math.abs(atS - now) < 0.051)!;
  expect(await reading(page, 'Left pointer')).toBe(`${row.leftPointerDeg.toFixed(2)}°`);
  expect(await slider.getAttribute('aria-valuetext')).toContain(`${Math.round(row.speedKt)} knots`);
  await page.keyboard.press('Home');
  expect(await page.getByRole('heading', { name: 'At 0.0 s' }).count()).toBe(1);
  await page.evaluate(() => document.querySelector('.figure svg')?.scrollIntoView({ block: 'start' }));
  const box = (await page.locator('.figure svg').boundingBox())!;
  await page.mouse.click(box.x + box.width / 2, box.y + 200);
  const middle = await at();
  expect(middle).toBeGreaterThan(run.facts.rows.at(-1)!.atS * 0.4);
  expect(middle).toBeLessThan(run.facts.rows.at(-1)!.atS * 0.6);
  await close();
});

test('pointers first, truth when it is asked for', async () => {
  const { page, close } = await openApp();
  await openRecord(page, flown({ fault: FAULTS_OF_THE_JOB.pointer }, 'prompt'));
  expect(await page.getByText('Pointers, degrees').count()).toBe(1);
  expect(await reading(page, 'Shown apart')).not.toBe('0.00°');
  await page.locator('.figure').getByLabel('True sides').check();
  expect(await page.getByText('True travel, degrees').count()).toBe(1);
  expect(await reading(page, 'Truly apart')).toBe('0.00°');
  await close();
});

test('an item of the procedure leads to the moment that proves it', async () => {
  const { page, close } = await openApp();
  const run = flown({ fault: side }, 'prompt');
  await openRecord(page, run);
  const item = run.facts.flight.procedure.find((one) => one.item === 'leverFirst')!;
  await page.getByRole('button', { name: /Lever before drive/ }).click();
  expect(Number(await page.getByRole('slider', { name: 'Time of the run' }).inputValue())).toBeCloseTo(item.atS!, 1);
  await close();
});

test('callouts: asked, answered or not, and the right one only afterwards', async () => {
  const { page, close } = await openApp();
  const callout = { do: 'callout', text: 'Height of the platform?', answers: ['2500', '3000'], right: '2500', withinS: 10, when: { atS: 6 } };
  await openRecord(page, flown({ events: [callout], scored: false, limitS: 40 }, [{ atS: 8.5, do: 'answer', text: '3000' }]));
  expect(await page.getByRole('button', { name: /Height of the platform\?/ }).textContent()).toMatch(/at 6\.0 s: 3000 after 2\.\d s; right was 2500/);
  await close();
});

test('a long run can be looked at about its split alone', async () => {
  const { page, close } = await openApp();
  const run = flown({ fault: { ...side, when: { heldS: 70 } }, limitS: 180 }, 'prompt');
  await openRecord(page, run);
  const slider = page.getByRole('slider', { name: 'Time of the run' });
  await page.getByLabel('Only about the split').check();
  expect(Number(await slider.getAttribute('min'))).toBe(Math.floor(run.record.score.onsetS! - 15));
  expect(await page.locator('.figure').getByText('release', { exact: true }).count()).toBe(1);
  await close();
});

test('on paper: the caution, every chart, no button, and two or three pages of A4 and of Letter', async () => {
  const { page, close } = await openApp();
  await openRecord(page, flown({ fault: side }, 'prompt'));
  for (const format of ['A4', 'Letter']) {
    const pdf = (await page.pdf({ format, printBackground: true })).toString('latin1');
    const pages = pdf.match(/\/Type\s*\/Page[^s]/g)?.length ?? 0;
    expect(pages).toBeGreaterThanOrEqual(2);
    expect(pages).toBeLessThanOrEqual(3);
  }
  await page.emulateMedia({ media: 'print', colorScheme: 'dark' });
  expect(await page.evaluate(() => getComputedStyle(document.documentElement).backgroundColor)).toBe('rgb(255, 255, 255)');
  expect(await page.locator('footer.caution').isVisible()).toBe(true);
  expect(await page.locator('.figure svg').isVisible()).toBe(true);
  for (const gone of ['.tools', '.opening', '.scrub', '.rows', '.replay']) expect(await page.locator(gone).first().isVisible(), gone).toBe(false);
  await close();
});

test('a reload says plainly what is lost and where the run is, and leads back to the drill', async () => {
  const { page, close } = await openApp('#/drill/1?seed=3');
  await flyOut(page);
  await page.reload();
  await page.getByText(/The page was loaded anew, and what you were about to say of the run is lost\./).waitFor();
  await page.goto(`${appUrl()}#/debrief`);
  await page.getByText(/A page that is loaded anew no longer holds its run\./).waitFor();
  expect(await page.getByRole('link', { name: 'Fly drill 1 again' }).count()).toBe(1);
  await page.getByRole('link', { name: 'All drills' }).first().click();
  await page.getByText('last flown').waitFor();
  await close();
});

test('what is said before any feedback goes into the record: side, sureness, a failed drive; asked by no colour and no default', async () => {
  const { page, close } = await openApp('#/drill/1?seed=3');
  await startRun(page);
  await page.keyboard.press('Escape');
  await page.getByRole('button', { name: 'End the run' }).click();
  await page.getByText('Was there a split?').waitFor();
  expect(await page.locator('input:checked').count()).toBe(0);
  await page.getByRole('group', { name: 'Was there a split?' }).getByText('Yes').click();
  await page.getByRole('group', { name: 'Which side was ahead?' }).getByText('Right').click();
  await page.getByRole('group', { name: 'Did the drive itself fail?' }).getByText('No', { exact: true }).click();
  await page.getByRole('slider', { name: 'How sure are you of that?' }).fill('80');
  await page.getByRole('button', { name: 'Show the debrief' }).click();
  const row = page.locator('.said tr', { hasText: 'The side ahead' });
  expect(await row.textContent()).toBe('The side aheadrightneither');
  expect(await page.locator('.said tr', { hasText: 'How sure of that' }).textContent()).toContain('80 %');
  await close();
});
