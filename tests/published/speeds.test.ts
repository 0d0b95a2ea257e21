/**
 * Speeds: the prototype's table at 48 t, and the relations that the rules fix (own words; paragraphs beside each).
 * 14 CFR 25.103 reference stall speed; 25.125(b)(2) reference 1.23 VSR0 (non-icing clause from memory); 25.335(e)(3) flap
 * limits at least 1.6 VS1 at take-off and 1.8 at landing weight; 25.207(d) stall warning margin; AMC 25.143(h) 40 degrees
 * of bank without stall warning (the table itself from memory).
 */
import { describe, expect, it } from 'vitest';
import { bankOfLoad, speedsOf } from '../../sim/advise/speeds.js';
import { AIRFRAME } from '../sim/bench.js';

const row = (massT: number, deg: number, ice = false) => {
  const found = speedsOf(AIRFRAME, massT, ice).settings.find(({ settingDeg }) => settingDeg === deg);
  if (found === undefined) throw new Error(`no setting ${deg}`);
  return found;
};

describe('48 t', () => {
  it.each([
    [0, 133.7, 191.2, 58.7, 164.5, null], [4, 117.1, 166.3, 58.3, 144.1, 230], [9, 112.7, 154.4, 55.6, 138.6, 218],
    [16, 108.5, 143.2, 52.5, 133.4, 210], [26, 104.3, 133.6, 49.6, 128.4, 203], [36, 101.6, 124.9, 45.5, 124.9, 195],
  ] as const)('flap %d', (deg, stall, manoeuvre, bank, reference, limit) => {
    const got = row(48, deg);
    expect(Math.abs(got.stallKt - stall)).toBeLessThan(0.06);
    expect(Math.abs(got.manoeuvreKt - manoeuvre)).toBeLessThan(0.08);
    expect(Math.abs(got.bankToWarningDeg - bank)).toBeLessThan(0.12);
    expect(Math.abs(got.referenceKt - reference)).toBeLessThan(0.08);
    expect(got.limitKt).toBe(limit);
  });
  it.each([[40, 114.0], [48, 124.9], [53.5, 131.9], [60, 139.7]])('reference of full flap at %d t', (massT, kt) => {
    expect(Math.abs(row(massT, 36).referenceKt - kt)).toBeLessThan(0.1);
  });
  it('in ice every speed is 6 kt higher, limits are not', () => {
    expect(row(48, 16, true).referenceKt - row(48, 16).referenceKt).toBeCloseTo(6, 12);
    expect(row(48, 16, true).manoeuvreKt - row(48, 16).manoeuvreKt).toBeCloseTo(6, 12);
    expect(row(48, 16, true).limitKt).toBe(210);
  });
});

describe('relations', () => {
  it('flap limits: at least 1.8 VSR at landing weight, 1.6 at take-off weight (25.335(e)(3); VSR for VS is on the safe side)', () => {
    for (const deg of [9, 16, 26, 36]) expect(row(AIRFRAME.mass.landingT, deg).limitKt).toBeGreaterThanOrEqual(1.8 * row(AIRFRAME.mass.landingT, deg).stallKt);
    for (const deg of [4, 9]) expect(row(AIRFRAME.mass.takeOffT, deg).limitKt).toBeGreaterThanOrEqual(1.6 * row(AIRFRAME.mass.takeOffT, deg).stallKt);
    // The prototype's own figures for these products.
    expect(1.8 * row(53.5, 16).stallKt).toBeCloseTo(206.1, 0);
    expect(1.6 * row(60, 4).stallKt).toBeCloseTo(209.5, 0);
  });
  it('40 degrees of bank without stall warning at the manoeuvre speed, every setting, every weight (AMC 25.143(h))', () => {
    let worst = Infinity;
    for (const massT of [40, 48, 53.5, 60]) for (const { settingDeg } of AIRFRAME.settings.map(({ deg }) => ({ settingDeg: deg }))) {
      worst = Math.min(worst, row(massT, settingDeg).bankToWarningDeg);
    }
    expect(worst).toBeGreaterThan(40);
    expect(worst).toBeCloseTo(45.2, 0);
  });
  it('40 degrees is a load factor of 1.30541 (1 / cos 40)', () => {
    expect(bankOfLoad(1.3054072893322786)).toBeCloseTo(40, 10);
    expect(bankOfLoad(1)).toBe(0);
    expect(bankOfLoad(2)).toBeCloseTo(60, 10);
  });
  it('more flap, lower stall; limits fall with flap and lie above the manoeuvre speed (25.1511)', () => {
    const { settings } = speedsOf(AIRFRAME, AIRFRAME.mass.takeOffT, false);
    settings.forEach((now, index) => {
      const before = settings[index - 1];
      if (before !== undefined) expect(now.stallKt).toBeLessThan(before.stallKt);
      const limitBefore = before?.limitKt ?? null;
      if (limitBefore !== null && now.limitKt !== null) expect(now.limitKt).toBeLessThanOrEqual(limitBefore);
      if (now.limitKt !== null) expect(now.limitKt).toBeGreaterThan(now.manoeuvreKt);
      expect(now.referenceKt).toBeGreaterThan(now.warningKt);
    });
  });
});
