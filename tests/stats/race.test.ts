/** The race against an independent computation: the same posterior summed on 260 x 260 x 130 points in theta, t0, sigma (numpy, scipy). */
import { describe, expect, it } from 'vitest';
import { normalQuantile } from '../../sim/portable.js';
import { normalCdf } from '../../sim/stats/normal.js';
import { fitRamp, medianSplit } from '../../sim/stats/ramp.js';
import { race } from '../../sim/stats/race.js';
import { raceGrid } from '../../sim/stats/race-grid.js';
import { RACE_PRIOR, type RaceRun } from '../../sim/stats/race-likelihood.js';
import { estimateOf } from '../../sim/stats/spread.js';
import { falsePerSOf, raceRunsOf } from '../../sim/stats/tally.js';
import { judgeTrial } from '../../sim/stats/trial.js';
import { dice } from '../../sim/dice.js';
import { goldenTrials } from '../golden/trials.js';

/** Within a part of the value: the grids of both sides have steps. */
const near = (got: { median: number; lo: number; hi: number }, want: readonly [number, number, number], part = 0.01): void => {
  [got.median, got.lo, got.hi].forEach((value, at) => expect(Math.abs(value / (want[at] as number) - 1)).toBeLessThan(part));
};

describe('the golden run', () => {
  const judged = goldenTrials.map((trial) => judgeTrial(trial, 0));
  const found = race(raceRunsOf(judged, 0), { falsePerS: falsePerSOf(judged, 0), limitDeg: 3, ratesDegPerS: [0.25, 0.5, 1, 2] });
  it('three and a half false releases in 599.68 s', () => expect(falsePerSOf(judged, 0)).toBeCloseTo(3.5 / 599.68, 12));
  it('threshold, time, spread', () => {
    near(found.thetaDeg, [1.14715, 0.69522, 1.65021]);
    near(found.t0S, [0.65861, 0.1988, 1.29389]);
    near(found.sigma, [0.33843, 0.23032, 0.53324]);
  });
  it.each([
    [0, [1.31345, 0.96537, 1.73968], [2.02866, 1.47028, 3.0299], [0.99261, 0.89611, 0.99997]],
    [1, [1.48327, 1.19437, 1.85699], [2.2895, 1.78343, 3.29477], [0.98116, 0.86143, 0.99958]],
    [2, [1.81821, 1.4954, 2.25534], [2.80327, 2.23701, 4.04637], [0.9307, 0.74327, 0.99238]],
    [3, [2.47648, 1.82248, 3.44564], [3.80928, 2.79032, 6.02163], [0.71665, 0.35928, 0.93698]],
  ] as const)('at rate %d: median, q90, chance before the limit', (at, median, q90, chance) => {
    const here = found.atRates[at]!;
    near(here.medianDeg, median);
    near(here.q90Deg, q90);
    near(here.beforeLimit, chance);
  });
});

