// Points of a set: the golden run of twenty trials, and what must hold of any.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { pointsOf, type Stakes } from '../../sim/index.js';
import { anywhere } from '../draw.js';

const stakes = (falseRelease: number): Stakes => ({ points: { falseRelease, missed: 100, held: 50 }, limitDeg: 3 });
const CAUGHT = [1.15, 0.9, 1.5, 1.3, 1.1, 1.7, 1.4, 2, 1.6, 2.2, 1.9, 2.8];

/** Twenty trials: those caught, one late at 3.60, one undecided, three false releases, three held. */
function golden(falseRelease: number): number {
  const rule = stakes(falseRelease);
  const points = [
    ...CAUGHT.map((deg) => pointsOf('caught', deg, rule)), pointsOf('late', 3.6, rule), pointsOf('undecided', null, rule),
    ...[1, 2, 3].map(() => pointsOf('falseRelease', null, rule)), ...[1, 2, 3].map(() => pointsOf('held', null, rule)),
  ];
  expect(points).toHaveLength(20);
  return points.reduce((sum, one) => sum + one, 0) / 20;
}

describe('points', () => {
  // Computed by hand: 1200 - 100 x 19.55 / 3 - 100 - 3 F + 150, over 20.
  it('of the golden run, F 100', () => expect(golden(100)).toBeCloseTo(14.9166667, 6));
  it('of the golden run, F 50', () => expect(golden(50)).toBeCloseTo(22.4166667, 6));
  it('at once are 100, at the limit 0, and there is nothing for what was not decided', () => {
    expect(pointsOf('caught', 0, stakes(75))).toBe(100);
    expect(pointsOf('caught', 3, stakes(75))).toBe(0);
    expect([pointsOf('undecided', 1, stakes(75)), pointsOf('void', 1, stakes(75))]).toEqual([0, 0]);
    expect([pointsOf('late', 4, stakes(75)), pointsOf('missed', null, stakes(75)), pointsOf('falseRelease', null, stakes(75)), pointsOf('held', null, stakes(75))]).toEqual([-100, -100, -75, 50]);
  });
  const rule = fc.record({ points: fc.record({ falseRelease: fc.nat(1000), missed: fc.nat(1000), held: fc.nat(1000) }), limitDeg: anywhere(0.5, 20) });
  const part = anywhere(0, 1);
  it('a release that comes later, still within the limit, never has more', () => {
    fc.assert(fc.property(rule, part, part, (of, a, b) => {
      const [soon, late] = [Math.min(a, b), Math.max(a, b)];
      expect(pointsOf('caught', late * of.limitDeg, of)).toBeLessThanOrEqual(pointsOf('caught', soon * of.limitDeg, of));
    }));
  });
  it('one more quiet run held never takes any; letting go late or for nothing never gives any', () => {
    fc.assert(fc.property(rule, (of) => {
      expect(pointsOf('held', null, of)).toBeGreaterThanOrEqual(0);
      for (const outcome of ['late', 'missed', 'falseRelease'] as const) expect(pointsOf(outcome, 5, of)).toBeLessThanOrEqual(0);
    }));
  });
});
