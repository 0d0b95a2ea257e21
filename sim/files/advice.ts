/** What `speeds`, `horn`, `budget` and `derive` print with --json; see output.ts for the other commands. */
import * as z from 'zod/mini';
import { BUDGET_FAULTS } from '../advise/budget.js';
import { word } from './quantity.js';

const said = (description: string) => z.string().check(z.meta({ description }));
const flag = (description: string) => z.boolean().check(z.meta({ description }));
const number = (description: string, unit: string) => z.number().check(z.meta({ description, unit }));
const none = <T extends z.ZodMiniType>(schema: T) => z.nullable(schema);

/** Calibrated airspeeds of every setting at one mass; each key has its meaning and unit. */
export const speedsOutput = z.strictObject({
  airframe: said('Its name.'),
  massT: number('Mass.', 't'),
  ice: flag('The ice additive is in the speeds.'),
  iceKt: number('That additive; 0 without ice.', 'kt'),
  referenceFactor: number('Reference speed over stall speed.', '1'),
  settings: z.array(z.strictObject({
    settingDeg: number('Setting.', 'deg'),
    stallKt: number('Reference stall speed.', 'kt'),
    warningKt: number('Stall warning: 3 kt or 3 % above it.', 'kt'),
    manoeuvreKt: number('Manoeuvre speed.', 'kt'),
    referenceKt: number('Reference speed.', 'kt'),
    limitKt: none(number('Limit speed.', 'kt')),
    bankToWarningDeg: number('Bank to the stall warning at the manoeuvre speed.', 'deg'),
  })),
});

/** One state of gear, flaps and levers, and whether the horn sounds in it. */
export const hornOutput = z.strictObject({
  sounds: flag('The horn sounds.'),
  silenceable: flag('It may be silenced, or has been.'),
  why: said('The rule that decides, with its figures.'),
});

/** Times from the fault, held on, and splits behind a release; null: never reached. */
export const budgetOutput = z.strictObject({
  airframe: said('Its name.'),
  fault: word('The fault, on the right side.', BUDGET_FAULTS),
  splitRateDegPerS: none(number('Mean over the first degree.', 'deg/s')),
  oneDegreeS: none(number('From the fault to one degree.', 's')),
  levels: z.array(z.strictObject({
    rollAuthorityPct: number('Part of the roll authority.', '%'),
    afterS: none(number('Held on: time from the fault.', 's')),
    splitDeg: none(number('True split then.', 'deg')),
  })),
  releases: z.array(z.strictObject({
    latencyS: number('Let go so long behind one degree.', 's'),
    splitDeg: number('Final true split.', 'deg'),
    rollAuthorityPct: number('Roll authority used by it.', '%'),
  })),
  settleS: number('Final is read so long behind the release.', 's'),
});

const derived = <Key extends z.ZodMiniType, In extends z.ZodMiniType>(key: Key, inFile: In) => z.strictObject({
  key,
  name: said('In words.'),
  value: number('Worked out.', 'as told'),
  unit: said('Its unit; 1 for a pure number.'),
  inFile,
  meaning: said('What it stands for.'),
});

/** What follows from the geometry of an airframe, beside what its file carries. */
export const deriveOutput = z.strictObject({
  airframe: said('Its name.'),
  constants: z.array(derived(said('Key of the file it belongs to.'), number('What the file carries.', 'as told'))),
  checks: z.array(derived(none(said('Key of the file nearest to it.')), none(number('What the file carries there.', 'as told')))),
});

/** Shape of `speeds --json`: `speedsOutput` parses it. */
export type SpeedsOutput = z.infer<typeof speedsOutput>;
/** Shape of `horn --json`: `hornOutput` parses it. */
export type HornOutput = z.infer<typeof hornOutput>;
/** Shape of `budget --json`: `budgetOutput` parses it. */
export type BudgetOutput = z.infer<typeof budgetOutput>;
/** Shape of `derive --json`: `deriveOutput` parses it. */
export type DeriveOutput = z.infer<typeof deriveOutput>;
