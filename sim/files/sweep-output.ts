/** What `sweep` prints with --json; see output.ts for the other commands. */
import * as z from 'zod/mini';
import { whole, word } from './quantity.js';
import { OUTCOMES } from './record.js';

const said = (description: string) => z.string().check(z.meta({ description }));
const number = (description: string, unit: string) => z.number().check(z.meta({ description, unit }));
const none = <T extends z.ZodMiniType>(schema: T) => z.nullable(schema);

const share = {
  k: whole('So many.', '1', 0, 1e9), n: whole('Of so many.', '1', 0, 1e9),
  lo: number("Lower end of Wilson's 95 % interval of the share, 0 to 1.", '1'), hi: number('Upper end.', '1'),
};

const spread = (description: string, unit: string) => none(z.strictObject({
  n: whole('Runs that have this figure.', '1', 0, 1e9), mean: number('Mean.', unit),
  least: number('Smallest.', unit), q05: number('5 of 100 are below.', unit), q25: number('25 of 100.', unit), median: number('Half.', unit),
  q75: number('75 of 100.', unit), q95: number('95 of 100.', unit), most: number('Greatest.', unit),
  bins: z.array(z.strictObject({ from: number('At or above.', unit), to: number('Below.', unit), count: whole('Runs.', '1', 0, 1e9) })),
}).check(z.meta({ description })));

/** Many runs of a scenario by one trainee; a spread is null where no run has its figure. */
export const sweepOutput = z.strictObject({
  scenario: said('As named on the command line.'),
  trainee: said('Who flew.'),
  runs: whole('Runs flown.', '1', 1, 1e9),
  seed: whole('Seed from which the seeds of the runs are drawn.', '1', 0, 4294967295),
  hash: said('Of the hashes of all runs, in their order.'),
  outcomes: z.array(z.strictObject({ outcome: word('What a run comes to.', OUTCOMES), ...share })).check(z.meta({ description: 'Those that occurred.' })),
  onsets: z.strictObject(share).check(z.meta({ description: 'Runs in which a fault acted while the drive moved.' })),
  growthAtReleaseDeg: spread('Growth at a release behind onset.', 'deg'),
  finalSplitDeg: spread('True split at the end.', 'deg'),
  rollAuthorityPct: spread('Roll authority used by it.', '%'),
  hornS: spread('For so long the gear horn sounded.', 's'),
  overLimitS: spread('For so long the speed was above the limit of the moment.', 's'),
  overLimitRuns: z.strictObject(share).check(z.meta({ description: 'Runs in which it ever was.' })),
  difficulty: z.strictObject({
    runs: whole('Runs it is read from, flown by `steady` and by `never`.', '1', 0, 1e9),
    limitDeg: number('Growth at which a release is late.', 'deg'),
    withinLimit: z.strictObject(share).check(z.meta({ description: 'Runs with a split that was decided in which an ordinary watcher (steady) lets go within the limit.' })),
    oneDegreeToLimitS: none(number('Held on: median time from 1 degree shown to the limit.', 's')),
    rollAuthorityAtLimitPct: none(number('Held on: median roll authority used at the limit.', '%')),
    sentence: said('The same in words.'),
  }),
});

/** Shape of `sweep --json`: `sweepOutput` parses it. */
export type SweepOutput = z.infer<typeof sweepOutput>;
