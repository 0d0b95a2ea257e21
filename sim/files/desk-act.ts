/** What a desk does in a live run: one strict shape an act. A desk has no hand on the switch, and a trainee none of these. */
import * as z from 'zod/mini';
import { sharedShapes } from './act.js';
import { deskFaultSchema } from './fault.js';
import { name, quantity, text, time, whole, word } from './quantity.js';
import { LONGEST_S } from './trigger.js';

const act = <const K extends string>(value: K, description: string) => ({ do: z.literal(value).check(z.meta({ description })) });
const fault = name('Name of a fault, of the scenario or put in by hand.');
const LONGEST_TICKS = LONGEST_S * 100;
const from = z.optional(word('Who speaks; nobody is named if left out.', ['controller', 'otherPilot', 'cabin']));
const said = { from, text: text('The text.', 400) };
const withinS = time('Time allowed.', 1, 120);

const offersRight = (callout: object): boolean => {
  const { answers, right } = callout as { answers: string[]; right: string };
  return answers.includes(right);
};

/** Acts of a desk alone, each shape with the keys of `when` added in front. */
export function deskShapes<const When extends Record<string, z.ZodMiniType>>(when: When) {
  return [
    z.strictObject({ ...when, ...act('injectFault', 'Puts a fault in: now, or armed on a condition.'), fault: deskFaultSchema }),
    z.strictObject({ ...when, ...act('disarmFault', 'A fault that has not acted will not.'), name: fault }),
    z.strictObject({ ...when, ...act('clearFault', 'Mends what a fault has broken; sides stay where they are.'), name: fault }),
    z.strictObject({ ...when, ...act('clearFaults', 'Mends everything and disarms what is armed.') }),
    z.strictObject({ ...when, ...act('failEngine', 'Stops an engine.'), side: word('Which engine.', ['left', 'right']) }),
    z.strictObject({ ...when, ...act('loseMainDrive', 'The normal flap drive is lost.') }),
    z.strictObject({ ...when, ...act('returnMainDrive', 'The normal flap drive comes back.') }),
    z.strictObject({ ...when, ...act('message', 'Shows a text to the trainee.'), text: text('The text.', 400) }),
    z.strictObject({
      ...when, ...act('callout', 'A workload task with an answer.'), ...said,
      answers: z.array(text('An answer to choose.', 80)).check(z.minLength(2), z.maxLength(6)),
      right: text('The right one of the answers.', 80), withinS,
    }).check(z.refine(offersRight, { error: 'right must be one of answers', path: ['right'] })),
    z.strictObject({ ...when, ...act('clearHeading', 'Clears the trainee to a heading, to be selected.'), ...said, toDeg: quantity('Heading.', 'deg', 1, 360), withinS }),
    z.strictObject({ ...when, ...act('clearAltitude', 'Clears the trainee to a height, to be selected.'), ...said, toFt: quantity('Height above sea level.', 'ft', -2000, 26000), withinS }),
    z.strictObject({ ...when, ...act('tellGoAround', 'Tells the trainee to go around.'), ...said, withinS }),
    z.strictObject({ ...when, ...act('caution', 'A caution that the trainee is to notice and note.'), text: text('The text.', 80), withinS }),
    z.strictObject({ ...when, ...act('say', 'Says something as another would.'), from: word('Who says it.', ['otherPilot', 'controller']), text: text('What is said.', 400) }),
    z.strictObject({ ...when, ...act('remark', 'A remark for the debrief.'), label: text('A few words.', 40), text: z.optional(text('More of it.', 400)) }),
    z.strictObject({ ...when, ...act('saveMoment', 'Keeps the moment, to come back to.'), label: text('A few words.', 40) }),
    z.strictObject({ ...when, ...act('prompted', 'The instructor has prompted: the run enters no estimate.') }),
    z.strictObject({ ...when, ...act('freeze', 'Stops the clock; the instruments stay.') }),
    z.strictObject({ ...when, ...act('goOn', 'The clock goes on.') }),
    z.strictObject({ ...when, ...act('reposition', 'The state of an earlier tick returns; the tick of the run goes on.'), toTick: whole('That tick.', 'tick', 0, LONGEST_TICKS) }),
    z.strictObject({ ...when, ...act('voidRun', 'Ends the run; it does not count.'), reason: text('Why.', 200) }),
  ] as const;
}

/** An act of a desk without its time, as a desk sends it. */
export const deskActSchema = z.discriminatedUnion('do', [...deskShapes({}), ...sharedShapes({})]);
/** What a desk may send, told apart by `do`; its tick is given where the run is. */
export type DeskAct = z.infer<typeof deskActSchema>;

/** The instructor's own grade of a run: kept apart from what the machine says of it. */
export const gradesSchema = z.strictObject({
  grades: z.array(z.strictObject({
    item: text('What is graded.', 80),
    anchor: whole('1 unsafe, 2 below the standard, 3 at it, 4 above it, 5 exemplary.', '1', 1, 5),
    note: z.optional(text('Why.', 400)),
  })).check(z.maxLength(20), z.refine((grades) => new Set(grades.map(({ item }) => item)).size === grades.length, { error: 'each item once' })),
  note: z.optional(text('Of the whole run.', 2000)),
});
/** An instructor's grades, 1 to 5 an item; kept with the record, outside its hash, and no part of any figure. */
export type Grades = z.infer<typeof gradesSchema>;
/** Words by which a desk is known in the record of a run. */
export const deskName = name('Which desk.');
