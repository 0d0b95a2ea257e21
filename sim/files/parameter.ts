/** A number that is set before the run: declared once with its range, and taken wherever the file says so. */
import * as z from 'zod/mini';
import { text } from './quantity.js';

const FAR = 1e6;
const number = (description: string, min = -FAR) => z.number().check(z.gte(min), z.lte(FAR), z.meta({ description, unit: '1' }));

const parameterSchema = z.strictObject({
  name: z.string().check(
    z.regex(/^[a-zA-Z][a-zA-Z0-9]{0,31}$/, 'a letter, then letters and digits, at most 32 in all'),
    z.meta({ description: 'Its name; a number of the file takes it as { "parameter": "name" }.' }),
  ),
  default: number('Taken where nobody sets it and it is not drawn.'),
  min: number('The least it may be set to; every number that takes it must allow it.'),
  max: number('The most; likewise.'),
  step: z.optional(number('Distance between the values that are offered, and that are drawn, from min on; 0.01 if left out.', 1e-6)),
  unit: z.optional(text('Unit for people, as in key names: deg, kt, s.', 12)),
  meaning: z.optional(text('What it means, for whoever sets it.', 200)),
  drawn: z.optional(z.boolean().check(z.meta({ description: 'Drawn by the seed of a run where nobody sets it: every value from min to max in steps, all alike likely.' }))),
}).check(
  z.refine((one) => one.min <= one.max, { error: 'at least min', path: ['max'] }),
  z.refine((one) => one.default >= one.min && one.default <= one.max, { error: 'from min to max', path: ['default'] }),
);

/** A parameter of a scenario file. */
export type Parameter = z.infer<typeof parameterSchema>;

/** Most parameters of a file: every two of them are tried together at their ends. */
const MOST_PARAMETERS = 8;

export const parametersSchema = z.array(parameterSchema).check(
  z.maxLength(MOST_PARAMETERS),
  z.superRefine((list, context) => list.forEach(({ name }, index) => {
    if (list.findIndex((other) => other.name === name) < index) context.addIssue({ code: 'custom', path: [index, 'name'], message: 'a name used once', input: name });
  })),
  z.meta({ description: 'Numbers that are set before a run. Wherever the file holds a number, { "parameter": "name" } may stand instead.' }),
);