describe('limits of knowledge', () => {
  it('no runs: the prior comes back', () => {
    const { thetaDeg, t0S, sigma } = race([], { falsePerS: 0.003, limitDeg: 2.5, ratesDegPerS: [] });
    near(thetaDeg, [1, Math.exp(-0.7 * 1.96), Math.exp(0.7 * 1.96)], 0.02);
    near(t0S, [1.5, 1.5 * Math.exp(-1.2 * 1.96), 1.5 * Math.exp(1.2 * 1.96)], 0.02);
    near(sigma, [0.4, 0.4 * Math.exp(-0.5 * 1.96), 0.4 * Math.exp(0.5 * 1.96)], 0.02);
  });
  it('two thousand runs: maximum likelihood comes out, and the truth', () => {
    const throwDice = dice(7, 'many-runs');
    const runs = Array.from({ length: 2000 }, (_, at): RaceRun => {
      const rateDegPerS = [0.075, 0.155, 0.3, 0.6][at % 4]!;
      return { rateDegPerS, splitDeg: (0.9 + rateDegPerS * 2) * Math.exp(0.3 * throwDice.normal()), event: true, fromDeg: 0 };
    });
    const best = fitRamp(runs)!;
    const found = race(runs, { falsePerS: 1e-7, limitDeg: 2.5, ratesDegPerS: [0.155] });
    expect(Math.abs(found.thetaDeg.median / best.thetaDeg - 1)).toBeLessThan(0.003);
    expect(Math.abs(found.t0S.median / best.t0S - 1)).toBeLessThan(0.01);
    expect(Math.abs(found.atRates[0]!.medianDeg.median / medianSplit(best, 0.155) - 1)).toBeLessThan(0.002);
    expect(found.thetaDeg.lo < 0.9 && found.thetaDeg.hi > 0.9).toBe(true);
    expect(found.sigma.lo < 0.3 && found.sigma.hi > 0.3).toBe(true);
    expect(found.thetaDeg.hi / found.thetaDeg.lo).toBeLessThan(1.1);
  });
  it('a lucky release among many good ones hardly widens the spread: the race knows it for what it may be', () => {
    const good = Array.from({ length: 20 }, (_, at): RaceRun => ({ rateDegPerS: 0.155, splitDeg: Math.exp(0.35 * normalQuantile((at + 0.5) / 20)), event: true, fromDeg: 0.1 }));
    const lucky = { rateDegPerS: 0.155, splitDeg: 0.15, event: true, fromDeg: 0.1 };
    const widened = (falsePerS: number): number => {
      const ask = { falsePerS, limitDeg: 2.5, ratesDegPerS: [] };
      return race([...good, lucky], ask).sigma.median / race(good, ask).sigma.median;
    };
    expect(widened(0.004)).toBeLessThan(1.1);
    expect(widened(1e-12)).toBeGreaterThan(1.3);
  });
  it('what lies below the seen split is known to be missing: quantiles of a log-normal (median .12, spread .5) cut off below .1', () => {
    const below = normalCdf(Math.log(0.1 / 0.12) / 0.5);
    const cut = Array.from({ length: 200 }, (_, at) => 0.12 * Math.exp(0.5 * normalQuantile(below + (1 - below) * (at + 0.5) / 200)));
    const median = (fromDeg: number): number => race(cut.map((splitDeg): RaceRun => ({ rateDegPerS: 0.155, splitDeg, event: true, fromDeg })),
      { falsePerS: 1e-4, limitDeg: 2.5, ratesDegPerS: [0.155] }).atRates[0]!.medianDeg.median;
    expect(Math.abs(median(0.1) / 0.12 - 1)).toBeLessThan(0.12);
    expect(median(0)).toBeGreaterThan(0.12 * 1.2);
  });
  it('the grid is where the posterior is: next to nothing at its faces', () => {
    const { box: [m, r, k], mass } = raceGrid([{ rateDegPerS: 0.3, splitDeg: 1, event: true, fromDeg: 0.1 }], 0.003);
    let faces = 0;
    mass.forEach((one, at) => {
      const places = [Math.floor(at / (r.count * k.count)), Math.floor(at / k.count) % r.count, at % k.count];
      if (places.some((place, axis) => place === 0 || place === [m, r, k][axis]!.count - 1)) faces += one;
    });
    expect(faces).toBeLessThan(1e-3);
  });
  it('priors and lapse as the report prints them', () => {
    expect(RACE_PRIOR).toEqual({ lnTheta: { mean: 0, sd: 0.7 }, lnT0: { mean: expect.closeTo(Math.log(1.5), 14), sd: 1.2 }, lnSigma: { mean: expect.closeTo(Math.log(0.4), 14), sd: 0.5 }, lapse: 0.02 });
  });
});

describe('quantiles of spread masses', () => {
  it('a normal distribution in lumps', () => {
    const value = Float64Array.from({ length: 41 }, (_, at) => (at - 20) * 0.25);
    const { median, lo, hi } = estimateOf({ value, width: new Float64Array(41).fill(0.25), mass: value.map((z) => Math.exp(-z * z / 2)), count: 41 });
    expect(median).toBeCloseTo(0, 6);
    // Spreading adds width^2 / 12 to the variance.
    expect(normalCdf(hi / Math.sqrt(1 + 0.25 ** 2 / 12))).toBeCloseTo(0.975, 3);
    expect(lo).toBeCloseTo(-hi, 6);
  });
  it('one box: its own quantiles', () => {
    const one = (x: number) => Float64Array.of(x);
    expect(estimateOf({ value: one(3), width: one(2), mass: one(1), count: 1 })).toEqual({ median: expect.closeTo(3, 6), lo: expect.closeTo(2.05, 6), hi: expect.closeTo(3.95, 6) });
  });
});
