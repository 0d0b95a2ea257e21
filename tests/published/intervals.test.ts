/**
 * Intervals of proportions and rates. Published: Newcombe 1998, Statistics in Medicine 17:857 (the first four rows, as far as memory of
 * his table goes); scipy's exact interval of 7 of 50; statpsych ci.poisson (23 in 5.25). The rest: computed.
 */
import { describe, expect, it } from 'vitest';
import { shareOf } from '../../sim/sweep/share.js';
import { binomialTail, clopperPearson } from '../../sim/stats/proportion.js';
import { garwood } from '../../sim/stats/rate.js';
import { runsToClaim } from '../../sim/stats/required.js';

const rounded = (lo: number, hi: number, digits = 4): string => `${lo.toFixed(digits)}-${hi.toFixed(digits)}`;

it.each([
  [81, 263, '0.2553-0.3662', '0.2527-0.3676'], [15, 148, '0.0624-0.1605', '0.0578-0.1617'], [0, 20, '0.0000-0.1611', '0.0000-0.1684'],
  [1, 29, '0.0061-0.1718', '0.0009-0.1776'], [7, 50, '0.0695-0.2619', '0.0582-0.2674'], [8, 10, '0.4902-0.9433', '0.4439-0.9748'],
  [18, 20, '0.6990-0.9721', '0.6830-0.9877'], [20, 20, '0.8389-1.0000', '0.8316-1.0000'], [36, 40, '0.7695-0.9604', '0.7634-0.9721'],
])('%d of %d: Wilson %s, Clopper and Pearson %s', (k, n, byWilson, exact) => {
  const [w, c] = [shareOf(k, n), clopperPearson(k, n)];
  expect(rounded(w.lo, w.hi)).toBe(byWilson);
  expect(rounded(c.lo, c.hi)).toBe(exact);
});
it('7 of 50 exactly, as scipy prints it', () => {
  const { lo, hi } = clopperPearson(7, 50);
  expect(rounded(lo, hi, 7)).toBe('0.0581917-0.2673960');
});

describe('how many runs', () => {
  it.each([[0.8, 8, 11, 14], [0.9, 16, 22, 29], [0.95, 32, 45, 59], [0.99, 161, 230, 299]])('none failed, for %d: %d, %d, %d', (rate, ...runs) => {
    expect([0.8, 0.9, 0.95].map((confidence) => runsToClaim(rate, confidence))).toEqual(runs);
    [0.8, 0.9, 0.95].forEach((confidence, at) => expect(runs[at]).toBe(Math.ceil(Math.log(1 - confidence) / Math.log(rate))));
  });
  it('at least 9 in 10: 29 of 29 or 45 of 46', () => {
    expect(runsToClaim(0.9)).toBe(29);
    expect(runsToClaim(0.9, 0.95, 1)).toBe(46);
    expect(binomialTail(45, 46, 0.9)).toBeLessThan(0.05);
    expect(binomialTail(44, 45, 0.9)).toBeGreaterThan(0.05);
  });
  it.each([[0.9, 0.15, 17], [0.9, 0.1, 37], [0.9, 0.05, 141], [0.8, 0.15, 26], [0.8, 0.1, 60], [0.8, 0.05, 245]])('Wilson at %d within %d from n = %d', (p, half, n) => {
    const width = (of: number): number => { const { lo, hi } = shareOf(p * of, of); return (hi - lo) / 2; };
    expect(width(n)).toBeLessThanOrEqual(half);
    expect(width(n - 1)).toBeGreaterThan(half);
  });
});

describe('rates', () => {
  it('23 in 5.25: 2.777148 to 6.57358 (statpsych)', () => {
    const { lo, hi } = garwood(23, 5.25);
    expect(23 / 5.25).toBeCloseTo(4.380952, 6);
    expect(lo).toBeCloseTo(2.777148, 6);
    expect(hi).toBeCloseTo(6.57358, 5);
  });
  it.each([[0, 0, 3.688879], [1, 0.025318, 5.571643], [10, 4.795389, 18.390356]])('%d in 1: %d to %d', (count, low, high) => {
    const { lo, hi } = garwood(count, 1);
    expect(lo).toBeCloseTo(low, 6);
    expect(hi).toBeCloseTo(high, 6);
  });
  it('none in T: 2.995732 / T one-sided at 95 %', () => expect(garwood(0, 1, 0.9).hi).toBeCloseTo(2.995732, 6));
  it.each([[2, 600, '0.0242-0.7225'], [5, 1200, '0.0812-0.5834']])('%d in %d s: %s a minute', (count, seconds, limits) => {
    const { lo, hi } = garwood(count, seconds / 60);
    expect(rounded(lo, hi)).toBe(limits);
  });
  it.each([[0.5, 6], [0.25, 12], [0.1, 30]])('fewer than %d a minute with none seen takes %d minutes', (perMin, minutes) => {
    expect(garwood(0, minutes, 0.9).hi).toBeLessThanOrEqual(perMin);
    expect(garwood(0, minutes * 0.99, 0.9).hi).toBeGreaterThan(perMin);
  });
});
