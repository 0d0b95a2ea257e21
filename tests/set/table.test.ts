// What watchers of stated numbers make of the shipped sets, against counts simulated elsewhere for the same numbers:
// threshold 1.0 deg, reaction 0.6 s (loaded 5 s), spread .35 (.40), lapses 3 % (5 %), false releases .12 (.18) a minute.
// Those counts are shares of 28 runs for the standard set, of 30 and 12 for the others; they are rounded to a tenth of a run.
import { describe, expect, it } from 'vitest';
import { countsOf, flySet, type Watcher } from '../../sim/index.js';
import { shippedSet } from './shipped.js';

const CALM: Watcher = { sees: 'change', thresholdDeg: 1, reactionS: 0.6, spread: 0.35, lapse: 0.03, falsePerMin: 0.12 };
const LOADED: Watcher = { sees: 'change', thresholdDeg: 1, reactionS: 5, spread: 0.4, lapse: 0.05, falsePerMin: 0.18 };
const OUTCOMES = ['caught', 'late', 'missed', 'undecided', 'falseRelease', 'held'] as const;

describe.each<[string, Watcher, number[], number]>([
  ['standard-calm', CALM, [16.9, 0.4, 0.5, 0, 2.1, 8.2], 4],
  ['standard-loaded', LOADED, [10, 5.1, 2.3, 0, 3.1, 7.5], 4],
  ['true-drive-calm', CALM, [18.4, 0.3, 0.5, 0, 2.2, 8.7], 4],
  ['true-drive-loaded', LOADED, [15.7, 2.2, 0.9, 0, 3.2, 7.9], 4],
  ['short', CALM, [7.3, 0.1, 0.2, 0, 0.7, 3.7], 10],
])('%s', (name, watcher, expected, sets) => {
  it('comes out as simulated elsewhere, within its Monte Carlo error', () => {
    const of = shippedSet(name);
    const counts = countsOf(of, Array.from({ length: sets }, (_, at) => flySet(of, at + 1, watcher).rows).flat());
    const total = expected.reduce((sum, one) => sum + one, 0);
    OUTCOMES.forEach((outcome, at) => {
      const share = expected[at]! / total;
      const error = Math.sqrt(Math.max(share, 1 / counts.runs) * (1 - share) / counts.runs);
      // A tenth of a run is the rounding of the expected counts; the growth rates flown are 2 to 5 % below the round ones.
      expect(Math.abs(counts[outcome] / counts.runs - share), outcome).toBeLessThan(3 * error + 0.1 / total + 0.005);
    });
    expect(counts.undecided).toBe(0);
  }, 60_000);
});
