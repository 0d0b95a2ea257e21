/** Any scenario the doors let in: stays in the legal range, makes no number that is none, ends within its limit. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { misfits, ready, scenarioSchema, type Airframe } from '../../sim/files/index.js';
import { expand, run, runBy, pilotOf, TRAINEES, type Command, type State, type TraineeName, type World } from '../../sim/index.js';
import { AIRFRAME, AIRFRAME_B } from './bench.js';
import { anywhere } from '../draw.js';

const hundredths = (max: number) => fc.integer({ min: 0, max: max * 100 }).map((n) => n / 100);
const side = fc.constantFrom('left', 'right', 'drawn');
const leaf = fc.oneof(
  fc.record({ atS: hundredths(60) }), fc.record({ flapDeg: anywhere(0, 37) }),
  fc.record({ heldS: hundredths(40) }), fc.record({ hazardPerS: anywhere(0.001, 1) }),
  fc.record({ speedKt: fc.integer({ min: 100, max: 220 }), edge: fc.constantFrom('rising', 'falling', 'either') }),
);
const when = fc.oneof({ weight: 4, arbitrary: leaf }, fc.record({ all: fc.array(leaf, { minLength: 1, maxLength: 3 }) }), fc.record({ any: fc.array(leaf, { minLength: 1, maxLength: 3 }) }));
const ratio = anywhere(-4, 0.95);
const fault = fc.oneof(
  ...['disconnect', 'jam', 'blowback'].map((kind) => fc.record({ kind: fc.constant(kind), side, when })),
  fc.record({ kind: fc.constant('lag'), side, when, ratio }),
  fc.record({ kind: fc.constant('slip'), side, when, ratio, periodS: fc.constant(6), onS: hundredths(5.9).map((s) => s + 0.01) }),
  fc.record({ kind: fc.constant('pointer'), mode: fc.constant('stuck'), side, when }),
  fc.record({ kind: fc.constant('pointer'), mode: fc.constant('bias'), biasDeg: anywhere(-20, 20), side, when }),
  fc.record({ kind: fc.constant('pointer'), mode: fc.constant('drift'), driftDegPerS: anywhere(-2, 2), side, when }),
  ...['dead', 'quits', 'runsOn'].map((kind) => fc.record({ kind: fc.constant(kind), when })),
  fc.record({ kind: fc.constant('slow'), when, factor: anywhere(0.05, 1) }),
  fc.record({ kind: fc.constant('leadingEdge'), when, stopsAt: anywhere(0, 0.99) }),
);
const event = fc.oneof(
  fc.record({ do: fc.constant('descend'), toFt: fc.integer({ min: 2000, max: 5000 }), pathDeg: fc.constant(-3), when }),
  fc.record({ do: fc.constant('failEngine'), side, when }), fc.record({ do: fc.constant('returnMainDrive'), when }),
  fc.record({ do: fc.constant('setGear'), to: fc.constantFrom('up', 'down'), when }),
);
const scenarios = fc.record({
  airframe: fc.constantFrom(AIRFRAME, AIRFRAME_B),
  faults: fc.array(fault, { maxLength: 5 }), events: fc.array(event, { maxLength: 4 }),
  scored: fc.boolean(), noisy: fc.boolean(), clean: fc.boolean(), seed: fc.integer({ min: 0, max: 4294967295 }),
});

interface Made { airframe: Airframe; faults: object[]; events: object[]; scored: boolean; noisy: boolean; clean: boolean; seed: number }

function worldOf({ airframe, faults, events, scored, noisy, clean, seed }: Made) {
  const small = airframe === AIRFRAME_B;
  const setting = airframe.settings[clean ? 0 : 1]?.deg ?? 0;
  const made = scenarioSchema.parse({
    format: 1, title: 't', brief: 'b', airframe: airframe.name, pointerNoise: noisy,
    start: { massT: small ? 8 : 48, altitudeFt: 6000, speedKt: small ? 160 : 175, flapDeg: setting, leadingEdge: clean ? 'in' : 'out' },
    task: { settings: [airframe.settings[2]?.deg ?? 0], limitS: 120 },
    faults: faults.map((one, at) => ({ name: `f${at}`, ...one })), events,
    ...(scored ? { recognition: {} } : {}),
  });
  expect(misfits(made, airframe)).toEqual([]);
  const full = ready(made, airframe);
  return { world: expand(full, airframe, seed), pilot: (trainee: TraineeName, { fixed }: World) => pilotOf(full, airframe, seed, trainee, fixed) };
}

function legal(s: State, stopDeg: number): void {
  for (const deg of [s.driveDeg, s.leftDeg, s.rightDeg]) if (!(deg >= 0 && deg <= stopDeg)) throw new Error(`${deg} deg at tick ${s.tick}`);
  if (!(s.leadingEdge >= 0 && s.leadingEdge <= 1) || !(s.motorHeat >= 0 && s.motorHeat < 3)) throw new Error(`leading edge or heat at tick ${s.tick}`);
  if (!(s.speedMps > 0) || !(Math.abs(s.control) <= 1) || !(s.gear >= 0 && s.gear <= 1)) throw new Error(`flight at tick ${s.tick}`);
}

describe('any scenario', () => {
  it.each(TRAINEES)('flown by %s ends within its limit, legal in every tick', (trainee) => {
    fc.assert(fc.property(scenarios, (made) => {
      const { world, pilot } = worldOf(made);
      const log: Command[] = [];
      const { drive } = world.fixed;
      const flown = runBy(world, pilot(trainee, world), log, (s) => legal(s, drive.stopDeg));
      expect(flown.ticks).toBeLessThanOrEqual(12000);
      // The hash throws where a number is none; the log alone gives it again.
      expect(run(world, log).hash).toBe(flown.hash);
    }), { numRuns: 40 });
  });
});
