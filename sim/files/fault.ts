/** The faults a scenario may name: one strict shape a kind, every parameter with unit and range. */
import * as z from 'zod/mini';
import { name, quantity, time, word } from './quantity.js';
import { repeats, triggerSchema, type Trigger } from './trigger.js';

const faultName = name('Name of the fault inside the file; `after` refers to it.');
const side = word('Which side; drawn: by the seed, left and right alike likely.', ['left', 'right', 'drawn']);
const kind = <const K extends string>(value: K, description: string) => z.literal(value).check(z.meta({ description }));

const fitsPeriod = (fault: object): boolean => {
  const { onS, periodS } = fault as { onS: number; periodS: number };
  return onS <= periodS;
};
const lies = (mode: string, key: string) => (fault: object): boolean => ((fault as { mode: string }).mode === mode) === ((fault as Record<string, unknown>)[key] !== undefined);

/** Generic in when it acts: a file must say so, a desk may leave it out for now. */
const faultsWhen = <const When extends Record<string, z.ZodMiniType>>(when: When) => {
  const common = { name: faultName, ...when };
  return z.discriminatedUnion('kind', [
    z.strictObject({ kind: kind('disconnect', 'The side is cut from the drive and stays where it is.'), ...common, side }),
    z.strictObject({
      kind: kind('lag', 'The side moves at a part of the rate of the drive; below 0 it is driven the other way.'), ...common, side,
      ratio: quantity('Rate of the side over the rate of the drive: 0 stands still, 0.5 half as fast, below 0 the other way.', '1', -4, 0.95),
    }),
    z.strictObject({ kind: kind('jam', 'The side sticks, the tube winds up, then its link shears.'), ...common, side }),
    z.strictObject({
      kind: kind('slip', 'The side slips in a square wave that begins when the fault acts and goes on by the clock, drive held or not.'), ...common, side,
      ratio: quantity('Rate of the side over the rate of the drive while it slips.', '1', -4, 0.95),
      periodS: time('Period of the wave.', 0.1, 60),
      onS: time('So long at the beginning of each period the side slips.', 0.01, 60),
    }).check(z.refine(fitsPeriod, { error: 'onS at most periodS', path: ['onS'] })),
    z.strictObject({ kind: kind('blowback', 'The side is cut and its no-back brake fails: the air pushes it toward 0, drive held or not.'), ...common, side }),
    z.strictObject({
      kind: kind('pointer', 'The pointer of the side lies; the side itself is whole.'), ...common, side,
      mode: word('How the pointer lies: stuck, it stays where it was; bias, it jumps; drift, it creeps.', ['stuck', 'bias', 'drift']),
      biasDeg: z.optional(quantity('Jump of the pointer (mode bias); above 0 it shows more flap than there is.', 'deg', -20, 20)),
      driftDegPerS: z.optional(quantity('Drift of the pointer while the drive moves, whichever way (mode drift); above 0 it comes to show more flap than there is.', 'deg/s', -2, 2)),
    }).check(
      z.refine(lies('bias', 'biasDeg'), { error: 'biasDeg with mode bias, and only there' }),
      z.refine(lies('drift', 'driftDegPerS'), { error: 'driftDegPerS with mode drift, and only there' }),
    ),
    z.strictObject({ kind: kind('dead', 'The standby drive does not run until the fault ends.'), ...common }),
    z.strictObject({ kind: kind('quits', 'The standby drive stops for good: nothing ends it.'), ...common }),
    z.strictObject({
      kind: kind('slow', 'The standby drive runs slow.'), ...common,
      factor: quantity('Motor speed over its healthy speed: 0.5 is half, 1 nothing.', '1', 0.05, 1),
    }),
    z.strictObject({ kind: kind('runsOn', 'The contactor sticks: the drive goes on until the guard or the arm stops it.'), ...common }),
    z.strictObject({
      kind: kind('leadingEdge', 'The leading edge stops short; where it is further out already, it stays.'), ...common,
      stopsAt: quantity('Part of its travel from in at which it stops.', '1', 0, 0.99),
    }),
  ]);
};

export const faultSchema = faultsWhen({ when: triggerSchema, ...repeats });

const namesAnother = (when: Trigger): boolean => when.after !== undefined || [...(when.all ?? []), ...(when.any ?? [])].some(namesAnother);

/** A fault put in by hand: without `when` it acts now. `after` is for files, whose order is known before the run. */
export const deskFaultSchema = faultsWhen({ when: z.optional(triggerSchema) }).check(
  z.refine(({ when }) => when === undefined || !namesAnother(when), { error: 'no `after` in a fault put in by hand', path: ['when'] }),
);

/** One fault of a scenario file. */
export type Fault = z.infer<typeof faultSchema>;
/** One fault put in by hand. */
export type DeskFault = z.infer<typeof deskFaultSchema>;
