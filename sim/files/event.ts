/** What the outside does in a scenario: flight path, speed, engines, words. */
import * as z from 'zod/mini';
import { name, quantity, text, time, word } from './quantity.js';
import { repeats, triggerSchema } from './trigger.js';

const common = { name: z.optional(name('Name of the event inside the file.')), when: triggerSchema, ...repeats };
const from = z.optional(word('Who speaks; nobody is named if left out.', ['controller', 'otherPilot', 'cabin']));
const act = <const K extends string>(value: K, description: string) => z.literal(value).check(z.meta({ description }));

export const eventSchema = z.discriminatedUnion('do', [
  z.strictObject({
    ...common, do: act('descend', 'Descends to a height along a straight path; levels off at once where it is below already.'),
    toFt: quantity('Height above sea level to level off at.', 'ft', -2000, 26000),
    pathDeg: quantity('Path angle, negative down.', 'deg', -6, -0.5),
  }),
  z.strictObject({ ...common, do: act('level', 'Levels off at once.') }),
  z.strictObject({ ...common, do: act('selectSpeed', 'Selects a speed; the levers follow only while the speed hold is on.'), speedKt: quantity('Speed.', 'kt', 60, 400) }),
  z.strictObject({ ...common, do: act('failEngine', 'Stops an engine for good.'), side: word('Which engine.', ['left', 'right', 'drawn']) }),
  z.strictObject({ ...common, do: act('message', 'Shows a text to the trainee: 0.6 s a word, 8 s at the least, behind open callouts.'), from, text: text('The text.', 400) }),
  z.strictObject({
    ...common, do: act('callout', 'A question with answers to choose from; the time runs from when it acts.'), from, text: text('The text.', 400),
    answers: z.array(text('An answer to choose.', 80)).check(z.minLength(2), z.maxLength(6)),
    right: text('The right one of the answers.', 80), withinS: time('Time allowed.', 1, 120),
  }).check(z.refine((event) => event.answers.includes(event.right), { error: 'right must be one of answers', path: ['right'] })),
  z.strictObject({ ...common, do: act('tellGoAround', 'The trainee is told to go around.'), from, text: text('The text.', 400), withinS: time('Time allowed.', 1, 120) }),
  z.strictObject({
    ...common, do: act('clearHeading', 'The trainee is cleared to a heading and selects it.'), from, text: text('The text.', 400),
    toDeg: quantity('Heading.', 'deg', 1, 360), withinS: time('Time allowed.', 1, 120),
  }),
  z.strictObject({
    ...common, do: act('clearAltitude', 'The trainee is cleared to a height and selects it.'), from, text: text('The text.', 400),
    toFt: quantity('Height above sea level.', 'ft', -2000, 26000), withinS: time('Time allowed.', 1, 120),
  }),
  z.strictObject({ ...common, do: act('caution', 'A caution that the trainee is to notice and note.'), text: text('The text.', 80), withinS: time('Time allowed.', 1, 120) }),
  z.strictObject({ ...common, do: act('setGear', 'Moves the gear lever; the gear takes the time of the airframe.'), to: word('Where to.', ['up', 'down']) }),
  z.strictObject({ ...common, do: act('loseMainDrive', 'The normal flap drive is lost.') }),
  z.strictObject({ ...common, do: act('returnMainDrive', 'The normal flap drive comes back and takes the flaps to the lever, unless the standby drive is armed.') }),
  z.strictObject({
    ...common, do: act('clearFault', 'Ends a fault that has acted: what has parted stays parted, and the fault does no more. Changes nothing before it has acted.'),
    fault: name('Name of the fault. Only lag, slip, pointer, dead, slow, runsOn and leadingEdge can end.'),
  }),
  z.strictObject({ ...common, do: act('freeze', 'Stops the clock, instruments stay; the trainee goes on. Not in a scored run.') }),
]);

/** One event of a scenario file. */
export type ScenarioEvent = z.infer<typeof eventSchema>;
