/** The dice: published outputs of the generator, independence of streams, and no silent change of what is thrown. */
import { describe, expect, it } from 'vitest';
import { dice, diceOf } from '../../sim/dice.js';
import { hazardTicks } from '../../sim/agenda-of.js';

const take = (n: number, of: () => number): number[] => Array.from({ length: n }, of);

describe('dice', () => {
  it('are xoshiro128** : first outputs from the state 1 2 3 4', () => {
    // By hand for the first three: 2 x 5 = 10, rotated by 7 = 1280, x 9 = 11520; then s1 = 0; then s1 = 1029.
    // The ten are what the authors' reference code (xoshiro128starstar.c, version 1.1) gives, as other ports test it.
    const stream = diceOf([1, 2, 3, 4]);
    expect(take(10, stream.bits)).toEqual([
      11520, 0, 5927040, 70819200, 2031721883, 1637235492, 1287239034, 3734860849, 3729100597, 4258142804,
    ]);
  });
  it('one stream a purpose: another purpose, or more draws of it, move nothing', () => {
    const alone = take(5, dice(42, 'side 0').bits);
    const other = dice(42, 'gust');
    take(100, other.bits);
    expect(take(5, dice(42, 'side 0').bits)).toEqual(alone);
    expect(take(5, dice(42, 'side 1').bits)).not.toEqual(alone);
    expect(take(5, dice(43, 'side 0').bits)).not.toEqual(alone);
  });
  it('are even: mean and variance of the uniform, mean and variance of the normal', () => {
    const n = 40000;
    const stream = dice(7, 'test');
    const u = take(n, stream.uniform);
    const mean = u.reduce((a, b) => a + b) / n;
    expect(Math.abs(mean - 0.5)).toBeLessThan(4 * Math.sqrt(1 / 12 / n)); // four standard errors
    expect(Math.min(...u)).toBeGreaterThan(0);
    expect(Math.max(...u)).toBeLessThan(1);
    const z = take(n, stream.normal);
    const zMean = z.reduce((a, b) => a + b) / n;
    expect(Math.abs(zMean)).toBeLessThan(4 / Math.sqrt(n));
    expect(Math.abs(z.reduce((a, b) => a + b * b, 0) / n - 1)).toBeLessThan(4 * Math.sqrt(2 / n));
  });
  it('refuse a seed that is no unsigned 32-bit whole number', () => {
    for (const seed of [-1, 0.5, 4294967296, NaN]) expect(() => dice(seed, 'x')).toThrow(RangeError);
    expect(() => dice(4294967295, 'x')).not.toThrow();
  });
});

describe('flat hazard', () => {
  // Inverse of the exponential law: u of survival 0.5 at half-life ln 2 / lambda, any textbook of survival.
  it('strikes at ln(1/u) / rate', () => {
    expect(hazardTicks(0.0231049, 0.5, 100000) / 100).toBeCloseTo(30, 1);
    expect(hazardTicks(0.0231049, 0.9, 100000) / 100).toBeCloseTo(4.56, 1);
    expect(hazardTicks(0.02, 0.2, 100000)).toBe(Math.floor(Math.log(5) / 0.02 * 100) + 1);
  });
  it('behind the limit never strikes', () => {
    expect(hazardTicks(0.0231049, 0.249, 6000)).toBe(Infinity); // 60 s: survival is exactly about a quarter
    expect(hazardTicks(0.0231049, 0.251, 6000)).toBeLessThanOrEqual(6000);
  });
  it('is flat: strikes a second at risk are the same early and late, within Poisson limits', () => {
    const rate = 0.05;
    const strikes = Array.from({ length: 4000 }, (_, seed) => hazardTicks(rate, dice(seed, 'hazard').uniform(), 4000) / 100);
    for (const [from, to] of [[0, 10], [10, 20], [20, 30], [30, 40]] as const) {
      const events = strikes.filter((t) => t > from && t <= to).length;
      const exposure = strikes.reduce((sum, t) => sum + Math.max(0, Math.min(t, to) - from), 0);
      expect(Math.abs(events - rate * exposure)).toBeLessThan(4 * Math.sqrt(rate * exposure));
    }
  });
});
