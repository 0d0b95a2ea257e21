// Shares, quantiles and histograms of a sweep.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { quantileOf, shareOf, spreadOf } from '../../sim/index.js';
import { anywhere } from '../draw.js';

describe('a share', () => {
  // Wilson's 95 % intervals, computed with high-precision arithmetic; the first two are Newcombe's examples (Stat Med 17 (1998) 857).
  it.each([[81, 263, 0.2553, 0.3662], [15, 148, 0.0624, 0.1605], [0, 20, 0, 0.1611], [1, 29, 0.0061, 0.1718], [20, 20, 0.8389, 1], [36, 40, 0.7695, 0.9604]])(
    '%i of %i', (k, n, lo, hi) => {
      const share = shareOf(k, n);
      expect(Math.abs(share.lo - lo)).toBeLessThan(6e-5);
      expect(Math.abs(share.hi - hi)).toBeLessThan(6e-5);
    });
  it('says nothing without a trial', () => expect(shareOf(0, 0)).toEqual({ k: 0, n: 0, lo: 0, hi: 1 }));
  it('holds the share itself, inside 0 to 1', () => {
    fc.assert(fc.property(fc.integer({ min: 1, max: 10000 }), anywhere(0, 1), (n, part) => {
      const { k, lo, hi } = shareOf(Math.floor(part * n), n);
      expect(lo >= 0 && lo <= k / n && hi >= k / n && hi <= 1).toBe(true);
    }));
  });
});

describe('a spread', () => {
  it('of 0 to 10: quantiles on straight lines between ranks', () => {
    const spread = spreadOf([10, 0, 9, 1, 8, 2, 7, 3, 6, 4, 5]);
    expect(spread).toMatchObject({ n: 11, mean: 5, least: 0, q05: 0.5, q25: 2.5, median: 5, q75: 7.5, q95: 9.5, most: 10 });
  });
  it('of four: the median lies between the two in the middle', () => expect(quantileOf([1, 2, 4, 8], 0.5)).toBe(3));
  it('of one value and of none', () => {
    expect(spreadOf([0.3])).toMatchObject({ n: 1, least: 0.3, median: 0.3, most: 0.3, bins: [{ from: 0.3, count: 1 }] });
    expect(spreadOf([])).toBeNull();
  });
  it('bins have round ends and hold their values: tenths in tenths', () => {
    const { bins } = spreadOf([0, 0.1, 0.2, 0.3, 0.30000000000000004, 0.6, 0.7, 0.99])!;
    expect(bins.map(({ from, count }) => [from, count])).toEqual([[0, 1], [0.1, 1], [0.2, 1], [0.3, 2], [0.4, 0], [0.5, 0], [0.6, 1], [0.7, 1], [0.8, 0], [0.9, 1]]);
  });
  it('counts every value once, in a bin that holds it', () => {
    fc.assert(fc.property(fc.array(anywhere(-1e4, 1e4), { minLength: 1, maxLength: 60 }), (values) => {
      const { bins, least, most } = spreadOf(values)!;
      expect(bins.length).toBeLessThanOrEqual(12);
      for (const { from, to, count } of bins) expect(count).toBe(values.filter((value) => value >= from && value < to).length);
      expect(bins.reduce((sum, { count }) => sum + count, 0)).toBe(values.length);
      expect(bins[0]!.from <= least && bins.at(-1)!.to > most).toBe(true);
    }));
  });
  it('does not hang on the order of the runs but for the rounding of the mean', () => {
    fc.assert(fc.property(fc.array(fc.integer({ min: 0, max: 1000 }), { minLength: 1, maxLength: 40 }), (values) => {
      expect(spreadOf([...values].reverse())).toEqual(spreadOf(values));
    }));
  });
});
