/** What may be said at which count, and what two blocks may be said to show. */
import { describe, expect, it } from 'vitest';
import { dice } from '../../sim/dice.js';
import { compareBlocks } from '../../sim/stats/blocks.js';
import { personOf } from '../../sim/stats/person.js';
import { judgeTrial, type JudgedTrial, type Trial } from '../../sim/stats/trial.js';
import { flySet, PLANS, WATCHERS } from '../study/watcher.js';

const at = (split: number, rate = 0.155, more: Partial<Trial> = {}): JudgedTrial =>
  judgeTrial({ rateDegPerS: rate, onsetS: 10, releaseS: 10 + split / rate, endS: 76, limitDeg: 2.5, ...more }, 0.1);
const held: JudgedTrial = judgeTrial({ rateDegPerS: null, onsetS: null, releaseS: null, endS: 76, limitDeg: 2.5 }, 0.1);
const missed = at(0, 0.155, { releaseS: null });
const many = (count: number, rates = [0.155]): JudgedTrial[] => Array.from({ length: count }, (_, n) => at(0.8 + 0.05 * n, rates[n % rates.length]));

describe('one condition', () => {
  it('nothing after seven decided runs, however many were held; the counts from eight', () => {
    const seven = personOf([...many(7), ...Array.from({ length: 20 }, () => held)], 0.1);
    expect([seven.caught, seven.falseReleases, seven.median, seven.fit]).toEqual([null, null, null, null]);
    expect(seven.needed).toEqual({ runsForCounts: 1, runsForFit: 13, ratesForThreshold: 3 });
    const eight = personOf(many(8), 0.1);
    expect(eight.caught).toMatchObject({ k: 8, n: 8 });
    expect(eight.falseReleases?.count).toBe(0);
    expect(eight.median).toEqual({ deg: expect.closeTo(0.95, 9), lo: expect.closeTo(0.8, 9), hi: expect.closeTo(1.15, 9), limitsBy: 'orderStatistics' });
    expect(eight.fit).toBeNull();
  });
  it('the fit from twenty, threshold and time only from four rates', () => {
    expect(personOf(many(19), 0.1).fit).toBeNull();
    const one = personOf(many(20), 0.1).fit!;
    expect(one.atRates.map(({ rateDegPerS }) => rateDegPerS)).toEqual([0.155]);
    expect([one.thetaDeg, one.t0S]).toEqual([null, null]);
    expect(personOf(many(20, [0.075, 0.155, 0.3]), 0.1).fit?.t0S).toBeNull();
    const four = personOf(many(20, [0.075, 0.155, 0.3, 0.6]), 0.1);
    expect(four.fit?.t0S).not.toBeNull();
    expect(four.needed).toEqual({ runsForCounts: 0, runsForFit: 0, ratesForThreshold: 0 });
  });
  it('realised rates a little apart are one flown rate', () => {
    const fit = personOf(many(20, [0.0745, 0.0755, 0.155, 0.154]), 0.1).fit!;
    expect(fit.atRates.map(({ rateDegPerS }) => rateDegPerS.toFixed(4))).toEqual(['0.0750', '0.1545']);
  });
  it('a missed run lies above every release: it may push a limit out of sight, never in', () => {
    const { median } = personOf([...many(6), missed, missed, missed, missed, missed], 0.1);
    expect(median?.deg).toBeCloseTo(1.05, 9);
    expect(median?.lo).toBeCloseTo(0.85, 9); // rank 2 of 11
    expect(median?.hi).toBeNull();
    expect(personOf([...many(4), ...Array.from({ length: 6 }, () => missed)], 0.1).median?.deg).toBeNull();
  });
  it('a fault without a steady rate counts and stands in the curve, but not in the fit', () => {
    const slip: JudgedTrial = { ...at(1), rateDegPerS: null };
    const person = personOf([...many(19), slip], 0.1);
    expect(person.decided).toBe(20);
    expect(person.fit).not.toBeNull();
    expect(personOf(Array.from({ length: 20 }, () => slip), 0.1).fit).toBeNull();
  });
  it('void runs are listed and bear on nothing', () => {
    const nothing = { ...at(2.4), outcome: 'void' as const };
    const [with_, without] = [personOf([...many(9), nothing], 0.1), personOf(many(9), 0.1)];
    expect(with_.outcomes.void).toBe(1);
    expect({ ...with_, outcomes: null }).toEqual({ ...without, outcomes: null });
  });
  it('curves from eight, one for all rates only where every run was decided', () => {
    expect(personOf(many(7), 0.1)).toMatchObject({ curves: null, curve: null });
    const eight = personOf(many(8, [0.075, 0.3]), 0.1);
    expect(eight.curves?.map(({ rateDegPerS, steps }) => [rateDegPerS, steps.length])).toEqual([[0.075, 4], [0.3, 4]]);
    expect(eight.curve?.map(({ s }) => s)).toEqual([7, 6, 5, 4, 3, 2, 1, 0].map((left) => expect.closeTo(left / 8, 12) as number));
    const undecided = at(0, 0.075, { releaseS: null, endS: 20 });
    const more = personOf([...many(8, [0.075, 0.3]), undecided], 0.1);
    expect(more.curve).toBeNull();
    expect(more.curves?.[0]?.heldToDeg).toEqual([expect.closeTo(0.75, 9)]);
  });
  it('at least nine in ten: 29 of 29, 45 of 46, not one less', () => {
    const of = (caught: number, late: number) => personOf([...Array.from({ length: caught }, () => at(1)), ...Array.from({ length: late }, () => at(3))], 0.1).nineInTen;
    expect([of(29, 0), of(28, 0), of(45, 1), of(44, 1)]).toEqual([true, false, true, false]);
    expect(personOf([], 0.1).nineInTen).toBe(false);
  });
  it('different limits are refused', () => expect(() => personOf([at(1), at(1, 0.155, { limitDeg: 3 })], 0.1)).toThrow(RangeError));
  it('no runs', () => expect(personOf([], 0.1)).toMatchObject({ decided: 0, caught: null, needed: { runsForCounts: 8, runsForFit: 20, ratesForThreshold: 4 } }));
});

