/**
 * What an airframe comes to. Rates and times: an independent prototype's tables for Airframe A (mark: computed for this
 * project). Speeds against 14 CFR 25.103, 25.125(b)(2), 25.335(e)(3), 25.1511 in our own words; 40 degrees from memory.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { airframeFigures } from '../../sim/advise/airframe/figures.js';
import { loadNm, oneSideRate, steadyRate, travelS } from '../../sim/advise/airframe/rates.js';
import { relationsOf, type Relation, type RelationName } from '../../sim/advise/airframe/relations.js';
import { RHO0, tasOfCas } from '../../sim/flight/atmosphere.js';
import { dynamicPressure } from '../../sim/flight/motion.js';
import { prepare } from '../../sim/prepare.js';
import { FT, KT } from '../../sim/units.js';
import { AIRFRAME, AIRFRAME_B } from '../sim/bench.js';
import { anywhere } from '../draw.js';

const { drive } = prepare(AIRFRAME, 48);
const at3500 = (casKt: number): number => dynamicPressure(tasOfCas(casKt, 3500 * FT), 3500 * FT);
const equivalent = (easKt: number): number => 0.5 * RHO0 * (easKt * KT) ** 2;

describe('rate, both sides healthy, 3500 ft', () => {
  const positions = [0, 4, 9, 16, 26, 36];
  it.each([
    [0, [0.1689, 0.1689, 0.1689, 0.1689, 0.1689, 0.1689]], [130, [0.1641, 0.1599, 0.1547, 0.1474, 0.1370, 0.1265]],
    [150, [0.1625, 0.1569, 0.1500, 0.1403, 0.1264, 0.1125]], [170, [0.1606, 0.1535, 0.1446, 0.1322, 0.1144, 0.0965]],
    [190, [0.1586, 0.1497, 0.1386, 0.1230, 0.1008, 0.0786]], [210, [0.1563, 0.1455, 0.1319, 0.1129, 0.0858, 0.0586]],
    [230, [0.1538, 0.1408, 0.1245, 0.1018, 0.0692]],
  ])('%d kt', (kt, rates) => {
    rates.forEach((rate, at) => expect(steadyRate(drive, kt === 0 ? 0 : at3500(kt), positions[at] ?? 0, 'extend')).toBeCloseTo(rate, 4));
  });
  it('230 kt and 36: the table has .0367 by the motor’s line, which is a load of 72.6 N m; the limiter of 70 has tripped', () => {
    expect(loadNm(drive, at3500(230), 36, 'extend')).toBeCloseTo(90 * (1 - 0.0367 / 0.19), 1);
    expect(steadyRate(drive, at3500(230), 36, 'extend')).toBe(0);
  });
  it('one side cut at 6.43 deg and 154 kt: .1608 deg/s', () => expect(oneSideRate(drive, at3500(154), 6.43)).toBeCloseTo(0.1608, 4));
});

describe('travel from 0 to 16 at a constant equivalent airspeed', () => {
  it.each([[0, 94.7], [130, 102.9], [150, 105.9], [170, 109.7], [190, 114.3], [210, 120.0], [230, 127.2]])('%d kt: %d s', (kt, seconds) => {
    expect(Math.abs((travelS(drive, equivalent(kt), 0, 16) ?? 0) - seconds)).toBeLessThan(0.06);
  });
  it('on the ground by hand: 16 / (.19 (1 - 10/90))', () => expect(travelS(drive, 0, 0, 16)).toBeCloseTo(16 / (0.19 * 80 / 90), 9));
  it('a load at the limiter, to the last newton metre, trips; a hair below it does not', () => {
    // 10 + 2 x 1 x (.05 + .0108 x 16) q = 70 at the last degree.
    const qPa = 30 / (drive.loadPerPa * (0.05 + 0.0108 * 16));
    expect(travelS(drive, qPa * (1 + 1e-12), 0, 16)).toBeNull();
    expect(travelS(drive, qPa * (1 - 1e-9), 0, 16)).not.toBeNull();
  });
});

describe('relations of A', () => {
  const of = (name: RelationName, deg: number | null = null): Relation => {
    const found = relationsOf(AIRFRAME).find((one) => one.name === name && one.settingDeg === deg);
    if (found === undefined) throw new Error(`no ${name} at ${deg}`);
    return found;
  };
  it('all hold', () => expect(relationsOf(AIRFRAME).filter(({ holds }) => !holds)).toEqual([]));
  it.each([[4, 209.5], [9, 201.5], [16, 206.1], [26, 198.3], [36, 193.0]])('the limit of %d lies above %d kt: 1.6 stall speeds at take-off, 1.8 at landing mass', (deg, kt) => {
    expect(Math.abs(of('limitOverStall', deg).bound - kt)).toBeLessThan(0.1);
  });
  it('reference over stall warning is 1.23 / 1.03 wherever the stall is above 100 kt: 45.5 deg of bank', () => {
    // n = (1.23 / 1.03)^2 = 1.42605, arc cosine of 1 / n = 45.47 deg.
    expect(of('bankAtReference', 36).value).toBeCloseTo(45.47, 1);
  });
});

describe('an airframe that breaks one relation says which', () => {
  const broken = (airframe: typeof AIRFRAME): string[] => relationsOf(airframe).filter(({ holds }) => !holds).map(({ name, settingDeg }) => `${name} ${settingDeg ?? ''}`.trim());
  const withSetting = (deg: number, change: Partial<(typeof AIRFRAME)['settings'][number]>): typeof AIRFRAME =>
    ({ ...AIRFRAME, settings: AIRFRAME.settings.map((one) => (one.deg === deg ? { ...one, ...change } : one)) });
  it.each<[string, typeof AIRFRAME, string[]]>([
    ['a reference factor of 1.22', { ...AIRFRAME, referenceFactor: 1.22 }, ['referenceFactor']],
    ['a limit below 1.8 stall speeds', withSetting(36, { limitKt: 190 }), ['limitOverStall 36']],
    ['a limit that rises with flap', withSetting(26, { limitKt: 212 }), ['limitFalls 26']],
    ['no more lift with flap', withSetting(9, { clMax: 1.825 }), ['stallFalls 9']],
    ['gear that may move faster than it may stay out', { ...AIRFRAME, gear: { ...AIRFRAME.gear, operateKt: 251 } }, ['gearSpeeds']],
    ['a limiter too weak to come in at the limit', { ...AIRFRAME, drive: { ...AIRFRAME.drive, limiterNm: 17 } }, ['retractsAtLimit 36']],
  ])('%s', (_what, airframe, wanted) => expect(broken(airframe)).toEqual(wanted));
  it('figures that hit a bound exactly hold, but for stall speeds, which must fall', () => {
    expect(broken({ ...AIRFRAME, referenceFactor: 1.23, gear: { ...AIRFRAME.gear, operateKt: 250 } })).toEqual([]);
    expect(broken(withSetting(26, { limitKt: 210 }))).toEqual([]);
  });
});

describe('figures', () => {
  it.each([AIRFRAME, AIRFRAME_B])('$name: slower with speed and with flap; a stopped side parts quicker than half a rate, slower than one driven back', (airframe) => {
    const { drive: table, splits, horn } = airframeFigures(airframe, airframe.mass.landingT, 3500);
    for (const { ratesDegPerS } of table) for (const [at, rate] of ratesDegPerS.entries()) expect(rate).toBeLessThanOrEqual(ratesDegPerS[at - 1] ?? Infinity);
    table.reduce((before, now) => { expect(now.toLandingS ?? Infinity).toBeGreaterThan(before.toLandingS ?? Infinity); return now; });
    for (const { stopsDegPerS, halfDegPerS, backDegPerS } of splits) {
      expect(halfDegPerS).toBeLessThan(stopsDegPerS);
      expect(stopsDegPerS).toBeLessThan(backDegPerS);
    }
    expect(horn.map(({ silenceable }) => silenceable)[0]).toBe(true);
  });
  it('horn of A: to 12.5 deg below 16 or 28 deg of lever under 1000 ft; to 30 at any height; beyond at any lever', () => {
    expect(airframeFigures(AIRFRAME, 48, 3500).horn).toEqual([
      { fromDeg: 0, toDeg: 12.5, bothLiveDeg: 16, oneLiveDeg: 28, belowFt: 1000, silenceable: true },
      { fromDeg: 12.5, toDeg: 30, bothLiveDeg: 16, oneLiveDeg: 28, belowFt: null, silenceable: false },
      { fromDeg: 30, toDeg: 38, bothLiveDeg: null, oneLiveDeg: null, belowFt: null, silenceable: false },
    ]);
  });
  it('a longer travel never takes less time; more pressure never takes less (property)', () => {
    fc.assert(fc.property(anywhere(0, 9000), anywhere(0, 9000), anywhere(0.1, 36), anywhere(0.1, 36), (q1, q2, d1, d2) => {
      const [low, high] = [Math.min(q1, q2), Math.max(q1, q2)];
      const [near, far] = [Math.min(d1, d2), Math.max(d1, d2)];
      expect(travelS(drive, low, 0, near) ?? Infinity).toBeLessThanOrEqual((travelS(drive, low, 0, far) ?? Infinity) + 1e-9);
      expect(travelS(drive, low, 0, near) ?? Infinity).toBeLessThanOrEqual((travelS(drive, high, 0, near) ?? Infinity) + 1e-9);
    }));
  });
});
