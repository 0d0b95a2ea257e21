// Own files on the bench: kept, renamed, doubled, taken off and put back; files from outside; links; flown and back; begun anew from a moment.
import { randomBytes } from 'node:crypto';
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { textOfLink, linkCode } from '../../src/records/link.js';
import { axe, control, readAll } from './drilling.js';
import { plain } from './flying.js';
import { openApp } from './harness.js';

const WRITTEN = `// SECRET remark\n${JSON.stringify(plain({ title: 'SECRET title', notes: 'SECRET notes', brief: 'Set 16 from 4.', faults: [{ name: 'a', kind: 'disconnect', side: 'right', when: { flapDeg: 8 } }] }), null, 2)}`;
const file = (name: string, text: string) => ({ name, mimeType: 'application/json', buffer: Buffer.from(text) });
const saveHere = (page: Page) => page.getByRole('button', { name: 'Save on the shelf of this browser' });
const row = (page: Page, name: string) => page.locator('.own-files li').filter({ has: page.getByRole('button', { name, exact: true }) });

test('own files: opened from outside, kept, renamed, doubled, taken off, put back, and there after a reload', async () => {
  const { page, close } = await openApp('#/bench');
  await page.getByText('None yet.').waitFor();
  // A wrong file: every problem with its place, and nothing of it on the bench.
  await page.setInputFiles('input[type=file]', file('wrong.json', WRITTEN.replace('"massT": 48', '"massT": 4800').replace('"flapDeg": 8', '"flapDeg": 99')));
  const refusal = page.getByRole('alert');
  await refusal.getByText('wrong.json was not opened').waitFor();
  await refusal.getByText('start.massT').waitFor();
  await refusal.getByText('faults[0].when.flapDeg').waitFor();
  expect(await page.locator('[data-hash]').count()).toBe(0);
  await page.setInputFiles('input[type=file]', file('big.json', ' '.repeat(1_048_577)));
  await refusal.getByText('1048577 bytes').waitFor();
  // A sound one, dropped.
  const dropped = await page.evaluateHandle((text) => {
    const data = new DataTransfer();
    data.items.add(new File([text], 'right-stops.json', { type: 'application/json' }));
    return data;
  }, WRITTEN);
  await page.dispatchEvent('main', 'drop', { dataTransfer: dropped });
  await page.locator('[data-hash]').waitFor();
  expect(await page.getByLabel('Name of the file').inputValue()).toBe('right-stops');
  await saveHere(page).click();
  await page.getByText('Kept on the shelf').waitFor();
  expect(await saveHere(page).isDisabled()).toBe(true);
  await page.getByRole('button', { name: 'All files' }).click();
  await row(page, 'right-stops').getByRole('button', { name: 'Duplicate right-stops' }).click();
  await row(page, 'right-stops (copy)').getByRole('button', { name: 'Rename right-stops (copy)' }).click();
  await page.keyboard.press('Control+a');
  await page.keyboard.type('second');
  await page.keyboard.press('Enter');
  await row(page, 'second').getByRole('button', { name: 'Take off: second' }).click();
  await page.getByText('second is off the shelf.').waitFor();
  expect(await row(page, 'second').count()).toBe(0);
  await page.getByRole('button', { name: 'Put it back' }).click();
  await row(page, 'second').waitFor();
  expect(await axe(page)).toEqual([]);
  await page.reload();
  await page.getByRole('button', { name: 'All files' }).click();
  await row(page, 'second').waitFor();
  await row(page, 'right-stops').getByRole('button', { name: 'right-stops', exact: true }).click();
  await page.locator('[data-hash]').waitFor();
  const [download] = await Promise.all([page.waitForEvent('download'), page.getByRole('button', { name: 'Save as a file' }).click()]);
  expect(download.suggestedFilename()).toBe('right-stops.json');
  expect(await readAll(download)).toBe(WRITTEN);
  await close();
});

