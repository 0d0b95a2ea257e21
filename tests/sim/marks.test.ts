/** The marks of the speed strip, each by its own source: figures of Airframe A, both sides of each switch-over. */
import { describe, expect, it } from 'vitest';
import { expand, limitNow, lowestNow, manoeuvreKt, withNumbers, type Numbers, type State } from '../../sim/index.js';
import { AIRFRAME, scenario } from './bench.js';

const { fixed, state } = expand(scenario(), AIRFRAME, 1);
const at = (change: Numbers): State => withNumbers(state, { leadingEdge: 0, flapLeverDeg: 0, leftDeg: 0, rightDeg: 0, ...change });
const limit = (change: Numbers) => limitNow(at(change), AIRFRAME);

describe('limit: the lowest that holds', () => {
  it.each([
    ['nothing out', {}, Infinity, 'none'],
    ['leading edge on its way', { leadingEdge: 0.01 }, 240, 'leadingEdge'],
    ['standby drive fed', { leadingEdge: 1, contactor: 1 }, 230, 'drive'],
    ['lever at 4, nothing out yet', { flapLeverDeg: 4 }, 230, 'lever'],
    ['lever at 16', { flapLeverDeg: 16, leadingEdge: 1, contactor: 1 }, 210, 'lever'],
    ['left side past 9 with the lever back', { flapLeverDeg: 4, leftDeg: 10, rightDeg: 4 }, 210, 'leftSide'],
    ['right side past 9 with the lever back', { flapLeverDeg: 4, leftDeg: 4, rightDeg: 10 }, 210, 'rightSide'],
    ['gear moving', { gear: 0.5 }, 235, 'gear'],
    ['gear down', { gear: 1 }, 250, 'gear'],
    ['over-travel counts as full flap', { leftDeg: 38, rightDeg: 38 }, 195, 'leftSide'],
  ] as const)('%s', (_, change, kt, source) => {
    expect(limit(change)).toMatchObject({ kt, source });
  });
  it('a side within half a degree of a setting, as a rigged gauge stands, still counts as there', () => {
    expect(limit({ leftDeg: 9.5, rightDeg: 9 }).kt).toBe(218);
    expect(limit({ leftDeg: 9.51, rightDeg: 9 }).kt).toBe(210);
  });
});

describe('lowest', () => {
  it('is the stall warning of the side least out, whichever it is', () => {
    const left = lowestNow(at({ leftDeg: 4, rightDeg: 16, leadingEdge: 1 }), fixed);
    expect(lowestNow(at({ leftDeg: 16, rightDeg: 4, leadingEdge: 1 }), fixed)).toBe(left);
    expect(left).toBeCloseTo(117.1 * 1.03, 0);
    expect(lowestNow(at({ leftDeg: 16, rightDeg: 16, leadingEdge: 1 }), fixed)).toBeLessThan(left);
  });
});

describe('manoeuvre', () => {
  it('follows the lever, ice on top', () => {
    expect(manoeuvreKt(AIRFRAME, fixed, 16, false)).toBeCloseTo(143.2, 1);
    expect(manoeuvreKt(AIRFRAME, fixed, 16, true)).toBeCloseTo(149.2, 1);
    expect(() => manoeuvreKt(AIRFRAME, fixed, 17, false)).toThrow(/17/);
  });
});
