/** What must always hold of a world, whatever hands and faults do. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Act, Fault } from '../../sim/files/index.js';
import { advance, expand, numberOf, restore, run, snapshot, STATE_KEYS, type Command, type State, type StateKey, type World } from '../../sim/index.js';
import { authorityNow } from '../../sim/score/facts.js';
import { AIRFRAME, scenario } from './bench.js';

const ACTS: readonly Act[] = [
  { do: 'openGuard' }, { do: 'closeGuard' }, { do: 'arm' }, { do: 'arm' }, { do: 'disarm' },
  { do: 'holdDrive', way: 'extend' }, { do: 'holdDrive', way: 'extend' }, { do: 'releaseDrive' },
  { do: 'setDrive', to: 'retract' }, { do: 'setDrive', to: 'off' }, { do: 'setFlapLever', settingDeg: 16 },
  { do: 'selectSpeed', speedKt: 180 }, { do: 'setThrust', tlaDeg: 12 }, { do: 'setGear', to: 'down' }, { do: 'silenceHorn' },
  { do: 'descend', toFt: 3000, pathDeg: -3 }, { do: 'turn', bankDeg: 25 }, { do: 'goAround' }, { do: 'callSplit' },
];
const SECONDS = 40;
const log = fc.array(fc.record({ act: fc.constantFrom(...ACTS), tick: fc.integer({ min: 0, max: SECONDS * 100 - 1 }) }), { maxLength: 30 })
  .map((list): Command[] => list.sort((a, b) => a.tick - b.tick).map(({ act, tick }, seq) => ({ ...act, tick, rank: 2, seq }) as Command));

type Kind = 'none' | Exclude<Extract<Fault, { side: string }>['kind'], 'pointer'> | 'stuck' | 'bias' | 'drift';
const MORE: Readonly<Record<Kind, object | null>> = {
  none: null, disconnect: {}, lag: { ratio: 0.4 }, jam: {}, slip: { ratio: 0, periodS: 6, onS: 3 }, blowback: {}, stuck: { kind: 'pointer', mode: 'stuck' },
  bias: { kind: 'pointer', mode: 'bias', biasDeg: 1.5 }, drift: { kind: 'pointer', mode: 'drift', driftDegPerS: 0.1 },
};
const fault = (kind: Kind, side: 'left' | 'right'): object[] => (MORE[kind] === null ? [] : [{ name: 'f', kind, side, when: { heldS: 3 }, ...MORE[kind] }]);
const KINDS = Object.keys(MORE) as Kind[];
const kinds = fc.constantFrom(...KINDS);

const worldOf = (kind: Kind, side: 'left' | 'right' = 'right'): World =>
  expand(scenario({ start: { flapDeg: 6, flapLeverDeg: 9 }, faults: fault(kind, side) }), AIRFRAME, 5);

function each(world: World, commands: Command[], see: (now: Readonly<State>, before: Readonly<State>) => void): void {
  let at = world;
  for (let i = 0; i < SECONDS * 100; i += 1) {
    const next = advance(at, commands, 1);
    see(next.state, at.state);
    at = next;
  }
}

describe('a world', () => {
  it('keeps its bounds: travel inside the stops, leading edge never back, roll authority 0 only when even', () => {
    fc.assert(fc.property(kinds, log, (kind, commands) => {
      each(worldOf(kind), commands, (s, before) => {
        for (const deg of [s.driveDeg, s.leftDeg, s.rightDeg]) if (deg < 0 || deg > 38) throw new Error(`${deg} deg`);
        if (s.leadingEdge < before.leadingEdge) throw new Error('leading edge went back');
        if (s.motorHeat < 0 || s.tick !== before.tick + 1) throw new Error('heat or tick');
      });
    }), { numRuns: 60 });
  });

  it('stays where it is when released (14 CFR 25.697(a)), within 16 ticks, blow-back apart', () => {
    fc.assert(fc.property(fc.constantFrom(...KINDS.filter((kind) => kind !== 'blowback')), log, (kind, commands) => {
      let off = 0;
      each(worldOf(kind), commands, (s, before) => {
        off = s.latched.drive === 0 || s.latched.armed === 0 ? off + 1 : 0;
        if (off > 16 && (s.leftDeg !== before.leftDeg || s.rightDeg !== before.rightDeg)) throw new Error(`moves ${off} ticks behind`);
      });
    }), { numRuns: 60 });
  });

  it('roll authority used is 0 exactly when the sides are even, and above 0 otherwise', () => {
    fc.assert(fc.property(kinds, log, (kind, commands) => {
      const world = worldOf(kind);
      for (const seconds of [5, 15, SECONDS]) {
        const { state } = advance(world, commands, seconds * 100);
        const used = authorityNow(state, world.fixed);
        if ((used === 0) !== (state.leftDeg === state.rightDeg) || used < 0) throw new Error(`${used} % with ${state.leftDeg} and ${state.rightDeg}`);
      }
    }), { numRuns: 40 });
  });

  it('moves nothing without guard open, armed, and the switch held', () => {
    fc.assert(fc.property(log, (commands) => {
      const without = commands.filter(({ do: what }) => what !== 'arm');
      each(worldOf('none'), without, (s) => { if (s.leftDeg !== 6 || s.rightDeg !== 6) throw new Error('moved'); });
    }), { numRuns: 30 });
  });

  it('is the same when a run is saved and restored at any tick', () => {
    fc.assert(fc.property(kinds, log, fc.integer({ min: 0, max: SECONDS * 100 }), (kind, commands, at) => {
      const world = worldOf(kind);
      const whole = advance(world, commands, SECONDS * 100);
      const half = advance(world, commands, at);
      const again = advance({ fixed: world.fixed, state: restore(snapshot(half.state)) }, commands, SECONDS * 100 - at);
      expect(snapshot(again.state)).toEqual(snapshot(whole.state));
    }), { numRuns: 60 });
  });

  it('mirrors: the fault on the other side gives the mirrored state to the last bit', () => {
    const swap = (key: string): string => (key.startsWith('left') ? `right${key.slice(4)}` : key.startsWith('right') ? `left${key.slice(5)}` : key);
    const flips = ['rollRate', 'bankRad', 'control', 'controlSum', 'onsetSign', 'turnedRad'];
    fc.assert(fc.property(fc.constantFrom(...KINDS.filter((kind) => kind !== 'bias' && kind !== 'drift')), log, (kind, commands) => {
      const even = commands.filter(({ do: what }) => what !== 'turn' && what !== 'goAround');
      const right = advance(worldOf(kind, 'right'), even, SECONDS * 100).state;
      const left = advance(worldOf(kind, 'left'), even, SECONDS * 100).state;
      for (const key of STATE_KEYS) {
        const value = numberOf(right, key);
        const twin = numberOf(left, swap(key) as StateKey);
        if (key === 'leadingEdge' || key === 'leadingEdgeGoing' || key === 'leadingEdgeStop') continue;
        const want = flips.includes(key) ? -value : value;
        if (twin + 0 !== want + 0) throw new Error(`${key}: ${value} against ${twin}`);
      }
    }), { numRuns: 60 });
  });

  it('a lying pointer leaves the true state untouched to the last bit', () => {
    const truth = ['driveDeg', 'leftDeg', 'rightDeg', 'speedMps', 'bankRad', 'motorHeat', 'leftTlaDeg', 'fuelKg'] as const;
    fc.assert(fc.property(fc.constantFrom<Kind>('stuck', 'bias', 'drift'), log, (kind, commands) => {
      const lying = advance(worldOf(kind), commands, SECONDS * 100).state;
      const whole = advance(worldOf('none'), commands, SECONDS * 100).state;
      for (const key of truth) expect(lying[key], key).toBe(whole[key]);
    }), { numRuns: 40 });
  });

  it('same log, same hash; one act more, another hash, even when undone before the end', () => {
    fc.assert(fc.property(kinds, log, (kind, commands) => {
      const world = worldOf(kind);
      expect(run(world, commands).hash).toBe(run(world, [...commands].reverse()).hash);
    }), { numRuns: 20 });
    const world = worldOf('none');
    const base = [{ do: 'openGuard', tick: 10, rank: 2, seq: 0 }, { do: 'arm', tick: 20, rank: 2, seq: 1 }] as Command[];
    const touched = [...base, { do: 'holdDrive', way: 'extend', tick: 100, rank: 2, seq: 2 }, { do: 'releaseDrive', tick: 130, rank: 2, seq: 3 }] as Command[];
    expect(run(world, touched, undefined, 4000).hash).not.toBe(run(world, base, undefined, 4000).hash);
  });
});

describe('onset and growth', () => {
  const held = [{ do: 'arm', tick: 0, rank: 2, seq: 0 }, { do: 'holdDrive', way: 'extend', tick: 0, rank: 2, seq: 1 }] as Command[];
  it.each(KINDS.filter((kind) => kind !== 'none'))('%s: onset is the first tick in force while the drive moves', (kind) => {
    const s = advance(worldOf(kind), held, 400).state;
    // Held 3 s from tick 0: looked at at the end of tick 299, acts in tick 300.
    expect(s.latched.onsetTick).toBe(300);
  });
  it('none without a fault', () => expect(advance(worldOf('none'), held, 3000).state.latched.onsetTick).toBe(-1));
  it('grows at the split rate of the prototype table: 0.160 deg/s after a disconnect at 154 kt from 6.4 deg', () => {
    const world = expand(scenario({
      start: { speedKt: 154, flapDeg: 6.43, altitudeFt: 3500, flapLeverDeg: 16 }, faults: [{ name: 'f', kind: 'disconnect', side: 'right', when: { atS: 0 } }],
    }), AIRFRAME, 1);
    const s = advance(world, held, 1000).state;
    const rate = (s.leftDeg - s.rightDeg) / ((1000 - s.latched.onsetTick) / 100);
    expect(Math.abs(rate - 0.16)).toBeLessThan(0.002);
    // And 25 % of roll authority is reached in 21.95 s, 50 % in 45.07 s of driving (prototype, 154 kt).
    expect(advance(world, held, 2195 + 20).state.leftDeg - 6.43).toBeCloseTo(3.498, 1);
  });
});
