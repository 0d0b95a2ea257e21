/** Persons and their watching: the stated distributions, met within what so many draws can show. Bands are five standard errors. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { TRAINEE_NUMBERS, TRAINEES, watcherOf, watchOf } from '../../sim/index.js';

const N = 4000;
const seeds = Array.from({ length: N }, (_, seed) => seed);
const mean = (xs: readonly number[]): number => xs.reduce((sum, x) => sum + x, 0) / xs.length;
const sd = (xs: readonly number[]): number => Math.sqrt(mean(xs.map((x) => (x - mean(xs)) ** 2)));

describe('a person', () => {
  it.each(['steady', 'loaded'] as const)('%s: log-normal threshold and reaction about their medians', (name) => {
    const { thresholdDeg, thresholdLogSd, reactionS, reactionLogSd } = TRAINEE_NUMBERS[name];
    const people = seeds.map((seed) => watcherOf(TRAINEE_NUMBERS[name], seed));
    for (const [values, median, logSd] of [
      [people.map((one) => one.thresholdDeg), thresholdDeg, thresholdLogSd], [people.map((one) => one.reactionS), reactionS, reactionLogSd],
    ] as const) {
      const logs = values.map((value) => Math.log(value / median));
      expect(Math.abs(mean(logs))).toBeLessThan((5 * logSd) / Math.sqrt(N));
      expect(Math.abs(sd(logs) - logSd)).toBeLessThan((5 * logSd) / Math.sqrt(2 * N));
    }
  });
  it('a sure trainee is the same for every seed', () => {
    for (const name of ['prompt', 'slow', 'never', 'early'] as const) {
      for (const seed of [0, 1, 4294967295]) expect(watcherOf(TRAINEE_NUMBERS[name], seed)).toMatchObject({ thresholdDeg: 1, reactionS: TRAINEE_NUMBERS[name].reactionS });
    }
  });
});

describe('a run', () => {
  const person = watcherOf(TRAINEE_NUMBERS.loaded, 1);
  const watches = seeds.map((seed) => watchOf(person, seed));
  it('spreads threshold and reaction by one factor', () => {
    const logs = watches.map((watch) => Math.log(watch.thresholdDeg / person.thresholdDeg));
    expect(Math.abs(sd(logs) - person.spread)).toBeLessThan((5 * person.spread) / Math.sqrt(2 * N));
    for (const watch of watches.slice(0, 50)) {
      // Whole ticks: half of one at most is lost.
      expect(Math.abs(watch.reactionTicks / 100 - person.reactionS * (watch.thresholdDeg / person.thresholdDeg))).toBeLessThanOrEqual(0.005 + 1e-9);
    }
  });
  it('lapses and lets go without cause as often as stated', () => {
    const lapses = watches.filter(({ lapsed }) => lapsed).length / N;
    expect(Math.abs(lapses - person.lapse)).toBeLessThan(5 * Math.sqrt((person.lapse * (1 - person.lapse)) / N));
    const wait = 6000 / person.falsePerMin; // ticks, mean and sd of an exponential
    expect(Math.abs(mean(watches.map((watch) => watch.nextFalse())) - wait)).toBeLessThan((5 * wait) / Math.sqrt(N));
    expect(watchOf(watcherOf(TRAINEE_NUMBERS.prompt, 1), 1).nextFalse()).toBe(Infinity);
  });
  it('is the same for the same seed, whoever asks when', () => {
    fc.assert(fc.property(fc.constantFrom(...TRAINEES), fc.integer({ min: 0, max: 4294967295 }), (name, seed) => {
      const drawn = () => watchOf(watcherOf(TRAINEE_NUMBERS[name], seed), seed);
      const [one, other] = [drawn(), drawn()];
      expect([one.thresholdDeg, one.reactionTicks, one.lapsed, one.nextFalse(), one.nextFalse()]).toEqual([other.thresholdDeg, other.reactionTicks, other.lapsed, other.nextFalse(), other.nextFalse()]);
    }));
  });
});
