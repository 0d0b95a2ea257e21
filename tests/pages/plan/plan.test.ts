// The words of the plan, its fields, and what of it goes along with a run and comes out beside it.
import { describe, expect, test } from 'vitest';
import { planItems, planOf, planRequestOf, withEntered, BLANK } from '../../../sim/index.js';
import { ready } from '../../../sim/files/index.js';
import { numberOf } from '../../../src/pages/plan/entry.js';
import { within } from '../../../src/pages/plan/given.js';
import { plannedFacts } from '../../../src/pages/plan/note.js';
import { differenceOf } from '../../../src/pages/plan/section.js';
import { offWords, toleranceWords, typeset, valueWords } from '../../../src/pages/plan/words.js';
import { airframe, flown } from '../flown.js';

const scenario = flown({ start: { flapDeg: 9 }, limitS: 20 }, []).record.scenario;
const plan = planOf({ ...planRequestOf(ready(scenario, airframe), airframe), altitudeFt: 2500 });
const items = planItems(plan);
const item = (id: string) => items.find((one) => one.id === id)!;

test('a figure as people type it', () => {
  const cases: [string, number | null][] = [
    ['191', 191], [' 26.5 ', 26.5], ['26,5', 26.5], ['4 200', 4200], ['0', 0], ['', null], ['-3', null], ['1e3', null], ['12a', null], ['1 2', null], ['1234567', null], ['1.2345', null],
  ];
  for (const [typed, value] of cases) expect(numberOf(typed), typed).toBe(value);
});

test('signs of the trade, and a figure with its unit on one line', () => {
  expect(typeset('1.23 x stall 108.5 = 133.4 kt; levers down to 12 deg; 133.4^2')).toBe('1.23 × stall 108.5 = 133.4\u00a0kt; levers down to 12°; 133.4²');
});

describe('how far off', () => {
  test('a figure: too much, too little, and a distance early or late', () => {
    const reference = item('referenceKt');
    const right = (reference as { right: number }).right;
    expect(offWords(reference, right + 4)).toBe('4\u00a0kt too much');
    expect(offWords(reference, right - 4)).toBe('4\u00a0kt too little');
    expect(offWords(reference, Math.round(right))).toBe('');
    const start = item('startByNm');
    expect(offWords(start, (start as { right: number }).right - 2)).toBe('2.0\u00a0NM too late');
    expect(offWords(start, (start as { right: number }).right + 2)).toBe('2.0\u00a0NM early');
    expect(toleranceWords(reference as never)).toBe('right within 1, near within 5\u00a0kt');
  });
  test('a list: what was left out, what was too many', () => {
    expect(offWords(item('failed'), ['flap drive', 'autopilot', 'leading edge', 'wheel brakes', 'ground spoilers'])).toBe('left out: nose-wheel steering; too many: autopilot');
    expect(valueWords(item('failed'), [])).toBe('none');
    expect(valueWords(item('order'), 'gearFirst')).toBe('gear, then the landing setting');
  });
});

test('a brief tells what stands in a plan, and leaves blanks out', () => {
  const planned = withEntered(withEntered(withEntered(BLANK, 'manoeuvre-9', 154), 'manoeuvre-0', 191), 'order', 'settingFirst');
  expect(plannedFacts(planned, airframe)).toEqual([['Manoeuvre speeds', 'up 191, 9 154'], ['Order', 'setting, then gear']]);
  expect(plannedFacts(BLANK, airframe)).toEqual([]);
});

test('a difference is flown less planned, with a sign that is a minus', () => {
  const base = { id: 'motorOnS', unit: 's', decimals: 0, shown: false };
  expect(differenceOf({ ...base, planned: 100, flown: 108.4 })).toBe('+8\u00a0s');
  expect(differenceOf({ ...base, planned: 100, flown: 92 })).toBe('−8\u00a0s');
  expect(differenceOf({ ...base, planned: 100, flown: 100.2 })).toBe('same');
  expect(differenceOf({ ...base, planned: 100, flown: null })).toBe('');
  expect(differenceOf({ ...base, id: 'continueKg', planned: 500, flown: 9 })).toBe('');
  expect(differenceOf({ ...base, planned: 'gearFirst', flown: 'settingFirst' })).toBe('other');
});

test('figures are brought inside what may be flown there', () => {
  const base = plan.request;
  expect(within({ ...base, massT: 5 }).massT).toBe(airframe.mass.emptyT);
  expect(within({ ...base, speedKt: 390 }).speedKt).toBe(218); // flaps stand at 9
  expect(within({ ...base, speedKt: 60 }).speedKt).toBe(117); // stall 112.7 and 3 %, rounded up
  expect(within({ ...base, fromDeg: 0, speedKt: 390, leadingEdge: 'out' }).speedKt).toBe(240);
  expect(within({ ...base, fromDeg: 4, leadingEdge: 'in' }).leadingEdge).toBe('out');
  expect(within({ ...base, altitudeFt: 900, groundFt: 2000 }).groundFt).toBe(400);
});
