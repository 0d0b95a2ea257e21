/** Failures that are not splits, the normal drive, heat, retraction, and what the aeroplane does: one case a behaviour. */
import { describe, expect, it } from 'vitest';
import { advance, expand, lowestNow, run, withNumbers, type Command, type World } from '../../sim/index.js';
import { FT, RAD } from '../../sim/units.js';
import { AIRFRAME, scenario } from './bench.js';

type Keys = Record<string, unknown>;
let seq = 0;
const at = (seconds: number, act: object): Command => ({ ...act, tick: Math.round(seconds * 100), rank: 2, seq: seq++ }) as Command;
const arm = at(0, { do: 'arm' });
const hold = (seconds: number, way = 'extend') => at(seconds, { do: 'holdDrive', way });
const release = (seconds: number) => at(seconds, { do: 'releaseDrive' });
const world = (keys: Keys = {}): World => expand(scenario(keys), AIRFRAME, 1);
const fault = (keys: Keys): Keys => ({ faults: [{ name: 'f', when: { atS: 5 }, ...keys }] });
const to = (from: World, log: Command[], seconds: number) => advance(from, log, Math.round(seconds * 100) - from.state.tick);

describe('drive failures', () => {
  it('dead: the contactor closes and nothing moves, nor does the leading edge', () => {
    const s = to(world({ start: { flapDeg: 0, leadingEdge: 'in' }, ...fault({ kind: 'dead', when: { atS: 0 } }) }), [arm, hold(1)], 20).state;
    expect(s).toMatchObject({ driveDeg: 0, leftDeg: 0, rateDegPerS: 0, leadingEdge: 0, motorHeat: 0, latched: { contactor: 1 } });
  });
  it('quits: stops within the brake time and for good', () => {
    const log = [arm, hold(0), release(10), hold(12)];
    const from = world(fault({ kind: 'quits' }));
    const stopped = to(from, log, 5.1).state.driveDeg;
    expect(stopped).toBeGreaterThan(4.5);
    expect(to(from, log, 20).state.driveDeg).toBe(stopped);
  });
  it('slow: half the motor speed is about half the rate, both sides even', () => {
    const healthy = to(world(), [arm, hold(0)], 5).state.rateDegPerS;
    const s = to(world(fault({ kind: 'slow', factor: 0.5 })), [arm, hold(0)], 8).state;
    expect(s.rateDegPerS / healthy).toBeCloseTo(0.5, 1);
    expect(s.leftDeg).toBe(s.rightDeg);
    expect(s.latched.onsetTick).toBe(-1);
  });
  it.each([['guard', { do: 'closeGuard' }], ['arm', { do: 'disarm' }]])('runs on after release until the %s stops it', (_, act) => {
    const from = world(fault({ kind: 'runsOn' }));
    const log = [arm, hold(0), release(10), at(20, act)];
    const before = to(from, log, 10.5).state.driveDeg;
    const running = to(from, log, 20).state;
    expect(running.driveDeg).toBeGreaterThan(before + 1);
    const after = to(from, log, 20.2).state;
    expect(after.rateDegPerS).toBe(0);
    expect(to(from, log, 30).state.driveDeg).toBe(after.driveDeg);
  });
  it('a leading edge that stops short stays there, and the stall warning counts it as not out', () => {
    const keys = { start: { flapDeg: 0, leadingEdge: 'in' }, ...fault({ kind: 'leadingEdge', stopsAt: 0.6, when: { atS: 0 } }) };
    const now = to(world(keys), [arm, hold(0)], 25);
    expect(now.state.leadingEdge).toBe(0.6);
    expect(lowestNow(now.state, now.fixed)).toBeGreaterThan(lowestNow(withNumbers(now.state, { leadingEdge: 1 }), now.fixed));
  });
});

describe('leading edge', () => {
  it('goes fully out on the first touch, in 8 s, and no retraction brings it back', () => {
    const log = [arm, hold(1), release(1.5), at(12, { do: 'setDrive', to: 'retract' })];
    const from = world({ start: { flapDeg: 0, leadingEdge: 'in' } });
    expect(to(from, log, 1.05).state.leadingEdge).toBe(0);
    expect(to(from, log, 1.07).state.leadingEdge).toBeGreaterThan(0); // the contactor has picked up
    expect(to(from, log, 9.05).state.leadingEdge).toBeLessThan(1);
    expect(to(from, log, 9.07).state.leadingEdge).toBe(1);
    expect(to(from, log, 30).state.leadingEdge).toBe(1);
  });
});

