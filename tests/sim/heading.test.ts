/** Heading by bank, heading hold, heights of a climb, and whose the flying is. */
import { describe, expect, it } from 'vitest';
import { headingDeg, stepHeading, turnTo } from '../../sim/flight/heading.js';
import { initialState, withNumbers } from '../../sim/state.js';
import { advance, expand, isOfFlying, type Command, type World } from '../../sim/index.js';
import { FT, G0, KT, RAD } from '../../sim/units.js';
import { AIRFRAME, scenario } from './bench.js';

const at = (tick: number, act: object, seq = 0) => ({ ...act, tick, rank: 2, seq }) as Command;
const begin = (keys: Record<string, unknown> = {}): World => expand(scenario(keys), AIRFRAME, 1);
const deg = (world: World): number => headingDeg(world.fixed.headingRad, world.state.turnedRad);

describe('a level turn', () => {
  it('turns by g tan(bank) / speed', () => {
    // By hand: 120 m/s, bank 25 deg, tan 0.466308: 0.0381077 rad/s = 2.18341 deg/s. Standard relation of a coordinated turn.
    const s = withNumbers(initialState(), { speedMps: 120, bankRad: 25 * RAD });
    for (let i = 0; i < 1000; i += 1) stepHeading(s);
    expect(s.turnedRad / RAD).toBeCloseTo(21.8341, 3);
  });
  it('a turn of 3 deg/s at 120 kt wants 18.2 deg of bank (rate-one turn; formula tan b = w V / g)', () => {
    const v = 120 * KT;
    const s = withNumbers(initialState(), { speedMps: v, bankRad: 18.2 * RAD });
    for (let i = 0; i < 100; i += 1) stepHeading(s);
    expect(s.turnedRad / RAD).toBeCloseTo(3, 1);
    expect(G0).toBe(9.80665);
  });
  it('is read within 0 to 360, and the shorter way is found through north', () => {
    expect(headingDeg(350 * RAD, 20 * RAD)).toBeCloseTo(10, 9);
    expect(headingDeg(10 * RAD, -20 * RAD)).toBeCloseTo(350, 9);
    expect(headingDeg(10 * RAD, 725 * RAD)).toBeCloseTo(15, 9);
    expect([turnTo(10, 350), turnTo(350, 10), turnTo(0, 180), turnTo(90, 90), turnTo(0, 360)].map((one) => Math.round(one))).toEqual([-20, 20, 180, 0, 0]);
  });
  it('is none with the wings level', () => {
    expect(deg(advance(begin(), [], 3000))).toBeCloseTo(90, 9);
  });
});

describe('a heading that is selected', () => {
  it.each([[240, 90], [30, 90], [350, 20]])('%i from %i is reached and kept, and the autopilot stays on', (to, from) => {
    const world = advance(begin({ start: { headingDeg: from }, task: { limitS: 600 } }), [at(0, { do: 'selectHeading', toDeg: to })], 13000);
    expect(deg(world)).toBeCloseTo(to, 0);
    expect(world.state.latched.autopilot).toBe(1);
    expect(Math.abs(world.state.bankRad) / RAD).toBeLessThan(0.5);
  });
  it('is turned to the shorter way', () => {
    expect(advance(begin({ start: { headingDeg: 350 } }), [at(0, { do: 'selectHeading', toDeg: 10 })], 500).state.bankRad).toBeGreaterThan(0);
    expect(advance(begin({ start: { headingDeg: 10 } }), [at(0, { do: 'selectHeading', toDeg: 350 })], 500).state.bankRad).toBeLessThan(0);
  });
  it('never banks past 25 deg', () => {
    let most = 0;
    let world = advance(begin(), [], 0);
    for (let i = 0; i < 60; i += 1) { world = advance(world, [at(0, { do: 'selectHeading', toDeg: 270 })], 100); most = Math.max(most, Math.abs(world.state.bankRad) / RAD); }
    expect(most).toBeGreaterThan(18);
    expect(most).toBeLessThan(25);
  });
});

describe('a go-around', () => {
  it('climbs to the height selected above, and levels there', () => {
    const world = advance(begin({ start: { altitudeFt: 2000, flapDeg: 16, speedKt: 145 } }), [at(0, { do: 'goAround' }), at(10, { do: 'descend', toFt: 3000, pathDeg: -3 }, 1)], 9000);
    expect(world.state.latched.goAround).toBe(0);
    expect(world.state.heightM / FT).toBeGreaterThanOrEqual(3000);
    expect(world.state.heightM / FT).toBeLessThan(3002);
  });
});

describe('another flies', () => {
  const acts = [
    { do: 'setThrust', tlaDeg: 50 }, { do: 'selectSpeed', speedKt: 200 }, { do: 'setSpeedHold', on: false }, { do: 'setGear', to: 'down' },
    { do: 'descend', toFt: 2000, pathDeg: -3 }, { do: 'level' }, { do: 'turn', bankDeg: 20 }, { do: 'selectHeading', toDeg: 200 }, { do: 'goAround' },
  ];
  it.each(acts)('$do of the trainee does nothing there, and something where the trainee flies', (act) => {
    expect(isOfFlying(act as never)).toBe(true);
    const events = [{ when: { atS: 0 }, do: 'descend', toFt: 4000, pathDeg: -3 }];
    const state = (role: string, log: Command[]) => advance(begin({ role, events }), log, 200).state;
    expect(state('driving', [at(10, act)])).toEqual(state('driving', []));
    expect(state('flying', [at(10, act)])).not.toEqual(state('flying', []));
  });
  it('the drive, the flap lever, the calls and the roll stay with the trainee', () => {
    for (const what of ['holdDrive', 'setFlapLever', 'callSplit', 'openGuard', 'arm', 'roll', 'silenceHorn', 'answer'] as const) expect(isOfFlying({ do: what })).toBe(false);
    expect(advance(begin({ role: 'driving' }), [at(0, { do: 'setFlapLever', settingDeg: 16 })], 10).state.latched.flapLeverDeg).toBe(16);
  });
});

describe('a normal drive that works until it is lost', () => {
  it('follows the lever, and stops where it is lost', () => {
    const keys = { mainDrive: 'works', events: [{ when: { flapDeg: 6 }, do: 'loseMainDrive' }] };
    const world = advance(begin(keys), [at(0, { do: 'setFlapLever', settingDeg: 9 })], 2000);
    // 0.7 deg/s: 6 is passed in the tick after 285; lost in the next.
    expect(world.state.driveDeg).toBeGreaterThanOrEqual(6);
    expect(world.state.driveDeg).toBeLessThan(6.02);
    expect(world.state.leftDeg).toBe(world.state.rightDeg);
  });
});
