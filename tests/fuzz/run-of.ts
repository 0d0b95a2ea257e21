/** A run for the long fuzz: anything a file can say, on an airframe inside its ranges, flown by a trainee, by hands, or by hands with a desk. */
import fc from 'fast-check';
import { deskActSchema, type DeskAct } from '../../sim/files/desk-act.js';
import { faultSchema } from '../../sim/files/fault.js';
import { airframeSchema, shapeOf, tryAs, type Airframe, type ReadyScenario } from '../../sim/files/index.js';
import { expand, TRAINEES, withDesk, type Command } from '../../sim/index.js';
import { changed } from '../files/shipped.js';
import { AIRFRAME, AIRFRAME_B } from '../sim/bench.js';
import { anyOf, anyRunOf, mended } from './anything.js';
import { between, inRange, ranges } from './ranges.js';

/** Most runs are short: what goes wrong goes wrong early, and a minute more of the same finds little. s */
const SHORT_S = 5;
const USUAL_S = 8;
const LONG_S = 40;

const shape = shapeOf(airframeSchema);
const places = new Map([AIRFRAME, AIRFRAME_B].map((airframe) => [airframe, ranges(airframe, shape)]));
const never = fc.constant({ atS: 0 });
const deskFault = anyOf(shapeOf(faultSchema), fc.oneof(fc.record({ atS: fc.integer({ min: 0, max: USUAL_S }) }), fc.record({ heldS: fc.constant(1) }), fc.record({ flapDeg: fc.integer({ min: 0, max: 30 }) })))
  .map(({ times: _times, everyS: _everyS, ...fault }) => fault);

/** Acts of a desk: most from their schema, those with a fault or a tick in them by hand. */
const deskAct: fc.Arbitrary<object> = (() => {
  const all = shapeOf(deskActSchema);
  if (all.kind !== 'choice') throw new Error('no choice');
  const plain = { ...all, options: new Map([...all.options].filter(([word]) => !['injectFault', 'disarmFault', 'clearFault', 'reposition'].includes(word))) };
  const name = fc.constantFrom('f0', 'f1', 'd0', 'd1');
  return fc.oneof(
    { weight: 3, arbitrary: fc.tuple(deskFault, name).map(([fault, called]) => ({ do: 'injectFault', fault: { ...fault, name: called } })) },
    { weight: 2, arbitrary: fc.record({ do: fc.constantFrom('disarmFault', 'clearFault'), name }) },
    { weight: 2, arbitrary: fc.record({ do: fc.constant('reposition'), toTick: fc.integer({ min: 0, max: USUAL_S * 100 }) }) },
    { weight: 3, arbitrary: anyOf(plain, never) },
  );
})();

export const fuzzedRun = fc.record({
  made: fc.oneof({ weight: 60, arbitrary: anyRunOf(SHORT_S) }, { weight: 18, arbitrary: anyRunOf(USUAL_S) }, { weight: 1, arbitrary: anyRunOf(LONG_S) }),
  changes: fc.oneof({ weight: 2, arbitrary: fc.constant<[number, number][]>([]) }, { weight: 1, arbitrary: fc.array(fc.tuple(fc.nat(999), inRange), { minLength: 1, maxLength: 3 }) }),
  /** Hands that have begun to drive: without it most would never find guard, arm and switch in their order. */
  begun: fc.boolean(),
  by: fc.oneof(fc.constantFrom(...TRAINEES), fc.constant('hands' as const), fc.constant('desk' as const)),
  desk: fc.array(fc.tuple(fc.integer({ min: 0, max: USUAL_S * 100 }), deskAct), { maxLength: 5 }),
  pieces: fc.array(fc.constantFrom(1, 2, 7, 100), { minLength: 1, maxLength: 5 }),
});
export type FuzzedRun = typeof fuzzedRun extends fc.Arbitrary<infer T> ? T : never;

export interface Flyable {
  readonly scenario: ReadyScenario;
  readonly airframe: Airframe;
  readonly seed: number;
  /** What hands and desk do; empty where a trainee flies. */
  readonly log: readonly Command[];
}

/** Null where the doors refuse what was made. */
export function flyableOf({ made, changes, begun, by, desk }: FuzzedRun): Flyable | null {
  const all = places.get(made.airframe) ?? [];
  const wished = changes.reduce((whole, [at, part]) => {
    const place = all[at % all.length];
    return place === undefined ? whole : changed(whole, place.path, between(place, part));
  }, made.airframe);
  const read = tryAs(airframeSchema, wished);
  const on = read.ok ? mended({ ...made, airframe: read.value }) : null;
  const { seed } = made;
  const one = on ?? (changes.length === 0 ? null : mended(made));
  if (one === null) return null;
  const acts = [...(begun ? BEGIN : []), ...made.acts.map(([tick, act]) => [tick, onSetting(act, one.airframe)] as const)];
  const hands = by === 'hands' || by === 'desk' ? acts.map(([tick, act], seq) => ({ ...act, tick, rank: 2, seq }) as Command) : [];
  return { ...one, seed, log: by === 'desk' ? withActs(one, seed, hands, desk) : hands };
}

const BEGIN: readonly (readonly [tick: number, act: object])[] = [[0, { do: 'openGuard' }], [1, { do: 'arm' }], [2, { do: 'holdDrive', way: 'extend' }]];

/** A lever stands at settings alone: the doors refuse any other place. */
function onSetting(act: object, { settings }: Airframe): object {
  if (!('settingDeg' in act)) return act;
  const { settingDeg } = act as { settingDeg: number };
  return { ...act, settingDeg: settings[Math.floor(settingDeg) % settings.length]?.deg ?? 0 };
}

/** With those acts of the desk that can be done; one that cannot is refused by its door and never filed. */
function withActs({ scenario, airframe }: Pick<Flyable, 'scenario' | 'airframe'>, seed: number, hands: readonly Command[], desk: FuzzedRun['desk']): Command[] {
  const start = expand(scenario, airframe, seed);
  let log = [...hands];
  for (const [at, [tick, wished]] of [...desk].sort(([a], [b]) => a - b).entries()) {
    const act = tryAs<DeskAct>(deskActSchema, wished);
    if (!act.ok) continue;
    const more = [...log, { ...act.value, tick, rank: 1, seq: 1000 + at } as Command];
    try {
      withDesk(start, more);
      log = more;
    } catch (problem) {
      if (!(problem instanceof RangeError)) throw problem;
    }
  }
  return log;
}
