/** Values computed beforehand for this project with high-precision arithmetic (mpmath), or worked by hand where it says so. */
import { describe, expect, it } from 'vitest';
import { normalQuantile } from '../../sim/portable.js';
import { guessCorrected } from '../../sim/stats/guess.js';
import { fitLogNormal, logNormalCdf, logNormalDensity, logNormalLikelihood } from '../../sim/stats/log-normal.js';
import { lnNormalTail, normalCdf, normalHazard, normalTail, Z90, Z975 } from '../../sim/stats/normal.js';
import { medianRanks } from '../../sim/stats/order-median.js';
import { medianSplit, v90 } from '../../sim/stats/ramp.js';
import { ratioShown, runsForRatio } from '../../sim/stats/required.js';
import { brier, intervalScore } from '../../sim/stats/scoring.js';
import type { Observation } from '../../sim/stats/survival.js';
import { tailTable } from '../../sim/stats/tail-table.js';

describe('the normal distribution', () => {
  it.each([
    [0.55, 0.125661346855074], [0.6, 0.2533471031358], [0.65, 0.385320466407568], [0.7, 0.524400512708041], [0.75, 0.674489750196082],
    [0.8, 0.841621233572914], [0.85, 1.03643338949379], [0.9, 1.2815515655446], [0.95, 1.64485362695147], [0.975, 1.95996398454005],
    [0.98, 2.05374891063182], [0.99, 2.32634787404084], [0.995, 2.5758293035489], [0.999, 3.09023230616781], [0.9999, 3.71901648545568],
    [0.02425, -1.97296105131188], [1e-6, -4.7534243088229], [1e-10, -6.36134090240406],
  ])('quantile of %d', (p, z) => {
    expect(normalQuantile(p)).toBeCloseTo(z, 12);
    expect(normalCdf(z) / p).toBeCloseTo(1, 12);
  });
  it.each([
    [0.5, 0.691462461274013], [1, 0.841344746068543], [2, 0.977249868051821], [3, 0.99865010196837], [-3, 0.00134989803163009], [-5, 2.86651571879194e-7],
  ])('chance at or below %d', (z, p) => expect(normalCdf(z) / p).toBeCloseTo(1, 13));
  it('far tails: ln of the chance above 10, 30; hazards tend to z + 1 / z', () => {
    expect(lnNormalTail(10)).toBeCloseTo(-53.2312851505125, 11); // mpmath
    expect(lnNormalTail(30)).toBeCloseTo(-454.3212439563, 9); // mpmath
    expect(lnNormalTail(-30)).toBe(0);
    expect(normalHazard(30)).toBeCloseTo(30.0332594, 6); // mpmath
    expect(normalTail(2.9999999)).toBeCloseTo(normalTail(3.0000001), 8); // where the two forms meet
  });
  it('constants are quantiles', () => expect([Z975, Z90]).toEqual([expect.closeTo(normalQuantile(0.975), 14), expect.closeTo(normalQuantile(0.9), 14)]));
  it('the table is the function to 1e-10', () => {
    for (let z = -9; z < 9; z += 0.00377) expect(Math.abs(tailTable(z) - normalTail(z))).toBeLessThan(1e-10);
  });
});

describe('log-normal', () => {
  const shifted = { mu: -0.5, sigma: 0.4 };
  it('density and chance, shift .2', () => {
    expect(logNormalDensity(shifted, 0.6)).toBeCloseTo(1.66165084, 8);
    expect(logNormalCdf(shifted, 0.6)).toBeCloseTo(0.48920432, 8);
    expect(logNormalCdf(shifted, 0.8)).toBeCloseTo(0.75557565, 8);
    expect(logNormalCdf(shifted, 1.3)).toBeCloseTo(0.9716691, 8);
    expect(0.2 + Math.exp(-0.5)).toBeCloseTo(0.80653066, 8);
    expect(0.2 + Math.exp(-0.5 + Z90 * 0.4)).toBeCloseTo(1.2127006, 8);
  });
  const at = (values: number[], event: boolean): Observation[] => values.map((value) => ({ value, event }));
  const events = at([0.9, 1.1, 1.3, 1.4, 1.8, 2.2], true);
  const all = [...events, ...at([3, 3], false)];
  it('two of eight censored: mu .59305936, sigma .54074941, ln L -8.89938860, median 1.80951593, q90 3.61849294', () => {
    const fit = fitLogNormal(all)!;
    expect(fit.mu).toBeCloseTo(0.59305936, 8);
    expect(fit.sigma).toBeCloseTo(0.54074941, 8);
    expect(fit.logLik).toBeCloseTo(-8.8993886, 7);
    expect(fit.median).toBeCloseTo(1.80951593, 7);
    expect(fit.q90).toBeCloseTo(3.61849294, 7);
    expect(logNormalLikelihood({ mu: 0.5, sigma: 0.5 }, all)).toBeCloseTo(-9.04357516, 8);
  });
  it('both easy ways flatter: leaving the censored out 1.3875, taking them for releases 1.6825', () => {
    expect(fitLogNormal(events)?.median).toBeCloseTo(1.3875, 4);
    expect(fitLogNormal(all.map(({ value }) => ({ value, event: true })))?.median).toBeCloseTo(1.6825, 4);
  });
  it('uncensored: mean and population spread of the logarithms (data of a shifted Wald sample, shift .2)', () => {
    const fit = fitLogNormal(at([0.55, 0.62, 0.7, 0.74, 0.81, 0.95, 1.1, 1.42].map((t) => t - 0.2), true))!;
    expect(fit.mu).toBeCloseTo(-0.48939301, 8);
    expect(fit.sigma).toBeCloseTo(0.38348897, 8);
    expect(fit.logLik).toBeCloseTo(0.23119122, 8);
  });
  it('nothing to fit: one event, two equal ones, none', () => {
    for (const few of [at([1], true), at([1, 1], true), at([1, 2], false), []]) expect(fitLogNormal(few)).toBeNull();
  });
});

