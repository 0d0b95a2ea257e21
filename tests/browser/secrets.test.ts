// Nothing gives the fault away: with the same dice, a fault on one side, on the other, of another kind and none at all look the
// same in every respect until it acts: pixels, words, names for assistive technology, title, address, requests.
import { expect, test } from 'vitest';
import { clockByHand, goTo, startByHand } from './clock.js';
import { openScenario, plain } from './flying.js';
import { look } from './alike.js';

const HELD_S = 3;
const events = [
  { when: { atS: 1 }, do: 'callout', text: 'Say altitude.', answers: ['5600 ft', '6500 ft'], right: '5600 ft', withinS: 20 },
  { when: { atS: 1.5 }, do: 'setGear', to: 'down' },
  { when: { atS: 2 }, do: 'descend', toFt: 3000, pathDeg: -3 },
];
const cut = (side: string) => [{ name: 'a', kind: 'disconnect', side, when: { heldS: HELD_S } }];
const FAULTS: Readonly<Record<string, object[]>> = {
  none: [], left: cut('left'), right: cut('right'),
  lag: [{ name: 'a', kind: 'lag', side: 'left', ratio: -2, when: { heldS: HELD_S } }],
  quits: [{ name: 'a', kind: 'quits', when: { heldS: HELD_S } }],
  pointer: [{ name: 'a', kind: 'pointer', side: 'right', mode: 'stuck', when: { heldS: HELD_S } }],
};

interface Seen { looks: Record<string, string>[]; behind: Record<string, string>; requests: string[] }

async function watch(faults: object[], width: number, height: number): Promise<Seen> {
  const { page, requests, close } = await openScenario(plain({ faults, events, recognition: { limitDeg: 2.5 } }), { width, height, before: clockByHand, expected: [/willReadFrequently/] });
  const looks: Record<string, string>[] = [];
  await startByHand(page);
  let ms = 1100;
  const go = async (by: number): Promise<void> => {
    ms += by;
    await goTo(page, ms);
    looks.push(await look(page));
  };
  await go(900);
  for (const key of ['g', 'a']) await page.keyboard.press(key);
  await go(200);
  await page.keyboard.down('e');
  // A lever, a call and an answer on the way: what a hand does must not make a difference either.
  await go(700);
  await page.keyboard.press('7');
  await page.keyboard.press('c');
  await page.keyboard.press('i');
  for (let step = 0; step < 4; step += 1) await go(550);
  const before = requests.length;
  ms += 4000;
  await goTo(page, ms);
  const behind = await look(page);
  await close();
  return { looks, behind, requests: requests.slice(0, before) };
}

test.each([[1280, 720], [390, 844]])('same seed, fault removed, mirrored or of another kind: the same in every pixel and word up to onset, in %i x %i', async (width, height) => {
  const plainRun = await watch(FAULTS['none']!, width, height);
  expect(plainRun.looks).toHaveLength(7);
  // The run itself goes on: no two looks are the same.
  expect(new Set(plainRun.looks.map(({ pixels }) => pixels)).size).toBe(7);
  for (const [name, faults] of Object.entries(FAULTS)) {
    if (name === 'none' || (width < 1000 && name !== 'left')) continue;
    const run = await watch(faults, width, height);
    run.looks.forEach((seen, index) => expect(seen, `${name}, look ${index}`).toEqual(plainRun.looks[index]));
    // Which comes first of those that are asked for at once is the network's affair.
    expect(run.requests.toSorted(), name).toEqual(plainRun.requests.toSorted());
    // And it does act: four seconds later it is seen.
    expect(run.behind['pixels'], name).not.toBe(plainRun.behind['pixels']);
  }
}, 240_000);
