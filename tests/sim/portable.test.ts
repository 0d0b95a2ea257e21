/** The portable functions against Math (the engine's own, good to about 1 ulp) and published values. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { exp, ln, normalQuantile, sin } from '../../sim/portable.js';
import { anywhere } from '../draw.js';

const number = (min: number, max: number) => fc.oneof(fc.double({ min, max, noNaN: true }), anywhere(min, max));
/** Relative distance, absolute below 1. */
const off = (got: number, want: number): number => Math.abs(got - want) / Math.max(1, Math.abs(want));

describe('portable functions', () => {
  it('exp is Math.exp to 1e-14 of itself', () => {
    fc.assert(fc.property(number(-50, 50), (x) => Math.abs(exp(x) / Math.exp(x) - 1) <= 1e-14), { numRuns: 2000 });
    expect([exp(-700) > 0, exp(-700.5), exp(-Infinity), exp(700) < Infinity]).toEqual([true, 0, 0, true]);
    expect(() => exp(701)).toThrow(RangeError);
    expect(exp(0)).toBe(1);
    expect(exp(1)).toBeCloseTo(2.718281828459045, 15);
  });
  it('ln is Math.log to 1e-14', () => {
    fc.assert(fc.property(number(1e-12, 1e12), (x) => off(ln(x), Math.log(x)) <= 1e-14), { numRuns: 2000 });
    expect(ln(1)).toBe(0);
    expect(ln(2)).toBeCloseTo(0.6931471805599453, 15);
  });
  it('sin is Math.sin to 1e-14', () => {
    fc.assert(fc.property(number(-1000, 1000), (x) => Math.abs(sin(x) - Math.sin(x)) <= 1e-14), { numRuns: 2000 });
    // Sine of 3 degrees, a path angle of the model: 0.0523359562... (any table of sines).
    expect(sin(3 * Math.PI / 180)).toBeCloseTo(0.052335956242943835, 16);
  });
  it('sine and cosine by it close to 1', () => {
    fc.assert(fc.property(number(-100, 100), (x) => Math.abs(sin(x) ** 2 + sin(x + Math.PI / 2) ** 2 - 1) <= 1e-13));
  });
  it('normal quantile: the values printed with algorithm AS 241 and the usual table', () => {
    // Wichura (1988) checks PPND16 at these three points.
    expect(normalQuantile(0.25)).toBeCloseTo(-0.6744897501960817, 15);
    expect(normalQuantile(0.001)).toBeCloseTo(-3.090232306167814, 14);
    expect(off(normalQuantile(1e-20), -9.262340089798408)).toBeLessThan(1e-14);
    // Two-sided 95 % and one-sided 90 %: any statistics table.
    expect(normalQuantile(0.975)).toBeCloseTo(1.959963984540054, 14);
    expect(normalQuantile(0.9)).toBeCloseTo(1.2815515655446004, 14);
    expect(normalQuantile(0.5)).toBe(0);
  });
  it('normal quantile is odd and rises', () => {
    fc.assert(fc.property(number(1e-6, 0.499), (p) => Math.abs(normalQuantile(p) + normalQuantile(1 - p)) < 1e-9));
    fc.assert(fc.property(number(0.001, 0.999), number(1e-6, 1e-3), (p, by) => normalQuantile(p + by * 0.9) > normalQuantile(p)));
  });
  it('refuses what is outside its range', () => {
    expect(() => exp(701)).toThrow(RangeError);
    expect(() => exp(NaN)).toThrow(RangeError);
    expect(() => ln(0)).toThrow(RangeError);
    expect(() => ln(Infinity)).toThrow(RangeError);
    expect(() => sin(1e5)).toThrow(RangeError);
    for (const p of [0, 1, -1, NaN]) expect(() => normalQuantile(p)).toThrow(RangeError);
  });
});
