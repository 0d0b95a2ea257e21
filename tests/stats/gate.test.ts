// Gates of a course against flights: published intervals at their very ends, blocks, and that better flights never close one.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { GateFile } from '../../sim/files/index.js';
import { asksOf, clopperPearson, garwood, judgeGate, runsToClaim, type Condition, type ConditionGroup, type JudgedTrial, type SetFlight } from '../../sim/index.js';
import { anywhere } from '../draw.js';

const SEEN = 0.1;
const gate = (keys: Partial<GateFile>): GateFile => ({ flights: 1, source: 'a test', ...keys });

const base = { rateDegPerS: 0.155, onsetS: 10, releaseS: 16, endS: 76, limitDeg: 2.5 };
const caught = (growthDeg: number): JudgedTrial => ({ ...base, outcome: 'caught', growthDeg });
const late = (growthDeg: number): JudgedTrial => ({ ...base, outcome: 'late', growthDeg });
const missed = (): JudgedTrial => ({ ...base, releaseS: null, outcome: 'missed', growthDeg: 5 });
const falseRelease = (atS: number): JudgedTrial => ({ ...base, rateDegPerS: null, onsetS: null, releaseS: atS, outcome: 'falseRelease', growthDeg: null });
const held = (endS: number): JudgedTrial => ({ ...base, rateDegPerS: null, onsetS: null, releaseS: null, endS, outcome: 'held', growthDeg: null });
const times = <T>(count: number, make: (at: number) => T): T[] => Array.from({ length: count }, (_, at) => make(at));
const one = (keys: Partial<GateFile>, trials: readonly JudgedTrial[]) => asksOf(gate(keys), trials, SEEN)[0]!;

