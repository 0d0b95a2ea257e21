// `measure` as it is typed, on the golden run and on tables that are none.
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, describe, expect, test } from 'vitest';
import { dice } from '../../sim/dice.js';
import { measureOutput, troubleOutput } from '../../sim/files/index.js';
import type { Trial } from '../../sim/index.js';
import { flySet, PLANS, WATCHERS } from '../study/watcher.js';
import { json, type } from './typed.js';

const golden = fileURLToPath(new URL('../golden/recognition.csv', import.meta.url));
const folder = mkdtempSync(join(tmpdir(), 'evenhand-measure-'));
afterAll(() => rmSync(folder, { recursive: true }));
const HEAD = 'id,rate_deg_per_s,onset_s,release_s,end_s,limit_deg';
const file = (name: string, text: string): string => { writeFileSync(join(folder, name), text); return join(folder, name); };
const rows = (trials: readonly Trial[]): string => [HEAD, ...trials.map((one, at) => [at + 1, one.onsetS === null ? null : one.rateDegPerS, one.onsetS, one.releaseS, one.endS, one.limitDeg].map((cell) => cell ?? '').join(','))].join('\n');

const throwDice = dice(5, 'measure-test');
const sets = [1, 2].flatMap(() => flySet(WATCHERS.loaded!, PLANS[0]!, throwDice));

describe('the golden run', () => {
  test('as JSON: the keys a reader counts on, to the digits that were computed', async () => {
    const { code, value } = await json(measureOutput, 'measure', golden, '--false-points', '100');
    expect(code).toBe(0);
    expect(value.caught).toEqual({ k: 12, n: 13, lo: expect.closeTo(0.6668605, 7), hi: expect.closeTo(0.9862896, 7) });
    expect(value.falseReleases).toMatchObject({ count: 3, perMin: expect.closeTo(0.3001601, 7), lo: expect.closeTo(0.0619002, 7), hi: expect.closeTo(0.8771951, 7) });
    expect(value.survival.map(({ splitDeg, atRisk, s }) => [Number(splitDeg.toFixed(9)), atRisk, Number(s.toFixed(6))])).toEqual([
      [0.9, 14, 0.928571], [1.1, 13, 0.857143], [1.15, 12, 0.785714], [1.3, 11, 0.714286], [1.4, 10, 0.642857], [1.5, 9, 0.571429], [1.6, 8, 0.5],
      [1.7, 7, 0.428571], [1.9, 6, 0.357143], [2, 5, 0.285714], [2.2, 3, 0.190476], [2.8, 2, 0.095238], [3.6, 1, 0]]);
    expect(value.medianSplitDeg).toBeCloseTo(1.6, 9);
    expect(value.medianMidpointDeg).toBeCloseTo(1.65, 9);
    expect(value.model).toEqual({
      thetaDeg: expect.closeTo(1.20122275, 7), t0S: expect.closeTo(0.60006351, 7), sigma: expect.closeTo(0.30369127, 7),
      v90DegPerS: expect.closeTo(1.38582257, 7), logLik: expect.closeTo(-10.70355026, 7),
    });
    expect(value.meanPoints).toBeCloseTo(14.9166667, 6);
  });
  test('mean points: 22.42 with 50, 75 unless said', async () => {
    expect((await json(measureOutput, 'measure', golden, '--false-points', '50')).value.meanPoints).toBeCloseTo(22.4166667, 6);
    const { value } = await json(measureOutput, 'measure', golden);
    expect([value.falsePoints, value.seenDeg]).toEqual([75, 0]);
    expect(value.meanPoints).toBeCloseTo((14.9166667 + 22.4166667) / 2, 6);
  });
  test('thirteen decided: no posterior of a person yet, and it says what is missing', async () => {
    const { value } = await json(measureOutput, 'measure', golden);
    expect(value.posterior).toBeNull();
    expect(value.dPrime).toBeNull();
    expect(value.person).toEqual({ decided: 13, may: ['counts'], needed: { runsForCounts: 0, runsForFit: 7, ratesForThreshold: 0 } });
    const { out } = await type('measure', golden);
    expect(out).toContain('A fit needs 20 decided trials: 7 more.');
    expect(out).not.toMatch(/theta|1\.20|0\.60 |eye needs/);
  });
  test('in words', async () => {
    const { code, out, err } = await type('measure', golden);
    expect([code, err]).toEqual([0, '']);
    expect(out.replace(/ +/g, ' ')).toBe([
      '20 trials: 12 caught, 1 late, 1 undecided, 3 quiet and held, 3 false releases. Limit 3 deg.', '',
      'let go before the limit 12 of 13 67 % to 99 % of all such runs',
      'false releases 0.30 a minute 0.06 to 0.88; 3 in 10.0 minutes of quiet holding',
      'half let go below 1.60 deg 1.15 to 2.20 deg', '',
      'Splits at release, deg (+: still held when the run ended there):',
      ' 0.250 deg/s 0.90 1.15 1.50 2.00+', ' 0.500 deg/s 1.10 1.30 1.70', ' 1.00 deg/s 1.40 1.60 2.00 3.60', ' 2.00 deg/s 1.90 2.20 2.80', '',
      'A run ended undecided, so the rates are not put together in one curve.', '',
      'A fit needs 20 decided trials: 7 more.', '',
      'Mean points 18.7 with 75 taken for a false release: to spur, not to measure.',
      '"At least nine in ten" would take 29 of 29, or 45 of 46.',
      'A split was expected here; one that is not takes longer to see. No pass mark has been set by experience.', '',
    ].join('\n'));
  });
});

