/**
 * The sums of the plan against figures from outside: the prototype's table of travel at constant speed (printed to 0.1 s) and its
 * rates; 3 degrees at 140 and 160 kt over the ground (computed for the project from 14 CFR 25.729(e)(3), example inputs); squares
 * of speeds by hand; the arrival factor of AMC1 NCC.OP.225(e)(1), and 14 CFR 121.195(b) as the one that is not multiplied in.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fuelKgPerNm, flowKgPerH, groundKt } from '../../../sim/advise/plan/fuel.js';
import { ARRIVAL_FACTOR, landingOf } from '../../../sim/advise/plan/landing.js';
import { motorOnS, rateAt } from '../../../sim/advise/plan/motor.js';
import { descentFtPerMin, pathNm } from '../../../sim/advise/plan/path.js';
import { advance } from '../../../sim/index.js';
import { expand } from '../../../sim/expand.js';
import { prepare } from '../../../sim/prepare.js';
import { AIRFRAME, scenario } from '../bench.js';
import { anywhere } from '../../draw.js';

const { drive, flight } = prepare(AIRFRAME, 48);

describe('motor on, in closed form', () => {
  it.each([[0, 94.7], [130, 102.9], [150, 105.9], [170, 109.7], [190, 114.3], [210, 120.0], [230, 127.2]])('0 to 16 at %d kt equivalent: %d s', (kt, s) => {
    expect(Math.abs(motorOnS(drive, kt, 0, 16) - s)).toBeLessThan(0.06);
  });
  it.each([[130, 0, 0.1641], [150, 16, 0.1403], [170, 36, 0.0965], [210, 9, 0.1319], [230, 36, 0.0367]])('rate at %d kt and flap %d (table at 3500 ft, calibrated; equivalent is up to a knot less)', (kt, deg, rate) => {
    expect(Math.abs(rateAt(drive, kt, deg) - rate)).toBeLessThan(0.0006);
  });
  it('on the ground it is a straight line: 16 deg / (0.190 x (1 - 10 / 90)) deg/s = 94.737 s', () => {
    expect(motorOnS(drive, 0, 0, 16)).toBeCloseTo(16 / (0.19 * 80 / 90), 9);
  });
  it('never, where the motor stalls on the way', () => expect(motorOnS(drive, 400, 0, 36)).toBe(Infinity));
  it('is the time the drive itself takes, but for start and brake (0.12 s of the motor, 0.06 s of the contactor)', () => {
    const world = expand(scenario({ start: { speedKt: 150, altitudeFt: 0, groundFt: -1000 }, task: { settings: [16] } }), AIRFRAME, 1, true);
    const log = [{ do: 'arm', tick: 0, rank: 2, seq: 0 }, { do: 'holdDrive', way: 'extend', tick: 0, rank: 2, seq: 1 }] as const;
    let now = world;
    while (now.state.driveDeg < 16) now = advance(now, log, 1);
    expect(now.state.tick / 100 - motorOnS(drive, 150, 4, 16)).toBeGreaterThan(0.1);
    expect(now.state.tick / 100 - motorOnS(drive, 150, 4, 16)).toBeLessThan(0.3);
  });
  it('falls when the motor is faster, whatever the way and speed', () => {
    fc.assert(fc.property(fc.integer({ min: 100, max: 230 }), fc.integer({ min: 0, max: 15 }), fc.integer({ min: 1, max: 20 }), anywhere(1.01, 2), (kt, from, by, faster) => {
      const quick = { ...drive, noLoadRateDegPerS: drive.noLoadRateDegPerS * faster };
      expect(motorOnS(quick, kt, from, from + by) * faster).toBeCloseTo(motorOnS(drive, kt, from, from + by), 6);
    }));
  });
});

describe('the way down', () => {
  it.each([[140, 743.0], [160, 849.2]])('3 degrees at %d kt over the ground: %d ft/min', (kt, ftPerMin) => expect(Math.abs(descentFtPerMin(kt) - ftPerMin)).toBeLessThan(0.1));
  it('at 140 kt that is 12.384 ft a second', () => expect(descentFtPerMin(140) / 60).toBeCloseTo(12.384, 3));
  it('1000 ft above the screen are 1000 / tan 3 deg = 19 081 ft, 3.1403 NM; at the screen and below it none', () => {
    expect(pathNm(1050, 0)).toBeCloseTo(19081.1 * 0.3048 / 1852, 4);
    expect(pathNm(750, 700)).toBe(0);
    expect(pathNm(749, 700)).toBe(0);
  });
});

describe('fuel', () => {
  const at = (speedKt: number, leadingEdge: number, flapDeg = 0, gear = 0) => ({ speedKt, altitudeFt: 10_000, flapDeg, leadingEdge, gear, liveEngines: 2 });
  it('a mile at 10 000 ft as the prototype has it, at the speeds at which its figures come out: 220 clean, 200 with the leading edge out', () => {
    expect(fuelKgPerNm(flight, at(220, 0), 0)).toBeCloseTo(7.16, 2);
    expect(fuelKgPerNm(flight, at(200, 1), 0)).toBeCloseTo(8.54, 2);
  });
  it('hold: drag of the clean hold at 204 kt, 26.7 kN: 26 700 x 1.7e-5 + 2 x 0.02 = 0.494 kg/s = 1 778 kg/h', () => {
    expect(Math.abs(flowKgPerH(flight, { ...at(204, 0), altitudeFt: 5600 }) - 3600 * (26_700 * 1.7e-5 + 0.04))).toBeLessThan(5);
  });
  it('head wind never makes a mile over the ground cheaper, and what is out never makes it cheaper', () => {
    fc.assert(fc.property(fc.integer({ min: 150, max: 230 }), fc.integer({ min: -50, max: 99 }), (kt, wind) => {
      expect(fuelKgPerNm(flight, at(kt, 0), wind + 1)).toBeGreaterThan(fuelKgPerNm(flight, at(kt, 0), wind));
      expect(fuelKgPerNm(flight, at(kt, 1), wind)).toBeGreaterThan(fuelKgPerNm(flight, at(kt, 0), wind));
      expect(fuelKgPerNm(flight, at(kt, 1, 4), wind)).toBeGreaterThan(fuelKgPerNm(flight, at(kt, 1), wind));
    }));
  });
  it('250 kt at 10 000 ft are 288.702 kt true (ISO 2533 check value), and 30 kt of head wind leave 258.702', () => {
    expect(groundKt(250, 10_000, 30)).toBeCloseTo(258.70232, 4);
    expect(groundKt(100, 0, 100)).toBe(1);
  });
});

describe('landing', () => {
  it.each([[140, 155, 1.2258], [124.9, 133.4, 1.1407], [133.4, 133.4, 1]])('%d to %d kt: %d times the energy', (lastKt, kt, ratio) => {
    expect(landingOf(kt, lastKt, null, null).ratio).toBeCloseTo(ratio, 4);
  });
  it('one factor and no other: 1000 m x 1.2258 x 1.15 = 1409.6 m, and not x 1 / 0.6 as well', () => {
    const made = landingOf(155, 140, 1000, 1410);
    expect(ARRIVAL_FACTOR).toBe(1.15);
    expect(made.factoredM).toBeCloseTo(1000 * (155 / 140) ** 2 * 1.15, 9);
    expect(made.fits).toBe(true);
    expect(landingOf(155, 140, 1000, 1409).fits).toBe(false);
    expect(landingOf(100, 100, 1000, 1150).fits).toBe(true); // the limit exactly
    expect(landingOf(155, 140, null, 3000).fits).toBeNull();
    expect(landingOf(155, 140, 1000, null).fits).toBeNull();
  });
});
