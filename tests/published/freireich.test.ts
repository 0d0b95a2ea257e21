/**
 * Remission times of the 6-MP trial: Freireich et al. 1963, Blood 21:699, as printed in Introductory Biostatistics, ex. 11.1, and on
 * Borgan's data page. S, standard errors and means: published in the README of a general survival package (SurvivalFast); the
 * log-rank figures in several repositories' output of R. Digits beyond those, fractions and limits: computed (mpmath).
 */
import { describe, expect, it } from 'vitest';
import { logRank } from '../../sim/stats/log-rank.js';
import { kaplanMeier, logLogLimits, medianLimits, medianOf, restrictedMean, standardError, survivalAt, type Observation } from '../../sim/stats/survival.js';

const events = (values: string): Observation[] => values.split(' ').map((value) => ({ value: Number(value), event: true }));
const censored = (values: string): Observation[] => values.split(' ').map((value) => ({ value: Number(value), event: false }));

const sixMp = [...events('6 6 6 7 10 13 16 22 23'), ...censored('6 9 10 11 17 19 20 25 32 32 34 35')];
const placebo = events('1 1 2 2 3 4 4 5 5 8 8 8 8 11 11 12 12 15 17 22 23');

describe('6-MP', () => {
  const steps = kaplanMeier(sixMp);
  it.each([
    [6, 21, 3, 6 / 7, 0.857143, 0.07636, [0.6197, 0.9516], [0.7198, 1], [0.7075, 1.0068], 0.0058309],
    [7, 17, 1, 96 / 119, 0.806723, 0.086935, [0.5631, 0.9228], [0.6531, 0.9964], [0.6363, 0.9771], 0.0075577],
    [10, 15, 1, 64 / 85, 0.752941, 0.09635, [0.5032, 0.8894], [0.5859, 0.9676], [0.5641, 0.9418], 0.0092833],
    [13, 12, 1, 176 / 255, 0.690196, 0.106815, [0.4316, 0.8491], [0.5096, 0.9348], [0.4808, 0.8995], 0.0114094],
    [16, 11, 1, 32 / 51, 0.627451, 0.114054, [0.3675, 0.8049], [0.4394, 0.896], [0.4039, 0.851], 0.0130083],
    [22, 7, 1, 64 / 119, 0.537815, 0.128234, [0.2678, 0.7468], [0.337, 0.8582], [0.2865, 0.7891], 0.0164439],
    [23, 6, 1, 160 / 357, 0.448179, 0.134591, [0.1881, 0.6801], [0.2488, 0.8074], [0.1844, 0.712], 0.0181149],
  ] as const)('week %d', (t, n, d, fraction, s, se, logLog, log, plain, variance) => {
    const step = steps.find(({ value }) => value === t)!;
    expect([step.atRisk, step.events]).toEqual([n, d]);
    expect(step.s).toBeCloseTo(fraction, 14);
    expect(step.s).toBeCloseTo(s, 6);
    expect(standardError(step)).toBeCloseTo(se, 6);
    expect(standardError(step) ** 2).toBeCloseTo(variance, 7);
    const limits = logLogLimits(step)!;
    expect(limits.lo).toBeCloseTo(logLog[0], 4);
    expect(limits.hi).toBeCloseTo(logLog[1], 4);
    // The other two bands follow from the same sum.
    const w = 1.959963984540054 * Math.sqrt(step.greenwood);
    expect(step.s * Math.exp(-w)).toBeCloseTo(log[0], 4);
    expect(Math.min(1, step.s * Math.exp(w))).toBeCloseTo(log[1], 4);
    expect(step.s * (1 - w)).toBeCloseTo(plain[0], 4);
    expect(step.s * (1 + w)).toBeCloseTo(plain[1], 4);
  });
  it('has no other steps', () => expect(steps).toHaveLength(7));
  it('median 23, from 13 to not reached', () => {
    expect(medianOf(steps)).toBe(23);
    expect(medianLimits(steps)).toEqual({ lo: 13, hi: null });
  });
  it('mean to the last event 17.9093 (published), 17.909244', () => expect(restrictedMean(steps, 23).mean).toBeCloseTo(17.909244, 6));
  it('a listing with 25 for the last 35 has the same table, another total: 359 weeks are right', () => {
    expect(kaplanMeier([...sixMp.slice(0, -1), { value: 25, event: false }])).toEqual(steps);
    expect(sixMp.reduce((sum, { value }) => sum + value, 0)).toBe(359);
    expect(9 / 359).toBeCloseTo(0.0250696, 7); // the exponential rate, published as .0251
    expect(21 / placebo.reduce((sum, { value }) => sum + value, 0)).toBeCloseTo(0.1153846, 7); // .1154
  });
});