describe('outcomes at their limits', () => {
  it.each<[string, Partial<Trial>, string]>([
    ['a hair before the limit', { releaseS: 10 + 2.4999 / 0.155 }, 'caught'], ['at the limit', { releaseS: 10 + 2.5 / 0.155 }, 'late'],
    ['as soon as .1 deg can be seen', { releaseS: 10 + 0.1 / 0.155 }, 'caught'], ['sooner', { releaseS: 10 + 0.0999 / 0.155 }, 'falseRelease'],
    ['before onset', { releaseS: 9.99 }, 'falseRelease'], ['held to the limit', { releaseS: null, endS: 10 + 2.5 / 0.155 }, 'missed'],
    ['ended short of it', { releaseS: null, endS: 10 + 2.49 / 0.155 }, 'undecided'], ['quiet, let go', { onsetS: null, releaseS: 75 }, 'falseRelease'],
    ['quiet, held', { onsetS: null, releaseS: null }, 'held'],
  ])('%s: %s', (_, more, outcome) => expect(at(1, 0.155, more).outcome).toBe(outcome));
  it('an onset without a rate cannot be judged from a table', () => expect(() => at(1, 0.155, { rateDegPerS: null })).toThrow(RangeError));
  it('0.15 s is the soonest where everything can be seen', () => {
    const soon = (releaseS: number) => judgeTrial({ rateDegPerS: 2, onsetS: 10, releaseS, endS: 76, limitDeg: 2.5 }, 0);
    expect([soon(10.15).outcome, soon(10.1499).outcome]).toEqual(['caught', 'falseRelease']);
  });
});

