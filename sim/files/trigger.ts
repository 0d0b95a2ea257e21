/**
 * The `when` of a fault or an event. Exactly one kind stands in a trigger: a time, a crossing, time held, another
 * thing that happened, a flat hazard, or a group of triggers.
 */
import * as z from 'zod/mini';
import { name, quantity, time, whole, word } from './quantity.js';

/** Longest run in seconds; no time in a file may be longer. */
export const LONGEST_S = 3600;

const KINDS = ['atS', 'flapDeg', 'speedKt', 'altitudeFt', 'heldS', 'after', 'hazardPerS', 'all', 'any'] as const;
export const CROSSINGS: readonly string[] = ['flapDeg', 'speedKt', 'altitudeFt'];

/** Exactly one of its kinds is there, `edge`, `delayS` and the bounds of a hazard only beside theirs; `triggerSchema` has what each means. */
export interface Trigger {
  atS?: number | undefined;
  flapDeg?: number | undefined;
  speedKt?: number | undefined;
  altitudeFt?: number | undefined;
  edge?: 'rising' | 'falling' | 'either' | undefined;
  heldS?: number | undefined;
  after?: string | undefined;
  delayS?: number | undefined;
  hazardPerS?: number | undefined;
  hazardFromS?: number | undefined;
  hazardForS?: number | undefined;
  all?: Trigger[] | undefined;
  any?: Trigger[] | undefined;
}

/** Which kind of trigger this is; the schema has made sure that there is exactly one. @throws Error for none */
export function kindOfTrigger(when: Trigger): (typeof KINDS)[number] {
  const kind = KINDS.find((key) => when[key] !== undefined);
  if (kind === undefined) throw new Error(`a trigger without a kind: ${JSON.stringify(when)}`);
  return kind;
}

const shape: z.ZodMiniType<Trigger> = z.lazy(() => triggerSchema);
const group = (description: string) =>
  z.optional(z.array(shape).check(z.minLength(1), z.maxLength(8), z.meta({ description })));

export const triggerSchema: z.ZodMiniType<Trigger> = z.strictObject({
  atS: z.optional(time('Time of the run: acts at the beginning of that tick, before any hand.', 0, LONGEST_S)),
  flapDeg: z.optional(quantity('The drive (no side, no pointer) comes to this position or passes it; acts in the tick behind. Where it stands at the start is not passed.', 'deg', 0, 60)),
  speedKt: z.optional(quantity('The calibrated airspeed comes to this value or passes it; acts in the tick behind.', 'kt', 40, 400)),
  altitudeFt: z.optional(quantity('The height above sea level comes to this value or passes it; acts in the tick behind.', 'ft', -2000, 26000)),
  edge: z.optional(word('Direction of a crossing: rising, from below to at or above; falling, from above to at or below; either if left out. Speed that falls and flaps that come in are falling.', ['rising', 'falling', 'either'])),
  heldS: z.optional(time('Seconds for which the drive has been held in all: armed and the switch away from off, motor running or not. Acts in the tick behind; 0 acts in the second tick.', 0, LONGEST_S)),
  after: z.optional(name('Name of a fault or event that must have acted; acts in the next tick at the soonest.')),
  delayS: z.optional(time('Waiting time behind `after`, counted from the tick in which that acted; 0 and left out: the next tick.', 0, LONGEST_S)),
  hazardPerS: z.optional(quantity('Flat hazard while the drive is held: the chance a second, equal at every moment; drawn by the seed before the run.', '1/s', 0.0001, 10)),
  hazardFromS: z.optional(time('Seconds of holding before the hazard begins; at once if left out.', 0, LONGEST_S)),
  hazardForS: z.optional(time('Seconds of holding for which it lasts, and none behind; to the end if left out.', 0.01, LONGEST_S)),
  all: group('All of these must have happened. A crossing counts from when it was made; a time, held time or wait from when it is over.'),
  any: group('One of these must have happened.'),
}).check(
  z.refine((when) => KINDS.filter((key) => when[key] !== undefined).length === 1, {
    error: `exactly one of ${KINDS.join(', ')}`,
  }),
  z.refine((when) => when.edge === undefined || CROSSINGS.some((key) => when[key as 'flapDeg'] !== undefined), {
    error: 'edge only beside flapDeg, speedKt or altitudeFt',
  }),
  z.refine((when) => when.delayS === undefined || when.after !== undefined, { error: 'delayS only beside after' }),
  z.refine((when) => (when.hazardFromS ?? when.hazardForS) === undefined || when.hazardPerS !== undefined, {
    error: 'hazardFromS and hazardForS only beside hazardPerS',
  }),
  z.meta({ id: 'trigger', description: 'When it acts.' }),
);

/** Most times that one fault or event may act. */
const MOST_TIMES = 20;

/** Keys of whatever may act more than once. */
export const repeats = {
  times: z.optional(whole('How often it acts at most; once if left out. Needs everyS, unless it waits for a crossing: then it acts at each further crossing.', '1', 2, MOST_TIMES)),
  everyS: z.optional(time('It acts again so long after it first acted, and so on, whatever its trigger does meanwhile.', 0.01, LONGEST_S)),
};
