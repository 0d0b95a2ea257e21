/**
 * Atmosphere and airspeeds against printed tables. Sources beside each: ISO 2533 / ICAO Doc 7488 by geopotential height,
 * computed to 40 digits and cross-checked with printed ICAO rows; 14 CFR 25.101 humidity table (dry row).
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { casOfTas, density, P0, pressureRatio, RHO0, soundSpeed, tasOfCas, temperatureRatio } from '../../sim/flight/atmosphere.js';
import { FT, KT } from '../../sim/units.js';
import { anywhere } from '../draw.js';

describe('standard atmosphere', () => {
  /** H m, T K, p Pa, rho, a m/s, delta, sigma. */
  const rows: [number, number, number, number, number, number, number][] = [
    [0, 288.15, 101325, 1.22500002, 340.293988, 1, 1],
    [1000, 281.65, 89874.5629, 1.1116425, 336.433971, 0.886992972, 0.907463252],
    [2000, 275.15, 79495.2019, 1.0064901, 332.529151, 0.784556644, 0.821624557],
    [3000, 268.65, 70108.5265, 0.909121861, 328.577928, 70108.5265 / 101325, 0.909121861 / 1.22500002],
    [3048, 268.338, 69681.6416, 0.904636907, 328.387074, 0.687704334, 0.738479096],
    [5000, 255.65, 54019.8882, 0.736115547, 320.529394, 0.533134845, 0.600910642],
  ];
  it.each(rows)('%d m', (h, t, p, rho, a, delta, sigma) => {
    expect(temperatureRatio(h) * 288.15).toBeCloseTo(t, 9);
    expect(Math.abs(pressureRatio(h) * P0 / p - 1)).toBeLessThan(2e-9); // the table has nine digits
    expect(Math.abs(density(h) / rho - 1)).toBeLessThan(2e-8); // rho0 is printed 1.225, computed 1.22500002
    expect(Math.abs(soundSpeed(h) / a - 1)).toBeLessThan(3e-9);
    expect(Math.abs(pressureRatio(h) / delta - 1)).toBeLessThan(2e-9);
    expect(Math.abs(density(h) / RHO0 / sigma - 1)).toBeLessThan(2e-9);
  });
  it.each([[5000, 0.8320, 0.8617], [7500, 0.7571, 0.7983]])('%d ft: pressure and density ratio as printed in an engineer\'s data book', (ft, delta, sigma) => {
    expect(pressureRatio(ft * FT)).toBeCloseTo(delta, 4);
    expect(density(ft * FT) / RHO0).toBeCloseTo(sigma, 4);
  });
  it('10,000 ft: density ratio as printed there', () => expect(density(10000 * FT) / RHO0).toBeCloseTo(0.7385, 4));
  it('25,000 ft: pressure ratio times density of dry air as in the 25.101 table, sigma 0.4481', () => {
    expect(density(25000 * FT) / RHO0).toBeCloseTo(0.4481, 4);
  });
  it('hydrostatic: dp/dH = -rho g (central difference over 1 m)', () => {
    fc.assert(fc.property(anywhere(0, 7900), (h) => {
      const slope = (pressureRatio(h + 0.5) - pressureRatio(h - 0.5)) * P0;
      return Math.abs(slope / (-density(h) * 9.80665) - 1) < 1e-6;
    }));
  });
});

describe('airspeeds', () => {
  /** CAS kt, H m, TAS kt: rules of compressible flow, 12 digits. */
  const rows: [number, number, number][] = [[140, 0, 140], [160, 1000, 167.806424922], [180, 3048, 208.609221743], [250, 6096, 335.945260995]];
  it.each(rows)('%d kt at %d m', (cas, h, tas) => {
    expect(Math.abs(tasOfCas(cas, h) / KT / tas - 1)).toBeLessThan(1e-9);
  });
  it.each([[250, 10000, 288.70232], [210, 6000, 229.00498], [140, 3000, 146.25551]])('%d kt at %d ft by bisection', (cas, ft, tas) => {
    expect(tasOfCas(cas, ft * FT) / KT).toBeCloseTo(tas, 4);
  });
  it('there and back is the same to 1e-12', () => {
    fc.assert(fc.property(anywhere(60, 400), anywhere(0, 7600), (cas, h) =>
      Math.abs(casOfTas(tasOfCas(cas, h), h) / cas - 1) <= 1e-12));
  });
  it('true is never below calibrated', () => {
    fc.assert(fc.property(anywhere(60, 400), anywhere(0, 7600), (cas, h) =>
      tasOfCas(cas, h) / KT >= cas - 1e-9));
  });
});