describe('one ask', () => {
  // Newcombe, Statistics in Medicine 17 (1998) 857, and the exact limits beside his: 18 of 20 .6830 to .9877; 8 of 10 .4439 to .9748; 20 of 20 from .8316.
  it.each([[18, 20, 0.683, 0.9877], [8, 10, 0.4439, 0.9748], [20, 20, 0.8316, 1]])('caught %i of %i: exact limits, met just below the lower one and not above it', (k, n, lo, hi) => {
    const trials = [...times(k, () => caught(1)), ...times(n - k, () => late(3))];
    const shown = one({ caughtFrom: lo - 0.0001 }, trials);
    expect([shown.lo, shown.hi, shown.count, shown.of]).toEqual([expect.closeTo(lo, 4), expect.closeTo(hi, 4), k, n]);
    expect(shown.answer).toBe('met');
    expect(one({ caughtFrom: lo + 0.0002 }, trials).answer).toBe('open');
    if (hi < 1) expect(one({ caughtFrom: hi + 0.0002 }, trials).answer).toBe('notMet');
  });
  // Garwood 1936: 2 in 10 min, .0242 to .7225 a minute; 23 in 5.25, 2.7771 to 6.5736.
  it.each([[2, 10, 0.0242, 0.7225], [23, 5.25, 2.7771, 6.5736]])('%i false releases in %f quiet minutes', (count, minutes, lo, hi) => {
    const trials = [...times(8, () => ({ ...caught(1), onsetS: -1, releaseS: 5 })), ...times(count, () => falseRelease(1)), held(minutes * 60 - count)];
    const shown = one({ falseToPerMin: hi + 0.001 }, trials);
    expect([shown.count, shown.of, shown.lo, shown.hi, shown.answer]).toEqual([count, expect.closeTo(minutes, 9), expect.closeTo(lo, 4), expect.closeTo(hi, 4), 'met']);
    expect(one({ falseToPerMin: hi - 0.001 }, trials).answer).toBe('open');
    expect(one({ falseToPerMin: lo - 0.001 }, trials).answer).toBe('notMet');
  });
  it('median: ranks 6 and 15 of 20 (order statistics), met at the very limit', () => {
    const trials = times(20, (at) => caught((at + 1) / 10));
    expect(one({ medianToDeg: 1.5 }, trials)).toMatchObject({ lo: 0.6, hi: 1.5, answer: 'met', more: 0 });
    expect(one({ medianToDeg: 1.49 }, trials).answer).toBe('open');
    expect(one({ medianToDeg: 0.59 }, trials).answer).toBe('notMet');
  });
  it('nine in ten: 36 splits show it by the largest (0.9^36 = .0225), 35 do not (.0250); with one beyond, as many as the claim needs', () => {
    const rising = (n: number): JudgedTrial[] => times(n, (at) => caught((at + 1) / 100));
    expect(one({ ninetyToDeg: 0.36 }, rising(36))).toMatchObject({ hi: 0.36, answer: 'met' });
    expect(one({ ninetyToDeg: 0.359 }, rising(36)).answer).toBe('open');
    expect(one({ ninetyToDeg: 2 }, rising(35))).toMatchObject({ hi: null, answer: 'open', more: 1 });
    const n = runsToClaim(0.9, 0.975, 1);
    expect(one({ ninetyToDeg: 2 }, [...times(n - 1, () => caught(1)), missed()]).answer).toBe('met');
    expect(one({ ninetyToDeg: 2 }, [...times(n - 2, () => caught(1)), missed()]).answer).toBe('open');
  });
  it('below 8 decided runs nothing is shown, of none of them', () => {
    for (const keys of [{ caughtFrom: 0.1 }, { medianToDeg: 4 }, { falseToPerMin: 19 }]) {
      expect(one(keys, [...times(7, () => caught(1)), held(600)])).toMatchObject({ value: null, lo: null, hi: null, answer: 'open', more: 1 });
      expect(one(keys, [...times(8, () => caught(1)), held(600)]).answer).toBe('met');
    }
  });
  it('how many more: that many of the same show it, one fewer does not; a share below what is asked never does', () => {
    const { more } = one({ caughtFrom: 0.7 }, [...times(18, () => caught(1)), ...times(2, () => late(3))]);
    const lo = (n: number): number => clopperPearson(Math.floor(0.9 * n + 1e-9), n).lo;
    expect(lo(20 + more!)).toBeGreaterThanOrEqual(0.7);
    expect(lo(20 + more! - 1)).toBeLessThan(0.7);
    expect(one({ caughtFrom: 0.9 }, [...times(18, () => caught(1)), ...times(2, () => late(3))]).more).toBeNull();
    const falses = one({ falseToPerMin: 0.5 }, [...times(8, () => ({ ...caught(1), onsetS: -1 })), ...times(2, () => falseRelease(1)), held(598)]);
    expect(garwood(Math.ceil(0.2 * (10 + falses.more!)), 10 + falses.more!).hi).toBeLessThanOrEqual(0.5);
    const median = one({ medianToDeg: 1.1 }, times(10, (at) => caught(0.8 + at / 25)));
    expect([median.answer, median.more]).toEqual(['open', expect.toSatisfy((count: number) => count > 0 && count < 100)]);
  });
});

const CONDITION = { set: 1, airframe: 'airframe-a', limitDeg: 2.5, pxPerDeg: 4.61, minPerDeg: null, apartDeg: null, input: 'mouse', assisted: [] } satisfies Condition;
const flight = (id: string, trials: readonly JudgedTrial[], startedMs = Number(id)): SetFlight => ({ id, startedMs, trials, name: '', runs: trials.length, done: trials.length, leftOff: false }) as unknown as SetFlight;
const group = (flights: readonly SetFlight[], condition: Condition | null = CONDITION): ConditionGroup => ({ condition, set: 1, flights, pairs: [] });
const good = times(20, () => caught(1));
const bad = times(20, (at) => (at < 10 ? caught(1) : late(3)));

