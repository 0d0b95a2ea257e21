/** What `run` prints with --json for a set, and what `check` says of one; see output.ts for the other commands. */
import * as z from 'zod/mini';
import { whole, word } from './quantity.js';
import { OUTCOMES } from './record.js';

const said = (description: string) => z.string().check(z.meta({ description }));
const flag = (description: string) => z.boolean().check(z.meta({ description }));
const number = (description: string, unit: string) => z.number().check(z.meta({ description, unit }));
const none = <T extends z.ZodMiniType>(schema: T) => z.nullable(schema);
const count = (description: string) => whole(description, '1', 0, 1e6);

/** A set flown by one scripted person: every run, then counts and points. */
export const setOutput = z.strictObject({
  set: said('As named on the command line.'),
  words: z.array(said('What is said of the set on brief and report.')),
  trainee: said('Who flew; one person flies the whole set.'),
  seed: whole('Seed from which the set is drawn.', '1', 0, 4294967295),
  runs: z.array(z.strictObject({
    run: count('From 1.'), block: count('From 1.'), ratio: number('Rate of the lagging side over the rate of the drive.', '1'),
    seed: whole('Seed of the run.', '1', 0, 4294967295), hash: said('Of its states.'),
    outcome: word('What it comes to.', OUTCOMES),
    onsetS: none(number('Onset.', 's')), releaseS: none(number('The scored release.', 's')),
    growthAtReleaseDeg: none(number('Growth at the release.', 'deg')), finalSplitDeg: number('True split at the end.', 'deg'),
    rollAuthorityPct: number('Roll authority used by it.', '%'), points: number('Points.', 'points'),
  })),
  counts: z.strictObject({
    runs: count('All.'), caught: count('Let go within the limit.'), late: count('Let go behind it.'), missed: count('Held beyond it.'),
    undecided: count('The run ended before the limit.'), falseRelease: count('Let go without a split.'), held: count('Quiet runs held to the end.'),
    points: number('Sum.', 'points'), meanPoints: number('A run.', 'points'),
  }).check(z.meta({ description: 'Nothing in it is a figure of a person.' })),
});

const blind = z.strictObject({
  policy: word('A hand without eyes.', ['atOnce', 'fixed', 'random', 'pulse', 'never', 'arrival']),
  points: number('Mean points a run.', 'points'), atS: none(number('Held time at which it lets go.', 's')),
});

/** What `check` computes of a set that can be flown. */
export const setFigures = z.strictObject({
  file: said('As named on the command line.'),
  words: z.array(said('What is said of the set on brief and report.')),
  runs: count('Runs.'), hazardPerS: number('Chance a second of an onset.', '1/s'),
  onsets: z.strictObject({ from: count('Fewest runs with an onset.'), to: count('Most.'), perRate: count('Fewest at each rate.') }),
  rates: z.array(z.strictObject({
    ratio: number('Of the lagging side.', '1'),
    degPerS: number('Growth as flown: mean of earliest and latest onset.', 'deg/s'),
    earlyDegPerS: number('With the earliest onset.', 'deg/s'), lateDegPerS: number('With the latest.', 'deg/s'),
    latestGrowthDeg: number('Growth at the end of the leg with the latest onset.', 'deg'),
    rollAuthorityAtLimitPct: none(number('Roll authority used at the limit.', '%')),
    bestBlind: blind.check(z.meta({ description: 'The best blind policy if this rate were known.' })),
  })),
  limit: z.strictObject({
    deg: number('Growth at which a release is late.', 'deg'),
    tiedDeg: number("What uses 20 % of the roll authority at the set's point, rounded down to half a degree.", 'deg'),
    rollAuthorityPct: number("Roll authority used by the limit at the set's point.", '%'),
  }),
  blind: z.array(blind).check(z.meta({ description: 'Rates mixed and hidden.' })),
  steady: z.strictObject({ runs: count('Runs flown.'), meanPoints: number('An ordinary watcher.', 'points'), lo: number('95 % interval.', 'points'), hi: number('Its end.', 'points') }),
  gates: z.array(z.strictObject({
    gate: word('What a set must hold to.', ['blind', 'blindInClass', 'decided', 'steady', 'endsShort']),
    ok: flag('It does.'), found: said('What was found.'), asked: said('What is asked.'),
  })),
});

/** Shape of `run --json` for a set: `setOutput` parses it. */
export type SetOutput = z.infer<typeof setOutput>;
/** One of the `sets` in `check --json`: `setFigures` parses it. */
export type SetCheck = z.infer<typeof setFigures>;
