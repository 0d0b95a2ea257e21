/**
 * Anything a scenario file can say about faults, events and triggers, made from the schemas themselves so that a new kind
 * is tried without a word here: flown by trainees and by hands that do anything, it ends within its limit, with no number
 * that is none, the same every time.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { actSchema } from '../../sim/files/act.js';
import { eventSchema } from '../../sim/files/event.js';
import { faultSchema } from '../../sim/files/fault.js';
import { misfits, ready, scenarioSchema, shapeOf, tryAs, type Airframe, type ReadyScenario, type Shape } from '../../sim/files/index.js';
import { fly, flyTrainee, TRAINEES, type Command } from '../../sim/index.js';
import { AIRFRAME, AIRFRAME_B } from './bench.js';

const LIMIT_S = 40;
const NAMES = ['f0', 'f1', 'f2', 'e0', 'e1', 'e2'];

const hundredths = (min: number, max: number) => fc.integer({ min: Math.ceil(min * 100), max: Math.floor(max * 100) }).map((n) => n / 100);
const numberOf = (shape: Extract<Shape, { kind: 'number' }>, most = shape.max): fc.Arbitrary<number> => {
  const max = Math.min(shape.max, most);
  if (shape.whole) return fc.integer({ min: shape.min, max });
  if (shape.unit === 's') return hundredths(shape.min, max);
  return fc.oneof({ weight: 1, arbitrary: fc.constantFrom(shape.min, max) }, { weight: 4, arbitrary: fc.double({ min: shape.min, max, noNaN: true }) });
};

const leaf: fc.Arbitrary<object> = fc.oneof(
  fc.record({ atS: hundredths(0, LIMIT_S) }), fc.record({ heldS: hundredths(0, 20) }),
  fc.record({ flapDeg: fc.double({ min: 0, max: 37, noNaN: true }), edge: fc.constantFrom('rising', 'falling', 'either') }),
  fc.record({ speedKt: fc.integer({ min: 100, max: 220 }), edge: fc.constantFrom('rising', 'falling', 'either') }, { requiredKeys: ['speedKt'] }),
  fc.record({ altitudeFt: fc.integer({ min: 4000, max: 6100 }) }),
  fc.record({ after: fc.constantFrom(...NAMES), delayS: hundredths(0, 5) }, { requiredKeys: ['after'] }),
  fc.record({ hazardPerS: fc.double({ min: 0.01, max: 5, noNaN: true }), hazardFromS: hundredths(0, 10), hazardForS: hundredths(0.01, 20) }, { requiredKeys: ['hazardPerS'] }),
);
const when = fc.letrec<{ any: object }>((tie) => ({
  any: fc.oneof({ depthSize: 'small', withCrossShrink: true }, leaf,
    fc.record({ all: fc.array(tie('any'), { minLength: 1, maxLength: 3 }) }), fc.record({ any: fc.array(tie('any'), { minLength: 1, maxLength: 3 }) })),
})).any;

/** A value for a key of a fault, an event or an act. */
function valueOf(key: string, shape: Shape): fc.Arbitrary<unknown> {
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
    case 'list': return fc.array(valueOf('', shape.item), { minLength: shape.min, maxLength: Math.min(3, shape.max ?? 3) });
    default: throw new Error(`nothing is known of ${key}`);
  }
}

/** Any of the objects of a choice, with any of its keys that may be left out left out. */
function anyOf(shape: Shape): fc.Arbitrary<Record<string, unknown>> {
  if (shape.kind !== 'choice') throw new Error('no choice');
  return fc.oneof(...[...shape.options].map(([word, { keys }]) => {
    const inner = [...keys].filter(([key]) => key !== shape.by && key !== 'name');
    const record = Object.fromEntries(inner.map(([key, { shape: of }]) => [key, valueOf(key, of)]));
    return fc.record(record, { requiredKeys: inner.filter(([, { required }]) => required).map(([key]) => key) })
      .map((made): Record<string, unknown> => ({ [shape.by]: word, ...made as object }));
  }));
}

