// Sums of the charts: nothing is drawn farther from its value than promised, round figures are round, words do not touch.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { lane, reach, SIGN } from '../../src/charts/lane.js';
import { at, ends, pieces, stepped, thin, ticks, valueAt, type Point } from '../../src/charts/plot.js';
import { anywhere } from '../draw.js';

/** The line through points at x, where x lies between two of them. */
function onLine(points: readonly Point[], x: number): number {
  const index = points.findIndex(([right]) => right >= x);
  const right = points[index]!;
  const left = points[Math.max(0, index - 1)]!;
  return right[0] === left[0] ? right[1] : left[1] + ((right[1] - left[1]) * (x - left[0])) / (right[0] - left[0]);
}

test('a thinned line passes every point within the slack, and keeps both ends', () => {
  const walks = fc.array(fc.tuple(anywhere(0.01, 3), anywhere(-2, 2)), { minLength: 1, maxLength: 120 });
  fc.assert(fc.property(walks, (steps) => {
    let [x, y] = [0, 0];
    const points: Point[] = steps.map(([dx, dy]) => [(x += dx), (y += dy / 20)]);
    const kept = thin(points);
    expect(kept[0]).toBe(points[0]);
    expect(kept[kept.length - 1]).toBe(points[points.length - 1]);
    for (const [px, py] of points) expect(Math.abs(onLine(kept, px) - py)).toBeLessThanOrEqual(0.05 + 1e-9);
  }));
});

test('a slow curve keeps its shape: thinning by neighbours alone would cut it by pixels', () => {
  const curve: Point[] = Array.from({ length: 1001 }, (_, i) => [i, 1e-4 * i * i]);
  const kept = thin(curve);
  expect(kept.length).toBeLessThan(60);
  for (const [x, y] of curve) expect(Math.abs(onLine(kept, x) - y)).toBeLessThanOrEqual(0.05 + 1e-9);
});

test('a hold is two points, a jump keeps both its ends', () => {
  expect(thin([[0, 1], [1, 1], [2, 1], [3, 1]])).toEqual([[0, 1], [3, 1]]);
  expect(thin([[0, 1], [1, 1], [1, 9], [2, 9]])).toEqual([[0, 1], [1, 1], [1, 9], [2, 9]]);
});

test('holes end a piece, and steps hold their value', () => {
  expect(pieces([[0, 1], [1, 1], null, [3, 2], [4, 3]])).toBe('M0.00 1.00L1.00 1.00M3.00 2.00L4.00 3.00');
  expect(pieces([null, null])).toBe('');
  expect(stepped([[0, 1], [1, 5], null, [3, 2]])).toEqual([[0, 1], [1, 1], [1, 5], null, [3, 2]]);
});

test('scales: places and values are each other\'s inverse, ends are whole steps about the values', () => {
  const scale = { from: 4, to: 16, start: 252, end: 62 };
  for (const value of [4, 7.5, 16]) expect(valueAt(scale, at(scale, value))).toBeCloseTo(value, 9);
  expect(valueAt(scale, 9999)).toBe(4);
  expect(ends([3.8, 6.7], 1, 2)).toEqual({ from: 3, to: 7 });
  expect(ends([4, 4], 1, 2)).toEqual({ from: 3, to: 5 });
  expect(ends([0, 0], 1, 2)).toEqual({ from: 0, to: 2 });
  expect(ends([0, 0.2], 0.5, 1)).toEqual({ from: 0, to: 1 });
  expect(ticks({ from: 0, to: 7 }, 4)).toEqual([0, 2, 4, 6]);
  expect(ticks({ from: 5, to: 5 }, 4)).toEqual([5]);
});

test('two words that would touch take two rows, or turn to the other side of their signs', () => {
  const two = (x: number) => lane([{ x: 100, w: 50, rank: 0 }, { x, w: 50, rank: 1 }], 0, 700, 2);
  expect(two(130)).toEqual([{ row: 0, flip: false }, { row: 1, flip: false }]);
  expect(two(176)).toEqual([{ row: 0, flip: false }, { row: 0, flip: false }]);
  expect(two(84)).toEqual([{ row: 0, flip: false }, { row: 1, flip: false }]);
  expect(two(72)).toEqual([{ row: 0, flip: false }, { row: 0, flip: true }]);
  expect(lane([{ x: 690, w: 50, rank: 0 }], 0, 700, 1)).toEqual([{ row: 0, flip: true }]);
});

test('words of a row never touch, stay inside, and the first in rank gets the lowest row', () => {
  const wishes = fc.array(fc.record({ x: anywhere(0, 700), w: anywhere(20, 120), rank: fc.nat(4) }), { minLength: 1, maxLength: 20 });
  fc.assert(fc.property(wishes, fc.integer({ min: 1, max: 4 }), (all, rows) => {
    const placed = lane(all, 0, 700, rows);
    const spans = placed.flatMap(({ row, flip }, index) => (row === null ? [] : [{ row, at: reach(all[index]!, flip) }]));
    for (const one of spans) {
      expect(one.at[0]).toBeGreaterThanOrEqual(-SIGN);
      expect(one.at[1]).toBeLessThanOrEqual(700 + SIGN);
      for (const other of spans) if (other !== one && other.row === one.row) expect(one.at[1] < other.at[0] || one.at[0] > other.at[1]).toBe(true);
    }
    const first = all.reduce((best, wish, index) => (wish.rank < all[best]!.rank ? index : best), 0);
    expect(placed[first]!.row).toBe(0);
  }));
});
