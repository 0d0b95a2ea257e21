// Trainee files: what they change and what they leave, and that a wrong one tells its places.
import { expect, test } from 'vitest';
import { numbersOf, tryAs, traineeSchema } from '../../sim/files/index.js';
import { flyTrainee, TRAINEE_NUMBERS, TRAINEES } from '../../sim/index.js';
import { readAny, readTrainee } from '../../src/text/index.js';
import { AIRFRAME, scenario } from '../sim/bench.js';
import { lookup } from './shipped.js';

test.each(TRAINEES)('a file that changes nothing is %s itself', (trainee) => {
  const read = tryAs(traineeSchema, { format: 1, trainee });
  expect(read.ok && numbersOf(read.value)).toEqual(TRAINEE_NUMBERS[trainee]);
});

test('what it says holds, zero as well; the rest stays', () => {
  const read = readTrainee('{ "format": 1, "trainee": "loaded", "falsePerMin": 0, "lapse": 0, "thresholdDeg": 0.4 }', 'sharp.json');
  expect(read.ok && numbersOf(read.value)).toEqual({ ...TRAINEE_NUMBERS.loaded, falsePerMin: 0, lapse: 0, thresholdDeg: 0.4 });
});

test('flies: a prompt hand with three seconds of reaction lets go three seconds behind one degree', () => {
  const made = scenario({ faults: [{ name: 'f', kind: 'disconnect', side: 'left', when: { heldS: 5 } }], recognition: {} });
  const letGo = (reactionS: number): number => flyTrainee(made, AIRFRAME, 1, { ...TRAINEE_NUMBERS.prompt, reactionS }).flight.score.releaseS ?? NaN;
  expect(letGo(3) - letGo(1)).toBeCloseTo(2, 9);
});

test('a wrong file tells every place', () => {
  const read = readAny('{\n  "format": 1,\n  "trainee": "nobody",\n  "lapse": 2,\n  "speed": 1\n}', 't.json', lookup);
  expect(read.ok ? [] : read.problems.map(({ line, path }) => [line, path])).toEqual([[3, 'trainee'], [4, 'lapse'], [5, 'speed']]);
});
