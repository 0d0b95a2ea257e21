/** Practice that adapts: its steps by hand, its balance against the theory and a simulated watcher. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { dice } from '../../sim/dice.js';
import { practiceAfter, FASTER_OCTAVES, firstPractice, nextPracticeRun, RATE_RANGE, ratioOf, SLOWER_OCTAVES, type Practice } from '../../sim/practice/staircase.js';

describe('steps', () => {
  const at: Practice = { degPerS: 0.2, runs: 3 };
  const run = { degPerS: 0.2, easy: false };
  it('a catch is a quarter of an octave, a miss three quarters; four catches and one miss and a third come back', () => {
    expect(practiceAfter(at, run, 'caught').degPerS).toBeCloseTo(0.2 * 2 ** 0.25, 12);
    expect(practiceAfter(at, run, 'late').degPerS).toBeCloseTo(0.2 / 2 ** 0.75, 12);
    expect(practiceAfter(at, run, 'missed').degPerS).toBeCloseTo(0.2 / 2 ** 0.75, 12);
    const there = (['caught', 'caught', 'caught', 'late'] as const).reduce((now, outcome) => practiceAfter(now, { ...run, degPerS: now.degPerS }, outcome), at);
    expect(there.degPerS).toBeCloseTo(0.2, 12);
  });
  it('nothing else moves it, nor does an easy run', () => {
    for (const outcome of ['held', 'falseRelease', 'undecided', 'void'] as const) expect(practiceAfter(at, run, outcome)).toEqual({ degPerS: 0.2, runs: 4 });
    expect(practiceAfter(at, { degPerS: 0.07, easy: true }, 'missed')).toEqual({ degPerS: 0.2, runs: 4 });
  });
  it('balance: p / (1 - p) of the target is the ratio of the steps (measures 4.2: .75 gives 3)', () => {
    expect(SLOWER_OCTAVES / FASTER_OCTAVES).toBe(0.75 / 0.25);
  });
  it('stays in its range, and no run of it is harder than its level', () => {
    fc.assert(fc.property(fc.array(fc.constantFrom('caught', 'late', 'held', 'missed', 'falseRelease'), { maxLength: 60 }), fc.integer({ min: 0, max: 4294967295 }), (outcomes, seed) => {
      let practice = firstPractice(0.155);
      for (const outcome of outcomes) {
        const next = nextPracticeRun(practice, seed);
        for (const rate of [next.degPerS, practice.degPerS]) {
          expect(rate).toBeGreaterThanOrEqual(RATE_RANGE.lowest);
          expect(rate).toBeLessThanOrEqual(RATE_RANGE.highest);
        }
        expect(next.degPerS).toBeLessThanOrEqual(practice.degPerS);
        practice = practiceAfter(practice, next, outcome);
      }
    }));
  });
  it('one run in ten is easy, never the first', () => {
    const easy = Array.from({ length: 5000 }, (_, runs) => nextPracticeRun({ degPerS: 0.2, runs: runs + 1 }, 7).easy).filter(Boolean).length;
    expect(Math.abs(easy / 5000 - 0.1)).toBeLessThan(5 * Math.sqrt((0.1 * 0.9) / 5000));
    expect(nextPracticeRun({ degPerS: 0.2, runs: 0 }, 7)).toEqual({ degPerS: 0.2, easy: false });
  });
});

it('a lag ratio gives its rate: 0 stops the side at the full rate of the drive, -3 gives four times it', () => {
  expect(ratioOf(0.15, 0.15)).toBe(0);
  expect(ratioOf(0.6, 0.15)).toBe(-3);
  expect(ratioOf(0.075, 0.15)).toBe(0.5);
});

it('settles where a watcher catches three in four', () => {
  // Releases at the growth s, ln s ~ N(ln(1 + 5 v), 0.4) against a limit of 2.5 deg: caught in 3 of 4 where
  // (ln 2.5 - ln(1 + 5 v)) / 0.4 = 0.67449, so v = (2.5 e^-0.2698 - 1) / 5 = 0.1818 deg/s. By hand, from the normal table.
  const wanted = (2.5 * Math.exp(-0.4 * 0.674489750196082) - 1) / 5;
  const stream = dice(11, 'watcher');
  let practice = firstPractice(0.155);
  const logs: number[] = [];
  for (let run = 0; run < 4000; run += 1) {
    const next = nextPracticeRun(practice, 11);
    const growth = (1 + 5 * next.degPerS) * Math.exp(0.4 * stream.normal());
    practice = practiceAfter(practice, next, growth < 2.5 ? 'caught' : 'late');
    if (run > 100) logs.push(Math.log2(practice.degPerS));
  }
  const mean = logs.reduce((sum, x) => sum + x, 0) / logs.length;
  // The stairs' mean level lies near the balance, not on it: the literature's own table shows a bias of about -0.16 octave.
  expect(Math.abs(mean - Math.log2(wanted))).toBeLessThan(0.3);
});
