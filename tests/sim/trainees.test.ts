/** Each shipped drill against the scripted trainees it names: those it says pass, pass; those it says fail, fail. */
import { readdirSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { flyTrainee, TRAINEES, type TraineeName } from '../../sim/index.js';
import { AIRFRAME, drill } from './bench.js';

const SEEDS = [1, 2, 3, 4, 5, 6, 7, 8];
/** Undecided is no failure: the leg ended before the split could reach the limit. */
const FAILED = ['late', 'missed', 'falseRelease', 'lost', 'timeUp', 'void'];
const names = readdirSync(new URL('../../scenarios/drills', import.meta.url)).map((file) => file.replace('.json', ''));

describe.each(names)('%s', (name) => {
  const flown = drill(name);
  const outcomes = (trainee: string): string[] =>
    SEEDS.map((seed) => flyTrainee(flown, AIRFRAME, seed, trainee as TraineeName).flight.outcome);

  it('names trainees that exist', () => {
    for (const trainee of [...flown.passes ?? [], ...flown.fails ?? []]) expect(TRAINEES).toContain(trainee);
  });
  it.each(flown.passes ?? [])('%s passes with every seed', (trainee) => {
    for (const outcome of outcomes(trainee)) expect(FAILED).not.toContain(outcome);
  });
  it.each(flown.fails ?? [])('%s fails with some seed', (trainee) => {
    expect(outcomes(trainee).some((outcome) => FAILED.includes(outcome))).toBe(true);
  });
});
