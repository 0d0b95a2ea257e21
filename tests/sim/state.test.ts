/** The state: one list, copied and hashed whole; units and the grid of ticks. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { startHash } from '../../sim/hash.js';
import { copyState, initialState, latch, numberOf, restore, snapshot, STATE_KEYS, takeOver, withNumbers, type State } from '../../sim/state.js';
import { ticksOf } from '../../sim/units.js';

const numbered = (): State => {
  const numbers = Object.fromEntries(STATE_KEYS.map((key, at) => [key, at + 0.5]));
  return withNumbers(initialState(), numbers);
};
const digits = (...states: State[]): string => {
  const hash = startHash();
  for (const state of states) hash.add(state);
  return hash.digits();
};

describe('state', () => {
  it('is copied whole', () => {
    expect(copyState(numbered())).toEqual(numbered());
    expect(STATE_KEYS.map((key) => numberOf(copyState(numbered()), key))).toEqual(STATE_KEYS.map((_, at) => at + 0.5));
  });
  it('a copy shares what is latched until one of the two changes it; the other keeps what it had', () => {
    const [one, other] = [numbered(), copyState(numbered())];
    const copy = copyState(one);
    expect(copy.latched).toBe(one.latched);
    latch(copy, 'leftCut', 1);
    copy.leftDeg = 5;
    expect(one).toEqual(other);
    expect(copy).toEqual(withNumbers(numbered(), { leftCut: 1, leftDeg: 5 }));
    const kept = one.latched;
    latch(one, 'leftCut', kept.leftCut);
    expect(one.latched).toBe(kept);
  });
  it('a state taken over is the other one, and stays when that one moves on', () => {
    const [back, from] = [copyState(initialState()), numbered()];
    takeOver(back, from);
    expect(back).toEqual(from);
    from.tick = 1;
    latch(from, 'horn', 2);
    expect(back).toEqual(numbered());
  });
  it('survives a snapshot', () => {
    expect(restore(snapshot(numbered()))).toEqual(numbered());
  });
  it('every key moves the hash', () => {
    const base = digits(numbered());
    for (const key of STATE_KEYS) expect(digits(withNumbers(numbered(), { [key]: -1 })), key).not.toBe(base);
  });
  it('the last bit of a number moves the hash, the sign of zero does not', () => {
    expect(digits(withNumbers(numbered(), { leftDeg: 5 + 2 ** -50 }))).not.toBe(digits(withNumbers(numbered(), { leftDeg: 5 })));
    expect(digits(withNumbers(numbered(), { leftDeg: -0 }))).toBe(digits(withNumbers(numbered(), { leftDeg: 0 })));
  });
  it('the hash chains: order and number of states count', () => {
    const [a, b] = [numbered(), withNumbers(numbered(), { tick: 3 })];
    expect(digits(a, b)).not.toBe(digits(b, a));
    expect(digits(a, b)).not.toBe(digits(a));
  });
  it('a number that is none throws, with its key', () => {
    expect(() => digits(withNumbers(numbered(), { bankRad: NaN }))).toThrow(/bankRad/);
  });
  it('the hash is stored: it must not change by itself', () => {
    expect(digits(numbered())).toMatchInlineSnapshot(`"f1822b0b463f0341"`);
  });
});

describe('ticks', () => {
  it('are the nearest hundredth, not the floor: 0.29 x 100 is 28.999...', () => {
    expect(0.29 * 100).toBeLessThan(29);
    expect(ticksOf(0.29)).toBe(29);
    for (let hundredths = 0; hundredths <= 360000; hundredths += 1) {
      if (ticksOf(hundredths / 100) !== hundredths) throw new Error(`${hundredths / 100} s`);
    }
  });
  it('off the grid are refused', () => {
    for (const seconds of [0.005, 1.001, 12.345, NaN, Infinity]) expect(() => ticksOf(seconds), String(seconds)).toThrow(RangeError);
    fc.assert(fc.property(fc.integer({ min: 1, max: 100000 }), fc.double({ min: 2e-6, max: 0.49, noNaN: true }), (ticks, by) => {
      expect(() => ticksOf((ticks + by) / 100)).toThrow(RangeError);
    }));
  });
});
