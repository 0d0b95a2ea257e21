// What comes beside the flaps, met in a real window: a caution, clearances and the list behind a call are answered with
// whatever is at hand and told in the debrief; what another pilot has in hand is refused, and said to be theirs.
import { expect, test } from 'vitest';
import type { Page } from 'playwright-core';
import { axe, control, makeReady, reading, save } from './drilling.js';
import { flyScenario, plain } from './flying.js';
import { narrowTargets } from './seen.js';

const LIST = ['at off', 'both stand', 'left as they are', 'the side less out', 'limit by the side further out', 'worked again'];

/** Everything comes within 3 s, and waits. */
const beside = {
  start: { flapDeg: 9, headingDeg: 90 }, task: { limitS: 120, afterS: 90 }, procedure: { list: true },
  faults: [{ name: 'stop', kind: 'disconnect', side: 'right', when: { flapDeg: 9.1 } }],
  events: [
    { when: { atS: 0.5 }, do: 'caution', text: 'fuel left and right uneven', withinS: 60 },
    { when: { atS: 1 }, do: 'clearHeading', from: 'controller', text: 'Turn right heading one two zero.', toDeg: 120, withinS: 60 },
    { when: { atS: 1.5 }, do: 'clearAltitude', from: 'controller', text: 'Descend to five thousand feet.', toFt: 5000, withinS: 60 },
  ],
};

const words = (page: Page) => page.locator('.talk-text');
const answer = (page: Page, text: string) => page.locator('.talk-answer', { hasText: new RegExp(`^${text}$`) });
/** Words that do not fit into their box. */
const hidden = (page: Page): Promise<string[]> => page.locator('.talk, .talk-text, .talk-answer').evaluateAll((all) => all.flatMap((one) =>
  (one.scrollHeight > one.clientHeight + 1 || one.scrollWidth > one.clientWidth + 1 ? [`${one.className}: ${one.textContent}`] : [])));

test('a caution, a heading, a height and the list behind a call: each answered, flown, and told beside the flaps', async () => {
  const { page, close } = await flyScenario(plain(beside));
  await words(page).filter({ hasText: 'Caution: fuel left and right uneven' }).waitFor();
  // Told twice: in words to answer, and above everything as a caution, by its level and not by colour alone.
  await page.locator('[data-alerts]', { hasText: 'caution: fuel left and right uneven, note it' }).waitFor({ state: 'attached' });
  for (const colorScheme of ['dark', 'light'] as const) {
    await page.emulateMedia({ colorScheme });
    expect(await axe(page), colorScheme).toEqual([]);
  }
  await page.keyboard.press('7');
  await words(page).filter({ hasText: 'Turn right heading one two zero.' }).waitFor();
  expect(await page.locator('[data-alerts]').textContent()).toBe('');
  expect(await page.locator('.talk-answer').allTextContents()).toHaveLength(3);
  await answer(page, 'heading 120').click();
  await words(page).filter({ hasText: 'Descend to five thousand feet.' }).waitFor();
  // One that is wrong is flown all the same.
  await answer(page, '4500 ft').click();
  await words(page).waitFor({ state: 'detached' });
  await reading(page, 'altitude').getByText('descending').waitFor({ state: 'attached' });
  await reading(page, 'heading').getByText(/09[1-9] degrees/).waitFor({ state: 'attached' });

  await makeReady(page);
  await page.keyboard.down('KeyE');
  await reading(page, 'leftPointer').getByText(/ (1\d|9\.[5-9])/).waitFor({ state: 'attached', timeout: 15_000 });
  await page.keyboard.up('KeyE');
  expect(await words(page).count()).toBe(0);
  await page.keyboard.press('KeyS');
  for (const [index, text] of LIST.entries()) {
    await words(page).filter({ hasText: `List ${index + 1} of 6` }).waitFor();
    // By key and by mouse in turn.
    const place = (await page.locator('.talk-answer').allTextContents()).indexOf(text);
    expect(place, text).toBeGreaterThanOrEqual(0);
    if (index % 2 === 0) await page.keyboard.press(`Digit${7 + place}`);
    else await answer(page, text).dblclick({ delay: 60 }); // one answer, however often it is clicked
  }
  await words(page).waitFor({ state: 'detached' });

  await page.keyboard.press('Escape');
  await page.getByRole('button', { name: 'End the run' }).click();
  await page.getByText('Not sure').click();
  await page.getByRole('button', { name: 'Show the debrief' }).click();
  const section = page.getByRole('region', { name: 'Beside the flaps' });
  await section.waitFor();
  await section.getByText(/^2 of 3 right and in time, half of them within \d+\.\d s; 1 wrong, 0 missed\.$/).waitFor();
  const rows = await section.getByRole('listitem').allInnerTexts();
  expect(rows).toHaveLength(3);
  expect(rows[0]).toMatch(/^Caution: fuel left and right uneven\s*:?\s+at 0\.5 s: noted after \d+\.\d s$/);
  expect(rows[1]).toMatch(/heading 120 after \d+\.\d s$/);
  expect(rows[2]).toMatch(/4500 ft after \d+\.\d s; right was 5000 ft$/);
  const { commands } = await save(page);
  expect(commands.flatMap((one) => (one.do === 'answer' ? [one.text] : []))).toEqual(['noted', ...LIST]);
  expect(commands.flatMap((one) => (one.do === 'selectHeading' ? [one.toDeg] : one.do === 'descend' ? [one.toFt] : []))).toEqual([120, 4500]);
  await close();
}, 60_000);

