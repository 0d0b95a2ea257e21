// Runs of a sweep: the figures of `run`, in their places whoever flew them, and what they come to.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { OUTCOMES } from '../../sim/files/index.js';
import { difficultyOf, flyPart, flyRow, flyTrainee, partsOf, seedsOf, summaryOf, together, type SweepOrder, type SweepRow } from '../../sim/index.js';
import { AIRFRAME, drill, scenario } from '../sim/bench.js';

/** Short: a side stops after 2 s of holding, the run ends at 25 s. */
const short = scenario({
  task: { settings: [16], limitS: 25 }, pointerNoise: true, recognition: { limitDeg: 1 },
  start: { flapLeverDeg: 16 }, faults: [{ name: 'stop', kind: 'disconnect', side: 'drawn', when: { heldS: 2 } }],
});

describe('a row', () => {
  it.each(['steady', 'slow', 'early'] as const)('is the run that `run` flies with its seed: %s', (trainee) => {
    for (const seed of [1, 77, 4294967295]) {
      const { flight } = flyTrainee(short, AIRFRAME, seed, trainee);
      const row = flyRow(short, AIRFRAME, seed, trainee);
      const { onsetS, releaseS, growthAtReleaseDeg, finalSplitDeg, rollAuthorityPct } = flight.score;
      expect(row).toMatchObject({ hash: flight.hash, outcome: flight.outcome, onsetS, releaseS, growthAtReleaseDeg, finalSplitDeg, rollAuthorityPct });
      expect(row.oneDegreeS).toBe(flight.events.find(({ what }) => what === 'oneDegree')?.atS ?? null);
    }
  });
  it('counts the seconds above a limit', () => {
    // Lever 16 has a limit of 210 kt; the speed hold is told to go beyond.
    const fast = scenario({ start: { speedKt: 205, flapLeverDeg: 16 }, task: { settings: [16], limitS: 60 }, events: [{ when: { atS: 1 }, do: 'selectSpeed', speedKt: 215 }] });
    const row = flyRow(fast, AIRFRAME, 1, 'prompt');
    const { flight } = flyTrainee(fast, AIRFRAME, 1, 'prompt');
    expect(row.overLimitS).toBeGreaterThan(5);
    expect(flight.procedure.find(({ item }) => item === 'insideLimit')?.ok).toBe(false);
  });
  // Levers closed with the gear up: near the ground a horn that may be silenced, and with more flap one that may not.
  it.each([['may be silenced', 4, 9, 1500], ['may not', 14, 16, 5600]])('counts the seconds of a horn that %s', (_, flapDeg, setting, altitudeFt) => {
    const low = scenario({ start: { altitudeFt, groundFt: 700, speedKt: 190, flapDeg, flapLeverDeg: setting }, task: { settings: [setting], limitS: 60 }, events: [{ when: { atS: 1 }, do: 'selectSpeed', speedKt: 160 }] });
    const { events } = flyTrainee(low, AIRFRAME, 1, 'prompt').flight;
    const times = (what: string): number[] => events.filter((event) => event.what === what).map(({ atS }) => atS);
    const end = events.find(({ what }) => what === 'end')!.atS;
    const sounded = times('horn').reduce((sum, from) => sum + (times('hornStops').find((to) => to > from) ?? end) - from, 0);
    expect(sounded).toBeGreaterThan(1);
    expect(flyRow(low, AIRFRAME, 1, 'prompt').hornS).toBeCloseTo(sounded, 9);
  });
  it('held on: the limit is reached behind the first degree, at about the roll authority the airframe states', () => {
    const row = flyRow(drill('set-16-from-4'), AIRFRAME, 1, 'never');
    expect(row.atLimitS! - row.oneDegreeS!).toBeGreaterThan(5);
    expect(row.rollAuthorityAtLimitPct).toBeGreaterThan(15);
    expect(row.rollAuthorityAtLimitPct).toBeLessThan(25);
  });
});

describe('seeds', () => {
  it('come from one seed: the first ones do not hang on how many there are', () => {
    expect(seedsOf(3, 100).slice(0, 10)).toEqual(seedsOf(3, 10));
    expect(seedsOf(4, 10)).not.toEqual(seedsOf(3, 10));
    expect(new Set(seedsOf(3, 100)).size).toBe(100);
  });
});

