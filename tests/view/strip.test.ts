// The speed strip: places by hand, and labels that never lie over each other.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { onStrip, rulings, spread, type Strip } from '../../src/view/strip.js';
import { anywhere } from '../draw.js';

const strip: Strip = { lowestKt: 100, highestKt: 250, top: 40, bottom: 640 };

test('four px a knot, the fastest above, the ends kept', () => {
  expect(onStrip(strip, 100)).toBe(640);
  expect(onStrip(strip, 250)).toBe(40);
  expect(onStrip(strip, 175)).toBe(340);
  expect(onStrip(strip, 60)).toBe(640);
  expect(onStrip(strip, Infinity)).toBe(40);
});

test('strokes every ten knots, long ones every twenty', () => {
  const all = rulings(strip, 20);
  expect(all.map(({ kt }) => kt)).toEqual([100, 110, 120, 130, 140, 150, 160, 170, 180, 190, 200, 210, 220, 230, 240, 250]);
  expect(all.filter(({ long }) => long).map(({ kt }) => kt)).toEqual([100, 120, 140, 160, 180, 200, 220, 240]);
});

test('labels that have room stay where they wish', () => {
  expect(spread([100, 400, 200], 20, 40, 640)).toEqual([100, 400, 200]);
});

test('labels that have none are moved apart in their order', () => {
  expect(spread([100, 105, 110], 20, 40, 640)).toEqual([100, 120, 140]);
  expect(spread([640, 635], 20, 40, 640)).toEqual([640, 620]);
});

test('whatever the wishes: order kept, the gap kept, inside the ends', () => {
  fc.assert(fc.property(fc.array(anywhere(0, 700), { minLength: 1, maxLength: 5 }), (wishes) => {
    const places = spread(wishes, 20, 40, 640);
    const order = wishes.map((_, index) => index).sort((a, b) => wishes[a]! - wishes[b]! || a - b);
    for (const [rank, index] of order.entries()) {
      expect(places[index]).toBeGreaterThanOrEqual(40 - 1e-9);
      expect(places[index]).toBeLessThanOrEqual(640 + 1e-9);
      if (rank > 0) expect(places[index]! - places[order[rank - 1]!]!).toBeGreaterThanOrEqual(20 - 1e-9);
    }
  }));
});
