/**
 * Signal detection. Published: statpsych 1.7.0, function `signal` (log-linear rule); Statistics::SDT on metacpan with the data of
 * Stanislaw and Todorov 1999 (the other rule, 1/(2N), which we do not use: its rates are given here). The rest: computed.
 */
import { describe, expect, it } from 'vitest';
import { normalQuantile } from '../../sim/portable.js';
import { logLinear, sensitivity } from '../../sim/stats/sensitivity.js';

describe('log-linear', () => {
  it('82 of 100, 46 of 100: the printed digits of statpsych', () => {
    const found = logLinear(82, 46, 100, 100);
    expect(found.hitRate).toBeCloseTo(0.8168317, 7);
    expect(found.falseRate).toBeCloseTo(0.460396, 6);
    expect(found.d).toBeCloseTo(1.002793, 6);
    expect(-normalQuantile(found.falseRate)).toBeCloseTo(0.09943603, 8);
    expect(found.criterion).toBeCloseTo(-0.4019603, 7);
    expect(Math.exp(found.lnBeta)).toBeCloseTo(0.668257, 6); // computed
    expect(found.se).toBeCloseTo(0.192418, 6); // computed
  });
  it('is not the slip of a published function that divides by N + 1.5', () => {
    expect(sensitivity(82.5 / 101.5, 46.5 / 101.5).d).toBeCloseTo(0.993442, 6);
    expect(logLinear(82, 46, 100, 100).d).not.toBeCloseTo(0.993442, 3);
  });
  it.each([ // computed
    [50, 50, 17, 25, 1.885343, -1.391097, null], [20, 20, 0, 10, 3.671374, -0.145065, 0.919], [40, 50, 5, 50, 2.058872, 0.208644, 0.310313],
    [10, 10, 10, 10, 0, -1.690622, null],
  ])('%d of %d, %d of %d: d-prime %d, c %d', (hits, signals, falses, noises, d, c, se) => {
    const found = logLinear(hits, falses, signals, noises);
    expect(found.d).toBeCloseTo(d, 6);
    expect(found.criterion).toBeCloseTo(c, 6);
    if (se !== null) expect(Math.abs(found.se - se)).toBeLessThan(se === 0.919 ? 5e-4 : 1e-6);
  });
  it.each([[11, 12, 0, 4, 1.92], [22, 24, 1, 8, 1.24], [40, 45, 2, 15, 0.9], [81, 90, 3, 30, 0.69], [162, 180, 6, 60, 0.49]])(
    '%d of %d, %d of %d (nearest to .9 and .1): half-width %d, too wide to show below 100 (computed)', (hits, signals, falses, noises, half) => {
      expect(1.959964 * logLinear(hits, falses, signals, noises).se).toBeCloseTo(half, 2);
    });
});

describe('from rates', () => {
  it('50 of 50, 17 of 25 by 1/(2N): d-prime 1.86, ln beta -2.60 (published); 1.8586491, -1.3970233, -2.5965761, .0745283', () => {
    const { d, criterion, lnBeta } = sensitivity(0.99, 0.68);
    expect(d).toBeCloseTo(1.86, 2);
    expect(lnBeta).toBeCloseTo(-2.6, 2);
    expect(d).toBeCloseTo(1.8586491, 7);
    expect(criterion).toBeCloseTo(-1.3970233, 7);
    expect(lnBeta).toBeCloseTo(-2.5965761, 7);
    expect(Math.exp(lnBeta)).toBeCloseTo(0.0745283, 7);
  });
  it.each([[0.7, 0.1, 1.8059521, 1.981, 1.806], [0.5, 0.4, 0.2533471, 1.033, 0.253], [0.85, 0.05, 2.681287, 2.261, 2.681]])(
    'subject with %d, %d (published: short notes on signal detection)', (h, f, d, beta, printed) => {
      const found = sensitivity(h, f);
      expect(found.d).toBeCloseTo(printed, 3);
      expect(found.d).toBeCloseTo(d, 7);
      expect(Math.exp(found.lnBeta)).toBeCloseTo(beta, 3);
    });
  it('the mean of their d-primes is 1.5802, not the d-prime of the mean rates', () => {
    const all = [[0.7, 0.1], [0.5, 0.4], [0.85, 0.05]] as const;
    expect(all.reduce((sum, [h, f]) => sum + sensitivity(h, f).d, 0) / 3).toBeCloseTo(1.5802, 4);
    expect(sensitivity((0.7 + 0.5 + 0.85) / 3, (0.1 + 0.4 + 0.05) / 3).d).not.toBeCloseTo(1.5802, 1);
  });
  it('.8 and .1, and 20 of 20 with 0 of 10 by 1/(2N): another rule, another number (computed)', () => {
    expect(sensitivity(0.8, 0.1)).toEqual({ d: expect.closeTo(2.1231728, 7), criterion: expect.closeTo(0.2199652, 7), lnBeta: expect.closeTo(0.4670241, 7) });
    expect(sensitivity(0.975, 0.05)).toMatchObject({ d: expect.closeTo(3.604818, 6), criterion: expect.closeTo(-0.157555, 6) });
  });
});
