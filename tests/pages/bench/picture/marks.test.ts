// Where faults and events stand on the picture of a scenario, worked by hand; and that no flag lies over another.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { gridOf, lanes, marksIn, snapped, timeOf, travelOf } from '../../../../src/pages/bench/picture/marks.js';

const JSON_OF = {
  start: { flapDeg: 4 }, task: { settings: [9, 16], limitS: 240 },
  faults: [
    { name: 'a', kind: 'lag', side: 'right', ratio: 0.5, when: { flapDeg: 8, edge: 'rising' } }, { name: 'b', kind: 'quits', when: { after: 'a', delayS: 2 } },
    { name: 'c', kind: 'dead', when: { all: [{ atS: 1 }, { atS: 2 }] } },
  ],
  events: [{ do: 'level', when: { atS: 40 } }],
};

test('a time on the time, a position on the travel, anything else where it acted, or on no ruler', () => {
  const marks = marksIn(JSON_OF, { faults: [30, 32.5, null], events: [40] });
  expect(marks.map(({ name, on, value, key }) => [name, on, value, key])).toEqual([
    ['a', 'travel', 8, 'flapDeg'], ['b', 'time', 32.5, null], ['c', null, 0, null], ['level', 'time', 40, 'atS'],
  ]);
  expect(marksIn(JSON_OF, null)[1]).toMatchObject({ on: null });
  expect(marks[0]?.words).toBe('The right side lags at 0.5 of the rate, when the drive passes 8 deg extending.');
});

test('rulers: from 0 to the latest end; from the start over the settings, the way they are driven', () => {
  expect(timeOf(JSON_OF)).toEqual({ from: 0, to: 240 });
  expect(travelOf(JSON_OF)).toEqual({ from: 4, to: 16 });
  expect(travelOf({ start: { flapDeg: 16 }, task: { settings: [9, 4] } })).toEqual({ from: 16, to: 4 });
  expect(travelOf({ start: { flapDeg: 4 }, task: { settings: [16, 9] } })).toEqual({ from: 4, to: 16 });
  expect(travelOf({ start: { flapDeg: 4 }, task: { settings: [4] } })).toEqual({ from: 4, to: 14 });
  expect([timeOf({}), timeOf({ task: { limitS: -1 } }), timeOf([])].every(({ to }) => to === 180)).toBe(true);
});

test('a mark goes to whole seconds and half degrees, and not off its ruler', () => {
  const travel = { from: 16, to: 4 };
  expect(gridOf('time', { from: 0, to: 600 })).toBe(1);
  expect(gridOf('time', { from: 0, to: 601 })).toBe(5);
  expect(snapped(8.26, gridOf('travel', travel), travel)).toBe(8.5);
  expect(snapped(8.24, 0.5, travel)).toBe(8);
  expect(snapped(40, 0.5, travel)).toBe(16);
  expect(snapped(-3, 0.5, travel)).toBe(4);
});

test('flags: side by side where there is room, else a lane up; at the end of the room to the left', () => {
  expect(lanes([{ x: 20, width: 80 }, { x: 110, width: 80 }, { x: 60, width: 80 }, { x: 390, width: 80 }], 400, 10)).toEqual([
    { lane: 0, left: false }, { lane: 0, left: false }, { lane: 1, left: false }, { lane: 0, left: true },
  ]);
});

test('no flag lies over another, whatever there is', () => {
  fc.assert(fc.property(fc.array(fc.record({ x: fc.integer({ min: 0, max: 800 }), width: fc.integer({ min: 44, max: 300 }) }), { maxLength: 56 }), (flags) => {
    const placed = lanes(flags, 800, 22);
    const spans = placed.map(({ lane, left }, at) => {
      const { x, width } = flags[at]!;
      return left ? { lane, from: x + 22 - width, to: x + 22 } : { lane, from: x - 22, to: x - 22 + width };
    });
    spans.forEach((one, at) => spans.slice(at + 1).forEach((other) => expect(one.lane !== other.lane || one.to <= other.from || other.to <= one.from).toBe(true)));
  }));
});
