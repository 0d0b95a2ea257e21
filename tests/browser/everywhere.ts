// Every page and state of the app, one after another, for tests that look at all of them.
import type { Page } from 'playwright-core';
import { linkCode } from '../../src/records/link.js';
import { control, startRun } from './drilling.js';
import { benchStates } from './everywhere-bench.js';
import { plain } from './flying.js';
import { appUrl, openApp, type OpenOptions } from './harness.js';
import { fakeBox, plug, press } from './pads.js';

type Look = (page: Page, name: string) => Promise<void>;

/** A run is looked at apart: it fills the window and is drawn. */
export const isRun = (name: string): boolean => name.startsWith('run');

/** Opens the app and calls `look` in every state that a person comes to. */
export async function everywhere(options: OpenOptions, look: Look): Promise<void> {
  const { page, close } = await openApp('', options);
  const to = async (path: string): Promise<void> => {
    await page.goto('about:blank');
    await page.goto(`${appUrl()}${path}`);
  };
  await page.getByRole('link', { name: /Flaps from/ }).first().waitFor();
  await look(page, 'choose');
  await page.setInputFiles('input[type=file]', { name: 'wrong.json', mimeType: 'application/json', buffer: Buffer.from('{ "format": 1, "model": "one" }') });
  await page.getByRole('alert').waitFor();
  await look(page, 'refused file');
  await to('#/settings');
  await page.getByLabel('Volume').waitFor();
  await look(page, 'set-up');
  await page.getByRole('button', { name: /^call split: key/ }).click();
  await page.keyboard.press('g');
  await page.getByRole('button', { name: 'Exchange' }).waitFor();
  await look(page, 'set-up, key taken');
  await to('#/size');
  await page.getByRole('button', { name: 'The long side fits' }).click();
  await page.getByRole('button', { name: 'The short side fits' }).click();
  await page.getByText('The sides do not belong to one card').waitFor();
  await look(page, 'true size, card askew');
  await to('#/switches');
  await page.getByText('No device is seen yet.').waitFor();
  await look(page, 'switches, none seen');
  await page.evaluate(fakeBox);
  await plug(page, true);
  await page.locator('[data-does="extend"]').click();
  await press(page, 0, true);
  await page.locator('[data-does="lever"]').click();
  await page.getByRole('button', { name: 'Done' }).waitFor();
  await look(page, 'switches, a lever asked for');
  await page.evaluate(() => {
    const { width, height } = screen;
    localStorage.setItem('evenhand.timing', JSON.stringify({ medianS: 0.31, sdS: 0.2, releases: 20, input: 'key', screen: `${width}x${height}@${devicePixelRatio}` }));
  });
  await to('#/timing');
  await page.getByText('Not fit for timing.').waitFor();
  await look(page, 'timing check, not fit');
  await page.evaluate(() => localStorage.removeItem('evenhand.timing'));
  for (const nowhere of ['#/nowhere', '#/drill/777', '#/debrief', `#/own/${'0'.repeat(32)}`]) {
    await to(nowhere);
    await page.locator('h1').waitFor();
    await look(page, nowhere);
  }
  await to('#/own?s=AAAA');
  await page.getByRole('heading', { name: 'This link cannot be flown' }).waitFor();
  await look(page, 'link that is broken');
  await to(`#/own?s=${await linkCode(JSON.stringify(plain({ faults: [{ name: 'a', kind: 'disconnect', side: 'right', when: { flapDeg: 8 } }] })))}`);
  await page.getByRole('button', { name: 'Start' }).waitFor();
  await look(page, 'brief of a run from the bench');
  await to('#/set/1');
  await page.getByRole('button', { name: 'Start the set' }).waitFor();
  await look(page, 'set');
  await to('#/practice');
  await page.getByRole('button', { name: 'First run' }).waitFor();
  await look(page, 'practice');
  await to('#/person');
  await page.getByRole('heading', { name: 'What to practise next' }).waitFor();
  await look(page, 'progress');
  await to('#/help?k=faults.kind.lag');
  await page.locator('.help-entry.here').waitFor();
  await look(page, 'help');
  await page.getByLabel('Search').fill('hazard');
  await page.getByText('found', { exact: false }).first().waitFor();
  await look(page, 'help, searched');
  await benchStates(page, to, look);
  await to('#/course');
  await page.getByText('0 done').waitFor();
  await look(page, 'courses');
  await page.setInputFiles('input[type=file]', { name: 'wrong.json', mimeType: 'application/json', buffer: Buffer.from('{ "format": 1, "steps": [] }') });
  await page.getByRole('alert').waitFor();
  await look(page, 'refused course');
  await to('#/course/1');
  await page.getByRole('link', { name: 'Fly step 1', exact: true }).waitFor();
  await look(page, 'course');
  await to('#/class');
  await page.getByText('Open files', { exact: true }).waitFor();
  await look(page, 'class, empty');
  await to('#/course/1/1');
  await page.getByRole('button', { name: 'Start' }).waitFor();
  await look(page, 'step');
  await to('#/drill/6/plan');
  await page.getByRole('button', { name: 'Show the rest' }).waitFor();
  await page.getByLabel('Reference speed').fill('many');
  await look(page, 'plan, blank');
  await page.getByLabel('Reference speed').fill('120');
  await page.getByRole('button', { name: 'Check Reference speed' }).click();
  await page.getByRole('button', { name: 'Show the rest' }).click();
  await page.locator('.plan-card').waitFor();
  await look(page, 'plan, worked out');
  await to('#/drill/6');
  await page.getByRole('heading', { name: 'Your plan' }).waitFor();
  await look(page, 'brief with its plan');
  await to('#/bench');
  await page.getByRole('button', { name: 'A side stops on the way to 16' }).first().click();
  await page.getByRole('button', { name: 'Lesson sheet' }).click();
  await page.locator('.lesson-sheet').waitFor();
  await look(page, 'bench, lesson sheet');
  await page.getByRole('button', { name: 'Coverage' }).click();
  await page.locator('.coverage-some').first().click();
  await look(page, 'bench, coverage');
  await page.getByRole('button', { name: 'All files' }).click();
  await page.getByRole('button', { name: 'New set' }).click();
  await page.locator('.set-gates li').first().waitFor();
  await look(page, 'bench, gates of a set');
  await page.getByRole('button', { name: 'All files' }).click();
  await page.getByRole('button', { name: 'New trainee' }).click();
  await page.locator('.release-table').waitFor();
  await look(page, 'bench, what a trainee does');
  await page.evaluate(() => localStorage.clear());
  await to('#/desk');
  await page.getByText('No run on this machine.').waitFor();
  await look(page, 'desk, no run');
  const trainee = await page.context().newPage();
  await trainee.goto(`${appUrl()}#/drill/1?seed=3`);
  await startRun(trainee);
  await page.getByRole('button', { name: 'Follow Drill 1' }).click();
  await page.getByRole('heading', { name: 'Pointers and sides' }).waitFor();
  await page.getByLabel('What happens').selectOption('callout');
  await look(page, 'desk, live');
  await trainee.close();
  await page.getByText('The trainee’s window has gone.').waitFor();
  await to('#/drill/1?seed=3');
  await page.getByRole('button', { name: 'Start' }).waitFor();
  await page.getByText('Answers, flying, horn').click();
  await look(page, 'brief');
  await startRun(page);
  await look(page, 'run');
  // Whoever looked may have lost the focus of the window, and that pauses.
  if (!(await page.getByRole('dialog').isVisible())) await page.keyboard.press('Escape');
  await page.getByRole('dialog').waitFor();
  await page.getByText('Keys', { exact: true }).click();
  await look(page, 'run, paused');
  await page.getByRole('button', { name: 'End the run' }).click();
  await page.getByText('Was there a split?').waitFor();
  await look(page, 'own judgement');
  await page.getByText('Not sure').click();
  await page.getByRole('button', { name: 'Show the debrief' }).click();
  await page.getByRole('button', { name: 'Save record' }).waitFor();
  await page.locator('.figures').waitFor();
  await look(page, 'debrief');
  await page.getByRole('button', { name: /^As flown/ }).click();
  await page.locator('.replay-whole canvas').waitFor();
  await look(page, 'run, as flown');
  await page.keyboard.press('Escape');
  await page.goto(`${appUrl()}#/logbook`);
  await page.getByRole('heading', { level: 1 }).waitFor();
  await look(page, 'logbook');
  await close();
}

/** A run with a callout on the screen (drill 7, 8 s in). */
export async function withCallout(options: OpenOptions, look: Look): Promise<void> {
  const { page, close } = await openApp('#/drill/7?seed=3', options);
  await startRun(page, 7);
  await control(page, 'answer1').waitFor({ timeout: 25_000 });
  await look(page, 'run, callout');
  await close();
}
