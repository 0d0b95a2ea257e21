/** The record of a run: what went in, what came out, and a digest of the whole. Everything shown later is replayed from it. */
import * as z from 'zod/mini';
import { handShapes, sharedShapes } from './act.js';
import { airframeSchema } from './airframe.js';
import { plannedSchema } from './plan.js';
import { deskName, deskShapes, gradesSchema } from './desk-act.js';
import { quantity, text, whole, word } from './quantity.js';
import { scenarioSchema } from './scenario.js';
import { LONGEST_S } from './trigger.js';

const LONGEST_TICKS = LONGEST_S * 100 + 100;
const tick = whole('Tick of the run.', 'tick', 0, LONGEST_TICKS);
const stampMs = z.number().check(z.gte(0), z.lte(1e12), z.meta({ description: "The page's clock.", unit: 'ms' }));
const seq = whole('Order of filing in the run.', '1', 0, 1e6);
const RANK = '1 desk, 2 trainee.';
const hand = { tick, rank: whole(RANK, '1', 2, 2), seq, stampMs };
const desk = { tick, rank: whole(RANK, '1', 1, 1), seq, stampMs, by: deskName };
const either = { tick, rank: whole(RANK, '1', 1, 2), seq, stampMs, by: z.optional(deskName) };

export const commandSchema = z.discriminatedUnion('do', [...handShapes(hand), ...deskShapes(desk), ...sharedShapes(either)]).check(
  z.refine((one) => (one.rank === 1) === ('by' in one && one.by !== undefined), { error: '`by` with rank 1, and only there', path: ['by'] }),
);

const nullable = <T extends z.ZodMiniType>(schema: T) => z.nullable(schema);

const timing = z.strictObject({
  medianS: quantity('Median from the frame that drew a plain change to the release.', 's', 0, 10),
  sdS: quantity('Standard deviation of the same.', 's', 0, 10),
  releases: whole('Releases of the check.', '1', 2, 100),
  input: text('Kinds of input it was made with.', 80),
});

const device = z.strictObject({
  isolated: z.boolean().check(z.meta({ description: 'The page was isolated, so its clock is fine-grained.' })),
  clockGrainMs: quantity('Grain of the clock.', 'ms', 0, 1000),
  renderer: text('What drew the canvas.', 40),
  timing: z.optional(timing.check(z.meta({ description: 'The last timing check on this screen; left out where none was made.' }))),
  input: text('Kinds of input used: mouse, touch, pen, key, gamepad, gamepad by frames (stamped by the frame that saw it), script.', 80),
  assisted: z.optional(z.array(word('A help that was in use: a switch that stays pressed, or spoken pointers.', ['latchedHold', 'spokenPointers'])).check(
    z.minLength(1), z.maxLength(2), z.refine((helps) => new Set(helps).size === helps.length, { error: 'each help once' }),
    z.meta({ description: 'Helps in use; left out for none. Such a run is not compared with others.' }),
  )),
});

const gauge = z.strictObject({
  pxPerDeg: quantity('Length on the screen of one degree of flap at the pointer tip.', 'px/deg', 0, 1000),
  pixelRatio: quantity('Device pixels for a CSS pixel.', '1', 0.1, 16),
  mmPerPx: nullable(quantity('Size of a CSS pixel, where calibrated.', 'mm', 0.01, 2)),
  radiusMm: z.optional(quantity('Length of a pointer as drawn, where calibrated.', 'mm', 1, 2000)),
  distanceMm: z.optional(quantity('From the eye to the screen, as the trainee states it, where calibrated.', 'mm', 250, 2500)),
  apartDeg: z.optional(quantity('Visual angle between the middle of the speed rule and the middle of the fan at that distance, where calibrated.', 'deg', 0, 170)),
  apartPx: z.optional(quantity('The same on the screen.', 'px', 0, 20000)),
  widthPx: z.optional(quantity('Width of the window.', 'px', 0, 20000)),
  heightPx: z.optional(quantity('Height of the window.', 'px', 0, 20000)),
  changed: z.optional(z.literal(true).check(z.meta({ description: 'The gauge changed its size during the run: the figures here are those of its start.' }))),
});

