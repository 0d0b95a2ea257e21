/**
 * What a running drill and the desks beside it say to each other: one strict shape a message. Whatever does not fit is
 * dropped at the door. No message carries a time: a desk's act is stamped where the run is, when it arrives.
 */
import * as z from 'zod/mini';
import { airframeSchema } from './airframe.js';
import { deskActSchema, gradesSchema } from './desk-act.js';
import { name, text, whole, word } from './quantity.js';
import { commandSchema, recordSchema } from './record.js';
import { scenarioSchema } from './scenario.js';

const common = { from: name('Who sends it: the run, or a desk.') };
const kind = <const K extends string>(value: K, description: string) => ({ kind: z.literal(value).check(z.meta({ description })) });
const MOST_TICKS = 400_000;
const tick = whole('Ticks done.', 'tick', 0, MOST_TICKS);
const number = whole('Which one: counted up from 1 by whoever sends it.', '1', 1, 1e9);
const stands = word('How the clock stands.', ['runs', 'frozen', 'paused']);
const commands = z.array(commandSchema).check(z.maxLength(50000), z.meta({ description: 'Acts as they are filed, in any order.' }));

/** In the lobby, where runs and desks of this machine find each other. */
export const lobbySchema = z.discriminatedUnion('kind', [
  z.strictObject({ ...common, ...kind('seek', 'Which runs are there?') }),
  z.strictObject({
    ...common, ...kind('here', 'A run is here.'), title: text('Its name.', 80), stage: word('How far it is.', ['flown', 'over']),
    closed: z.nullable(text('Why no desk may join; null: one may.', 200)),
  }),
  z.strictObject({ ...common, ...kind('gone', 'The run has left.') }),
]);

/** In the room of a run. */
export const roomSchema = z.discriminatedUnion('kind', [
  // From a desk.
  z.strictObject({ ...common, ...kind('join', 'A desk comes, or wants to be told everything anew.') }),
  z.strictObject({ ...common, ...kind('beat', 'The desk is still there.') }),
  z.strictObject({ ...common, ...kind('leave', 'The desk goes.') }),
  z.strictObject({ ...common, ...kind('act', 'The desk does something.'), number, act: deskActSchema }),
  z.strictObject({ ...common, ...kind('grades', "The instructor's grades as they stand."), number, grades: gradesSchema }),
  // From the run.
  z.strictObject({
    ...common, ...kind('snapshot', 'All of the run so far.'), number, model: whole('Version of the model.', '1', 1, 1000), title: text('Its name.', 80),
    seed: whole('Seed of the dice.', '1', 0, 4294967295), airframe: airframeSchema, scenario: scenarioSchema, tick, stands, commands,
  }),
  z.strictObject({ ...common, ...kind('step', 'How far the run is now.'), number, tick, stands, commands }),
  z.strictObject({
    ...common, ...kind('answer', 'What came of an act.'), to: name('Which desk.'), number,
    tick: z.nullable(tick), refused: z.nullable(text('Why not; null: taken.', 200)),
  }),
  z.strictObject({ ...common, ...kind('over', 'The run is over.'), record: recordSchema }),
  z.strictObject({ ...common, ...kind('gone', 'The run has left.') }),
]);

/** Told apart by `kind`; heard by every run and desk of the machine. */
export type LobbyMessage = z.infer<typeof lobbySchema>;
/** Told apart by `kind`; heard by one run and the desks beside it. */
export type RoomMessage = z.infer<typeof roomSchema>;
