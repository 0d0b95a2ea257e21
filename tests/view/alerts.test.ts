// Alerts in words: each with its level, most urgent first, gone with its cause (14 CFR 25.1322(a) to (c)).
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { alertsOf, alertWords } from '../../src/view/alertList.js';

const quiet = { blank: false, horn: 'silent', hornSilenced: false, autopilot: true, holdLetGo: false, otherFlies: false, talk: null } as const;
const waits = { id: 1, text: 'Caution: cabin height rising', answers: ['noted'], acts: [], caution: 'cabin height rising', part: 1, waiting: 0 };
const anything = fc.record({
  blank: fc.boolean(), horn: fc.constantFrom('silent' as const, 'sounds' as const, 'insists' as const), hornSilenced: fc.boolean(), autopilot: fc.boolean(), holdLetGo: fc.boolean(), otherFlies: fc.boolean(), talk: fc.constantFrom(null, waits),
});

test('none while nothing is wrong, and none that is left behind', () => {
  expect(alertsOf(quiet)).toEqual([]);
  expect(alertWords(quiet)).toBe('');
});

test('the horn says whether it can be silenced', () => {
  expect(alertsOf({ ...quiet, horn: 'sounds' })).toEqual([{ level: 'warning', title: 'Gear horn', detail: 'can be silenced' }]);
  expect(alertsOf({ ...quiet, horn: 'insists' })).toEqual([{ level: 'warning', title: 'Gear horn', detail: 'cannot be silenced' }]);
  expect(alertsOf({ ...quiet, hornSilenced: true })).toEqual([{ level: 'advisory', title: 'Horn silenced', detail: 'until the levers go forward' }]);
});

test('a caution that waits to be noted, and whose the flying is', () => {
  expect(alertsOf({ ...quiet, talk: waits })).toEqual([{ level: 'caution', title: 'Cabin height rising', detail: 'note it' }]);
  expect(alertsOf({ ...quiet, talk: { ...waits, caution: null } })).toEqual([]);
  expect(alertsOf({ ...quiet, otherFlies: true })).toEqual([{ level: 'advisory', title: 'Other pilot flies', detail: 'speed, thrust, gear are theirs' }]);
});

test('several at once: warnings before cautions before what is only told, whatever comes together', () => {
  const rank = { warning: 0, caution: 1, advisory: 2 };
  fc.assert(fc.property(anything, (now) => {
    const ranks = alertsOf(now).map(({ level }) => rank[level]);
    expect(ranks).toEqual([...ranks].sort((a, b) => a - b));
  }));
});

test('blanked instruments say nothing', () => {
  fc.assert(fc.property(anything, (now) => { expect(alertsOf({ ...now, blank: true })).toEqual([]); }));
});
