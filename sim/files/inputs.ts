/** An inputs file: what a hand does in a run flown without a page, in rising time. */
import * as z from 'zod/mini';
import { actSchema } from './act.js';
import { time } from './quantity.js';
import { LONGEST_S } from './trigger.js';

/** An inputs file: acts of a hand with their time of the run in s, rising, at most 20000. */
export const inputsSchema = z.array(actSchema({ atS: time('Time of the run.', 0, LONGEST_S) })).check(
  z.maxLength(20000),
  z.refine((inputs) => inputs.every((input, index) => index === 0 || input.atS >= (inputs[index - 1]?.atS ?? 0)), {
    error: 'times in rising order',
  }),
);

/** The acts of an inputs file, each with its time in seconds. */
export type Inputs = z.infer<typeof inputsSchema>;
