/** The run of a practice: its split opens at the rate asked for, and about one run in eight is quiet. */
import { describe, expect, it } from 'vitest';
import { misfits } from '../../sim/files/index.js';
import { practiceScenario, QUIET_SHARE } from '../../sim/practice/scenario.js';
import { flyTrainee, realisedRates } from '../../sim/index.js';
import { shippedSet } from '../set/shipped.js';

const of = shippedSet('true-drive-calm');
const stop = realisedRates(of).find(({ ratio }) => ratio === 0)?.degPerS ?? NaN;

describe('the run of a practice', () => {
  it.each([0.06, 0.1, stop, 0.3, 0.6])('opens at %d deg/s', (degPerS) => {
    const made = practiceScenario(of, stop, { degPerS, easy: false });
    expect(misfits(made, of.airframe)).toEqual([]);
    const seeds = Array.from({ length: 8 }, (_, seed) => seed);
    const rates = seeds.flatMap((seed) => {
      const { score } = flyTrainee({ ...made, pointerNoise: false }, of.airframe, seed, 'prompt').flight;
      return score.onsetS === null || score.releaseS === null || score.growthAtReleaseDeg === null || score.growthAtReleaseDeg < 0.5
        ? [] : [score.growthAtReleaseDeg / (score.releaseS - score.onsetS)];
    });
    expect(rates.length).toBeGreaterThan(3);
    // The drive slows as the flaps go out: the rate of a set is a mean over its window, and one run may lie 8 % off it.
    for (const rate of rates) expect(Math.abs(rate / degPerS - 1)).toBeLessThan(0.08);
  });
  it('ends two seconds behind its release, so that it is told at once', () => {
    const { flight } = flyTrainee(practiceScenario(of, stop, { degPerS: 0.3, easy: false }), of.airframe, 1, 'prompt');
    expect(flight.end).toEqual({ tick: Math.floor((flight.score.releaseS ?? NaN) * 100 + 0.5) + 200, why: 'scored' });
  });
  it('is quiet about one time in eight', () => {
    const made = practiceScenario(of, stop, { degPerS: 0.3, easy: false });
    const quiet = Array.from({ length: 100 }, (_, seed) => flyTrainee(made, of.airframe, seed, 'never').flight.score.onsetS).filter((onsetS) => onsetS === null).length;
    expect(Math.abs(quiet / 100 - QUIET_SHARE)).toBeLessThan(5 * Math.sqrt((QUIET_SHARE * (1 - QUIET_SHARE)) / 100));
  });
});