describe('retraction', () => {
  const log = [arm, at(1, { do: 'setDrive', to: 'retract' }), release(10), at(20, { do: 'setDrive', to: 'off' })];
  const from = () => world({ start: { flapDeg: 16, flapLeverDeg: 9 } });
  it('a latched switch stays when let go, and off stops it', () => {
    const still = to(from(), log, 19.99).state;
    expect(still.latched.drive).toBe(-1);
    expect(still.driveDeg).toBeLessThan(14);
    const off = to(from(), log, 20.2).state;
    expect(off).toMatchObject({ rateDegPerS: 0, latched: { drive: 0, contactor: 0 } });
  });
  it('is quicker than extension at the same place: the air aids, less what the no-back brakes take', () => {
    const out = to(world({ start: { flapDeg: 16 } }), [arm, hold(0)], 5).state.rateDegPerS;
    expect(-to(from(), log, 6).state.rateDegPerS).toBeGreaterThan(out);
  });
  it('reverses only from standstill', () => {
    const both = [arm, hold(0), at(5, { do: 'setDrive', to: 'retract' })];
    let now = to(world(), both, 4.9);
    while (now.state.tick < 560) {
      const next = advance(now, both, 1);
      expect(now.state.rateDegPerS > 0 && next.state.rateDegPerS < 0).toBe(false);
      now = next;
    }
    expect(now.state.rateDegPerS).toBeLessThan(0);
  });
  it('runs at 9 kt above every flap limit without tripping the limiter (14 CFR 25.697(d), whether it bites on a standby drive is a matter of reading)', () => {
    for (const { deg, limitKt } of AIRFRAME.settings) {
      if (limitKt === null) continue;
      const fast = world({ start: { flapDeg: deg, flapLeverDeg: 0, speedKt: limitKt + 9 } });
      const s = to(fast, [arm, at(0, { do: 'setDrive', to: 'retract' })], 5).state;
      expect(s.latched.limiterTripped).toBe(0);
      expect(s.rateDegPerS).toBeLessThan(-0.1);
    }
  });
});

describe('limiter and heat', () => {
  it('trips against the stop, holds until let go, and trips again on the next press', () => {
    const from = world({ start: { flapDeg: 37.5, flapLeverDeg: 36, speedKt: 130 }, task: { settings: [36] } });
    const log = [arm, hold(0), release(20), hold(22)];
    expect(to(from, log, 15).state).toMatchObject({ driveDeg: 38, rateDegPerS: 0, latched: { limiterTripped: 1 } });
    expect(to(from, log, 21).state.latched.limiterTripped).toBe(0);
    expect(to(from, log, 23).state.latched.limiterTripped).toBe(1);
  });
  it('a jam that the limiter meets before the shear stops both sides; letting go resets it', () => {
    // Fast and far out the load of the healthy side leaves less than the shear torque below the limiter.
    const from = world({ start: { flapDeg: 26, flapLeverDeg: 36, speedKt: 195 }, task: { settings: [36] }, ...fault({ kind: 'jam', side: 'right' }) });
    const s = to(from, [arm, hold(0)], 40).state;
    expect(s.latched.limiterTripped).toBe(1);
    expect(s.latched.rightCut).toBe(0);
    const split = s.leftDeg - s.rightDeg;
    expect(split).toBeGreaterThan(0.3);
    expect(split).toBeLessThan(0.9);
  });
  it('cuts out on the way to full flap from cold, and not on the way to 16: at 150 kt after 251.7 s, at flap 34.5', () => {
    const from = world({ start: { flapDeg: 0, leadingEdge: 'out', speedKt: 150, altitudeFt: 3500 }, task: { settings: [36], limitS: 400 } });
    let now = from;
    while (now.state.latched.cutOutOpen === 0 && now.state.tick < 40000) now = advance(now, [arm, hold(0)], 1);
    expect(Math.abs(now.state.tick / 100 - 251.7)).toBeLessThan(0.6);
    expect(now.state.driveDeg).toBeCloseTo(34.5, 0);
  });
  it('an open cut-out feeds nothing however the switch is held, and closes below its reset', () => {
    const from = world({ start: { motorHeat: 1.05 }, task: { limitS: 1200 } });
    expect(to(from, [arm, hold(0)], 100).state).toMatchObject({ driveDeg: 4, latched: { cutOutOpen: 1 } });
    const s = to(from, [arm, hold(0)], 420).state; // 700 ln(1.05 / 0.6) = 391.7 s
    expect(s.latched.cutOutOpen).toBe(0);
    expect(s.driveDeg).toBeGreaterThan(4);
  });
});