describe('a ramp', () => {
  it.each([[0.1, 5.35, 0.535], [0.4, 1.6, 0.64], [1.6, 0.6625, 1.06]])('threshold .5, time .35 at %d: let go after %d s, at %d', (rate, seconds, split) => {
    expect(medianSplit({ thetaDeg: 0.5, t0S: 0.35 }, rate)).toBeCloseTo(split, 12);
    expect(medianSplit({ thetaDeg: 0.5, t0S: 0.35 }, rate) / rate).toBeCloseTo(seconds, 12);
  });
  it('fastest rate caught: without spread (limit - threshold) / time, 3.333 for 1, .6, 3; none where nine in ten never are, or always', () => {
    expect(v90({ thetaDeg: 1, t0S: 0.6, sigma: 1e-12 }, 3)).toBeCloseTo(3.333, 3);
    expect(v90({ thetaDeg: 1, t0S: 0.6, sigma: 0.35 }, 3)).toBeCloseTo(1.526122, 6); // mpmath
    expect(v90({ thetaDeg: 2.5, t0S: 0.6, sigma: 0.35 }, 3)).toBeNull();
    expect(v90({ thetaDeg: 1, t0S: 0, sigma: 0.35 }, 3)).toBeNull();
  });
});

describe('small ones', () => {
  it.each([[0.9, 0.02, 6, 0.1130796, 0.8872503], [0.8, 0.05, 6, 0.2591818, 0.7300282], [0.95, 0.005, 6, 0.0295545, 0.9484773]])(
    'caught %d with %d false ones a second in %d s', (rate, falses, window, guess, corrected) => {
      expect(guessCorrected(rate, falses, window)).toEqual({ guess: expect.closeTo(guess, 7), corrected: expect.closeTo(corrected, 7) });
    });
  it('Brier: .8 is .04 or .64', () => {
    expect(brier(0.8, true)).toBeCloseTo(0.04, 14);
    expect(brier(0.8, false)).toBeCloseTo(0.64, 14);
  });
  it.each([[1.2, 0.8], [2, 8.8], [0.5, 6.8]])('interval score of .8 to 1.6 at 90 %% for %d: %d', (x, score) => expect(intervalScore(0.8, 1.6, x, 0.9)).toBeCloseTo(score, 12));
  it.each([[8, 1, 8], [10, 2, 9], [12, 3, 10], [15, 4, 12], [20, 6, 15], [30, 10, 21], [40, 14, 27]])('median of %d between ranks %d and %d', (n, lo, hi) => expect(medianRanks(n)).toEqual({ lo, hi }));
  it('five values never reach 95 %', () => { expect(medianRanks(5)).toBeNull(); expect(medianRanks(6)).toEqual({ lo: 1, hi: 6 }); });
  it('20 against 20 shows .73; .8 takes 39 a block, .7 takes 16 (80 % power, spread .35)', () => {
    expect(ratioShown(20, 0.35)).toBeCloseTo(0.73, 2);
    expect(runsForRatio(0.8, 0.35)).toBe(39);
    expect(runsForRatio(0.7, 0.35)).toBe(16);
    expect(runsForRatio(ratioShown(20, 0.35), 0.35)).toBe(20);
  });
});
