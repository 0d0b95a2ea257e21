// Courses on their pages: a step flown and back, where one stands out of a real logbook, files of one's own taken and refused.
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { composeRecord, ready, readyCourse, scriptedRecord, withFirstLook, type RunRecord } from '../../sim/files/index.js';
import { flyTrainee, MODEL_VERSION, type TraineeName } from '../../sim/index.js';
import { readCourse } from '../../src/text/index.js';
import { drill, drillNames, lookup, textOf } from '../files/shipped.js';
import { setFile, setNames, shippedSet } from '../set/shipped.js';
import { flownRecords } from '../stats/made-flight.js';
import { axe, control, makeReady } from './drilling.js';
import { openApp } from './harness.js';
import { keepFlights, keepRuns } from './kept.js';

const drills = new Map(drillNames.map((name) => [name, drill(name)]));
const shelves = { airframes: lookup, drills: (name: string) => drills.get(name), sets: (name: string) => (setNames.includes(name) ? setFile(name) : undefined) };
const text = textOf('courses/first-hold-to-landing.json');
const read = readCourse(text, 'c', shelves);
if (!read.ok) throw new Error(JSON.stringify(read.problems));
const { steps, firstLook } = readyCourse(read.value, shelves);

function flown(step: number, trainee: TraineeName, seed: number, look = false): RunRecord {
  const flies = steps[step - 1]!.flies;
  if (flies.kind !== 'drill') throw new Error(`step ${step} is no drill`);
  const scenario = ready(look ? withFirstLook(flies.scenario, firstLook!.fault) : flies.scenario, flies.airframe);
  const { commands, flight: { end, hash, outcome, score } } = flyTrainee(scenario, flies.airframe, seed, trainee);
  const { format: _format, digest: _digest, ...made } = scriptedRecord({ model: MODEL_VERSION, app: 'test', seed, airframe: flies.airframe, scenario, commands, end, hash, outcome, score });
  return composeRecord({ ...made, source: 'flown', device: { ...made.device, input: 'mouse' } });
}

const row = (page: Page, step: number) => page.locator('.course-step').nth(step - 1);

test('nobody: the first step is open and next; its run is flown, judged, debriefed, and leads back', async () => {
  const { page, close } = await openApp('#/course/1');
  await page.getByRole('heading', { name: `0 of ${steps.length} steps done` }).waitFor();
  expect(await row(page, 2).getByRole('img').getAttribute('aria-label')).toBe('closed');
  expect(await row(page, 2).textContent()).toContain('Opens once step 1 is done.');
  expect(await row(page, 2).getByRole('link').count()).toBe(0);
  await page.getByRole('link', { name: 'Fly step 1', exact: true }).click();
  // Its plan leads back to the step, not to the drill that it flies.
  await page.getByRole('link', { name: 'Plan it first' }).click();
  await page.getByRole('heading', { name: 'Plan for step 1' }).waitFor();
  expect(new URL(page.url()).hash).toBe('#/course/1/1/plan');
  await page.getByRole('link', { name: 'Back to the brief' }).click();
  await page.getByRole('heading', { level: 1 }).waitFor();
  expect(new URL(page.url()).hash).toBe('#/course/1/1');
  await page.getByRole('button', { name: 'Start' }).click();
  await control(page, 'extend').waitFor();
  expect(await page.title()).toBe('Step 1 · Evenhand');
  await makeReady(page);
  await page.keyboard.press('Escape');
  await page.getByRole('button', { name: 'End the run' }).click();
  await page.getByText('Not sure').click();
  await page.getByRole('button', { name: 'Show the debrief' }).click();
  await page.getByRole('link', { name: 'Back to the course' }).first().click();
  await page.getByRole('heading', { name: `0 of ${steps.length} steps done` }).waitFor(); // stopped: not flown
  await close();
});

test('a logbook of several runs: steps, a gate with its figures, a first look apart; another person has none of it', async () => {
  const { page, close } = await openApp('#/course/1');
  await page.getByRole('heading', { name: '0 of' }).waitFor();
  await keepRuns(page, 'ada', [flown(1, 'prompt', 1), flown(2, 'prompt', 2), flown(3, 'prompt', 1), flown(3, 'never', 2), flown(4, 'prompt', 1, true)]);
  await keepFlights(page, [{ id: 'c', set: 'true-drive-calm', person: 'ada', records: flownRecords(shippedSet('true-drive-calm'), 7), startedMs: 9 }]);
  await page.getByLabel('Flown by').selectOption('');
  await page.reload();
  await page.getByLabel('Flown by').selectOption('ada');
  await page.getByRole('heading', { name: `4 of ${steps.length} steps done` }).waitFor(); // 1, 2, 3 by two passes (never passes a quiet leg), and the set
  expect(await row(page, 3).textContent()).toContain('Done, 2 runs.');
  expect(await row(page, 4).textContent()).toContain('Not flown yet.'); // the first look counts for no step
  const gate = row(page, steps.findIndex(({ name }) => name === 'true-drive-calm') + 1);
  expect(await gate.textContent()).toMatch(/17 of 18; 73 % to over 99 %\s*shown/);
  expect(await page.locator('.first-look').textContent()).toMatch(/Step 4, .* let go after \d\.\d s, \d\.\d\d° further apart\. .* One run says nothing about a person/);
  expect(await page.locator('.next-quarter').textContent()).toContain('Step 4.');
  expect(await axe(page)).toEqual([]);
  await page.getByRole('button', { name: 'Its debrief' }).click();
  await page.getByText('Nobody had announced this fault.').waitFor();
  await page.goBack();
  await page.getByLabel('Flown by').selectOption('');
  await page.getByRole('heading', { name: `0 of ${steps.length} steps done` }).waitFor();
  await close();
});

test('a course file of one’s own: a gate that cannot be met is refused with the sum; a right one is kept, taken off and put back', async () => {
  const { page, close } = await openApp('#/course');
  await page.getByText('Open a course file').waitFor();
  const open = (name: string, content: string): Promise<void> => page.setInputFiles('input[type=file]', { name, mimeType: 'application/json', buffer: Buffer.from(content) });
  await open('mine.json', text.replace('"caughtFrom": 0.5', '"caughtFrom": 0.9'));
  await page.getByText('18 of 18 caught gives 0.025^(1/18) = 0.8147; 0.9 needs 36 of 36').waitFor();
  await open('mine.json', text.replace('From the first hold to the landing', 'Mine').replace('"caughtFrom": 0.5', '"caughtFrom": 0.7'));
  await page.getByRole('heading', { name: 'Mine' }).waitFor();
  expect(await page.locator('.gate').first().textContent()).toContain('asked: from 70 %');
  await page.getByRole('link', { name: 'All courses' }).click();
  await page.getByText('opened here').waitFor();
  await page.reload();
  await page.getByRole('button', { name: 'Take off: Mine' }).click();
  await page.getByText('Taken off: Mine.').waitFor();
  expect(await page.getByText('opened here').count()).toBe(0);
  await page.getByRole('button', { name: 'Put back' }).click();
  await page.getByText('opened here').waitFor();
  await close();
});
