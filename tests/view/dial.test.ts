// Geometry of the fan, worked by hand, and what must always hold of it.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { dialDegOf, flapDegOf, onFan, pxPerDeg } from '../../src/view/dial.js';
import { anywhere } from '../draw.js';

const straight = [{ flapDeg: 0, dialDeg: 0 }, { flapDeg: 38, dialDeg: 86 }];
const bent = [{ flapDeg: 0, dialDeg: 0 }, { flapDeg: 10, dialDeg: 40 }, { flapDeg: 30, dialDeg: 80 }];

test('straight between knots, and on beyond the ends', () => {
  // 86 / 38 = 2.263157... degrees of dial for each degree of flap.
  expect(dialDegOf(straight, 19)).toBeCloseTo(43, 12);
  expect(dialDegOf(straight, 38)).toBeCloseTo(86, 12);
  expect(dialDegOf(straight, -1)).toBeCloseTo(-2.2631578947, 9);
  expect(dialDegOf(straight, 39)).toBeCloseTo(88.2631578947, 9);
  expect(dialDegOf(bent, 5)).toBeCloseTo(20, 12);
  expect(dialDegOf(bent, 10)).toBeCloseTo(40, 12);
  expect(dialDegOf(bent, 20)).toBeCloseTo(60, 12);
  expect(dialDegOf(bent, 31)).toBeCloseTo(82, 12);
});

test('the way back gives the flap position again', () => {
  fc.assert(fc.property(anywhere(-5, 45), fc.constantFrom(straight, bent), (deg, dial) => {
    expect(flapDegOf(dial, dialDegOf(dial, deg))).toBeCloseTo(deg, 9);
  }));
});

test('the pointer falls as the flaps fall', () => {
  const hinge = { hingeX: 100, hingeY: 50 };
  expect(onFan(hinge, 0, 300)).toEqual({ x: 400, y: 50 });
  const down = onFan(hinge, 90, 300);
  expect(down.x).toBeCloseTo(100, 9);
  expect(down.y).toBeCloseTo(350, 9);
  fc.assert(fc.property(anywhere(0, 37), anywhere(0.01, 1), (deg, more) => {
    const at = (flap: number): number => onFan(hinge, dialDegOf(straight, flap), 300).y;
    expect(at(deg + more)).toBeGreaterThan(at(deg));
  }));
});

test('a degree of flap on the screen', () => {
  // 86 degrees of arc at 226.77 px radius over 38 degrees of flap: 86 * pi / 180 * 226.77 / 38 = 8.9573 px.
  expect(pxPerDeg(straight, 226.77)).toBeCloseTo(8.9573, 3);
});
