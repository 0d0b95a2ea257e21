/**
 * Manoeuvre speeds by increment on the reference speed of the last setting: increments of the trade, each alone and on a
 * base of its own. Common practice, no source. In tests only, never in demo data.
 */
import { describe, expect, it } from 'vitest';
import { speedsOf } from '../../sim/advise/speeds.js';
import type { Airframe } from '../../sim/files/index.js';
import { AIRFRAME_B } from '../sim/bench.js';

/** A neutral airframe whose last setting has the reference speed `baseKt` at 8 t, and one or two settings with the increment. */
function neutral(baseKt: number, increments: readonly number[], iceKt = 0): Airframe {
  const last = { deg: 30, name: 'last', limitKt: null, manoeuvreIncrementKt: 0, clMax: 2 };
  const settings = [
    { deg: 0, name: 'up', limitKt: null, manoeuvreIncrementKt: 100, clMax: 1.4 },
    ...increments.map((manoeuvreIncrementKt, at) => ({ deg: 5 + 5 * at, name: `s${at}`, limitKt: null, manoeuvreIncrementKt, clMax: 1.6 + 0.1 * at })),
    last,
  ];
  const plain = { ...AIRFRAME_B, referenceFactor: 1, settings, limits: { ...AIRFRAME_B.limits, iceKt } };
  const stall = speedsOf(plain, 8, false).settings.at(-1)?.stallKt ?? 1;
  return { ...plain, referenceFactor: baseKt / stall };
}

const manoeuvre = (airframe: Airframe, ice = false): number[] => speedsOf(airframe, 8, ice).settings.slice(1, -1).map(({ manoeuvreKt }) => manoeuvreKt);

describe('increments', () => {
  it('+70 on 112', () => expect(manoeuvre(neutral(112, [70]))).toEqual([expect.closeTo(182, 9)]));
  it('+50 on 127', () => expect(manoeuvre(neutral(127, [50]))).toEqual([expect.closeTo(177, 9)]));
  it('+30 on 141, shared by two neighbouring settings', () => expect(manoeuvre(neutral(141, [30, 30]))).toEqual([expect.closeTo(171, 9), expect.closeTo(171, 9)]));
  it('+20 on 118', () => expect(manoeuvre(neutral(118, [20]))).toEqual([expect.closeTo(138, 9)]));
  it('+10 on 133', () => expect(manoeuvre(neutral(133, [10]))).toEqual([expect.closeTo(143, 9)]));
  it('ice: +10 on 125', () => expect(speedsOf(neutral(125, [0], 10), 8, true).settings.at(-1)?.referenceKt).toBeCloseTo(135, 9));
});
