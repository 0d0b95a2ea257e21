/**
 * The golden run of recognition: twenty made-up trials, every figure of the report computed beforehand with high-precision
 * arithmetic (mark: computed for this project). a = 0.15 s, limit 3 deg, nothing too small to be seen.
 */
import { describe, expect, it } from 'vitest';
import { chanceBefore, q90Split } from '../../sim/stats/ramp.js';
import { reportOf } from '../../sim/stats/report.js';
import { logLinear } from '../../sim/stats/sensitivity.js';
import { kaplanMeier, standardError } from '../../sim/stats/survival.js';
import { observationsOf } from '../../sim/stats/tally.js';
import { judgeTrial } from '../../sim/stats/trial.js';
import { goldenTrials } from './trials.js';

const judged = goldenTrials.map((trial) => judgeTrial(trial, 0));
const report = reportOf(goldenTrials, 0, 100);

/** To the digits given: within one unit of the last. */
const lastDigit = (got: number | null | undefined, want: number, unit: number): void => expect(Math.abs((got ?? NaN) - want)).toBeLessThan(1.001 * unit);

describe('the golden run', () => {
  it('judges every trial', () => {
    expect(judged.map(({ outcome, growthDeg }) => (growthDeg === null ? outcome : `${outcome} ${growthDeg.toFixed(2)}`))).toEqual([
      'caught 1.15', 'caught 0.90', 'caught 1.50', 'undecided 2.00', 'caught 1.30', 'caught 1.10', 'caught 1.70', 'falseRelease',
      'caught 1.40', 'caught 2.00', 'caught 1.60', 'late 3.60', 'caught 2.20', 'caught 1.90', 'caught 2.80', 'falseRelease',
      'held', 'falseRelease', 'held', 'held',
    ]);
  });
  it('counts: 12 of 13, three false releases in 599.68 s of quiet holding', () => {
    expect(report.outcomes).toEqual({ caught: 12, late: 1, missed: 0, falseRelease: 3, held: 3, undecided: 1, void: 0 });
    expect(report.caught).toMatchObject({ k: 12, n: 13 });
    expect(report.caught?.lo).toBeCloseTo(0.6668605, 7);
    expect(report.caught?.hi).toBeCloseTo(0.9862896, 7);
    expect(report.falseReleases?.count).toBe(3);
    expect(report.falseReleases?.quietS).toBeCloseTo(599.68, 9);
    expect(report.falseReleases?.perMin).toBeCloseTo(0.3001601, 7);
    expect(report.falseReleases?.lo).toBeCloseTo(0.0619002, 7);
    expect(report.falseReleases?.hi).toBeCloseTo(0.8771951, 7);
  });
  it('curve: the trial censored at 2.0 is still at risk at the event there', () => {
    expect(report.survival.map(({ splitDeg, atRisk, s }) => `${splitDeg.toFixed(2)}:${atRisk}:${s.toFixed(6)}`).join(' ')).toBe(
      '0.90:14:0.928571 1.10:13:0.857143 1.15:12:0.785714 1.30:11:0.714286 1.40:10:0.642857 1.50:9:0.571429 1.60:8:0.500000 '
      + '1.70:7:0.428571 1.90:6:0.357143 2.00:5:0.285714 2.20:3:0.190476 2.80:2:0.095238 3.60:1:0.000000');
    const at = kaplanMeier(observationsOf(judged))[6]!;
    expect(standardError(at)).toBeCloseTo(0.133631, 6);
    expect(report.survival[6]?.lo).toBeCloseTo(0.2286, 4);
    expect(report.survival[6]?.hi).toBeCloseTo(0.7221, 4);
    expect(report.everyRunDecided).toBe(false);
  });
  it('median by both rules', () => {
    expect(report.median.deg).toBeCloseTo(1.6, 9);
    expect(report.median.midpointDeg).toBeCloseTo(1.65, 9);
  });
  it('restricted mean and the points it stands for', () => {
    expect(report.restrictedMean?.mean).toBeCloseTo(1.8011905, 7);
    expect(100 * (1 - report.restrictedMean!.mean / 3)).toBeCloseTo(39.960317, 6);
  });
  it.each([[100, 14.9166667], [50, 22.4166667]])('mean points with %d for a false release: %d', (falsePoints, mean) => {
    expect(reportOf(goldenTrials, 0, falsePoints).meanPoints).toBeCloseTo(mean, 7);
  });
  it('pseudo-trial d-prime (12 of 13 against 3 of 99 windows of 6 s), and the guess that luck is worth', () => {
    const seen = logLinear(12, 3, 13, 99);
    expect([seen.hitRate, seen.falseRate]).toEqual([expect.closeTo(0.8928571, 7), expect.closeTo(0.035, 12)]);
    expect(seen.d).toBeCloseTo(3.0537775, 7);
    expect(seen.criterion).toBeCloseTo(0.2850219, 7);
    expect(Math.floor(report.falseReleases!.quietS / report.guess!.windowS)).toBe(99);
    expect(report.sensitivity).toBeNull(); // sixteen runs with an onset are too few to show it
    expect(report.guess?.windowS).toBe(6);
    expect(report.falseReleases!.count / report.falseReleases!.quietS).toBeCloseTo(0.0050026681, 10);
    expect(report.guess?.guess).toBeCloseTo(0.0295700, 7);
    expect(report.guess?.corrected).toBeCloseTo(0.9207330, 7);
  });
  it.each<[string, number | undefined, number, number]>([
    ['mu', report.logNormal?.mu, 0.53667118, 1e-8], ['sigma', report.logNormal?.sigma, 0.37838558, 1e-8],
    ['median', report.logNormal?.median, 1.71030409, 1e-8], ['q90', report.logNormal?.q90, 2.77761269, 2e-8], // 2.77761271 with 30 digits
    ['ln L', report.logNormal?.logLik, -13.2378956, 1e-7],
  ])('censored log-normal on the split: %s', (_, got, want, unit) => lastDigit(got, want, unit));
  it.each<[string, number | null | undefined, number, number]>([
    ['theta', report.model?.thetaDeg, 1.20122275, 1e-8], ['t0', report.model?.t0S, 0.60006351, 1e-8], ['sigma', report.model?.sigma, 0.30369127, 1e-8],
    ['ln L', report.model?.logLik, -10.70355026, 1e-8], ['v90', report.model?.v90DegPerS, 1.38582257, 2e-8], // 1.38582258 with 30 digits
    ['q90 at .25', report.model && q90Split(report.model, 0.25), 1.99414960, 1e-8],
    ['chance at 1', report.model && chanceBefore(report.model, 1, 3), 0.9534925, 1e-7],
    ['chance at 2', report.model && chanceBefore(report.model, 2, 3), 0.7681963, 1e-7],
  ])('model of threshold, time, spread: %s', (_, got, want, unit) => lastDigit(got, want, unit));
  it('the same summits with 30 digits (mpmath), which the figures above were cut from', () => {
    expect(report.logNormal?.mu).toBeCloseTo(0.536671185423502, 9);
    expect(report.logNormal?.sigma).toBeCloseTo(0.378385582385862, 9);
    expect(report.model?.thetaDeg).toBeCloseTo(1.201222756644731, 8);
    expect(report.model?.t0S).toBeCloseTo(0.600063502973747, 8);
    expect(report.model?.sigma).toBeCloseTo(0.303691264322331, 9);
    expect(report.model?.logLik).toBeCloseTo(-10.703550258115513, 11);
    expect(report.model?.v90DegPerS).toBeCloseTo(1.385822583122910, 8);
  });
  it('nowhere shows the mean of the seen splits: it leaves out the censored one', () => {
    const seen = judged.filter(({ outcome }) => outcome === 'caught' || outcome === 'late').map(({ growthDeg }) => growthDeg!);
    expect(seen.reduce((a, b) => a + b) / seen.length).toBeCloseTo(1.7807692, 7);
    expect(JSON.stringify(report)).not.toContain('1.7807');
  });
  it('thirteen decided runs: the three numbers may be shown, the fit of a person not yet', () => {
    const { person } = report;
    expect(person.decided).toBe(13);
    expect(person.caught).toEqual(report.caught);
    expect(person.falseReleases).toEqual(report.falseReleases);
    expect(person.median).toMatchObject({ limitsBy: 'logLog' }); // one run ended undecided
    expect(person.fit).toBeNull();
    expect(person.needed).toEqual({ runsForCounts: 0, runsForFit: 7, ratesForThreshold: 0 });
  });
});
