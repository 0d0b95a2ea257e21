/**
 * Arbitraries of anything a scenario file can say about faults, events and triggers, made from the schemas themselves, so that
 * a new kind is tried without a word here; and of hands that do anything.
 */
import fc from 'fast-check';
import { actSchema } from '../../sim/files/act.js';
import { eventSchema } from '../../sim/files/event.js';
import { faultSchema } from '../../sim/files/fault.js';
import { misfits, ready, scenarioSchema, shapeOf, tryAs, type Airframe, type ReadyScenario, type Shape } from '../../sim/files/index.js';
import { AIRFRAME, AIRFRAME_B } from '../sim/bench.js';
import { anywhere } from '../draw.js';

/** Time allowed in a run, s, unless another is asked for. */
export const LIMIT_S = 40;
const NAMES = ['f0', 'f1', 'f2', 'e0', 'e1', 'e2'];

const hundredths = (min: number, max: number) => fc.integer({ min: Math.ceil(min * 100), max: Math.floor(max * 100) }).map((n) => n / 100);
export const numberOf = (shape: Extract<Shape, { kind: 'number' }>, most = shape.max): fc.Arbitrary<number> => {
  const max = Math.min(shape.max, most);
  if (shape.whole) return fc.integer({ min: shape.min, max });
  if (shape.unit === 's') return hundredths(shape.min, max);
  return anywhere(shape.min, max);
};

const leafIn = (limitS: number): fc.Arbitrary<object> => fc.oneof(
  fc.record({ atS: hundredths(0, limitS) }), fc.record({ heldS: hundredths(0, limitS / 2) }),
  fc.record({ flapDeg: anywhere(0, 37), edge: fc.constantFrom('rising', 'falling', 'either') }),
  fc.record({ speedKt: fc.integer({ min: 100, max: 220 }), edge: fc.constantFrom('rising', 'falling', 'either') }, { requiredKeys: ['speedKt'] }),
  fc.record({ altitudeFt: fc.integer({ min: 4000, max: 6100 }) }),
  fc.record({ after: fc.constantFrom(...NAMES), delayS: hundredths(0, 5) }, { requiredKeys: ['after'] }),
  fc.record({ hazardPerS: anywhere(0.01, 5), hazardFromS: hundredths(0, limitS / 4), hazardForS: hundredths(0.01, limitS / 2) }, { requiredKeys: ['hazardPerS'] }),
);
const whenIn = (limitS: number) => fc.letrec<{ any: object }>((tie) => ({
  any: fc.oneof({ depthSize: 'small', withCrossShrink: true }, leafIn(limitS),
    fc.record({ all: fc.array(tie('any'), { minLength: 1, maxLength: 3 }) }), fc.record({ any: fc.array(tie('any'), { minLength: 1, maxLength: 3 }) })),
})).any;

/** A value for a key of a fault, an event or an act. */
function valueOf(key: string, shape: Shape, when: fc.Arbitrary<object>): fc.Arbitrary<unknown> {
  if (key === 'when') return when;
  if (key === 'fault' || key === 'after') return fc.constantFrom(...NAMES.slice(0, 3));
  if (key === 'times') return fc.integer({ min: 2, max: 5 });
  if (key === 'answers') return fc.constant(['yes', 'no']);
  if (key === 'right') return fc.constantFrom('yes', 'no');
  switch (shape.kind) {
    case 'number': return numberOf(shape, key === 'toFt' ? 6000 : undefined);
    case 'word': return fc.constantFrom(...shape.words);
    case 'flag': return fc.boolean();
    case 'text': return fc.constantFrom('yes', 'a', '');
    case 'list': return fc.array(valueOf('', shape.item, when), { minLength: shape.min, maxLength: Math.min(3, shape.max ?? 3) });
    default: throw new Error(`nothing is known of ${key}`);
  }
}

