// How the eye meets the gauge: what is wished, what the record says, when two are alike. And what a store may hold.
import { describe, expect, test } from 'vitest';
import { visualDeg } from '../../../sim/stats/visual.js';
import { AS_IT_COMES, sizeChoicesOf, type SizeChoices } from '../../../src/pages/size/choices.js';
import { differences, sameAgain, sightOf, wishOf, type Sight } from '../../../src/pages/size/sight.js';
import { layout } from '../../../src/view/layout.js';
import { apartPx } from '../../../src/view/place.js';

const GAUGE = { radiusMm: 60, dial: [{ flapDeg: 0, dialDeg: 0 }, { flapDeg: 38, dialDeg: 86 }] };
const TRUE: SizeChoices = { ...AS_IT_COMES, isTrue: true };

describe('what is wished', () => {
  test('true size on a measured screen: 60 mm at 4 px are 240 px; on one that nobody measured, nothing', () => {
    expect(wishOf(TRUE, 4, GAUGE)).toEqual({ radius: 240, apart: null });
    expect(wishOf({ ...TRUE, apartDeg: 30 }, null, GAUGE)).toEqual({ radius: null, apart: null });
    expect(wishOf(AS_IT_COMES, 4, GAUGE)).toEqual({ radius: null, apart: null });
  });
  test('an angle at the assumed and at a stated distance: 2 x 710 x tan 15 degrees = 380.49 mm, at 600 mm 321.54', () => {
    expect(wishOf({ ...TRUE, apartDeg: 30 }, 4, GAUGE).apart).toBeCloseTo(380.488 * 4, 2);
    expect(wishOf({ ...TRUE, apartDeg: 30, distanceMm: 600 }, 4, GAUGE).apart).toBeCloseTo(321.539 * 4, 2);
  });
});

describe('what the record says', () => {
  const at = layout(1280, 720, { radius: 240, apart: null });
  test('in px alone on a screen of unknown size; in mm and degrees on a measured one', () => {
    const plain = sightOf(at, GAUGE, AS_IT_COMES, null, 1);
    expect(plain).toEqual({ pxPerDeg: expect.closeTo((240 * 86 * Math.PI) / 180 / 38, 9), pixelRatio: 1, apartPx: apartPx(at), widthPx: 1280, heightPx: 720, mmPerPx: null });
    const measured = sightOf(at, GAUGE, TRUE, 4, 1);
    expect(measured).toMatchObject({ mmPerPx: 0.25, radiusMm: 60, distanceMm: 710 });
    expect(measured.apartDeg).toBeCloseTo(visualDeg(apartPx(at) / 4, 710), 12);
  });
  test('a run wishes the first one’s gauge, and gets it in the same window and in a larger one; a smaller has no room', () => {
    const first = sightOf(layout(1280, 720), GAUGE, AS_IT_COMES, null, 1);
    const again = (width: number, height: number) => differences(first, sightOf(layout(width, height, sameAgain(first, GAUGE)), GAUGE, AS_IT_COMES, null, 1));
    expect(again(1280, 720)).toEqual([]);
    expect(again(1600, 900)).toEqual([]);
    expect(again(1000, 600)).toContain('pointer');
    expect(again(390, 844)).toEqual(expect.arrayContaining(['pointer', 'apart']));
  });
});

describe('alike', () => {
  const first: Sight = { pxPerDeg: 10, pixelRatio: 1, mmPerPx: 0.25, radiusMm: 60, distanceMm: 710, apartDeg: 23, apartPx: 1150, widthPx: 1280, heightPx: 720 };
  test.each([
    ['zoom', { pixelRatio: 1.25 }], ['pointer', { pxPerDeg: 10.02 }], ['apart', { apartPx: 1160 }], ['card', { mmPerPx: 0.2506 }], ['card', { mmPerPx: null }], ['distance', { distanceMm: 700 }],
  ] as const)('%s: %o', (what, change) => expect(differences(first, { ...first, ...change } as Sight)).toEqual([what]));
  test('less than an eye could tell is nothing; a larger window is nothing', () => {
    expect(differences(first, { ...first, pxPerDeg: 10.005, apartPx: 1153, widthPx: 1600 })).toEqual([]);
  });
  test('a record of before apartness was kept says nothing of it', () => {
    const old: Sight = { pxPerDeg: 10, pixelRatio: 1, mmPerPx: null };
    expect(sameAgain(old, GAUGE).apart).toBeNull();
    expect(differences(old, { ...old, apartPx: 900, widthPx: 1280, heightPx: 720 })).toEqual([]);
  });
});

test('of what a store holds only what fits is taken', () => {
  const whole: SizeChoices = { screens: { '1280x720@1': 4 }, distanceMm: 600, isTrue: true, apartDeg: 30 };
  expect(sizeChoicesOf(JSON.stringify(whole))).toEqual(whole);
  for (const text of [null, '', 'null', '7', '{', '[]']) expect(sizeChoicesOf(text)).toEqual(AS_IT_COMES);
  expect(sizeChoicesOf('{"screens":{"a":1.4,"b":12.1,"c":"4","d":1.5,"e":12},"distanceMm":249,"isTrue":"yes","apartDeg":61}')).toEqual({ ...AS_IT_COMES, screens: { d: 1.5, e: 12 } });
});
