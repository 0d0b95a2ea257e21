/** A set: many short runs of one scenario that measure recognition. Each run draws its own onset, rate and side. */
import * as z from 'zod/mini';
import { name, quantity, formatKey, schemaKey, text, time, whole, word } from './quantity.js';
import { scenarioSchema } from './scenario.js';
import { LONGEST_S } from './trigger.js';

const rate = z.strictObject({
  ratio: quantity('Rate of the side over the rate of the drive: 0 stops it, below 0 it is driven back.', '1', -4, 0.95),
  share: z._default(quantity('Share of the runs, against the shares of the other rates.', '1', 0.01, 1000), 1),
});

const points = z.strictObject({
  falseRelease: quantity('Taken for a release without a split.', 'points', 0, 1000),
  missed: quantity('Taken for a split that reaches the limit.', 'points', 0, 1000),
  held: quantity('Given for a quiet run held to the end.', 'points', 0, 1000),
});

const onsets = z.strictObject({
  from: whole('Fewest runs with an onset.', '1', 0, 400),
  to: whole('Most runs with an onset.', '1', 0, 400),
  perRate: whole('Fewest of them at each rate.', '1', 0, 400),
});

/** A set file. What its runs can measure is for its gates. */
export const setSchema = z.strictObject({
  ...schemaKey,
  ...formatKey,
  title: text("The instructor's name of the set; the trainee never sees it.", 120),
  brief: text('What the trainee is told before the first run.', 2000),
  notes: z.optional(text("The instructor's notes; the trainee never sees them.", 8000)),
  order: z.optional(whole('Place among the shipped sets, from 1.', '1', 1, 999)),
  scenario: z.union([name('Name of a shipped drill.'), scenarioSchema]).check(
    z.meta({ description: 'The run without its fault: name of a shipped drill without faults, or a scenario in full. One setting, which the leg ends before.' }),
  ),
  load: word('What else there is to do: nothing, or callouts that ask for an answer.', ['calm', 'loaded']),
  rates: z.array(rate).check(z.minLength(1), z.maxLength(8), z.meta({ description: 'Rates of the lagging side, mixed in random order.' })),
  runs: whole('Runs of the set.', '1', 4, 400),
  blocks: z._default(whole('Blocks of equal length, with a pause between.', '1', 1, 20), 1),
  quiet: quantity('Share of runs in which nothing happens.', '1', 0.05, 0.9),
  onsetFromS: time('Seconds of holding before anything can happen.', 0, LONGEST_S),
  onsetForS: time('Seconds of holding for which it can, with a flat hazard; none behind.', 1, LONGEST_S),
  legS: time('Seconds of holding after which a run ends.', 2, LONGEST_S),
  onsets: z.optional(onsets.check(z.meta({ description: 'The set is drawn again until it has so many; from the shares, a tenth more or less, if left out.' }))),
  limitDeg: quantity('Growth at which a release is late.', 'deg', 0.5, 20),
  seenDeg: z._default(quantity('Growth below which a release cannot be a reaction.', 'deg', 0, 2), 0.1),
  points: points.check(z.meta({ description: 'For play; no gate asks for them.' })),
  gaugeLocked: z._default(z.boolean().check(z.meta({ description: 'The size of the gauge stays the same through the set.' })), true),
}).check(
  z.superRefine((set, context) => {
    const say = (path: (string | number)[], message: string, input: unknown) => context.addIssue({ code: 'custom', path, message, input });
    if (set.runs % set.blocks !== 0) say(['blocks'], `a number that divides ${set.runs} runs`, set.blocks);
    if (set.seenDeg >= set.limitDeg) say(['seenDeg'], `below limitDeg (${set.limitDeg} deg)`, set.seenDeg);
    if (set.onsetFromS + set.onsetForS >= set.legS) say(['legS'], `more than onsetFromS and onsetForS (${set.onsetFromS + set.onsetForS} s)`, set.legS);
    if (set.onsets !== undefined && set.onsets.from > set.onsets.to) say(['onsets', 'from'], `at most to (${set.onsets.to})`, set.onsets.from);
    set.rates.forEach(({ ratio }, index) => {
      if (set.rates.findIndex((other) => other.ratio === ratio) < index) say(['rates', index, 'ratio'], 'a ratio that stands once', ratio);
    });
  }),
  z.meta({ id: 'set', description: 'A set of runs: one scenario, several rates of a lagging side, a share of quiet runs, what is scored.' }),
);

/** A set file after the door. */
export type SetFile = z.infer<typeof setSchema>;
