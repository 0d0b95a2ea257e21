/**
 * One watcher of known numbers flies the real drive (load, noise, mismatch and all) through the sweep's own runs, and is
 * measured from the records of these runs as a person is: what is found holds what was put in.
 */
import { describe, expect, it } from 'vitest';
import { scriptedRecord, type RunRecord } from '../../sim/files/index.js';
import { drawSet, flyRow, flyTrainee, MODEL_VERSION, personOf, realisedRates, trialOfRun, type Watcher } from '../../sim/index.js';
import { shippedSet } from '../set/shipped.js';

const CALM: Watcher = { sees: 'change', thresholdDeg: 1, reactionS: 0.6, spread: 0.35, lapse: 0.03, falsePerMin: 0.12 };
const SETS = 4;
const of = shippedSet('standard-calm');

const flown = Array.from({ length: SETS }, (_, seed) => drawSet(of, seed + 1)).flat().map(({ rate, seed }): { row: ReturnType<typeof flyRow>; record: RunRecord } => {
  const scenario = of.scenarios[rate] as (typeof of.scenarios)[number];
  const { commands, flight: { end, hash, outcome, score } } = flyTrainee(scenario, of.airframe, seed, CALM);
  const record = scriptedRecord({ model: MODEL_VERSION, app: 'test', seed, airframe: of.airframe, scenario, commands, end, hash, outcome, score });
  return { row: flyRow(scenario, of.airframe, seed, CALM), record };
});
const rates = new Map(realisedRates(of).map(({ ratio, degPerS }) => [ratio, degPerS] as const));
const person = personOf(flown.map(({ record }) => trialOfRun(record, rates)), of.set.seenDeg);

describe('a known watcher in the real world', () => {
  it('a row of the sweep and the record of the same run agree', () => {
    for (const { row, record } of flown) expect([row.outcome, row.growthAtReleaseDeg]).toEqual([record.outcome, record.score.growthAtReleaseDeg]);
  });
  it('threshold, time and spread lie in their intervals', () => {
    const { fit } = person;
    for (const [estimate, truth] of [[fit?.thetaDeg, 1], [fit?.t0S, 0.6]] as const) {
      expect(estimate?.lo).toBeLessThan(truth);
      expect(estimate?.hi).toBeGreaterThan(truth);
    }
    // Pointers wander by 0.05 deg each: what the eye meets is spread a little wider than the eye is.
    expect(fit?.sigma.lo).toBeLessThan(0.4);
    expect(fit?.sigma.hi).toBeGreaterThan(0.33);
  });
  it('the median at each flown rate is that of ln s ~ N(ln(theta + v t0), sigma)', () => {
    expect(person.fit?.atRates).toHaveLength(4);
    for (const { rateDegPerS, medianDeg } of person.fit?.atRates ?? []) {
      const truth = 1 + rateDegPerS * 0.6;
      expect(medianDeg.lo / truth).toBeLessThan(1.03);
      expect(medianDeg.hi / truth).toBeGreaterThan(0.97);
    }
  });
  it('releases without cause come at the rate put in, within their interval', () => {
    expect(person.falseReleases?.lo).toBeLessThan(0.12);
    expect(person.falseReleases?.hi).toBeGreaterThan(0.12);
  });
});