describe('normal drive', () => {
  const back = { mainDrive: 'returns', events: [{ name: 'back', when: { atS: 10 }, do: 'returnMainDrive' }] };
  it('lost: a lever moved moves nothing by itself', () => {
    expect(to(world(), [at(1, { do: 'setFlapLever', settingDeg: 16 })], 60).state.driveDeg).toBe(4);
  });
  it('back: takes the flaps to the lever at its own rate, 0.7 deg/s, unless the standby drive is armed', () => {
    const lever = at(1, { do: 'setFlapLever', settingDeg: 9 });
    const s = to(world(back), [lever], 15).state;
    expect(s.driveDeg).toBeCloseTo(4 + 0.7 * 5, 6);
    expect(to(world(back), [lever], 30).state.driveDeg).toBe(9);
    expect(to(world(back), [lever, arm], 30).state.driveDeg).toBe(4);
  });
  it('back with a side cut: the other side goes, which is why the guard stays as it is', () => {
    const keys = { ...back, ...fault({ kind: 'disconnect', side: 'left' }) };
    const s = to(world(keys), [at(1, { do: 'setFlapLever', settingDeg: 16 })], 40).state;
    expect(s).toMatchObject({ leftDeg: 4, rightDeg: 16 });
  });
});

describe('the aeroplane', () => {
  it('holds a bank that is asked for, and its stall warning rises with the load factor', () => {
    const now = to(world(), [at(1, { do: 'turn', bankDeg: 25 })], 30);
    expect(now.state.bankRad / RAD).toBeCloseTo(25, 1);
    // Load factor of a level turn is 1 / cos(bank), and speeds go with its root (any textbook of flight mechanics).
    const level = lowestNow(withNumbers(now.state, { bankRad: 0 }), now.fixed);
    expect(lowestNow(now.state, now.fixed) / level).toBeCloseTo(Math.sqrt(1 / Math.cos(now.state.bankRad)), 10);
  });
  it('goes around: climbs, keeps about its speed', () => {
    const s = to(world(), [at(1, { do: 'goAround' })], 40).state;
    expect(s.heightM).toBeGreaterThan(5600 * FT + 150);
    expect(Math.abs(s.casKt - 167)).toBeLessThan(12);
  });
  it('descends to a height and levels there', () => {
    const s = to(world(), [at(1, { do: 'descend', toFt: 5000, pathDeg: -3 })], 90).state;
    expect(s.pathSin).toBe(0);
    expect(Math.abs(s.heightM / FT - 5000)).toBeLessThan(0.2);
  });
  it('an engine out: its lever no longer counts, the other comes up, drag has its increment', () => {
    const s = to(world({ events: [{ when: { atS: 5 }, do: 'failEngine', side: 'left' }] }), [], 60).state;
    expect(s.leftThrust).toBeLessThan(0.01);
    expect(s.rightTlaDeg).toBeGreaterThan(35);
    expect(Math.abs(s.casKt - 167)).toBeLessThan(1);
  });
  it('levers by hand: each its own, speed hold off', () => {
    const s = to(world(), [at(1, { do: 'setThrust', tlaDeg: 30, lever: 'left' }), at(1, { do: 'setThrust', tlaDeg: 10, lever: 'right' })], 10).state;
    expect(s).toMatchObject({ leftTlaDeg: 30, rightTlaDeg: 10, latched: { speedHold: 0 } });
    expect(s.leftThrust).toBeGreaterThan(s.rightThrust);
  });
  it('the autopilot hides a split until its limit, then lets go (blow-back from 16 at 143 kt)', () => {
    const keys = {
      start: { flapDeg: 15.5, flapLeverDeg: 16, speedKt: 143, altitudeFt: 3500 },
      task: { settings: [26], limitS: 200 }, faults: [{ name: 'f', kind: 'blowback', side: 'right', when: { flapDeg: 16 } }],
    };
    let now = world(keys);
    const log = [arm, hold(0)];
    while (now.state.latched.onsetTick < 0) now = advance(now, log, 1);
    const released = [...log, release((now.state.tick + 150) / 100)];
    let limit = -1;
    while (now.state.latched.autopilot === 1 && now.state.tick < 12000) {
      if (limit < 0 && Math.abs(now.state.control) >= 0.45) limit = now.state.tick;
      now = advance(now, released, 1);
    }
    expect(now.state.latched.autopilot).toBe(0);
    expect(Math.abs(now.state.bankRad / RAD)).toBeLessThan(30);
    expect(limit).toBeGreaterThan(0);
    expect(now.state.tick - limit).toBeGreaterThanOrEqual(299);
  });
  it('control is lost past 45 degrees of bank, and the run ends with that', () => {
    const keys = {
      start: { flapDeg: 10, flapLeverDeg: 16, speedKt: 154, altitudeFt: 3500 }, task: { settings: [16], limitS: 200 },
      faults: [{ name: 'f', kind: 'blowback', side: 'right', when: { flapDeg: 11.4 } }],
    };
    let now = world(keys);
    while (now.state.latched.endTick < 0) now = advance(now, [arm, hold(0)], 1);
    expect(now.state.latched.endWhy).toBe(5);
  });
});

