/** The tables a plan is worked out from: against the prototype's list of level idle decelerations (printed to 0.01 kt/s true, at its own speeds and flaps; ours are calibrated). */
import { describe, expect, it } from 'vitest';
import { papersOf, planRequestOf } from '../../../sim/index.js';
import { groundKt } from '../../../sim/advise/plan/fuel.js';
import { slowsKtPerS } from '../../../sim/advise/plan/papers.js';
import { prepare } from '../../../sim/prepare.js';
import { AIRFRAME, scenario } from '../bench.js';

const prepared = prepare(AIRFRAME, 48);

describe('speed lost level, levers at idle', () => {
  it.each([[0, 204, 0, 0, 0.70], [2, 174, 1, 0, 0.79], [6, 154, 1, 0, 0.88], [11, 154, 1, 0, 0.97], [17, 144, 1, 0, 1.16], [17, 144, 1, 1, 1.44]])(
    'flap %d at %d kt, leading edge %d, gear %d: %d kt/s', (flapDeg, speedKt, leadingEdge, gear, lost) => {
      expect(Math.abs(slowsKtPerS(prepared, { speedKt, altitudeFt: 3500, flapDeg, leadingEdge, gear, liveEngines: 2 }) * groundKt(speedKt, 3500, 0) / speedKt - lost)).toBeLessThan(0.03);
    });
});

describe('the rows', () => {
  const papers = papersOf(planRequestOf(scenario(), AIRFRAME));
  it('one a setting: stall and factor of the model table, and what makes the manoeuvre speed of them', () => {
    expect(papers.rows.map(({ settingDeg, stallKt, manoeuvreBy }) => [settingDeg, stallKt.toFixed(1), manoeuvreBy])).toEqual([
      [0, '133.7', 1.43], [4, '117.1', 1.42], [9, '112.7', 1.37], [16, '108.5', 1.32], [26, '104.3', 1.28], [36, '101.6', 1.23],
    ]);
  });
  it('with the leading edge out a mile costs more than clean', () => expect(papers.edgeOut.kgPerNm).toBeGreaterThan(papers.rows[0]!.kgPerNm));
  it('more flap, a slower drive in spite of a lower speed, more drag, more fuel', () => {
    papers.rows.slice(1).forEach((row, index) => {
      const before = papers.rows[index]!;
      expect(row.slowsKtPerS).toBeGreaterThan(before.slowsKtPerS);
      expect(row.flowKgPerH).toBeGreaterThan(before.flowKgPerH);
      expect(row.rateDegPerS).toBeLessThan(before.rateDegPerS);
    });
  });
});
