/**
 * What commands print with --json: one schema a command, from which --help prints the shape and against which tests hold
 * what is printed. Lower-camel words, null for "none", times in seconds.
 */
import * as z from 'zod/mini';
import { quantity, text, whole, word } from './quantity.js';
import { ITEM_UNITS, PROCEDURE_ITEMS } from '../score/items/item.js';
import { OUTCOMES } from './record.js';
import { setFigures } from './set-output.js';
import { LONGEST_S } from './trigger.js';

const said = (description: string) => z.string().check(z.meta({ description }));
const flag = (description: string) => z.boolean().check(z.meta({ description }));
const number = (description: string, unit: string) => z.number().check(z.meta({ description, unit }));
const none = <T extends z.ZodMiniType>(schema: T) => z.nullable(schema);
const at = quantity('Time of the run.', 's', 0, LONGEST_S + 1);

const problem = z.strictObject({
  file: said('As named on the command line.'),
  line: whole('From 1.', '1', 1, 2e6),
  column: whole('From 1, in characters.', '1', 1, 2e6),
  path: said('Where in the file: start.speedKt; empty for the file as a whole.'),
  found: said('What stands there.'),
  allowed: said('What may stand there.'),
});
const problems = z.array(problem).check(z.meta({ description: 'In the order of the files; at most 200 a file.' }));
const more = whole('Problems that are not listed.', '1', 0, 1e9);

const event = z.strictObject({
  atS: at, what: said('What happened.'), name: none(said('Name of the fault.')), deg: none(number('Setting.', 'deg')),
});
const item = z.strictObject({
  item: word('What was looked at.', PROCEDURE_ITEMS), ok: none(flag('null: the run never asked for it.')), atS: none(at),
  value: none(z.number().check(z.meta({ description: 'What was measured there.' }))), limit: none(z.number().check(z.meta({ description: 'What it is held against.' }))),
  unit: none(word('Of both; 1 for a count.', ITEM_UNITS)),
});

const row = z.strictObject({
  atS: at,
  leftDeg: number('True travel.', 'deg'), rightDeg: number('True travel.', 'deg'),
  leftPointerDeg: number('Pointer.', 'deg'), rightPointerDeg: number('Pointer.', 'deg'),
  rateDegPerS: number('Rate of the drive, extend positive.', 'deg/s'),
  speedKt: number('Calibrated airspeed.', 'kt'), altitudeFt: number('Height above sea level.', 'ft'),
  tlaDeg: number('Lower live thrust lever.', 'deg'), horn: flag('The gear horn sounds.'),
  leadingEdge: word('Leading edge.', ['in', 'moving', 'out']), gear: word('Gear.', ['up', 'moving', 'down']),
  motorHeat: number('1 is the cut-out.', '1'), rollAuthorityPct: number('Roll authority used.', '%'),
  bankDeg: number('Bank, right positive.', 'deg'),
});

const flown = {
  scenario: said('As named on the command line; of a record its title.'),
  seed: whole('Seed of the dice.', '1', 0, 4294967295),
  ticks: whole('Length of the run, 100 a second.', '1', 0, LONGEST_S * 100 + 100),
  hash: text('Of the states of the run.', 16),
  outcome: word('What the run comes to.', OUTCOMES),
  passed: none(flag('A good outcome and no item of the procedure broken; null where the run decides nothing.')),
  onsetS: none(number('First tick in which a fault acted while the drive moved.', 's')),
  releaseS: none(number('The scored release.', 's')),
  growthAtReleaseDeg: none(number('Growth of the shown split at the release: what is scored.', 'deg')),
  splitAtReleaseDeg: none(number('Shown split at the release.', 'deg')),
  finalSplitDeg: number('True split at the end.', 'deg'),
  rollAuthorityPct: number('Roll authority used by it.', '%'),
  procedure: z.array(item),
  events: z.array(event),
  trace: z.optional(z.array(row).check(z.meta({ description: 'Only with --trace; both ends included.' }))),
};

const refusal = z.strictObject({
  code: said('Which check it did not pass.'), path: said('Key of the record.'),
  found: said('What the record says.'), expected: said('What follows from its inputs.'),
});

/** Printed in place of a command's own object when a file cannot be used (exit 2). */
export const troubleOutput = z.strictObject({
  ok: z.literal(false), error: said('In one sentence.'), problems, more,
});
/** Problems of files, and the figures of sets among them that can be flown. */
export const checkOutput = z.strictObject({
  ok: flag('No problem in any file.'), problems, more,
  sets: z.array(setFigures).check(z.meta({ description: 'Sets that can be flown, with their gates.' })),
});
/** A run flown without a page; times in s of the run, null where the thing did not happen. */
export const runOutput = z.strictObject(flown);
/** A recorded run flown again, and whether it came to the same. */
export const replayOutput = z.strictObject({ ...flown, agrees: flag('Hash, end, outcome and score are those of the record.') });
/** For each record whether it follows from its inputs, and what in it nothing can prove. */
export const verifyOutput = z.strictObject({
  ok: flag('Every record follows from its inputs.'),
  records: z.array(z.strictObject({
    file: said('As named on the command line.'), ok: flag('This one does.'),
    replayable: flag('false: of another model version, so its outcome is shown and not proved.'),
    outcome: none(word('As stored.', OUTCOMES)),
    refused: z.array(refusal), notProvable: z.array(said('A key that nothing can prove.')),
    problems, more,
  })),
});

/** Shape of `check --json`: `checkOutput` parses it. */
export type CheckOutput = z.infer<typeof checkOutput>;
/** Shape of `run --json` for a scenario: `runOutput` parses it. */
export type RunOutput = z.infer<typeof runOutput>;
/** Shape of `replay --json`: `replayOutput` parses it. */
export type ReplayOutput = z.infer<typeof replayOutput>;
/** Shape of `verify --json`: `verifyOutput` parses it. */
export type VerifyOutput = z.infer<typeof verifyOutput>;
/** Shape of what any command prints with --json when it exits with 2: `troubleOutput` parses it. */
export type TroubleOutput = z.infer<typeof troubleOutput>;
