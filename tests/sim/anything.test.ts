/**
 * Anything a scenario file can say, flown by trainees and by hands that do anything: it ends within its limit, with no number
 * that is none, the same every time. `npm run fuzz` does the same a hundred thousand times and asks for more.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { eventSchema } from '../../sim/files/event.js';
import { faultSchema } from '../../sim/files/fault.js';
import { shapeOf, type Airframe, type ReadyScenario } from '../../sim/files/index.js';
import { fly, flyTrainee, TRAINEES, type Command } from '../../sim/index.js';
import { anyRun, LIMIT_S, mended, type Any } from '../fuzz/anything.js';

let tried = 0;
const kinds = new Set<string>();
const sound = (check: (one: { scenario: ReadyScenario; airframe: Airframe }, made: Any) => void) => (made: Any): void => {
  const one = mended(made);
  fc.pre(one !== null);
  tried += 1;
  for (const { kind } of one!.scenario.faults) kinds.add(kind);
  for (const event of one!.scenario.events) kinds.add(event.do);
  check(one!, made);
};

describe('anything a file can say', () => {
  it.each(TRAINEES)('flown by %s ends within its limit, with every number one, and the log alone gives it again', (trainee) => {
    fc.assert(fc.property(anyRun, sound(({ scenario, airframe }, { seed }) => {
      const { commands, flight } = flyTrainee(scenario, airframe, seed, trainee); // the hash throws where a number is none
      expect(flight.ticks).toBeLessThanOrEqual(LIMIT_S * 100);
      expect(fly({ scenario, airframe, seed }, commands).hash).toBe(flight.hash);
    })), { numRuns: 50 });
  }, 120_000);

  it('flown by hands that do anything, in any order of filing', () => {
    fc.assert(fc.property(anyRun, sound(({ scenario, airframe }, { seed, acts: done }) => {
      const log = done.map(([tick, act], seq) => ({ ...act, tick, rank: 2, seq }) as Command);
      const flight = fly({ scenario, airframe, seed }, log);
      expect(flight.ticks).toBeLessThanOrEqual(LIMIT_S * 100);
      expect(fly({ scenario, airframe, seed }, [...log].reverse()).hash).toBe(flight.hash);
    })), { numRuns: 150 });
  }, 120_000);

  it('nothing that can be written was left out', () => {
    const all = [faultSchema, eventSchema].flatMap((schema) => { const shape = shapeOf(schema); return shape.kind === 'choice' ? [...shape.options.keys()] : []; });
    expect([...kinds].sort()).toEqual([...all].sort());
    expect(tried).toBeGreaterThan(300);
  });
});
