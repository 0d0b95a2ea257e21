// A moment of a run as the start of a new scenario: its figures are those of the moment, its times are counted from there.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { misfits, ready, scenarioSchema } from '../../sim/files/index.js';
import { previewOf, startHere, type StartHere } from '../../sim/index.js';
import { AIRFRAME, airframeOf, drill, scenario } from '../sim/bench.js';
import { anywhere } from '../draw.js';

type Of = Parameters<typeof startHere>[0];

function here(of: Of, atS: number, seed = 1, trainee: Parameters<typeof previewOf>[3] = 'slow'): { start: StartHere; row: ReturnType<typeof previewOf>['rows'][number] } {
  const airframe = airframeOf(of);
  const { commands, acted, rows } = previewOf(of, airframe, seed, trainee);
  return { start: startHere(of, airframe, seed, commands, acted, atS), row: rows.find((row) => Math.abs(row.atS - atS) < 0.001)! };
}

describe('start here', () => {
  const of = scenario({
    task: { settings: [9, 16], limitS: 200 },
    faults: [{ name: 'first', kind: 'slow', factor: 0.9, when: { atS: 5 } }, { name: 'later', kind: 'disconnect', side: 'left', when: { after: 'first', delayS: 40 } }],
    events: [
      { do: 'message', text: 'gone', when: { atS: 10 } }, { do: 'message', text: 'comes', when: { atS: 90 } }, { do: 'clearFault', fault: 'first', when: { atS: 100 } },
      { do: 'message', text: 'held', when: { heldS: 60 } }, { do: 'message', text: 'any', when: { any: [{ atS: 80 }, { speedKt: 100 }] } },
    ],
  });
  it('takes the figures of the moment, and leaves out what had acted', () => {
    const { start: { start, task, faults, events, notHeld }, row } = here(of, 30);
    expect(start).toMatchObject({ massT: 48, speedKt: expect.closeTo(row.speedKt, 0), altitudeFt: Math.round(row.altitudeFt), guard: 'open', leadingEdge: 'out', gear: 'up' });
    expect(start.flapDeg).toBeCloseTo((row.leftDeg + row.rightDeg) / 2, 2);
    expect(start.motorHeat).toBeCloseTo(row.motorHeat, 3);
    // By hand: 200 - 30; acted at 5 s and 40 s behind is 15 s from here; 90 - 30; 80 - 30.
    expect(task.limitS).toBe(170);
    expect(faults).toEqual([{ ...of.faults[1], when: { atS: 15 } }]);
    expect(events.map(({ when }) => when)).toEqual([{ atS: 60 }, { heldS: expect.any(Number) as number }, { any: [{ atS: 50 }, { speedKt: 100 }] }]);
    expect(notHeld).toEqual(expect.arrayContaining(['faults']));
  });
  it('takes held time off, and settings that were reached', () => {
    const early = here(of, 30).start;
    const late = here(of, 120).start;
    const held = (one: StartHere): number => one.events.map(({ when }) => when.heldS).find((s) => s !== undefined) ?? -1;
    expect(held(early)).toBeLessThan(60);
    expect(held(early)).toBeGreaterThan(0);
    expect(late.task.settings).toEqual([16]);
    expect(early.task.settings).toEqual([9, 16]);
  });
  it('at the start gives the scenario back', () => {
    const { start } = here(of, 0);
    expect(start.start).toEqual(of.start);
    expect([start.task, start.faults, start.events, start.notHeld]).toEqual([of.task, of.faults, of.events, []]);
  });
  it('says what a start cannot hold', () => {
    const split = scenario({ faults: [{ name: 'a', kind: 'disconnect', side: 'right', when: { flapDeg: 6 } }], events: [{ do: 'descend', toFt: 3000, pathDeg: -3, when: { atS: 2 } }, { do: 'selectSpeed', speedKt: 180, when: { atS: 20 } }] });
    const { commands, acted, rows } = previewOf(split, AIRFRAME, 1, 'never');
    const atS = rows.find((row) => Math.abs(row.leftDeg - row.rightDeg) > 1)!.atS;
    expect(startHere(split, AIRFRAME, 1, commands, acted, atS).notHeld).toEqual(expect.arrayContaining(['split', 'held', 'armed', 'path', 'faults']));
  });
  it('is a scenario that can be flown, from any moment of any drill', () => {
    const names = ['set-9-then-16', 'calls-come-in', 'back-in', 'nothing-moves', 'small-and-quick', 'horn-on-the-way-down', 'winds-up'];
    fc.assert(fc.property(fc.constantFrom(...names), anywhere(0, 1), fc.integer({ min: 0, max: 50 }), (name, part, seed) => {
      const before = drill(name);
      const airframe = airframeOf(before);
      const { commands, acted, flight } = previewOf(before, airframe, seed, 'slow');
      const { notHeld: _notHeld, ...parts } = startHere(before, airframe, seed, commands, acted, (part * flight.ticks) / 100);
      const read = scenarioSchema.parse(JSON.parse(JSON.stringify({ ...before, ...parts })));
      expect(misfits(read, airframe)).toEqual([]);
      previewOf(ready(read, airframe), airframe, seed, 'prompt');
    }), { numRuns: 30 });
  });
});
