// What a trainee does, against closed forms; and a trainee made from a person, only where the counts allow it.
import { describe, expect, test } from 'vitest';
import { numbersOf } from '../../../../sim/files/index.js';
import { dice, judgeTrial, personOf, TRAINEE_NUMBERS, type TraineeNumbers } from '../../../../sim/index.js';
import { fittedPerson, traineeOfPerson } from '../../../../src/pages/bench/trainees/of-person.js';
import { falseWithin, letGoBy, releasesAt } from '../../../../src/pages/bench/trainees/releases.js';
import { readTrainee } from '../../../../src/text/index.js';

const LEVEL: TraineeNumbers = { ...TRAINEE_NUMBERS.steady, thresholdLogSd: 0, reactionLogSd: 0, lapse: 0 };

describe('releases', () => {
  test('a sure trainee: one degree, and one second of growth, every time', () => {
    const one = releasesAt(TRAINEE_NUMBERS.prompt, 0.4);
    expect([one.medianDeg, one.q90Deg]).toEqual([1.4, 1.4]);
    expect([letGoBy(one, 1.39), letGoBy(one, 1.4)]).toEqual([0, 1]);
  });
  // ln s is normal about ln(1 + 0.5 x 0.6) = ln 1.3 with 0.35: median 1.3, nine in ten below 1.3 e^(1.2816 x 0.35) = 2.036.
  test('one person with spread: the log-normal of the text, at rate 0.5', () => {
    const one = releasesAt(LEVEL, 0.5, 20_000);
    expect(one.medianDeg!).toBeCloseTo(1.3, 1);
    expect(Math.abs(one.medianDeg! / 1.3 - 1)).toBeLessThan(0.015);
    expect(Math.abs(one.q90Deg! / 2.036 - 1)).toBeLessThan(0.015);
    // Phi(ln(2.5 / 1.3) / 0.35) = Phi(1.868) = 0.9691.
    expect(letGoBy(one, 2.5)).toBeCloseTo(0.969, 2);
  });
  test('lapses never let go: a trainee that notices nothing has no median, a tenth of lapses just no nine in ten', () => {
    expect(releasesAt(TRAINEE_NUMBERS.never, 0.5)).toMatchObject({ medianDeg: null, q90Deg: null });
    const tenth = releasesAt({ ...LEVEL, lapse: 0.12 }, 0.5);
    expect(tenth.medianDeg).not.toBeNull();
    expect(tenth.q90Deg).toBeNull();
    expect(letGoBy(tenth, 1e9)).toBeCloseTo(0.88, 1);
  });
  test('releases without cause: 6 a minute leave e^-6 of a minute', () => expect(falseWithin(TRAINEE_NUMBERS.early, 60)).toBeCloseTo(1 - Math.exp(-6), 12));
});

describe('from a person', () => {
  /** Trials of a watcher with threshold 1 deg, 0.6 s, spread 0.3, at the given rates. */
  const trials = (rates: readonly number[], each: number) => {
    const stream = dice(5, 'trials');
    return rates.flatMap((rate) => Array.from({ length: each }, () => {
      const growth = (1 + 0.6 * rate) * Math.exp(0.3 * stream.normal());
      return judgeTrial({ rateDegPerS: rate, onsetS: 10, releaseS: 10 + growth / rate, endS: 76, limitDeg: 2.5 }, 0.1);
    }));
  };
  test('four rates and enough runs: a sound file near what was there, with what it cannot carry', () => {
    const made = traineeOfPerson(personOf(trials([0.1, 0.2, 0.5, 1.2], 20), 0.1), 'Ada');
    if (!made.ok) throw new Error(made.why);
    const read = readTrainee(made.text, 'ada');
    if (!read.ok) throw new Error(JSON.stringify(read.problems));
    const numbers = numbersOf(read.value);
    expect(numbers.thresholdDeg).toBeGreaterThan(0.8);
    expect(numbers.thresholdDeg).toBeLessThan(1.2);
    expect(numbers.spread).toBeGreaterThan(0.2);
    expect(numbers.spread).toBeLessThan(0.42);
    expect([numbers.thresholdLogSd, numbers.reactionLogSd, numbers.sees]).toEqual([0, 0, 'change']); // one person, not a crowd
    expect(read.value.title).toBe('As flown by Ada');
    expect(made.lost.join(' ')).toMatch(/95 %: .* does not learn/s);
  });
  test('nothing where the counts do not allow it, and why', () => {
    expect(traineeOfPerson(fittedPerson([], 0.1), 'Ada')).toEqual({ ok: false, why: 'No set is flown to its end by Ada, so there is nothing to make a trainee from.' });
    expect(traineeOfPerson(personOf(trials([0.2], 12), 0.1), '')).toEqual({ ok: false, why: '8 more decided runs of one condition are needed before anything is fitted.' });
    const two = traineeOfPerson(personOf(trials([0.2, 0.5], 15), 0.1), '');
    expect(two.ok ? '' : two.why).toContain('2 more rates are needed');
  });
});