test.each([[1024, 768, 'dark'], [390, 844, 'light']] as const)('at %i by %i, %s, every word of the list is seen whole, its answers of a finger’s size', async (width, height, colorScheme) => {
  const { page, close } = await flyScenario(plain({ procedure: { list: true }, task: { afterS: 90 } }), { width, height, colorScheme });
  await control(page, 'call').click();
  for (const [index, text] of LIST.entries()) {
    await words(page).filter({ hasText: `List ${index + 1} of 6` }).waitFor();
    expect(await hidden(page)).toEqual([]);
    expect(await narrowTargets(page)).toEqual([]);
    if (text.startsWith('limit')) expect(await axe(page)).toEqual([]);
    await answer(page, text).click();
  }
  await close();
}, 30_000);

test('what another pilot has in hand does nothing, is marked so, and is said', async () => {
  const { page, close } = await flyScenario(plain({ role: 'driving' }));
  await page.locator('[data-alerts]', { hasText: 'advisory: other pilot flies, speed, thrust, gear are theirs' }).waitFor({ state: 'attached' });
  const theirs = ['gear', 'speedHold', 'goAround', 'bothThrust', 'selectSpeed', 'speedUp5'];
  for (const id of theirs) expect(await control(page, id).getAttribute('aria-disabled'), id).toBe('true');
  for (const id of ['guard', 'arm', 'extend', 'lever', 'call']) expect(await control(page, id).getAttribute('aria-disabled'), id).toBeNull();
  // Levers move by themselves under the speed hold: what was filed tells of those, below.
  const state = () => Promise.all(['gear', 'speedHold', 'selectSpeed'].map((id) => control(page, id).evaluate((one) => ['aria-label', 'aria-pressed', 'aria-valuenow'].map((name) => one.getAttribute(name)).join(' '))));
  const before = await state();
  for (const key of ['KeyL', 'KeyH', 'KeyN', 'KeyI', 'KeyU']) await page.keyboard.press(key);
  for (const id of ['gear', 'speedHold', 'goAround', 'speedUp5']) await control(page, id).click({ force: true });
  // The trainee's own still act: what came first has been through the hands by then.
  await makeReady(page);
  expect(await state()).toEqual(before);
  await page.keyboard.press('Escape');
  await page.getByRole('button', { name: 'End the run' }).click();
  await page.getByText('Not sure').click();
  await page.getByRole('button', { name: 'Show the debrief' }).click();
  expect((await save(page)).commands.map((one) => one.do)).toEqual(['openGuard', 'arm']);
  await close();
}, 30_000);