const score = z.strictObject({
  onsetS: nullable(quantity('First tick in which a fault acted while the drive moved.', 's', 0, LONGEST_S)),
  firstFrameS: nullable(quantity('First frame drawn after onset.', 's', 0, LONGEST_S + 1)),
  releaseS: nullable(quantity('The scored release.', 's', 0, LONGEST_S + 1)),
  afterOnsetS: nullable(quantity('Release behind the first frame after onset.', 's', -LONGEST_S, LONGEST_S + 1)),
  growthAtReleaseDeg: nullable(quantity('Growth of the shown split at the release: what is scored.', 'deg', -100, 100)),
  splitAtReleaseDeg: nullable(quantity('Shown split at the release.', 'deg', 0, 100)),
  finalSplitDeg: quantity('True split at the end.', 'deg', 0, 100),
  rollAuthorityPct: quantity('Roll authority used by the final split.', '%', 0, 1e6),
});

/** What a run can come to; `void` and `undecided` decide nothing. */
export const OUTCOMES = ['caught', 'late', 'missed', 'falseRelease', 'held', 'undecided', 'void', 'completed', 'lost', 'timeUp'] as const;

/** A record in full, nothing left out. It says that the shape is right; that the run follows from its inputs is for `verify`. */
export const recordSchema = z.strictObject({
  format: z.literal(1).check(z.meta({ description: 'Version of the file format.' })),
  model: whole('Version of the model.', '1', 1, 1000),
  app: text('Version of the app that wrote it.', 40),
  source: word('Who flew: a person, a script, or a person under a live desk.', ['flown', 'scripted', 'live']),
  seed: whole('Seed of the dice.', '1', 0, 4294967295),
  airframe: airframeSchema,
  scenario: scenarioSchema,
  device,
  gauge,
  clock: z.array(z.strictObject({ tick, stampMs })).check(z.minLength(1), z.maxLength(10000)),
  commands: z.array(commandSchema).check(z.maxLength(50000)),
  marks: z.array(z.strictObject({
    tick, stampMs, what: word('What the outside did.', ['start', 'firstFrame', 'stall', 'focusLost', 'hidden', 'pause', 'freeze', 'resume', 'late', 'end']),
  })).check(z.maxLength(50000)),
  end: z.strictObject({ tick, why: word('Why the run ended.', ['scored', 'twiceLimit', 'called', 'done', 'lost', 'timeUp', 'stopped']) }),
  hash: z.string().check(z.regex(/^[0-9a-f]{16}$/, '16 hexadecimal digits')),
  outcome: word('What the run comes to.', OUTCOMES),
  score,
  assessment: z.nullable(z.strictObject({
    split: nullable(word('Was there a split?', ['yes', 'no', 'unsure'])),
    growthDeg: nullable(quantity('How far they were apart when let go, as the trainee believes.', 'deg', 0, 40)),
    side: z.optional(word('Which side was ahead on the way of the drive.', ['left', 'right', 'unsure'])),
    driveFailed: z.optional(word('Did the drive itself fail?', ['yes', 'no', 'unsure'])),
    surePct: z.optional(quantity('Chance that the answer to `split` is right, as the trainee believes.', '%', 0, 100)),
  })),
  plan: z.optional(plannedSchema.check(z.meta({ description: 'What the trainee planned before the run; outside the hash, inside the digest, and nothing proves it.' }))),
  desk: z.optional(gradesSchema.check(z.meta({ description: "The instructor's own grade; only in a live run." }))),
  digest: z.string().check(z.regex(/^[0-9a-f]{64}$/, '64 hexadecimal digits')),
}).check(z.meta({ description: 'Record of a run.' }));

/** A record file after the door. */
export type RunRecord = z.infer<typeof recordSchema>;
/** What a run comes to. */
export type Outcome = (typeof OUTCOMES)[number];
/** Figures of a run; null without an onset, or without a scored release. `growthAtReleaseDeg` is what is scored. */
export type Score = RunRecord['score'];
