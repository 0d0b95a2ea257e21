// Whatever passes schema, soundness and fit can be flown: no throw, no NaN, at the ends of every range and inside it.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { airframeSchema, type Airframe, misfits, ready, scenarioSchema, shapeOf, tryAs } from '../../sim/files/index.js';
import { advance, expand, numberOf, startHash, STATE_KEYS, type Command } from '../../sim/index.js';
import { between, inRange, ranges } from '../fuzz/ranges.js';
import { airframeA, changed, drill, drillNames } from './shipped.js';

const hands: Command[] = [
  { do: 'openGuard', tick: 1, rank: 2, seq: 0 }, { do: 'arm', tick: 2, rank: 2, seq: 1 }, { do: 'holdDrive', way: 'extend', tick: 3, rank: 2, seq: 2 },
  { do: 'setThrust', tlaDeg: 90, tick: 200, rank: 2, seq: 3 }, { do: 'releaseDrive', tick: 250, rank: 2, seq: 4 }, { do: 'setGear', to: 'down', tick: 260, rank: 2, seq: 5 },
];

/** Flies a few seconds. The hash refuses a state with a number that is none, and names its key. */
function flies(airframe: Airframe, name: string, start: object = {}): void {
  const plain = drill(name);
  const scenario = { ...plain, start: { ...plain.start, ...start } };
  if (misfits(scenario, airframe).length > 0) return;
  const hash = startHash();
  let world = expand(ready(scenario, airframe), airframe, 1);
  for (let second = 0; second < 4; second += 1) {
    hash.add(world.state);
    world = advance(world, hands, 100);
    const endless = STATE_KEYS.filter((key) => !Number.isFinite(numberOf(world.state, key)));
    expect(endless).toEqual([]);
  }
  hash.add(world.state);
  flown += 1;
}
let flown = 0;

test('an airframe with numbers anywhere in their ranges', () => {
  const all = ranges(airframeA, shapeOf(airframeSchema));
  expect(all.length).toBeGreaterThan(100);
  flown = 0;
  const one = fc.tuple(fc.constantFrom(...all), inRange);
  fc.assert(fc.property(fc.array(one, { minLength: 1, maxLength: 3 }), fc.constantFrom(...drillNames), (changes, name) => {
    const airframe = changes.reduce((whole, [range, part]) => changed(whole, range.path, between(range, part)), airframeA);
    const read = tryAs(airframeSchema, airframe);
    if (read.ok) flies(read.value, name);
  }), { numRuns: 1500 });
  expect(flown).toBeGreaterThan(300); // most were not refused before they could fly
}, 120_000);

test('a motor that warms in a second, run for hours: the far ends of two ranges at once', () => {
  const hot = changed(changed(airframeA, ['heat', 'onS'], 1), ['heat', 'ratedS'], 10000);
  const read = tryAs(airframeSchema, hot);
  if (!read.ok) throw new Error(JSON.stringify(read.issues));
  flown = 0;
  flies(read.value, 'set-16-from-4');
  expect(flown).toBe(1);
});

test('a start anywhere in its ranges', () => {
  const start = shapeOf(scenarioSchema);
  const all = ranges(drill(drillNames[0]!), start).filter(({ path }) => path[0] === 'start');
  flown = 0;
  fc.assert(fc.property(fc.array(fc.tuple(fc.constantFrom(...all), inRange), { minLength: 1, maxLength: 4 }), (changes) => {
    flies(airframeA, drillNames[0]!, Object.fromEntries(changes.map(([range, part]) => [range.path[1], between(range, part)])));
  }), { numRuns: 600 });
  expect(flown).toBeGreaterThan(50);
}, 120_000);