describe('two blocks', () => {
  const block = (splits: number[], more: JudgedTrial[] = [held, held]): JudgedTrial[] => [...splits.map((split) => at(split)), ...more];
  const a = [1.9, 2.4, 1.5, 2.2, 2.1, 1.7, 2.2, 2.3, 1.8, 2];
  const b = [1.4, 1.6, 1.2, 2.1, 1.5, 1.3, 1.8, 1.7, 1.1, 1.6];
  it('ten against ten (6.7 of the measures, limit 3): ratio of geometric means .7285, Welch .607 to .875 (computed)', () => {
    // The race has a prior of the spread, a lapse and lucky releases, so it is near Welch, not equal to it.
    const wide = (splits: number[]) => splits.map((split) => at(split, 0.155, { limitDeg: 3 }));
    const found = compareBlocks(wide([1.9, 2.4, 1.5, 2.8, 2.1, 1.7, 2.2, 2.6, 1.8, 2]), wide(b), 0.1);
    expect(Math.abs(found.ratio!.median - 0.7285)).toBeLessThan(0.015);
    expect(Math.abs(found.ratio!.lo - 0.6068)).toBeLessThan(0.03);
    expect(Math.abs(found.ratio!.hi - 0.8746)).toBeLessThan(0.03);
    expect(found.verdict).toBe('improved');
  });
  it('the later one against itself: no clear change, and what it would take to see a fifth', () => {
    const wide = a.map((split, n) => split * (n % 2 === 0 ? 1.1 : 0.5));
    const found = compareBlocks(block(wide), block(wide), 0.1);
    expect(found.ratio?.median).toBeCloseTo(1, 2);
    expect(found.verdict).toBe('noClearChange');
    const { sigma } = found;
    expect(found.moreRuns).toBeGreaterThan(10);
    expect(found.moreRuns).toBe(Math.ceil(2 * (2.8015852 * sigma! / Math.log(0.8)) ** 2) - 10);
    expect(found.shownRatio).toBeCloseTo(Math.exp(-2.8015852 * sigma! * Math.sqrt(0.2)), 6);
  });
  it('exchanged blocks give the inverse ratio', () => {
    const [there, back] = [compareBlocks(block(a), block(b), 0.1), compareBlocks(block(b), block(a), 0.1)];
    expect(there.ratio!.median * back.ratio!.median).toBeCloseTo(1, 1.5);
    expect([there.verdict, back.verdict]).toEqual(['improved', 'slower']);
  });
  it('smaller splits with more false releases, or with fewer caught, are no improvement', () => {
    const quick = judgeTrial({ rateDegPerS: null, onsetS: null, releaseS: 20, endS: 76, limitDeg: 2.5 }, 0.1);
    expect(compareBlocks(block(a), block(b, [held, quick]), 0.1).verdict).toBe('fasterMoreFalse');
    expect(compareBlocks(block(a), block([...b.slice(0, 9), 0.9, 1, 0.8, 2.6]), 0.1).verdict).toBe('fasterCaughtFewer');
  });
  it('too few: says how many more for a spread of .35', () => {
    expect(compareBlocks(block(a.slice(0, 7)), block(b), 0.1)).toMatchObject({ verdict: 'tooFew', ratio: null, decided: [7, 10], moreRuns: 39 - 7, moreForRatio: 0.8 });
  });
  it('different limits are refused', () => expect(() => compareBlocks(block(a), [at(1, 0.155, { limitDeg: 3 })], 0.1)).toThrow(RangeError));
  it('of 150 pairs of blocks by one watcher about one in twenty shows a change: between 1 and 17', () => {
    // Binomial(150, .05): below 1 or above 17 comes once in a thousand.
    let changed = 0;
    for (let seed = 1; seed <= 150; seed += 1) {
      const throwDice = dice(seed, 'blocks');
      const of = () => flySet(WATCHERS.loaded!, PLANS[0]!, throwDice).map((trial) => judgeTrial(trial, 0.1)).slice(0, 16);
      const { ratio } = compareBlocks(of(), of(), 0.1);
      if (ratio !== null && (ratio.lo > 1 || ratio.hi < 1)) changed += 1;
    }
    expect(changed).toBeGreaterThanOrEqual(1);
    expect(changed).toBeLessThanOrEqual(17);
  });
});
