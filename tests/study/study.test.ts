/** The study in short: few sets, wide bands. The whole of it: `npm run study`, tests/study/result.md. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { dice } from '../../sim/dice.js';
import { binomialTail } from '../../sim/stats/proportion.js';
import { judgeTrial } from '../../sim/stats/trial.js';
import { coverage, together, NOTHING } from './coverage.js';
import { failures, page, parts } from './study.js';
import { drawSet, flyRun, flySet, type Known, PLANS, WATCHERS } from './watcher.js';

const [standard, trueDrive] = PLANS as [(typeof PLANS)[number], (typeof PLANS)[number]];

describe('sets', () => {
  it('18 to 22 onsets, 4 or more at each rate, in the window; rates in equal numbers', () => {
    for (let seed = 1; seed <= 60; seed += 1) {
      const drawn = drawSet(standard, dice(seed, 'set'));
      const onsets = drawn.filter(({ onsetS }) => onsetS !== null);
      expect(onsets.length).toBeGreaterThanOrEqual(18);
      expect(onsets.length).toBeLessThanOrEqual(22);
      for (const rate of standard.ratesDegPerS) {
        expect(onsets.filter((one) => one.rate === rate).length).toBeGreaterThanOrEqual(4);
        expect([7, 8]).toContain(drawn.filter((one) => one.rate === rate).length);
      }
      for (const { onsetS } of onsets) expect(onsetS! >= 3 && onsetS! < 39).toBe(true);
    }
  });
  it('the hazard is flat: as many onsets a second of waiting in the first third as in the last (chi-square on three)', () => {
    const hazard = Math.log(3) / 36;
    let [events, waited] = [[0, 0, 0], [0, 0, 0]];
    const throwDice = dice(3, 'hazard');
    for (let n = 0; n < 400; n += 1) {
      for (const { onsetS } of drawSet({ ...standard, onsets: [0, 30, 0] }, throwDice)) {
        const end = (onsetS ?? 39) - 3;
        waited = waited.map((sum, third) => sum + Math.max(0, Math.min(12, end - 12 * third)));
        if (onsetS !== null) events = events.map((sum, third) => sum + (Math.min(2, Math.floor(end / 12)) === third ? 1 : 0));
      }
    }
    const off = events.reduce((sum, seen, third) => sum + (seen - hazard * waited[third]!) ** 2 / (hazard * waited[third]!), 0);
    expect(off).toBeLessThan(16.27); // .001 of chi-square on 3
  });
  describe('outcomes of calm and loaded watchers are those computed beforehand', () => {
    const means = (plan: typeof standard, who: Known): number[] => {
      const throwDice = dice(11, `means-${plan.name}`);
      const all = Array.from({ length: 400 }, () => flySet(who, plan, throwDice)).flat().map((trial) => judgeTrial(trial, plan.seenDeg).outcome);
      return ['caught', 'late', 'missed', 'falseRelease', 'held'].map((what) => all.filter((one) => one === what).length / 400);
    };
    const loaded = { ...WATCHERS['loaded, careless']!, falsePerMin: 0.18 };
    it.each([['calm', WATCHERS.calm!, [18.4, 0.3, 0.5, 2.2, 8.7]], ['loaded', loaded, [15.7, 2.2, 0.9, 3.2, 7.9]]] as const)('TRUE DRIVE, %s: means of a set', (_, who, want) => {
      means(trueDrive, who).forEach((value, at) => expect(Math.abs(value - want[at]!)).toBeLessThan(0.35));
    });
    // The figures for STANDARD add up to 28 runs, not 30: shares of the decided are compared.
    it.each([['calm', WATCHERS.calm!, [16.9, 0.4, 0.5]], ['loaded', loaded, [10, 5.1, 2.3]]] as const)('STANDARD, %s: shares of the decided', (_, who, want) => {
      const got = means(standard, who).slice(0, 3);
      const share = (of: readonly number[], at: number): number => of[at]! / of.reduce((a, b) => a + b);
      want.forEach((_one, at) => expect(Math.abs(share(got, at) - share(want, at))).toBeLessThan(0.02));
    });
  });
  it('what comes first is what happened', () => {
    const plan = { ...standard, legS: 76 };
    const sure = { thetaDeg: 1, t0S: 2, sigma: 1e-9, lapse: 0, falsePerMin: 1e-9 };
    expect(flyRun({ rate: 0.3, onsetS: 10 }, sure, plan, dice(1, 'a'))).toEqual({ rateDegPerS: 0.3, onsetS: 10, releaseS: expect.closeTo(10 + 1.6 / 0.3, 6), endS: expect.closeTo(10 + 5 / 0.3, 9), limitDeg: 2.5 });
    expect(flyRun({ rate: 0.3, onsetS: 10 }, { ...sure, lapse: 1 }, plan, dice(1, 'a')).releaseS).toBeNull();
    expect(flyRun({ rate: 0.3, onsetS: null }, sure, plan, dice(1, 'a'))).toMatchObject({ releaseS: null, endS: 76 });
    expect(flyRun({ rate: 0.3, onsetS: 10 }, { ...sure, falsePerMin: 1e6 }, plan, dice(1, 'a')).releaseS).toBeLessThan(0.1);
  });
});

describe('coverage, short', () => {
  it.each([['STANDARD', null, 40, 0.95], ['TRUE DRIVE', null, 40, 0.95], ['STANDARD', 'loaded', 20, 0.9], ['TRUE DRIVE', 'sharp', 20, 0.9]] as const)('%s, %s: %d sets, not below %d by more than luck', (plan, watcher, sets, share) => {
    for (const [name, { n, held }] of Object.entries(coverage(plan, watcher, 1, sets).found)) {
      if (watcher !== null && !name.includes(' at ')) continue;
      // So few held, or fewer, would come less than once in ten thousand.
      expect(1 - binomialTail(held + 1, n, share), name).toBeGreaterThan(1e-4);
    }
  });
});

describe('the page', () => {
  it('parts added in pieces are the whole', () => {
    const [whole, pieces] = [coverage('STANDARD', 'calm', 1, 4), together(together(NOTHING, coverage('STANDARD', 'calm', 1, 1)), coverage('STANDARD', 'calm', 2, 4))];
    expect(pieces.outcomes).toEqual(whole.outcomes);
    expect(pieces.found['median at 0.3']).toMatchObject({ n: 4, held: whole.found['median at 0.3']!.held });
  });
  it('names what does not cover as asked', () => {
    const part = parts(100, 100)[0]!;
    const found = (held: number) => ({ sets: 100, outcomes: { caught: 1700 }, fitShown: 5, found: { theta: { n: 100, held, below: 100 - held, above: 0, off: 0, off2: 0 } } });
    expect(failures(part, found(92))).toEqual(['theta']);
    expect(failures(part, found(93))).toEqual([]);
    expect(failures(part, found(98))).toEqual(['theta']);
    expect(failures({ ...part, watcher: 'calm', least: 0.9, most: 1 }, found(50))).toEqual([]); // told, not asked
    expect(page([{ part, all: found(92) }])).toContain('Not as asked: STANDARD, drawn: theta.');
  });
  it('the page that is kept says that every interval covers', () => {
    const kept = readFileSync(new URL('result.md', import.meta.url), 'utf8');
    expect(kept).toContain('Every interval covers as asked.');
    expect([...kept.matchAll(/^(\d+) sets\. Watcher: drawn/gm)].map(([, sets]) => Number(sets) >= 2000)).toEqual([true, true]);
  });
});
