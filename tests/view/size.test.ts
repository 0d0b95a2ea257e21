/**
 * Sizes as an eye meets them. Card: ISO/IEC 7810 ID-1, 85.60 x 53.98 mm; its CSS px at 96 an inch and its aspect as worked
 * out from it by hand. Visual angles: 2 atan(s / 2D), worked out apart from this code.
 */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { mmOf, visualDeg, visualMin } from '../../sim/stats/visual.js';
import { CARD, CARD_OFF, matchOf } from '../../src/view/size.js';
import { anywhere } from '../draw.js';

describe('the card', () => {
  test('at 96 px an inch it is 323.53 x 204.02 px, and says 3.7795 px a millimetre', () => {
    expect(CARD.longMm / CARD.shortMm).toBeCloseTo(1.585773, 6);
    const match = matchOf(323.5276, 204.0189);
    expect(match.fits).toBe(true);
    expect(match.pxPerMm).toBeCloseTo(3.7795, 4);
    expect(match.off).toBeCloseTo(0, 5);
  });
  test('the short side is a cross-check within 1 %: just inside fits, just outside lies askew', () => {
    // 400 px for 85.60 mm: the short side is 252.2430 px; 1 % of it is 2.5224 px.
    expect(matchOf(400, 252.243 + 2.52)).toMatchObject({ fits: true });
    expect(matchOf(400, 252.243 - 2.52)).toMatchObject({ fits: true });
    for (const short of [252.243 + 2.53, 252.243 - 2.53]) expect(matchOf(400, short)).toMatchObject({ fits: false, why: 'askew' });
    expect(matchOf(400, 252.243 + 2.53).off).toBeCloseTo(CARD_OFF, 4);
    expect(matchOf(400, 252.243 - 2.53).off).toBeLessThan(0);
  });
  test('a screen of 1.5 to 12 px a millimetre is believed, none beyond', () => {
    const at = (pxPerMm: number) => matchOf(CARD.longMm * pxPerMm, CARD.shortMm * pxPerMm);
    expect([1.5, 12].map((one) => at(one).fits)).toEqual([true, true]);
    for (const one of [1.499, 12.001]) expect(at(one)).toMatchObject({ fits: false, why: 'range' });
  });
});

describe('visual angle', () => {
  test.each([[710, 4.842], [600, 5.73], [500, 6.875]])('1 mm at %i mm is %f minutes of arc', (distanceMm, min) => expect(visualMin(1, distanceMm)).toBeCloseTo(min, 3));
  test('a degree of split at a pointer of 25 mm: 0.4363 mm, 2.500 minutes at 600 mm and 2.113 at 710', () => {
    const mm = 2 * 25 * Math.sin(Math.PI / 360);
    expect(mm).toBeCloseTo(0.4363, 4);
    expect(visualMin(mm, 600)).toBeCloseTo(2.5, 3);
    expect(visualMin(mm, 710)).toBeCloseTo(2.113, 3);
  });
  test('the length of an angle is the inverse; 2 m at 1 m are 90 degrees', () => {
    expect(visualDeg(2000, 1000)).toBeCloseTo(90, 9);
    fc.assert(fc.property(anywhere(0.01, 120), fc.integer({ min: 250, max: 2500 }), (deg, distanceMm) => {
      expect(visualDeg(mmOf(deg, distanceMm), distanceMm)).toBeCloseTo(deg, 8);
    }));
  });
});
