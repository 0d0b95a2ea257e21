/** A class as text, and its order: by name or by what is due, and never by how well anyone does. */
import { expect, it } from 'vitest';
import { ordered } from '../../../src/pages/class/order.js';
import { classTable } from '../../../src/pages/class/table.js';
import type { ClassRow } from '../../../src/pages/class/house.js';
import type { CourseProgress } from '../../../src/records/progress.js';
import type { StepCard } from '../../../src/pages/course/house.js';
import { flownRecords, madeFlight } from '../../stats/made-flight.js';
import { historyOf, judgeGate } from '../../../sim/index.js';
import { shippedSet } from '../../set/shipped.js';

const steps = [{ number: 1 }, { number: 2 }] as unknown as StepCard[];
const stand = { state: 'open', waitsFor: [], flown: 3, lastPassed: null, flownThrough: false, underway: null, gate: null } as const;
const row = (name: string, step: number | null, more: Partial<CourseProgress> = {}): ClassRow => ({
  name, runs: 1,
  progress: {
    stands: [stand, { ...stand, state: 'closed', flown: 0 }], firstLook: null, older: 0, history: { groups: [] },
    proposal: step === null ? { fly: 'advised', advice: { why: 'steady', fly: 1 }, minutes: 15 } : { fly: 'step', step, why: 'next', minutes: 5 }, ...more,
  } as unknown as CourseProgress,
});

it('two orders and no third', () => {
  const rows = [row('Cleo', 0), row('ben 10', null), row('ben 2', 4), row('Ada', 4)];
  expect(ordered(rows, 'name').map(({ name }) => name)).toEqual(['Ada', 'ben 2', 'ben 10', 'Cleo']);
  expect(ordered(rows, 'due').map(({ name }) => name)).toEqual(['Cleo', 'Ada', 'ben 2', 'ben 10']);
});

it('rows of steps, asked figures, flights and first looks, each with its own interval and none summed', () => {
  const of = shippedSet('true-drive-calm');
  const history = historyOf([madeFlight(of, flownRecords(of, 7), { set: 2, startedMs: 0 })]);
  const gate = judgeGate({ flights: 1, source: 's', caughtFrom: 0.5 }, history.groups, 0.1);
  const { person } = history.groups[0]!.flights[0]!.result;
  const text = classTable([row('Ada, "A"', 0, {
    history: history as CourseProgress['history'], stands: [stand, { ...stand, gate }],
    firstLook: { step: 3, id: 'x', atMs: 0, outcome: 'completed', parted: true, afterOnsetS: 2.1, growthDeg: 0.3, passed: true },
  })], steps);
  const lines = text.split('\r\n');
  const { k, n, lo, hi } = person.caught!;
  expect(lines[0]).toBe('person,of,number,figure,state,asked,value,lo,hi,count,count_of,flown');
  expect(lines[1]).toBe('"Ada, ""A""",step,1,,open,,,,,3,,');
  expect(lines[3]).toMatch(new RegExp(`^"Ada, ""A""",gate,2,caught,met,0\\.5,${String(Number((k / n).toFixed(4)))},.*,${k},${n},$`));
  expect(lines[4]).toBe(`"Ada, ""A""",flight,2,caught,whole,,${Number((k / n).toFixed(4))},${Number(lo.toFixed(4))},${Number(hi.toFixed(4))},${k},${n},1970-01-01T00:00:00.000Z`);
  expect(lines.filter((line) => line.includes(',flight,'))).toHaveLength(3);
  expect(lines.at(-2)).toBe('"Ada, ""A""",firstLook,4,afterOnsetS,completed,,2.1,,,,,1970-01-01T00:00:00.000Z');
  expect(lines.at(-1)).toBe('');
});
