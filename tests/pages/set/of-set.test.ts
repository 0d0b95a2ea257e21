// Where a run of the logbook stood in its set: by its entry, under the number of its set.
import { expect, test } from 'vitest';
import { placesInSets } from '../../../src/pages/set/of-set.js';

const done = (...entries: string[]) => entries.map((entry) => ({ entry, outcome: 'held' as const }));

test('every run of every flight has its place; a set that is not at hand has none', () => {
  const places = placesInSets([
    { set: 'calm', runs: 12, done: done('a', 'b') }, { set: 'loaded', runs: 40, done: done('c') }, { set: 'gone', runs: 8, done: done('d') },
  ], ['loaded', 'calm']);
  expect([...places]).toEqual([['a', 'Set 2, run 1 of 12'], ['b', 'Set 2, run 2 of 12'], ['c', 'Set 1, run 1 of 40']]);
});
