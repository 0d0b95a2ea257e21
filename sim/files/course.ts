/** A course: drills and sets in an order, what each asks for before it opens, and when it counts as done. Never points. */
import * as z from 'zod/mini';
import { faultSchema } from './fault.js';
import { formatKey, name, quantity, schemaKey, text, whole, word } from './quantity.js';
import { scenarioSchema } from './scenario.js';
import { setSchema } from './set.js';

const asks = {
  caughtFrom: z.optional(quantity('Asked of the lower end of the exact 95 % interval of the share caught.', '1', 0.05, 0.99)),
  medianToDeg: z.optional(quantity('Asked of the upper end of the 95 % interval of the median split at release.', 'deg', 0.05, 40)),
  ninetyToDeg: z.optional(quantity('Asked of the upper end of the 95 % interval of the split below which nine in ten releases lie.', 'deg', 0.05, 40)),
  falseToPerMin: z.optional(quantity('Asked of the upper end of the 95 % interval of false releases a minute of quiet holding.', '1/min', 0.01, 20)),
};
/** The keys of a gate that ask for a figure. */
export type AskKey = keyof typeof asks;
const ASK_KEYS = Object.keys(asks) as AskKey[];

const gate = z.strictObject({
  flights: z._default(whole('Flights of the set that are judged together: the first so many, then the next, each flight once.', '1', 1, 6), 1),
  ...asks,
  source: text('Where the asked figures come from, printed beside them.', 300),
}).check(z.refine((of) => ASK_KEYS.some((key) => of[key] !== undefined), { error: `at least one of ${ASK_KEYS.join(', ')}` }));

const step = z.strictObject({
  name: name('Name of the step inside the file; `needs` refers to it.'),
  teaches: text('What the step teaches, for the trainee: no fault, no moment.', 200),
  drill: z.optional(z.union([name('Name of a shipped drill.'), scenarioSchema]).check(z.meta({ description: 'What is flown: name of a shipped drill, or a scenario in full. This or `set`.' }))),
  set: z.optional(z.union([name('Name of a shipped set.'), setSchema]).check(z.meta({ description: 'What is flown: name of a shipped set, or a set in full. This or `drill`.' }))),
  needs: z._default(z.array(name('Name of an earlier step.')).check(z.maxLength(20), z.meta({ description: 'Steps that must be done before this one opens.' })), []),
  done: z._default(word('When it counts as done. flown: to its end; passed: once; passedTwice: in two runs behind each other with different seeds.', ['flown', 'passed', 'passedTwice']), 'flown'),
  gate: z.optional(gate.check(z.meta({ description: 'Of a set of the true drive: what its figures must show as well.' }))),
});

const firstLook = z.strictObject({
  fault: faultSchema.check(z.meta({ description: 'What comes without notice, in a run announced as another.' })),
  among: z.array(name('Name of a step that is a drill without a fault.')).check(z.minLength(3), z.maxLength(12), z.meta({ description: 'The holds among which the dice choose one. At least 3.' })),
});

/** A course file. Whether a step can show what its gate asks is looked at behind it. */
export const courseSchema = z.strictObject({
  ...schemaKey,
  ...formatKey,
  title: text('Name of the course, for everyone.', 120),
  brief: text('What the course is for, told to the trainee.', 2000),
  notes: z.optional(text("The instructor's notes; the trainee never sees them.", 8000)),
  order: z.optional(whole('Place among the shipped courses, from 1.', '1', 1, 999)),
  steps: z.array(step).check(z.minLength(1), z.maxLength(60), z.meta({ description: 'The steps, in order.' })),
  firstLook: z.optional(firstLook.check(z.meta({ description: 'A fault that nobody announces. Its result stands apart from every figure.' }))),
}).check(z.meta({ id: 'course', description: 'A course: drills and sets in order, with what each needs and when it is done.' }));

/** A course file after the door. */
export type CourseFile = z.infer<typeof courseSchema>;
/** One step, defaults filled in; the door has made sure that it has either a drill or a set. */
export type CourseStep = CourseFile['steps'][number];
/** What a step asks of the figures of its set; at least one bound is there. */
export type GateFile = NonNullable<CourseStep['gate']>;
