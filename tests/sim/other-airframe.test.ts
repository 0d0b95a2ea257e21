/**
 * The shipped drills on Airframe B, which is small and quick and has three settings: all fit it once their stops, speeds
 * and times of holding are put into its terms, and whoever passes them on A passes them there.
 */
import { readdirSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { flyTrainee } from '../../sim/index.js';
import { AIRFRAME, AIRFRAME_B, drill } from './bench.js';
import { transposed } from './transposed.js';

const names = readdirSync(new URL('../../scenarios/drills', import.meta.url)).map((file) => file.replace('.json', ''))
  .filter((name) => drill(name).airframe === 'airframe-a');
const onB = names.map((name) => ({ name, made: transposed(drill(name), AIRFRAME, AIRFRAME_B) }));

/** A side driven back on a drive five times as quick is past B's limit before a hand that waits a second behind one degree. */
const TOO_QUICK = 'opens-fast';

it('every drill of A fits B', () => expect(onB.filter(({ made }) => made === null)).toEqual([]));

describe.each(onB)('$name', ({ name, made }) => {
  it.each([1, 2, 3])(`flown by prompt, seed %d: ${name === TOO_QUICK ? 'late' : 'no failure'}`, (seed) => {
    if (made === null) throw new Error('it does not fit');
    const { outcome, passed, ticks } = flyTrainee(made, AIRFRAME_B, seed, 'prompt').flight;
    expect(ticks).toBeLessThanOrEqual(made.task.limitS * 100 + 1);
    if (name === TOO_QUICK) expect(outcome).toBe('late');
    else expect(passed, outcome).not.toBe(false);
  });
});

it('a stop between two of a drill’s own keeps its place between two settings: 13 of 9 to 16 is 15.71 of 10 to 20', () => {
  const made = transposed(drill('to-the-list'), AIRFRAME, AIRFRAME_B);
  expect(made?.start.flapDeg).toBe(10);
  expect(made?.task.settings).toEqual([20]);
  expect(made?.faults[0]?.when.flapDeg).toBeCloseTo(10 + 4 / 7 * 10, 2);
});
