/** The personal margin: whose releases lie where, and what is only expected. */
import { describe, expect, it } from 'vitest';
import { marginOf, type MarginPlace, type MarginRow } from '../../sim/index.js';
import { judgeTrial, type JudgedTrial } from '../../sim/stats/trial.js';
import { airframeA, airframeFor, drill } from '../files/shipped.js';

const place: MarginPlace = { airframe: airframeA, massT: 48, speedKt: 167, flapDeg: 4, altitudeFt: 5600 };
const trial = (split: number, rate: number): JudgedTrial => judgeTrial({ rateDegPerS: rate, onsetS: 10, releaseS: 10 + split / rate, endS: 90, limitDeg: 2.5 }, 0.1);
/** 20 releases about 1.2 deg, half at each rate of the true drive, one of them late. */
const trials = Array.from({ length: 20 }, (_, at) => trial(at === 19 ? 2.6 : 0.9 + 0.06 * (at % 10), at % 2 === 0 ? 0.0745 : 0.155));
const rows = marginOf(trials, 0.1, 'airframe-a', place) as MarginRow[];
const of = (fault: MarginRow['fault'], among = rows): MarginRow => among.find((row) => row.fault === fault) as MarginRow;

describe('margin', () => {
  it('nothing below 20 decided runs', () => {
    expect(marginOf(trials.slice(1), 0.1, 'airframe-a', place)).toBeNull();
  });
  it('every flown release lies on the row of its own rate, at its own split, and on no other', () => {
    expect(of('lag').releases.map(({ splitDeg }) => splitDeg)).toEqual(trials.filter(({ rateDegPerS }) => rateDegPerS === 0.0745).map(({ growthDeg }) => growthDeg));
    expect(of('disconnect').releases.length).toBe(10);
    expect(rows.map(({ fault, basis }) => [fault, basis])).toEqual([['disconnect', 'flown'], ['lag', 'flown'], ['jam', 'between'], ['slip', 'between'], ['blowback', 'beyond']]);
    expect([of('jam'), of('slip'), of('blowback')].flatMap(({ releases }) => releases)).toEqual([]);
  });
  it('a release of 1.2 deg at 0.155 deg/s: about 7.5 s, and about a tenth of the authority when all has settled', () => {
    const one = of('disconnect').releases.find(({ splitDeg }) => Math.abs(splitDeg - 1.2) < 0.04);
    expect(Math.abs((one?.afterS ?? NaN) - 7.5)).toBeLessThan(0.4);
    // 25 % at 3.35 deg, from the budget of the same place; straight for small splits.
    expect(Math.abs((one?.usedPct ?? NaN) - 1.2 * 25 / 3.35)).toBeLessThan(0.6);
  });
  it('the expected split lies among the flown ones; nine in ten is wider, and uses more', () => {
    for (const fault of ['lag', 'disconnect'] as const) {
      const { medianDeg, q90Deg, at } = of(fault);
      expect(medianDeg?.median).toBeGreaterThan(0.9);
      expect(medianDeg?.median).toBeLessThan(1.5);
      expect(q90Deg?.median).toBeGreaterThan(medianDeg?.median as number);
      expect([at.medianLo, at.median, at.medianHi, at.q90Hi].map((one) => one?.usedPct)).toEqual([at.medianLo, at.median, at.medianHi, at.q90Hi].map((one) => one?.usedPct).sort((a, b) => (a as number) - (b as number)));
    }
  });
  it('a rate beyond what was flown is told with a wider interval', () => {
    const wide = ({ medianDeg }: MarginRow): number => (medianDeg?.hi as number) / (medianDeg?.lo as number);
    expect(wide(of('blowback'))).toBeGreaterThan(wide(of('disconnect')));
  });
  it('on another airframe everything is only expected', () => {
    const other = airframeFor(drill('small-and-quick'));
    const there = marginOf(trials, 0.1, 'airframe-a', { airframe: other, massT: 8, speedKt: 150, flapDeg: 10, altitudeFt: 3000 }) as MarginRow[];
    expect(other.name).not.toBe('airframe-a');
    // Also where its drive happens to be as slow.
    const twin = marginOf(trials, 0.1, 'airframe-a', { ...place, airframe: { ...airframeA, name: 'twin' } }) as MarginRow[];
    for (const all of [there, twin]) expect(all.every(({ basis, releases }) => basis === 'beyond' && releases.length === 0)).toBe(true);
  });
  it('trials of two limits are no one condition', () => {
    expect(() => marginOf([...trials, { ...trials[0] as JudgedTrial, limitDeg: 3 }], 0.1, 'airframe-a', place)).toThrow(RangeError);
  });
});
