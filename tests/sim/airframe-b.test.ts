/** Airframe B is unlike A: what A's numbers cannot show is tried on it. */
import { describe, expect, it } from 'vitest';
import { advance, expand, type Command } from '../../sim/index.js';
import { speedsOf } from '../../sim/advise/speeds.js';
import { AIRFRAME_B, scenarioOn } from './bench.js';

const keys = { start: { massT: 8, altitudeFt: 4000, speedKt: 150, flapDeg: 10, guard: 'open' }, task: { settings: [20], limitS: 120 } };
const at = (tick: number, act: object, seq: number) => ({ ...act, tick, rank: 2, seq }) as Command;

describe('Airframe B', () => {
  it('drives 10 to 20 in about a quarter of a minute', () => {
    const world = expand(scenarioOn(AIRFRAME_B, keys), AIRFRAME_B, 1);
    const log = [at(0, { do: 'arm' }, 0), at(0, { do: 'holdDrive', way: 'extend' }, 1)];
    let ticks = 0;
    for (let now = world; now.state.driveDeg < 20; ticks += 1) now = advance(now, log, 1);
    expect(ticks / 100).toBeGreaterThan(11);
    expect(ticks / 100).toBeLessThan(18);
  });
  it('springs back from retract: letting go there stops the drive, and setting retract does nothing', () => {
    const world = expand(scenarioOn(AIRFRAME_B, keys), AIRFRAME_B, 1);
    const log = [at(0, { do: 'arm' }, 0), at(0, { do: 'setDrive', to: 'retract' }, 1), at(100, { do: 'holdDrive', way: 'retract' }, 2), at(300, { do: 'releaseDrive' }, 3)];
    expect(advance(world, log, 100).state.driveDeg).toBe(10);
    const moving = advance(world, log, 300).state;
    expect(moving.driveDeg).toBeLessThan(9);
    const off = advance(world, log, 330).state;
    expect(off).toMatchObject({ rateDegPerS: 0, latched: { drive: 0, contactor: 0 } });
  });
  it('manoeuvre speeds stand on the reference speed of the last setting', () => {
    const { settings } = speedsOf(AIRFRAME_B, 8, false);
    const last = settings[settings.length - 1]!;
    expect(settings.map(({ manoeuvreKt }) => manoeuvreKt - last.referenceKt)).toEqual([50, 32, 18, 0].map((kt) => expect.closeTo(kt, 10)));
  });
  it('limits keep 1.8 VSR at landing weight and 1.6 at take-off weight (14 CFR 25.335(e)(3))', () => {
    for (const { settingDeg, limitKt, stallKt } of speedsOf(AIRFRAME_B, AIRFRAME_B.mass.landingT, false).settings) {
      if (settingDeg >= 20) expect(limitKt).toBeGreaterThanOrEqual(1.8 * stallKt);
    }
    const ten = speedsOf(AIRFRAME_B, AIRFRAME_B.mass.takeOffT, false).settings[1]!;
    expect(ten.limitKt).toBeGreaterThanOrEqual(1.6 * ten.stallKt);
  });
  it('its horn knows flap alone: idle levers are silent below the landing band, any lever sounds above', () => {
    const idle = at(0, { do: 'setThrust', tlaDeg: 0 }, 0);
    expect(advance(expand(scenarioOn(AIRFRAME_B, { ...keys, start: { ...keys.start, flapDeg: 20 } }), AIRFRAME_B, 1), [idle], 50).state.latched.horn).toBe(0);
    expect(advance(expand(scenarioOn(AIRFRAME_B, { ...keys, start: { ...keys.start, flapDeg: 35, speedKt: 130 } }), AIRFRAME_B, 1), [], 50).state.latched.horn).toBe(2);
  });
});
