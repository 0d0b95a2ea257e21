/**
 * Lever angles of the trade on a neutral base: 20 degrees with both engines live, 34 with one.
 * Common practice, no source. In tests only, never in demo data.
 */
import { expect, it } from 'vitest';
import { hornRule } from '../../sim/warning/horn.js';

const base = { takeOffBandDeg: 10, landingBandDeg: 25, bothLiveTlaDeg: 0, oneLiveTlaDeg: 0, heightFt: 500 };

it('20 deg, both live', () => {
  const t = { ...base, bothLiveTlaDeg: 20 };
  expect(hornRule(t, 15, 19.999, 2, 0, 1000)).toBe(2);
  expect(hornRule(t, 15, 20, 2, 0, 1000)).toBe(0);
});
it('34 deg, one live', () => {
  const t = { ...base, oneLiveTlaDeg: 34 };
  expect(hornRule(t, 15, 33.999, 1, 0, 1000)).toBe(2);
  expect(hornRule(t, 15, 34, 1, 0, 1000)).toBe(0);
});