describe('blocks of flights', () => {
  const asked = gate({ caughtFrom: 0.8 });
  it('no flight: nothing is said', () => expect(judgeGate(asked, [], SEEN)).toEqual({ met: false, block: null, tries: 0, passedOver: 0 }));
  it('a gate that was met stays met, and tells of the flight that met it', () => {
    const shown = judgeGate(asked, [group([flight('1', bad), flight('2', good), flight('3', bad)])], SEEN);
    expect([shown.met, shown.block?.flights, shown.tries]).toEqual([true, ['2'], 2]);
  });
  it('two flights together: each stands in one block, a half block is not judged, and no best pair is picked', () => {
    const both = gate({ caughtFrom: 0.8, flights: 2 });
    const shown = (ids: string): ReturnType<typeof judgeGate> => judgeGate(both, [group(ids.split('').map((is, at) => flight(String(at + 1), is === 'g' ? good : bad)))], SEEN);
    expect(shown('g')).toMatchObject({ met: false, tries: 0, block: { whole: false, decided: 20 } });
    expect(shown('gg').met).toBe(true);
    expect(shown('bggb')).toMatchObject({ met: false, tries: 2, block: { flights: ['3', '4'] } }); // the middle two would have met it
  });
  it('what was flown under another gauge is another block; what changed on the way is passed over', () => {
    const groups = [group([flight('1', good)]), group([flight('2', good)], { ...CONDITION, pxPerDeg: 6 }), group([flight('3', good)], null)];
    expect(judgeGate(gate({ caughtFrom: 0.9, flights: 2 }), groups, SEEN)).toMatchObject({ met: false, tries: 0, passedOver: 1 });
    expect(judgeGate(gate({ caughtFrom: 0.9, flights: 2 }), [group([flight('1', good), flight('2', good)])], SEEN).met).toBe(true);
  });
});

/** A trial, and one at least as good. */
const pair = fc.oneof(
  fc.tuple(anywhere(0.15, 2.4), anywhere(0.2, 1)).map(([deg, part]) => [caught(deg), caught(deg * part)] as const),
  anywhere(2.5, 4.9).map((deg) => [late(deg), caught(deg / 2.1)] as const),
  fc.constantFrom([missed(), late(3)] as const, [missed(), caught(2)] as const),
  anywhere(1, 40).map((atS) => [falseRelease(atS), held(76)] as const),
  fc.constant([held(76), held(76)] as const),
);

describe('properties', () => {
  const asks = fc.record({
    caughtFrom: anywhere(0.05, 0.9), medianToDeg: anywhere(0.2, 4),
    ninetyToDeg: anywhere(0.2, 4.9), falseToPerMin: anywhere(0.2, 10),
  });
  it('better flights of as many runs never close what was met', () => fc.assert(fc.property(asks, fc.array(fc.tuple(pair, fc.boolean()), { minLength: 8, maxLength: 60 }), (asked, drawn) => {
    const before = asksOf(gate(asked), drawn.map(([[was]]) => was), SEEN);
    const after = asksOf(gate(asked), drawn.map(([[was, better], change]) => (change ? better : was)), SEEN);
    before.forEach(({ answer }, at) => {
      if (answer === 'met') expect(after[at]!.answer).toBe('met');
      if (after[at]!.answer === 'notMet') expect(answer).toBe('notMet');
    });
  })));
  it('another flight never takes a met gate back', () => fc.assert(fc.property(fc.array(fc.boolean(), { maxLength: 8 }), fc.boolean(), fc.integer({ min: 1, max: 3 }), (flown, next, flights) => {
    const all = [...flown, next].map((is, at) => flight(String(at + 1), is ? good : bad));
    const asked = gate({ caughtFrom: 0.8, flights });
    if (judgeGate(asked, [group(all.slice(0, -1))], SEEN).met) expect(judgeGate(asked, [group(all)], SEEN).met).toBe(true);
  })));
  it('the figure lies in its interval', () => fc.assert(fc.property(asks, fc.array(pair, { minLength: 8, maxLength: 60 }), (asked, drawn) => {
    for (const { value, lo, hi } of asksOf(gate(asked), drawn.map(([was]) => was), SEEN)) {
      if (value !== null && lo !== null) expect(value).toBeGreaterThanOrEqual(lo - 1e-9);
      if (value !== null && hi !== null) expect(value).toBeLessThanOrEqual(hi + 1e-9);
    }
  })));
});
