// Words found in the text of the bench.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { placesOf, stepTo } from '../../../../src/pages/bench/text/found.js';

const TEXT = 'Hold, hold, HOLD; then let go.';

test('every place, in either case', () => {
  expect(placesOf(TEXT, 'hold')).toEqual([{ from: 0, to: 4 }, { from: 6, to: 10 }, { from: 12, to: 16 }]);
  expect(placesOf('aaaa', 'aa')).toEqual([{ from: 0, to: 2 }, { from: 2, to: 4 }]);
  expect(placesOf(TEXT, 'split')).toEqual([]);
  expect(placesOf(TEXT, '')).toEqual([]);
});

test('on and back, and round at either end', () => {
  const all = placesOf(TEXT, 'hold');
  expect([0, 1, 2].map((at) => stepTo(all, all[at]!, 1))).toEqual([1, 2, 0]);
  expect([0, 1, 2].map((at) => stepTo(all, all[at]!, -1))).toEqual([2, 0, 1]);
  expect([stepTo([], { from: 3, to: 3 }, 1), stepTo([], { from: 3, to: 3 }, -1)]).toEqual([-1, -1]);
});

test('what is found is what was looked for', () => {
  fc.assert(fc.property(fc.string({ maxLength: 60 }), fc.string({ minLength: 1, maxLength: 3 }), (text, words) => {
    for (const { from, to } of placesOf(text, words)) expect(text.slice(from, to).toLowerCase()).toBe(words.toLowerCase());
  }));
});