test('links: the bench one holds the text to the letter, the trainee one nothing of what an instructor wrote; a broken one says so', async () => {
  const { page, close } = await openApp(`#/bench?s=${await linkCode(WRITTEN)}`);
  await page.locator('[data-hash]').waitFor();
  expect(page.url()).toMatch(/#\/bench$/);
  await page.context().grantPermissions(['clipboard-read', 'clipboard-write']);
  const copied = async (name: string): Promise<string> => {
    await page.getByRole('button', { name, exact: true }).click();
    const shown = page.locator('.handed input');
    // The link made before stands there until this one is packed.
    await expect.poll(() => shown.inputValue()).toContain(name === 'Copy link' ? '#/bench?s=' : '#/own?s=');
    const address = await shown.inputValue();
    await page.locator('.handed').getByText(`${address.length} letters`).waitFor();
    expect(await page.evaluate(() => navigator.clipboard.readText())).toBe(address);
    return address;
  };
  const textIn = async (address: string): Promise<string> => {
    const opened = await textOfLink(address.split('?s=')[1] ?? '');
    if (!opened.ok) throw new Error(opened.why);
    return opened.text;
  };
  expect(await textIn(await copied('Copy link'))).toBe(WRITTEN);
  const forTrainee = await copied('Copy link for trainees, without title and notes');
  expect(forTrainee).toContain('#/own?s=');
  expect(await textIn(forTrainee)).not.toMatch(/secret/i);
  await page.goto('about:blank');
  await page.goto(forTrainee);
  await page.getByRole('heading', { name: 'Run from the bench' }).waitFor();
  // Where the clipboard is refused the link stands there to be copied.
  await page.goto('about:blank');
  await page.goto(new URL('#/bench?s=AAAA', forTrainee).href);
  await page.getByRole('alert').getByText('cut short or altered').waitFor();
  await page.context().clearPermissions();
  await page.evaluate(() => { Object.defineProperty(navigator, 'clipboard', { value: undefined }); });
  await page.getByRole('button', { name: 'Copy link', exact: true }).click();
  await page.locator('.handed').getByText('Copy it from here').waitFor();
  // What no packing makes short is no link.
  await page.getByRole('button', { name: 'All files' }).click();
  await page.setInputFiles('input[type=file]', file('long.json', `// ${randomBytes(40_000).toString('base64')}\n${WRITTEN}`));
  await page.locator('[data-hash]').waitFor();
  await page.getByRole('button', { name: 'Copy link', exact: true }).click();
  await page.getByRole('alert').getByText('Save it as a file and send that.').waitFor();
  expect(await page.locator('.handed').count()).toBe(0);
  await close();
});

test('flown from the bench as a trainee meets it, and back; then begun anew from a moment', async () => {
  const { page, close } = await openApp(`#/bench?s=${await linkCode(WRITTEN)}`);
  await page.locator('[data-hash]').waitFor();
  await page.getByRole('button', { name: 'Fly it now' }).click();
  await page.getByRole('heading', { name: 'Run from the bench' }).waitFor();
  const seen = (): Promise<string> => page.evaluate(() => document.documentElement.outerHTML + document.title + location.href);
  expect(await seen()).not.toMatch(/secret/i);
  await page.getByRole('button', { name: 'Start' }).click();
  await control(page, 'extend').waitFor();
  expect(await seen()).not.toMatch(/secret/i);
  await page.keyboard.press('Escape');
  await page.getByRole('button', { name: 'End the run' }).click();
  await page.getByText('Not sure').click();
  await page.getByRole('button', { name: 'Show the debrief' }).click();
  await page.locator('.figures').waitFor();
  expect(await seen()).not.toMatch(/secret/i);
  await page.getByRole('link', { name: 'Back to the bench' }).first().click();
  await page.locator('[data-hash]').waitFor();
  // The cursor at 20 s of the previewed run.
  const slider = page.getByRole('slider', { name: 'Time of the run' });
  await slider.fill('20');
  await page.getByRole('button', { name: 'Start a new scenario at 20.0 s' }).click();
  await page.getByText('This scenario begins where the run before stood at 20.0 s.').waitFor();
  await page.getByText('No problem').last().waitFor();
  expect(Number(await page.getByLabel('Flaps').first().inputValue())).toBeGreaterThan(4);
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect.poll(() => page.getByLabel('Flaps').first().inputValue()).toBe('4');
  await close();
});
