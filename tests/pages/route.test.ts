// Addresses and sums of the pages that need no page.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { at, line, thin, ticks } from '../../src/charts/plot.js';
import { fragmentOf, routeOf } from '../../src/pages/route.js';

test('addresses', () => {
  expect(routeOf('')).toEqual({ page: 'choose' });
  expect(routeOf('#/')).toEqual({ page: 'choose' });
  expect(routeOf('#/drill/2')).toEqual({ page: 'brief', number: 2, seed: null });
  expect(routeOf('#/drill/2/run?seed=7')).toEqual({ page: 'run', number: 2, seed: 7 });
  expect(routeOf('#/drill/2/say')).toEqual({ page: 'say', number: 2, seed: null });
  expect(routeOf('#/debrief')).toEqual({ page: 'debrief' });
  expect(routeOf(fragmentOf({ page: 'settings' }))).toEqual({ page: 'settings' });
  expect(routeOf('#/course')).toEqual({ page: 'courses' });
  expect(routeOf(fragmentOf({ page: 'class' }))).toEqual({ page: 'class' });
  expect(routeOf('#/course/2')).toEqual({ page: 'course', course: 2 });
  for (const page of ['step', 'step-run', 'step-say', 'step-plan'] as const) expect(routeOf(fragmentOf({ page, course: 2, step: 13 }))).toEqual({ page, course: 2, step: 13 });
  expect(routeOf(fragmentOf({ page: 'plan' }))).toEqual({ page: 'plan' });
  const id = '0123456789abcdef0123456789abcdef';
  for (const page of ['own', 'own-run', 'own-say', 'own-plan'] as const) expect(routeOf(fragmentOf({ page, id }))).toEqual({ page, id });
  expect(routeOf('#/own?s=Az09-_')).toEqual({ page: 'own-link', code: 'Az09-_' });
  expect(routeOf(fragmentOf({ page: 'own-link', code: 'Az09-_' }))).toEqual({ page: 'own-link', code: 'Az09-_' });
});

test('a page that its name leads to is read back from it', () => {
  for (const page of ['choose', 'debrief', 'settings', 'size', 'switches', 'timing', 'logbook', 'person', 'plan', 'desk', 'practice', 'practice-run', 'courses', 'class'] as const) expect(routeOf(fragmentOf({ page })), page).toEqual({ page });
  expect(fragmentOf({ page: 'choose' })).toBe('#/');
  expect(fragmentOf({ page: 'practice-run' })).toBe('#/practice/run');
});

test.each(['#/drill/0', '#/drill/x', '#/drill/1/end', '#/nothing', '#/drill/1/run/more', '#/drill/99999', '#/course/0', '#/course/1/0', '#/course/1/1/end', '#/course/x', '#/own/0123', '#/own/0123456789ABCDEF0123456789abcdef', '#/own/0123456789abcdef0123456789abcdef/end'])('%s is no page', (fragment) => {
  expect(routeOf(fragment)).toEqual({ page: 'nowhere' });
});

test('a seed that is none is left out', () => {
  for (const seed of ['-1', '4294967296', '1e3', '', 'x']) expect(routeOf(`#/drill/1?seed=${seed}`)).toMatchObject({ seed: null });
  expect(routeOf('#/drill/1?seed=4294967295')).toMatchObject({ seed: 4294967295 });
});

test('every address leads back to its page', () => {
  const drill = fc.record({ page: fc.constantFrom('brief' as const, 'run' as const, 'say' as const, 'drill-plan' as const), number: fc.integer({ min: 1, max: 9999 }), seed: fc.option(fc.integer({ min: 0, max: 0xffffffff })) });
  fc.assert(fc.property(drill, (route) => { expect(routeOf(fragmentOf(route))).toEqual(route); }));
});

test('round figures beside a scale', () => {
  expect(ticks({ from: 0, to: 2.5 }, 3)).toEqual([0, 1, 2]);
  expect(ticks({ from: 4, to: 8 }, 4)).toEqual([4, 5, 6, 7, 8]);
  expect(ticks({ from: 0, to: 0.9 }, 3)).toEqual([0, 0.5]);
  expect(ticks({ from: 3, to: 3 }, 4)).toEqual([3]);
});

test('a scale is straight, and a hold on a straight line is two points', () => {
  expect(at({ from: 0, to: 10, start: 100, end: 0 }, 2.5)).toBe(75);
  expect(thin([[0, 5], [1, 5], [2, 5], [3, 5], [4, 9]])).toEqual([[0, 5], [3, 5], [4, 9]]);
  expect(line([[0, 1], [2.346, 3]])).toBe('M0.00 1.00L2.35 3.00');
});
