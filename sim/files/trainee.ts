/** A trainee file: a scripted trainee by name, with some of its numbers changed. */
import * as z from 'zod/mini';
import { TRAINEE_NUMBERS, TRAINEES, type TraineeName, type TraineeNumbers } from '../trainee/numbers.js';
import { formatKey, quantity, schemaKey, text, word } from './quantity.js';

const changed = (description: string, unit: string, min: number, max: number) => z.optional(quantity(description, unit, min, max));

/** A trainee file: a scripted trainee by name, with numbers that differ. */
export const traineeSchema = z.strictObject({
  ...schemaKey, ...formatKey,
  trainee: word('The scripted trainee whose numbers hold where this file says nothing.', TRAINEES as readonly [TraineeName, ...TraineeName[]]),
  title: z.optional(text('A name for people.', 120)),
  sees: z.optional(word('What the eye compares: the pointers with each other, or with how they stood at the first press.', ['split', 'change'])),
  thresholdDeg: changed('What the eye needs, median over people.', 'deg', 0.01, 20),
  thresholdLogSd: changed('Log-sd of it between people.', '1', 0, 2),
  reactionS: changed('From there until the hand is off, median over people.', 's', 0, 60),
  reactionLogSd: changed('Log-sd of it between people.', '1', 0, 2),
  spread: changed('Log-sd of both from run to run.', '1', 0, 2),
  lapse: changed('Chance a run that nothing is noticed.', '1', 0, 1),
  hurries: z.optional(z.boolean().check(z.meta({ description: 'Waits for no speed, no lever, no leading edge, no height, and reads no list.' }))),
  falsePerMin: changed('Releases without cause, a minute of holding.', '1/min', 0, 60),
}).check(z.meta({ id: 'trainee', description: 'A scripted trainee with some numbers changed.' }));

/** A trainee file after the door. */
export type TraineeFile = z.infer<typeof traineeSchema>;

/** The numbers that a trainee file comes to. */
export function numbersOf(file: TraineeFile): TraineeNumbers {
  const base: TraineeNumbers = TRAINEE_NUMBERS[file.trainee];
  const { sees, thresholdDeg, thresholdLogSd, reactionS, reactionLogSd, spread, lapse, falsePerMin, hurries } = file;
  return {
    sees: sees ?? base.sees,
    thresholdDeg: thresholdDeg ?? base.thresholdDeg, thresholdLogSd: thresholdLogSd ?? base.thresholdLogSd,
    reactionS: reactionS ?? base.reactionS, reactionLogSd: reactionLogSd ?? base.reactionLogSd,
    spread: spread ?? base.spread, lapse: lapse ?? base.lapse, falsePerMin: falsePerMin ?? base.falsePerMin,
    hurries: hurries ?? base.hurries,
  };
}
