// The lesson sheet: the trainee's tells nothing of the fault, the instructor's tells all of it.
import { describe, expect, test } from 'vitest';
import { parametersOf, parsedValue, readScenario } from '../../../../src/text/index.js';
import { drawsOf } from '../../../../src/pages/bench/lesson/draws.js';
import { instructorSheet, traineeSheet } from '../../../../src/pages/bench/lesson/sheet.js';
import { expectedOf } from '../../../../src/pages/bench/lesson/actions.js';
import { scenarioSchema, shapeOf, type Fault, type ObjectShape, type Scenario } from '../../../../sim/files/index.js';
import { flyTrainee, readyFor } from '../../../../sim/index.js';
import { faultSchema } from '../../../../sim/files/fault.js';
import { airframeA, airframeFor, drill, drillNames, drillText, lookup } from '../../../files/shipped.js';

const text = (value: unknown): string => JSON.stringify(value);
const mirrored = (faults: Scenario['faults']): Scenario['faults'] => faults.map((fault) => ('side' in fault ? { ...fault, side: fault.side === 'left' ? 'right' : 'left' } : fault));
const written = (name: string) => parsedValue(drillText(name)) as Record<string, never>;

describe('the trainee’s sheet', () => {
  test.each(drillNames)('%s: the same with its fault, without it, with it on the other side, and with another', (name) => {
    const scenario = drill(name);
    const airframe = airframeFor(scenario);
    const sheet = text(traineeSheet(scenario, airframe));
    expect(text(traineeSheet({ ...scenario, faults: [] }, airframe))).toBe(sheet);
    expect(text(traineeSheet({ ...scenario, faults: mirrored(scenario.faults) }, airframe))).toBe(sheet);
    expect(text(traineeSheet({ ...scenario, faults: [{ name: 'x', kind: 'blowback', side: 'left', when: { atS: 1 } }] }, airframe))).toBe(sheet);
    expect(sheet).not.toContain(scenario.title);
    for (const secret of [scenario.notes, scenario.skill]) if (secret !== undefined) expect(sheet).not.toContain(secret);
  });
  test('own words stand in place of those worked out; errors are the instructor’s', () => {
    const own = { ...drill('set-16-from-4'), lesson: { objective: 'Look, hold, look.', standard: 'Within two degrees.', errors: ['Sleeps.'] } };
    expect(traineeSheet(own, airframeA)).toMatchObject({ objective: 'Look, hold, look.', standard: ['Within two degrees.'] });
    expect(text(traineeSheet(own, airframeA))).not.toContain('Sleeps.');
    expect(instructorSheet(own, airframeA, written('set-16-from-4'), []).errors).toEqual(['Sleeps.']);
    expect(scenarioSchema.safeParse({ ...own, lesson: { errors: [] } }).success).toBe(false);
  });
});

describe('the instructor’s sheet', () => {
  test('the fault, when it comes and what is expected, in words', () => {
    const { faults, objective } = instructorSheet(drill('set-16-from-4'), airframeA, written('set-16-from-4'), []);
    expect(objective).toBe('Drive the flaps from 4 to 16 on the standby drive; keep to both pointers; let go as soon as they part, and call it.');
    expect(faults.map(({ does }) => does)).toEqual(['A side, drawn by the seed, stops while the other goes on when the drive has been held for 14 s in all.']);
    expect(faults[0]!.actions[0]).toBe('Lets the switch go as soon as the pointers part; late from 2.5° of growth.');
  });
  test('a switch that stays is put to off; outside scored runs nothing is late', () => {
    const { faults } = instructorSheet(drill('back-in'), airframeA, written('back-in'), []);
    expect(faults[0]!.actions[0]).toBe('Puts the switch to off as soon as the pointers part.');
  });
  test('every kind of fault has actions and errors; those that part ask for the call, those that fail for another', () => {
    const shape = shapeOf(faultSchema);
    const kinds = shape.kind === 'choice' ? [...shape.options] as [Fault['kind'], ObjectShape][] : [];
    for (const [kind, { keys }] of kinds) {
      const { actions, errors } = expectedOf(kind, { scored: true, limitDeg: 3, stays: false });
      expect(errors.length, kind).toBeGreaterThan(1);
      expect(actions.some((line) => line.includes('Calls the split within 5 s')), kind).toBe(keys.has('side'));
      if (['dead', 'quits', 'runsOn', 'leadingEdge'].includes(kind)) expect(actions).toContain('Calls the drive failed.');
    }
  });
  test('parameters are told with their range', () => {
    const file = drillText('set-16-from-4').replace('"heldS": 14', '"heldS": { "parameter": "held" }').replace('"format": 1,', '"format": 1, "parameters": [ { "name": "held", "default": 14, "min": 10, "max": 20, "unit": "s", "drawn": true } ],');
    const read = readScenario(file, 'x', lookup);
    if (!read.ok) throw new Error(JSON.stringify(read.problems));
    const { parameters, faults } = instructorSheet(read.value, airframeA, parsedValue(file) as never, parametersOf(parsedValue(file)!));
    expect(parameters).toEqual(['held: 10 to 20 s, drawn by the seed']);
    expect(faults[0]!.does).toContain('held for held s in all');
    const { heads, rows } = drawsOf(read.value, airframeA, [1, 2, 3]);
    expect(heads).toEqual(['held', 'stop: side']);
    // What is told of a seed is what its run has.
    for (const { seed, values } of rows) {
      const { flight } = flyTrainee(readyFor(read.value, airframeA, seed), airframeA, seed, 'never');
      const [held] = flight.events.filter(({ what }) => what === 'extend');
      expect(flight.score.onsetS! - held!.atS).toBeCloseTo(Number(values[0]), 1);
    }
  });
});

test('seeds: sides as flown, a hazard as it strikes; nothing drawn, nothing told', () => {
  const scenario = drill('opens-fast');
  const { heads, rows } = drawsOf({ ...scenario, faults: [{ ...scenario.faults[0]!, when: { hazardPerS: 0.05 } }] }, airframeA, [1, 2, 3, 4, 5, 6, 7, 8]);
  expect(heads).toEqual(['back: side', 'back: held']);
  expect(new Set(rows.map(({ values }) => values[0]))).toEqual(new Set(['left', 'right']));
  expect(drawsOf(drill('hold-and-nothing'), airframeA, [1]).heads).toEqual([]);
});