describe('two sets of a known watcher (threshold 1 deg, time 5 s, spread .4)', () => {
  const two = file('two.csv', rows(sets));
  test('the posterior stands, with its priors', async () => {
    const { value } = await json(measureOutput, 'measure', two, '--seen-deg', '0.1');
    expect(value.person.may).toEqual(['counts', 'fit', 'threshold']);
    const { posterior } = value;
    expect(posterior?.atRates.map(({ rateDegPerS }) => rateDegPerS)).toEqual([0.075, 0.155, 0.3, 0.6]);
    // One pair of sets: near the truth, no more can be asked of it. How often the intervals hold it: tests/study.
    for (const [found, truth] of [[posterior?.thetaDeg, 1], [posterior?.t0S, 5], [posterior?.sigma, 0.4]] as const) {
      expect(Math.abs(Math.log((found?.median ?? 0) / truth))).toBeLessThan(Math.LN2);
      expect(found!.lo < found!.median && found!.median < found!.hi).toBe(true);
    }
    expect(posterior?.prior.lapse).toBe(0.02);
  });
  test('in words: every figure with its interval, nothing longer than a screen', async () => {
    const { out } = await type('measure', two, '--seen-deg', '0.1');
    expect(out.split('\n').length).toBeLessThan(45);
    expect(out).toMatch(/0\.0750 deg\/s +\d\.\d\d {2}\(\d\.\d\d to \d\.\d\d\)/);
    expect(out).toMatch(/Split that the eye needs \d\.\d\d {2}\(/);
    expect(out).toContain('Believed beforehand: threshold 1.0 deg');
    expect(out).toMatch(/Not yet let go, all rates \(9 of \d+ steps; --json has all\)/);
  });
  test('two rates: the fit, but threshold and time are not told apart', async () => {
    const few = file('few.csv', rows(sets.filter(({ rateDegPerS }) => (rateDegPerS ?? 0) < 0.2).concat(sets.filter(({ rateDegPerS }) => (rateDegPerS ?? 0) < 0.2))));
    const { value } = await json(measureOutput, 'measure', few, '--seen-deg', '0.1');
    expect([value.posterior?.thetaDeg, value.posterior?.t0S]).toEqual([null, null]);
    expect((await type('measure', few)).out).toContain('from four rates only: 2 more.');
  });
  test('few trials: nothing about a person', async () => {
    const { out } = await type('measure', file('six.csv', rows(sets.slice(0, 6))));
    expect(out).toContain('too few to say anything about a person');
    expect(out).not.toMatch(/half let go|%/);
    const { value } = await json(measureOutput, 'measure', file('quiet.csv', `${HEAD}\n1,,,,60,3`));
    expect(value).toMatchObject({ caught: { k: 0, n: 0, lo: 0, hi: 1 }, survival: [], medianSplitDeg: null, model: null, posterior: null, meanPoints: 50 });
  });
  test('forty rates: no wall of lines', async () => {
    const wide = Array.from({ length: 60 }, (_, n): Trial => ({ rateDegPerS: 0.05 * 1.12 ** (n % 40), onsetS: 5, releaseS: 5 + (1 + 0.01 * n) / (0.05 * 1.12 ** (n % 40)), endS: 76, limitDeg: 2.5 }));
    const { out } = await type('measure', file('wide.csv', rows(wide)));
    expect(out.split('\n').length).toBeLessThan(50);
    expect(out).toContain('(8 of 40 rates; --json has all)');
  });
  test('beyond 100 trials with an onset d-prime is told', async () => {
    const many = file('many.csv', rows([...sets, ...sets, ...sets]));
    const { value } = await json(measureOutput, 'measure', many, '--seen-deg', '0.1');
    expect(value.dPrime?.d).toBeGreaterThan(1);
    expect((await type('measure', many)).out).toContain('d-prime');
  });
});

describe('tables and options that are none: 2, nothing on standard output', () => {
  test('every problem at once, with its place', async () => {
    const wrong = file('wrong.csv', `${HEAD}\n1,fast,12,16,60,3\n1,1,61,,60,2.5`);
    const { code, out, err } = await type('measure', wrong);
    expect([code, out]).toEqual([2, '']);
    expect(err).toContain('wrong.csv has 2 problems; nothing of it is used.');
    expect(err).toMatch(/wrong\.csv:2:3 +rate_deg_per_s +found "fast"; allowed: a number from 0\.0001 to 100 deg\/s/);
    expect((await json(troubleOutput, 'measure', wrong)).value.problems).toHaveLength(2);
  });
  test.each<[string[], string]>([
    [['measure'], "missing required argument 'trials.csv'"], [['measure', golden, '--seen-deg', '-1'], 'a number from 0 to 2 deg'], [['measure', golden, '--false-points', 'x'], 'a number from 0 to 1000'],
    [['measure', golden, '--seen-deg', '2.1'], 'a number from 0 to 2 deg'], [['measure', join(folder, 'none.csv')], 'no such file'], [['measure', folder], 'a folder, not a file'], [['measure', golden, '--sen-deg', '1'], 'Did you mean --seen-deg?'],
  ])('%j', async (words, says) => {
    const { code, out, err } = await type(...words);
    expect([code, out]).toEqual([2, '']);
    expect(err).toContain(says);
  });
  test('--seen-deg makes the release at .90 of .25 deg/s no reaction from 1 on', async () => {
    const { value } = await json(measureOutput, 'measure', golden, '--seen-deg', '1');
    expect(value.outcomes.falseRelease).toBe(4);
    expect(value.caught.n).toBe(12);
  });
});
