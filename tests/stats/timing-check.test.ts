/** The timing check: median and spread by hand, and each limit hit exactly. Limits: median 0.6 s, sd 0.15 s (own choice, measures 12.7). */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { isFit, timingCheck } from '../../sim/stats/timing-check.js';
import { anywhere } from '../draw.js';

test('by hand: 0.2 0.4 0.4 0.4 0.5 0.5 0.7 0.9 has mean 0.5, squares 0.32, sd sqrt(0.32 / 7), median 0.45', () => {
  const { releases, medianS, sdS } = timingCheck([0.9, 0.2, 0.4, 0.5, 0.4, 0.7, 0.5, 0.4]);
  expect(releases).toBe(8);
  expect(medianS).toBeCloseTo(0.45, 12);
  expect(sdS).toBeCloseTo(Math.sqrt(0.32 / 7), 12);
});
test('an odd number has its middle one', () => expect(timingCheck([0.3, 0.1, 0.2])).toMatchObject({ medianS: 0.2, sdS: expect.closeTo(0.1, 12) }));
test('fit up to each limit, and no further', () => {
  expect([isFit({ medianS: 0.6, sdS: 0.15 }), isFit({ medianS: 0.6001, sdS: 0 }), isFit({ medianS: 0.2, sdS: 0.1501 })]).toEqual([true, false, false]);
});
test('one release has no spread', () => expect(() => timingCheck([0.3])).toThrow(RangeError));
test('every time later by the same: the median is later by it, the spread stays', () => {
  fc.assert(fc.property(fc.array(anywhere(0.05, 3), { minLength: 2, maxLength: 30 }), anywhere(0, 1), (times, later) => {
    const [one, other] = [timingCheck(times), timingCheck(times.map((s) => s + later))];
    expect(other.medianS).toBeCloseTo(one.medianS + later, 9);
    expect(other.sdS).toBeCloseTo(one.sdS, 9);
  }));
});
