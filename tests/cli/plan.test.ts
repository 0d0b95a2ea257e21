// The plan as it is typed: one object in the shape that help prints, and a text that is read beside the one that was looked at.
import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { planOutput } from '../../sim/files/index.js';
import { json, type } from './typed.js';

const NOMINAL = 'scenarios/runs/nominal.json';

test('the nominal run’s plan reads as it was looked at', async () => {
  const { code, out, err } = await type('plan', NOMINAL);
  expect([code, err]).toEqual([0, '']);
  expect(out).toBe(readFileSync(new URL('plan-nominal.txt', import.meta.url), 'utf8'));
});

test('--json: the same figures, in the shape of --help', async () => {
  const { code, value } = await json(planOutput, 'plan', NOMINAL);
  expect(code).toBe(0);
  expect(value.steps.map(({ settingDeg }) => settingDeg)).toEqual([4, 9, 16]);
  expect(value.motorOnS).toBeCloseTo(value.steps.reduce((sum, { motorOnS }) => sum + motorOnS, 0), 9);
  expect(value.fuel.continueKg).toBe(value.fuel.holdKg + value.fuel.approachKg);
  expect(value.horn).toHaveLength(4);
  expect(new Set(value.items.map(({ id }) => id)).size).toBe(value.items.length);
  for (const { sum } of value.items) expect(sum.length).toBeGreaterThan(10);
  const help = await type('plan', '--help');
  expect(help.out).toContain('evenhand plan first-touch');
  expect(help.out).toContain('horn[].spans[].silenceable');
});

test.each([['plan', 'no-such-drill'], ['plan', 'standard-calm'], ['plan']])('wrong: %s %s', async (...words) => {
  const { code, out } = await type(...words);
  expect([code, out]).toEqual([2, '']);
});
