// The shipped course can be flown to its end: every drill of it is passed by the steady hand that it names, and its steps open in an order that a person can follow.
import { expect, it } from 'vitest';
import { readyCourse } from '../../sim/files/index.js';
import { standOf, type StepFacts } from '../../sim/index.js';
import { readCourse } from '../../src/text/index.js';
import { drill, drillNames, lookup, textOf } from '../files/shipped.js';
import { setFile, setNames } from '../set/shipped.js';

const drills = new Map(drillNames.map((name) => [name, drill(name)]));
const shelves = { airframes: lookup, drills: (name: string) => drills.get(name), sets: (name: string) => (setNames.includes(name) ? setFile(name) : undefined) };
const read = readCourse(textOf('courses/first-hold-to-landing.json'), 'c', shelves);
if (!read.ok) throw new Error(JSON.stringify(read.problems));
const { steps } = readyCourse(read.value, shelves);

it('what is asked to be passed can be: the shipped drill names a trainee that passes', () => {
  for (const { done, flies, name } of steps) if (flies.kind === 'drill' && flies.shipped !== null && done !== 'flown') expect(flies.scenario.passes?.length, name).toBeGreaterThan(0);
});

it('from nothing flown, doing each step that is open, all of it opens', () => {
  const passed: StepFacts = { kind: 'drill', runs: [1, 2].map((seed) => ({ atMs: seed, seed, outcome: 'caught', passed: true, assisted: false })) };
  const none: StepFacts = { kind: 'drill', runs: [] };
  const plain = steps.map(({ needs, done }) => ({ needs, done, gate: null }));
  const flown = new Set<number>();
  for (let round = 0; round < steps.length; round += 1) {
    const stands = standOf(plain, steps.map((_, at) => (flown.has(at) ? passed : none)));
    const open = stands.flatMap(({ state }, at) => (state === 'open' ? [at] : []));
    if (flown.size < steps.length) expect(open.length).toBeGreaterThan(0);
    open.forEach((at) => flown.add(at));
  }
  expect(flown.size).toBe(steps.length);
});

it('every set of the true drive that is flown out stands in it, and the last step is the whole approach', () => {
  const sets = steps.flatMap(({ flies }) => (flies.kind === 'set' ? [flies.shipped] : []));
  expect(sets).toEqual(['short', 'true-drive-calm', 'true-drive-loaded']);
  expect(steps.at(-1)!.needs.length).toBeGreaterThan(1);
});
