// The window of a flat hazard, and the leg that ends with the seconds held.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { scenarioSchema, tryAs } from '../../sim/files/index.js';
import { expand, flyRow, flyTrainee, hazardStrikes } from '../../sim/index.js';
import { AIRFRAME, scenario } from './bench.js';

describe('a hazard in a window', () => {
  const when = { hazardPerS: 0.05, hazardFromS: 3, hazardForS: 20 };
  const strikes = Array.from({ length: 3000 }, (_, seed) => hazardStrikes(when, seed, 0, 30000));
  it('strikes inside it or never', () => {
    for (const ticks of strikes) expect(ticks === Infinity || (ticks > 300 && ticks <= 2300)).toBe(true);
  });
  it('never, in e^(-hazard x length) of the runs', () => {
    const none = strikes.filter((ticks) => ticks === Infinity).length / strikes.length;
    expect(Math.abs(none - Math.exp(-1))).toBeLessThan(4 * Math.sqrt(0.37 * 0.63 / strikes.length));
  });
  it('is flat in it: strikes a second at risk are alike early and late, within Poisson limits', () => {
    for (const [from, to] of [[300, 800], [800, 1300], [1300, 1800], [1800, 2300]] as const) {
      const events = strikes.filter((ticks) => ticks > from && ticks <= to).length;
      const exposure = strikes.reduce((sum, ticks) => sum + Math.max(0, Math.min(ticks, to) - from), 0) / 100;
      expect(Math.abs(events - 0.05 * exposure)).toBeLessThan(4 * Math.sqrt(0.05 * exposure));
    }
  });
  it('starts at once and lasts to the end where it says nothing: as before', () => {
    fc.assert(fc.property(fc.nat(4294967295), (seed) => {
      expect(hazardStrikes({ hazardPerS: 0.05, hazardFromS: 0, hazardForS: 60 }, seed, 2, 6000)).toBe(hazardStrikes({ hazardPerS: 0.05 }, seed, 2, 6000));
    }));
  });
  it('is what a run has', () => {
    const flown = scenario({ faults: [{ name: 'lag', kind: 'lag', side: 'left', ratio: 0, when }] });
    for (const seed of [1, 2, 3, 4]) {
      const condition = expand(flown, AIRFRAME, seed).fixed.agenda.entries[0]!.when;
      expect(condition).toEqual({ kind: 'held', ticks: hazardStrikes(when, seed, 0, 30000) });
    }
  });
  const taken = (trigger: object): boolean => tryAs(scenarioSchema, {
    format: 1, title: 't', brief: 'b', airframe: 'airframe-a', start: { massT: 48, altitudeFt: 5600, speedKt: 167, flapDeg: 4 }, task: { settings: [16], limitS: 100 },
    faults: [{ name: 'a', kind: 'dead', when: trigger }],
  }).ok;
  it('stands only beside a hazard', () => {
    expect(taken(when)).toBe(true);
    expect(taken({ hazardPerS: 0.05, hazardForS: 1 })).toBe(true);
    expect(taken({ heldS: 4, hazardFromS: 1 })).toBe(false);
    expect(taken({ atS: 4, hazardForS: 1 })).toBe(false);
    expect(taken({ hazardPerS: 0.05, hazardForS: 0 })).toBe(false);
  });
});

describe('a leg', () => {
  const legged = (keys: object = {}) => scenario({ start: { flapLeverDeg: 16 }, task: { settings: [16], limitS: 100, legS: 12.34 }, recognition: { limitDeg: 2.5 }, ...keys });
  it('ends in the tick in which the drive has been held so long', () => {
    const { flight, commands } = flyTrainee(legged(), AIRFRAME, 1, 'never');
    const press = commands.find((command) => command.do === 'holdDrive')!.tick;
    expect(flight).toMatchObject({ ticks: press + 1234, outcome: 'held', end: { tick: press + 1234, why: 'timeUp' } });
  });
  it('has no end where the drive is not held, and none of its own where the file says nothing', () => {
    expect(flyRow(legged({ task: { settings: [16], limitS: 30, legS: 40 } }), AIRFRAME, 1, 'never').outcome).toBe('held');
    expect(flyTrainee(legged({ task: { settings: [16], limitS: 30 } }), AIRFRAME, 1, 'never').flight.ticks).toBe(3000);
  });
  it('does not cut the 20 s behind a release', () => {
    const split = legged({ faults: [{ name: 'stop', kind: 'lag', side: 'left', ratio: -3, when: { heldS: 4 } }] });
    const { flight } = flyTrainee(split, AIRFRAME, 1, 'prompt');
    expect(flight.outcome).toBe('caught');
    expect(flight.ticks).toBe(Math.round(flight.score.releaseS! * 100) + 2000);
  });
});
