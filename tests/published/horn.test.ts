/**
 * Gear horn: structure after 14 CFR 25.729(e) and 125.187(a)(1), not numbers: no rule fixes a lever angle, a flap angle or
 * a height. Thresholds are Airframe A's invented ones. Both sides of every threshold; who wins; what may be silenced;
 * what re-arms; the worse side counts.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { advance, expand, type Command } from '../../sim/index.js';
import { hornRule } from '../../sim/warning/horn.js';
import { AIRFRAME, scenario } from '../sim/bench.js';
import { anywhere } from '../draw.js';

const t = AIRFRAME.horn;
const BELOW = 1 - 1e-12;
const rule = (flapDeg: number, tlaDeg: number, engines = 2, gear = 0, heightFt = 800): number =>
  hornRule(t, flapDeg, tlaDeg, engines, gear, heightFt);

describe('thresholds, hit exactly', () => {
  it('lever angle: below sounds, at it does not (both engines live, then one)', () => {
    expect(rule(16, 16 * BELOW)).toBe(2);
    expect(rule(16, 16)).toBe(0);
    expect(rule(16, 28 * BELOW, 1)).toBe(2);
    expect(rule(16, 28, 1)).toBe(0);
  });
  it('take-off band: up to 12.5 may be silenced, above may not', () => {
    expect(rule(12.5, 5)).toBe(1);
    expect(rule(12.5 + 1e-12, 5)).toBe(2);
  });
  it('landing band: above 30 sounds at any lever angle (125.187(a)(1): beyond the approach setting, gear not down)', () => {
    expect(rule(30, 16)).toBe(0);
    expect(rule(30 + 1e-12, 16)).toBe(2);
    expect(rule(36, 55)).toBe(2);
  });
  it('height gate of the take-off band', () => {
    expect(rule(9, 5, 2, 0, 1000 * BELOW)).toBe(1);
    expect(rule(9, 5, 2, 0, 1000)).toBe(0);
    expect(rule(16, 5, 2, 0, 20000)).toBe(2); // no gate above the band
  });
  it('only locked down is down (25.729(e)(1): no false down-and-locked)', () => {
    expect(rule(36, 5, 2, 1)).toBe(0);
    expect(rule(36, 5, 2, BELOW)).toBe(2);
    expect(rule(36, 5, 2, 0)).toBe(2);
  });
});

describe('what always holds', () => {
  const engines = fc.constantFrom(1, 2);
  it('a lower lever never silences, more flap never silences, a lower height never silences', () => {
    fc.assert(fc.property(anywhere(0, 38), anywhere(0, 55), engines, anywhere(0, 1), anywhere(0, 5000), anywhere(0, 20), (flap, tla, live, gear, ft, by) => {
      const now = rule(flap, tla, live, gear, ft);
      return rule(flap, tla - by, live, gear, ft) >= now && rule(flap + by, tla, live, gear, ft) >= now && rule(flap, tla, live, gear, ft - by * 100) >= now;
    }), { numRuns: 1000 });
  });
  it('locking the gear always silences', () => {
    fc.assert(fc.property(anywhere(0, 38), anywhere(0, 55), engines, anywhere(0, 5000), (flap, tla, live, ft) => rule(flap, tla, live, 1, ft) === 0));
  });
});

describe('in the world', () => {
  const at = (tick: number, act: object, seq: number) => ({ ...act, tick, rank: 2, seq }) as Command;
  const idle = (from = 0) => at(from, { do: 'setThrust', tlaDeg: 0 }, 0);
  const low = { start: { flapDeg: 9, flapLeverDeg: 9, altitudeFt: 1500, groundFt: 700, speedKt: 160 } };
  const horn = (world: ReturnType<typeof expand>, log: Command[], ticks: number) => advance(world, log, ticks).state.latched.horn;

  it('silence works in the take-off band and re-arms when the levers advance', () => {
    const world = expand(scenario(low), AIRFRAME, 1);
    const silent = [idle(), at(100, { do: 'silenceHorn' }, 1)];
    expect(horn(world, silent, 100)).toBe(1);
    expect(horn(world, silent, 200)).toBe(0);
    const again = [...silent, at(200, { do: 'setThrust', tlaDeg: 30 }, 2), at(300, { do: 'setThrust', tlaDeg: 0 }, 3)];
    expect(horn(world, again, 302)).toBe(1);
  });
  it('silence is lost when the flaps leave the band, and it was never offered there', () => {
    const world = expand(scenario({ start: { ...low.start, flapDeg: 12, flapLeverDeg: 16, guard: 'open' } }), AIRFRAME, 1);
    const log = [idle(), at(0, { do: 'arm' }, 1), at(50, { do: 'silenceHorn' }, 2), at(100, { do: 'holdDrive', way: 'extend' }, 3)];
    expect(horn(world, log, 100)).toBe(0);
    expect(horn(world, log, 700)).toBe(2);
  });
  it('silence does nothing above the band (25.729(e)(4))', () => {
    const world = expand(scenario({ start: { ...low.start, flapDeg: 16, flapLeverDeg: 16, speedKt: 150 } }), AIRFRAME, 1);
    expect(horn(world, [idle(), at(100, { do: 'silenceHorn' }, 1)], 200)).toBe(2);
  });
  it('the further-out side counts: a side stuck low does not hide the landing band', () => {
    const world = expand(scenario({
      start: { flapDeg: 29, flapLeverDeg: 36, speedKt: 150, altitudeFt: 3000, guard: 'open' }, task: { settings: [36] },
      faults: [{ name: 'f', kind: 'disconnect', side: 'right', when: { atS: 0 } }],
    }), AIRFRAME, 1);
    const log = [at(0, { do: 'arm' }, 0), at(0, { do: 'holdDrive', way: 'extend' }, 1)];
    const s = advance(world, log, 1500).state;
    expect(s.rightDeg).toBe(29);
    expect(s.leftDeg).toBeGreaterThan(30);
    expect(s.latched.horn).toBe(2);
  });
  it('stops when the gear locks, not before (25.729(e)(2))', () => {
    const world = expand(scenario({ start: { ...low.start, flapDeg: 16, flapLeverDeg: 16, speedKt: 150 } }), AIRFRAME, 1);
    const log = [idle(), at(0, { do: 'setGear', to: 'down' }, 1)];
    expect(horn(world, log, 1498)).toBe(2);
    expect(horn(world, log, 1502)).toBe(0);
  });
});
