/** What must hold whatever the figures are. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { logRank } from '../../sim/stats/log-rank.js';
import { fitLogNormal } from '../../sim/stats/log-normal.js';
import { meanPoints, pointsOf, POINT_RULE } from '../../sim/stats/points.js';
import { shareOf } from '../../sim/sweep/share.js';
import { clopperPearson } from '../../sim/stats/proportion.js';
import { raceGrid } from '../../sim/stats/race-grid.js';
import { garwood } from '../../sim/stats/rate.js';
import { sensitivity } from '../../sim/stats/sensitivity.js';
import { kaplanMeier, logLogLimits, medianOf, restrictedMean, type Observation } from '../../sim/stats/survival.js';
import { caughtOf, observationsOf, raceRunsOf, rateGroups } from '../../sim/stats/tally.js';
import { judgeTrial, type Trial } from '../../sim/stats/trial.js';
import { anywhere } from '../draw.js';

const share = anywhere(0.001, 0.999);
const observation = fc.record({ value: fc.integer({ min: 1, max: 60 }).map((n) => n / 10), event: fc.boolean() });
const observations = fc.array(observation, { minLength: 1, maxLength: 40 });
const hundredths = (min: number, max: number) => fc.integer({ min: min * 100, max: max * 100 }).map((n) => n / 100);
const trial: fc.Arbitrary<Trial> = fc.record({
  rateDegPerS: fc.constantFrom(0.075, 0.155, 0.3, 0.6), onsetS: fc.option(hundredths(3, 39)), releaseS: fc.option(hundredths(1, 76)), endS: fc.constant(76), limitDeg: fc.constant(2.5),
});
const trials = fc.array(trial, { minLength: 1, maxLength: 30 });
const judged = (all: readonly Trial[]) => all.map((one) => judgeTrial(one, 0.1));

describe('signal detection', () => {
  it('changes sign when hits and false ones change places; the criterion does not', () => {
    fc.assert(fc.property(share, share, (h, f) => {
      expect(sensitivity(h, f).d).toBeCloseTo(-sensitivity(f, h).d, 10);
      expect(sensitivity(h, f).criterion).toBeCloseTo(sensitivity(f, h).criterion, 10);
      const turned = sensitivity(1 - f, 1 - h);
      expect(turned.d).toBeCloseTo(sensitivity(h, f).d, 9);
      expect(turned.criterion).toBeCloseTo(-sensitivity(h, f).criterion, 9);
    }));
  });
});

describe('curves', () => {
  it('without censoring the curve is one less the empirical distribution', () => {
    fc.assert(fc.property(observations, (all) => {
      const events = all.map(({ value }) => ({ value, event: true }));
      for (const { value, s } of kaplanMeier(events)) expect(s).toBeCloseTo(events.filter((one) => one.value > value).length / events.length, 12);
    }));
  });
  it('never rises, stays within 0 and 1, and so do its limits around it', () => {
    fc.assert(fc.property(observations, (all) => {
      let before = 1;
      for (const step of kaplanMeier(all)) {
        expect(step.s).toBeLessThan(before);
        expect(step.s).toBeGreaterThanOrEqual(0);
        const limits = logLogLimits(step);
        if (limits !== null) expect([limits.lo >= 0 && limits.lo <= step.s, limits.hi <= 1 && limits.hi >= step.s]).toEqual([true, true]);
        before = step.s;
      }
    }));
  });
  it('a restricted mean lies within 0 and its limit; uncensored it is the mean of the cut values', () => {
    fc.assert(fc.property(observations, anywhere(0.5, 8), (all, limit) => {
      const { mean, se } = restrictedMean(kaplanMeier(all), limit);
      expect(mean >= 0 && mean <= limit + 1e-12 && se >= 0).toBe(true);
      const cut = all.reduce((sum, { value }) => sum + Math.min(value, limit), 0) / all.length;
      expect(restrictedMean(kaplanMeier(all.map(({ value }) => ({ value, event: true }))), limit).mean).toBeCloseTo(cut, 10);
    }));
  });
  it('log-rank: the same when the groups change places, 0 for a group and itself', () => {
    fc.assert(fc.property(observations, observations, (first, second) => {
      const [there, back] = [logRank([{ first, second }]), logRank([{ first: second, second: first }])];
      if (there.chiSquare !== null) expect(back.chiSquare).toBeCloseTo(there.chiSquare, 8);
      expect(logRank([{ first, second: first }]).chiSquare ?? 0).toBeCloseTo(0, 10);
    }));
  });
  it('splits and limit k times as large: medians k times as large, k of n and log-rank as before', () => {
    fc.assert(fc.property(trials, observations, fc.constantFrom(0.5, 2, 4), (all, others, k) => {
      const one = judged(all);
      const scaled = one.map((trial) => ({ ...trial, limitDeg: trial.limitDeg * k, growthDeg: trial.growthDeg === null ? null : trial.growthDeg * k }));
      const grow = (list: readonly Observation[]) => list.map(({ value, event }) => ({ value: value * k, event }));
      expect(caughtOf(scaled)).toEqual(caughtOf(one));
      const [before, after] = [medianOf(kaplanMeier(observationsOf(one))), medianOf(kaplanMeier(observationsOf(scaled)))];
      expect(after).toBe(before === null ? null : before * k);
      const [fit, fitScaled] = [fitLogNormal(observationsOf(one)), fitLogNormal(observationsOf(scaled))];
      if (fit !== null && fitScaled !== null && fit.sigma > 1e-3) expect(fitScaled.median / fit.median / k).toBeCloseTo(1, 6);
      const first = observationsOf(one);
      if (first.length > 0) expect(logRank([{ first: grow(first), second: grow(others) }]).chiSquare ?? 0).toBeCloseTo(logRank([{ first, second: others }]).chiSquare ?? 0, 9);
    }));
  });
});

describe('flown rates', () => {
  it('every trial with growth stands in one of them, and its rate is no more than a tenth from it', () => {
    fc.assert(fc.property(fc.array(anywhere(0.05, 1), { minLength: 1, maxLength: 60 }), (rates) => {
      const all = judged(rates.map((rateDegPerS): Trial => ({ rateDegPerS, onsetS: 5, releaseS: 5 + 1 / rateDegPerS, endS: 76, limitDeg: 2.5 })));
      const groups = rateGroups(all);
      expect(groups.flatMap((group) => group.trials).length).toBe(rates.length);
      for (const { rateDegPerS, trials: flown } of groups) for (const one of flown) expect(Math.abs(Math.log(one.rateDegPerS! / rateDegPerS))).toBeLessThan(Math.log(1.1) + 1e-9);
      groups.reduce((before, { rateDegPerS }) => { expect(rateDegPerS).toBeGreaterThan(before); return rateDegPerS; }, 0);
    }));
  });
});

describe('intervals', () => {
  const counts = fc.integer({ min: 1, max: 300 }).chain((n) => fc.tuple(fc.integer({ min: 0, max: n }), fc.constant(n)));
  it('Wilson and the exact one lie within 0 and 1 and hold k / n', () => {
    fc.assert(fc.property(counts, ([k, n]) => {
      for (const { lo, hi } of [shareOf(k, n), clopperPearson(k, n)]) expect(lo >= 0 && hi <= 1 && lo <= k / n + 1e-15 && hi >= k / n - 1e-15).toBe(true);
    }));
  });
  it('Garwood holds the rate', () => {
    fc.assert(fc.property(fc.integer({ min: 0, max: 500 }), anywhere(0.01, 1e4), (x, time) => {
      const { lo, hi } = garwood(x, time);
      expect(lo <= x / time && hi > x / time && lo >= 0).toBe(true);
    }));
  });
  it.each([() => clopperPearson(3, 0), () => clopperPearson(5, 4), () => clopperPearson(-1, 4), () => garwood(-1, 1), () => garwood(1, 0), () => garwood(1.5, 1), () => kaplanMeier([{ value: NaN, event: true }])])(
    'counts that are none are refused %#', (wrong) => expect(wrong).toThrow(RangeError));
});

describe('posterior', () => {
  it('adds up to 1, and knows more than nothing', () => {
    fc.assert(fc.property(trials, anywhere(0.0005, 0.02), (all, falsePerS) => {
      const { mass } = raceGrid(raceRunsOf(judged(all), 0.1), falsePerS);
      expect(mass.reduce((a, b) => a + b, 0)).toBeCloseTo(1, 10);
      const entropy = mass.reduce((sum, p) => (p > 0 ? sum - p * Math.log(p) : sum), 0);
      expect(entropy).toBeGreaterThanOrEqual(0);
      expect(entropy).toBeLessThan(Math.log(mass.length));
    }), { numRuns: 12 });
  });
});

describe('points', () => {
  it('a run held rightly never lowers the total', () => {
    fc.assert(fc.property(trials, (all) => {
      const total = (list: readonly Trial[]) => judged(list).reduce((sum, one) => sum + pointsOf(one, POINT_RULE), 0);
      expect(total([...all, { rateDegPerS: null, onsetS: null, releaseS: null, endS: 76, limitDeg: 2.5 }])).toBeGreaterThan(total(all));
    }));
  });
  it('letting go later behind onset never raises them', () => {
    fc.assert(fc.property(hundredths(3, 39), hundredths(2, 30), hundredths(0, 5), fc.constantFrom(0.075, 0.155, 0.6), (onsetS, after, later, rateDegPerS) => {
      const at = (releaseS: number) => pointsOf(judgeTrial({ rateDegPerS, onsetS, releaseS, endS: 76, limitDeg: 2.5 }, 0.1), POINT_RULE);
      expect(at(onsetS + after + later)).toBeLessThanOrEqual(at(onsetS + after) + 1e-9);
    }));
  });
  it('who lets go at a fixed moment without looking loses, for a flat hazard with lambda W <= .25 and false releases at 25 or more', () => {
    fc.assert(fc.property(anywhere(0, 1), anywhere(0, 1), anywhere(25, 200), anywhere(0.25, 3), (a, b, falseRelease, rate) => {
      const windowS = 2.5 / rate;
      const hazard = (0.02 + 0.23 * a) / windowS;
      const releaseS = windowS * (1 + 4 * b);
      // Onsets at the middles of equal shares of their distribution, up to where none matters.
      const all = Array.from({ length: 1500 }, (_, at): Trial => ({ rateDegPerS: rate, onsetS: -Math.log(1 - (at + 0.5) / 1500) / hazard, releaseS, endS: 1e5, limitDeg: 2.5 }));
      expect(meanPoints(all.map((one) => judgeTrial(one, 0)), { falseRelease, missed: 100, held: 50 })).toBeLessThan(0);
    }), { numRuns: 60 });
  });
});