describe('parts', () => {
  const order: SweepOrder = { scenario: short, airframe: AIRFRAME, trainee: 'steady', seeds: seedsOf(9, 6) };
  const whole = together(partsOf(6, 6).map((part) => ({ part, rows: flyPart(order, part) })));
  it('of any size, flown in any order, come together to the same', () => {
    fc.assert(fc.property(fc.integer({ min: 1, max: 7 }), fc.infiniteStream(fc.nat()), (size, nat) => {
      const flown = partsOf(6, size).map((part) => ({ part, rows: flyPart(order, part) }));
      const mixed = flown.map((one) => [nat.next().value as number, one] as const).sort(([a], [b]) => a - b).map(([, one]) => one);
      expect(together(mixed)).toEqual(whole);
    }), { numRuns: 12 });
  });
  it('that are missing or came twice are no sweep', () => {
    const flown = partsOf(6, 2).map((part) => ({ part, rows: flyPart(order, part) }));
    expect(() => together(flown.filter((_, at) => at !== 1))).toThrow('missing');
    expect(() => together([...flown, flown[0]!])).toThrow('twice');
  });
  it('the difficulty is read from the first 200 runs', () => {
    expect(partsOf(500, 8).filter(({ of }) => of === 'held').at(-1)).toEqual({ of: 'held', from: 192, to: 200 });
    expect(partsOf(500, 8).filter(({ of }) => of === 'sweep').at(-1)).toEqual({ of: 'sweep', from: 496, to: 500 });
  });
});

const row = (keys: Partial<SweepRow>): SweepRow => ({
  outcome: 'held', onsetS: null, releaseS: null, growthAtReleaseDeg: null, finalSplitDeg: 0, rollAuthorityPct: 0, hornS: 0, overLimitS: 0,
  oneDegreeS: null, atLimitS: null, rollAuthorityAtLimitPct: null, hash: '', ...keys,
});

describe('a summary', () => {
  it('counts outcomes, onsets and runs above a limit', () => {
    const rows = [row({}), row({ outcome: 'caught', onsetS: 4, growthAtReleaseDeg: 1.5 }), row({ outcome: 'caught', onsetS: 5, growthAtReleaseDeg: 2.5, overLimitS: 3 }), row({ outcome: 'missed', onsetS: 6 })];
    const summary = summaryOf(rows, OUTCOMES);
    expect(summary.outcomes.map(({ outcome, k, n }) => [outcome, k, n])).toEqual([['caught', 2, 4], ['missed', 1, 4], ['held', 1, 4]]);
    expect(summary.onsets).toMatchObject({ k: 3, n: 4 });
    expect(summary.overLimitRuns).toMatchObject({ k: 1, n: 4 });
    expect(summary.growthAtReleaseDeg).toMatchObject({ n: 2, mean: 2, median: 2 });
  });
});

describe('the difficulty', () => {
  const held = [row({ onsetS: 4, oneDegreeS: 10, atLimitS: 18, rollAuthorityAtLimitPct: 20 }), row({ onsetS: 4, oneDegreeS: 10, atLimitS: 20, rollAuthorityAtLimitPct: 22 })];
  it('is a sentence made of its figures', () => {
    const ordinary = [row({ outcome: 'caught', onsetS: 4 }), row({ outcome: 'caught', onsetS: 4 }), row({ outcome: 'late', onsetS: 4 }), row({ outcome: 'falseRelease', onsetS: null }), row({ outcome: 'falseRelease', onsetS: 4 }), row({})];
    expect(difficultyOf(ordinary, held, 2.5)).toMatchObject({
      runs: 6, withinLimit: { k: 2, n: 3 }, oneDegreeToLimitS: 9, rollAuthorityAtLimitPct: 21,
      sentence: 'An ordinary watcher lets go within 2.5 deg in 67 of 100 runs with a split (2 of 3): there are 9.0 s from 1 deg shown to the limit, where 21 % of the roll authority is used.',
    });
  });
  it('in a drill a run that was done with a release before the limit counts', () => {
    const ordinary = [row({ outcome: 'completed', onsetS: 4, growthAtReleaseDeg: 1 }), row({ outcome: 'completed', onsetS: 4, growthAtReleaseDeg: 2.5 }), row({ outcome: 'completed', onsetS: 4 })];
    expect(difficultyOf(ordinary, held, 2.5).withinLimit).toMatchObject({ k: 1, n: 3 });
  });
  it('without a split it says so', () => expect(difficultyOf([row({})], [row({})], 2.5).sentence).toContain('In none of 1 runs'));
  it('says when a split never reaches the limit', () => {
    expect(difficultyOf([row({ outcome: 'caught', onsetS: 1 })], [row({ onsetS: 1 })], 2.5).sentence).toContain('never reaches the limit');
  });
});