describe('triggers', () => {
  const acted = (when: object, log: Command[], seconds = 30) => to(world({ faults: [{ name: 'f', kind: 'lag', ratio: 0.5, side: 'left', when }] }), log, seconds).state.latched.onsetTick;
  const driving = [arm, hold(0)];
  it('a crossing with an edge counts only that way', () => {
    expect(acted({ flapDeg: 5, edge: 'rising' }, driving)).toBeGreaterThan(0);
    expect(acted({ flapDeg: 5, edge: 'falling' }, driving)).toBe(-1);
  });
  it('all waits for every part, each once seen; any takes the first', () => {
    const slowing = [...driving, at(0, { do: 'selectSpeed', speedKt: 155 })];
    const both = acted({ all: [{ flapDeg: 5 }, { speedKt: 160, edge: 'falling' }] }, slowing);
    const flap = acted({ flapDeg: 5 }, slowing);
    const speed = acted({ speedKt: 160, edge: 'falling' }, slowing);
    expect(both).toBe(Math.max(flap, speed));
    expect(acted({ any: [{ flapDeg: 5 }, { speedKt: 160 }] }, slowing)).toBe(Math.min(flap, speed));
  });
  it('after acts in the next tick, or so much later', () => {
    const after = (delayS: number) => to(world({ faults: [
      { name: 'a', kind: 'slow', factor: 0.9, when: { atS: 5 } }, { name: 'b', kind: 'lag', ratio: 0.5, side: 'left', when: { after: 'a', delayS } },
    ] }), driving, 30).state.latched.onsetTick;
    expect(after(0)).toBe(501);
    expect(after(0.01)).toBe(501);
    expect(after(2.5)).toBe(750);
  });
  it('a drawn side is left and right about alike over seeds', () => {
    const keys = { faults: [{ name: 'f', kind: 'disconnect', side: 'drawn', when: { atS: 0 } }] };
    const lefts = Array.from({ length: 400 }, (_, seed) => advance(expand(scenario(keys), AIRFRAME, seed), [], 1).state.latched.leftCut).reduce((a, b) => a + b, 0);
    expect(Math.abs(lefts - 200)).toBeLessThan(40); // four standard deviations of a fair coin
  });
});

describe('no thrust at all', () => {
  it('level flight slows and slows, and never to a number that is none', () => {
    const events = ['left', 'right'].map((side) => ({ do: 'failEngine', side, when: { atS: 1 } }));
    const world = expand(scenario({ task: { limitS: 600 }, events }), AIRFRAME, 1, true);
    let slowest = Infinity;
    const { state, ticks } = run(world, [], (s) => { slowest = Math.min(slowest, s.speedMps); });
    expect(ticks).toBe(60000);
    expect(slowest).toBe(20);
    expect(Number.isFinite(state.casKt)).toBe(true);
  });
});