const faults = fc.array(anyOf(shapeOf(faultSchema)), { maxLength: 3 });
const events = fc.array(anyOf(shapeOf(eventSchema)), { maxLength: 3 });
const acts = fc.array(fc.tuple(fc.integer({ min: 0, max: LIMIT_S * 100 }), fc.oneof(
  { weight: 3, arbitrary: fc.constantFrom<object>({ do: 'openGuard' }, { do: 'arm' }, { do: 'holdDrive', way: 'extend' }, { do: 'releaseDrive' }) },
  { weight: 2, arbitrary: anyOf(shapeOf(actSchema({}))) },
)), { maxLength: 60 });
const plain = fc.record({
  airframe: fc.constantFrom(AIRFRAME, AIRFRAME_B), faults, events, acts, seed: fc.integer({ min: 0, max: 4294967295 }),
  scored: fc.boolean(), noisy: fc.boolean(), role: fc.constantFrom('flying', 'driving'), speedHold: fc.boolean(), start: fc.integer({ min: 0, max: 2 }),
});

type Any = typeof plain extends fc.Arbitrary<infer T> ? T : never;

/** What is made is mended where the doors ask for more than a shape says; what still does not fit is thrown away. */
function mended(made: Any): { scenario: ReadyScenario; airframe: Airframe } | null {
  const { airframe, scored } = made;
  const small = airframe === AIRFRAME_B;
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
    task: { settings: [next], limitS: LIMIT_S },
    faults: named(made.faults, 'f'), events: named(made.events, 'e').filter((event) => !scored || event['do'] !== 'freeze'),
    ...(scored ? { recognition: {} } : {}),
  });
  if (!read.ok || misfits(read.value, airframe).length > 0) return null;
  return { scenario: ready(read.value, airframe), airframe };
}

let tried = 0;
const kinds = new Set<string>();
const sound = (check: (one: { scenario: ReadyScenario; airframe: Airframe }, made: Any) => void) => (made: Any): void => {
  const one = mended(made);
  fc.pre(one !== null);
  tried += 1;
  for (const { kind } of one!.scenario.faults) kinds.add(kind);
  for (const event of one!.scenario.events) kinds.add(event.do);
  check(one!, made);
};

describe('anything a file can say', () => {
  it.each(TRAINEES)('flown by %s ends within its limit, with every number one, and the log alone gives it again', (trainee) => {
    fc.assert(fc.property(plain, sound(({ scenario, airframe }, { seed }) => {
      const { commands, flight } = flyTrainee(scenario, airframe, seed, trainee); // the hash throws where a number is none
      expect(flight.ticks).toBeLessThanOrEqual(LIMIT_S * 100);
      expect(fly({ scenario, airframe, seed }, commands).hash).toBe(flight.hash);
    })), { numRuns: 50 });
  }, 120_000);

  it('flown by hands that do anything, in any order of filing', () => {
    fc.assert(fc.property(plain, sound(({ scenario, airframe }, { seed, acts: done }) => {
      const log = done.map(([tick, act], seq) => ({ ...act, tick, rank: 2, seq }) as Command);
      const flight = fly({ scenario, airframe, seed }, log);
      expect(flight.ticks).toBeLessThanOrEqual(LIMIT_S * 100);
      expect(fly({ scenario, airframe, seed }, [...log].reverse()).hash).toBe(flight.hash);
    })), { numRuns: 150 });
  }, 120_000);

  it('nothing that can be written was left out', () => {
    const all = [faultSchema, eventSchema].flatMap((schema) => { const shape = shapeOf(schema); return shape.kind === 'choice' ? [...shape.options.keys()] : []; });
    expect([...kinds].sort()).toEqual([...all].sort());
    expect(tried).toBeGreaterThan(300);
  });
});