/** Any of the objects of a choice, with any of its keys that may be left out left out. */
export function anyOf(shape: Shape, when: fc.Arbitrary<object>): fc.Arbitrary<Record<string, unknown>> {
  if (shape.kind !== 'choice') throw new Error('no choice');
  return fc.oneof(...[...shape.options].map(([word, { keys }]) => {
    const inner = [...keys].filter(([key]) => key !== shape.by && key !== 'name');
    const record = Object.fromEntries(inner.map(([key, { shape: of }]) => [key, valueOf(key, of, when)]));
    return fc.record(record, { requiredKeys: inner.filter(([, { required }]) => required).map(([key]) => key) })
      .map((made): Record<string, unknown> => ({ [shape.by]: word, ...made as object }));
  }));
}

/** Anything that may happen in a run of `limitS`, before it is mended. */
export const anyRunOf = (limitS: number) => {
  const when = whenIn(limitS);
  return fc.record({
    airframe: fc.constantFrom(AIRFRAME, AIRFRAME_B), limitS: fc.constant(limitS),
    faults: fc.array(anyOf(shapeOf(faultSchema), when), { maxLength: 3 }), events: fc.array(anyOf(shapeOf(eventSchema), when), { maxLength: 3 }),
    acts: fc.array(fc.tuple(fc.integer({ min: 0, max: limitS * 100 }), fc.oneof(
      { weight: 3, arbitrary: fc.constantFrom<object>({ do: 'openGuard' }, { do: 'arm' }, { do: 'holdDrive', way: 'extend' }, { do: 'releaseDrive' }) },
      { weight: 2, arbitrary: anyOf(shapeOf(actSchema({})), when) },
    )), { maxLength: 60 }),
    seed: fc.integer({ min: 0, max: 4294967295 }),
    scored: fc.boolean(), noisy: fc.boolean(), role: fc.constantFrom('flying', 'driving'), speedHold: fc.boolean(), start: fc.integer({ min: 0, max: 2 }),
  });
};
export const anyRun = anyRunOf(LIMIT_S);

export type Any = typeof anyRun extends fc.Arbitrary<infer T> ? T : never;

/** What is made is mended where the doors ask for more than a shape says; what still does not fit is thrown away. */
export function mended(made: Any): { scenario: ReadyScenario; airframe: Airframe } | null {
  const { airframe, scored, limitS } = made;
  const small = airframe.name === AIRFRAME_B.name;
  const named = (list: readonly Record<string, unknown>[], letter: string) => list.map((one, at) => {
    const mode = one['mode'];
    const whole: Record<string, unknown> = { ...one, name: `${letter}${at}` };
    if (mode !== undefined) {
      if (mode === 'bias') whole['biasDeg'] ??= 3; else delete whole['biasDeg'];
      if (mode === 'drift') whole['driftDegPerS'] ??= -0.2; else delete whole['driftDegPerS'];
    }
    if (whole['times'] === undefined) delete whole['everyS'];
    else whole['everyS'] ??= 1;
    if (whole['onS'] !== undefined) whole['onS'] = Math.min(whole['onS'] as number, whole['periodS'] as number);
    return whole;
  });
  const setting = airframe.settings[made.start]?.deg ?? 0;
  const next = airframe.settings[made.start + 1]?.deg ?? 0;
  const read = tryAs(scenarioSchema, {
    format: 1, title: 't', brief: 'b', airframe: airframe.name, pointerNoise: made.noisy, role: made.role, speedHold: made.speedHold,
    start: { massT: small ? 8 : 48, altitudeFt: 6000, speedKt: small ? 140 : 167, flapDeg: setting },
    task: { settings: [next], limitS },
    faults: named(made.faults, 'f'), events: named(made.events, 'e').filter((event) => !scored || event['do'] !== 'freeze'),
    ...(scored ? { recognition: {} } : {}),
  });
  if (!read.ok || misfits(read.value, airframe).length > 0) return null;
  return { scenario: ready(read.value, airframe), airframe };
}
