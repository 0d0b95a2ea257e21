/** Own forecasts: hand-worked scores, and that saying what one believes scores best (Gneiting and Raftery 2007). */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { forecastScore, shareOf, type Forecast, type Person } from '../../sim/index.js';

const person = (k: number, n: number, deg: number | null): Pick<Person, 'caught' | 'median'> => ({ caught: n === 0 ? null : shareOf(k, n), median: { deg, lo: null, hi: null, limitsBy: 'orderStatistics' } });
const said: Forecast = { caughtOf10: 8, fromDeg: 0.8, toDeg: 1.6 };

describe('forecast', () => {
  it('8 of 10 said, 15 of 20 caught: (15 x .04 + 5 x .64) / 20 = .19; the share itself .75 x .25 = .1875', () => {
    const found = forecastScore(said, person(15, 20, 1.2));
    expect(found?.brier).toBeCloseTo(0.19, 12);
    expect(found?.bestBrier).toBeCloseTo(0.1875, 12);
  });
  it('.8 to 1.6 at four in five: inside the width; .4 above costs ten times that besides', () => {
    expect(forecastScore(said, person(15, 20, 1.2))?.range).toEqual({ score: expect.closeTo(0.8, 12), widthDeg: expect.closeTo(0.8, 12), fineDeg: expect.closeTo(0, 12), medianDeg: 1.2 });
    expect(forecastScore(said, person(15, 20, 2))?.range).toEqual({ score: expect.closeTo(4.8, 12), widthDeg: expect.closeTo(0.8, 12), fineDeg: expect.closeTo(4, 12), medianDeg: 2 });
  });
  it('nothing without the numbers; no range where the median was not seen', () => {
    expect(forecastScore(said, person(0, 0, 1))).toBeNull();
    expect(forecastScore(said, person(3, 20, null))?.range).toBeNull();
  });
  it('nothing scores better than the share as it was', () => {
    fc.assert(fc.property(fc.integer({ min: 8, max: 60 }), fc.nat(), fc.integer({ min: 0, max: 10 }), (n, some, caughtOf10) => {
      const found = forecastScore({ ...said, caughtOf10 }, person(some % (n + 1), n, 1));
      expect(found?.brier).toBeGreaterThanOrEqual((found?.bestBrier as number) - 1e-12);
    }));
  });
});