describe('placebo', () => {
  const steps = kaplanMeier(placebo);
  it('curve', () => {
    expect(steps.map(({ value }) => value)).toEqual([1, 2, 3, 4, 5, 8, 11, 12, 15, 17, 22, 23]);
    const want = [19 / 21, 17 / 21, 16 / 21, 2 / 3, 4 / 7, 8 / 21, 2 / 7, 4 / 21, 1 / 7, 2 / 21, 1 / 21, 0];
    steps.forEach(({ s }, at) => expect(s).toBeCloseTo(want[at]!, 14));
    expect(survivalAt(steps, 7.99)).toBeCloseTo(4 / 7, 14);
    expect(survivalAt(steps, 0.5)).toBe(1);
  });
  it('median 8, from 4 to 11; mean 8.6667', () => {
    expect(medianOf(steps)).toBe(8);
    expect(medianLimits(steps)).toEqual({ lo: 4, hi: 11 });
    expect(restrictedMean(steps, 23).mean).toBeCloseTo(8.666667, 6);
  });
  it('standard error of an uncensored mean is the sample one with n below the root', () => {
    const mean = 182 / 21;
    const variance = placebo.reduce((sum, { value }) => sum + (value - mean) ** 2, 0) / 21;
    expect(restrictedMean(steps, 23).se).toBeCloseTo(Math.sqrt(variance / 21), 10);
  });
});

describe('log-rank', () => {
  it('19.3 and 10.7 expected, chi-square 16.8, p 4.17e-5 (published); 16.792941, 4.168809e-5', () => {
    const found = logRank([{ first: sixMp, second: placebo }]);
    expect(found.observed).toEqual([9, 21]);
    expect(found.expected[0]).toBeCloseTo(19.250501, 6);
    expect(found.expected[1]).toBeCloseTo(10.749499, 6);
    expect((9 - found.expected[0]) ** 2 / found.expected[0]).toBeCloseTo(5.46, 2);
    expect((21 - found.expected[1]) ** 2 / found.expected[1]).toBeCloseTo(9.77, 2);
    expect(found.variance).toBeCloseTo(6.25696057, 8);
    expect(found.chiSquare).toBeCloseTo(16.792941, 6);
    expect(found.p! * 1e5).toBeCloseTo(4.168809, 6);
  });
  it.each([
    [1, 1, 0.487805], [2, 1.05, 0.485962], [3, 0.552632, 0.24723], [4, 1.135135, 0.477234], [5, 1.2, 0.465882], [6, 1.909091, 0.650826],
    [7, 0.586207, 0.242568], [8, 2.285714, 0.870748], [10, 0.652174, 0.226843], [11, 1.238095, 0.448073], [12, 1.333333, 0.418301],
    [13, 0.75, 0.1875], [15, 0.733333, 0.195556], [16, 0.785714, 0.168367], [17, 0.769231, 0.177515], [22, 1.555556, 0.302469], [23, 1.714286, 0.204082],
  ])('week %d alone: expected %d, variance %d', (t, e1, v) => {
    // Everyone still there at this week, and nothing but its events.
    const at = (group: Observation[]): Observation[] => group.filter(({ value }) => value >= t).map(({ value, event }) => ({ value, event: event && value === t }));
    const found = logRank([{ first: at(sixMp), second: at(placebo) }]);
    expect(found.expected[0]).toBeCloseTo(e1, 6);
    expect(found.variance).toBeCloseTo(v, 6);
  });
  it('stratified: sums over strata; one stratum is the plain test', () => {
    const half = (group: Observation[], odd: number): Observation[] => group.filter((_, at) => at % 2 === odd);
    const strata = [0, 1].map((odd) => ({ first: half(sixMp, odd), second: half(placebo, odd) }));
    const [a, b] = strata.map((one) => logRank([one])) as [ReturnType<typeof logRank>, ReturnType<typeof logRank>];
    const both = logRank(strata);
    expect(both.chiSquare).toBeCloseTo((a.observed[0] + b.observed[0] - a.expected[0] - b.expected[0]) ** 2 / (a.variance + b.variance), 12);
  });
});
