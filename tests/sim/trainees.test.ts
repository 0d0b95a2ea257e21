/**
 * Each shipped drill against the scripted trainees it names. Those who are sure (prompt, slow, never) pass or fail as
 * stated: pass with every seed, fail with some. Those who are drawn (early, steady, loaded) pass or fail often: three
 * in four, one in four.
 */
import { readdirSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { flyTrainee, TRAINEES, type TraineeName } from '../../sim/index.js';
import { airframeOf, drill } from './bench.js';

const SEEDS = Array.from({ length: 8 }, (_, index) => index + 1);
const MANY = Array.from({ length: 16 }, (_, index) => index + 1);
const isDrawn = (trainee: TraineeName): boolean => ['early', 'steady', 'loaded'].includes(trainee);
const names = readdirSync(new URL('../../scenarios/drills', import.meta.url)).map((file) => file.replace('.json', ''));
const drills = names.map((name) => ({ name, made: drill(name) }));

it('drills are numbered from 1 on, and each has a skill of its own', () => {
  expect(drills.map(({ made }) => made.order).sort((a, b) => (a ?? 0) - (b ?? 0))).toEqual(drills.map((_, index) => index + 1));
  const skills = drills.map(({ made }) => made.skill);
  expect(new Set(skills).size).toBe(drills.length);
  expect(skills).not.toContain(undefined);
});

describe.each(drills)('$name', ({ made }) => {
  const part = (trainee: TraineeName, failed: boolean): number => {
    const seeds = isDrawn(trainee) ? MANY : SEEDS;
    return seeds.filter((seed) => (flyTrainee(made, airframeOf(made), seed, trainee).flight.passed === false) === failed).length / seeds.length;
  };
  it('names trainees on both sides', () => {
    for (const list of [made.passes ?? [], made.fails ?? []]) {
      expect(list.length).toBeGreaterThan(0);
      for (const trainee of list) expect(TRAINEES).toContain(trainee);
    }
  });
  it.each((made.passes ?? []) as TraineeName[])('%s passes', (trainee) => {
    expect(part(trainee, false)).toBeGreaterThanOrEqual(isDrawn(trainee) ? 0.75 : 1);
  });
  it.each((made.fails ?? []) as TraineeName[])('%s fails', (trainee) => {
    expect(part(trainee, true)).toBeGreaterThanOrEqual(isDrawn(trainee) ? 0.25 : 1 / SEEDS.length);
  });
});
