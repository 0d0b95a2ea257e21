// The gates of a set: each shipped set passes them all; each gate refuses what it is there for.
import { describe, expect, it } from 'vitest';
import {
  authorityAtPoint, blindFamily, endsShort, figuresOf, gateMisfits, gatesOf, realisedRates, tiedLimitDeg, withShares, type ReadySet, type SetFigures,
} from '../../sim/index.js';
import type { SetFile } from '../../sim/files/index.js';
import { setNames, setText, shippedSet } from './shipped.js';

/** Figures without flying an ordinary watcher, who is given so many points. */
function figures(of: ReadySet, steady: number): SetFigures {
  const rates = realisedRates(of);
  const mix = withShares(of, rates);
  const best = (at: number) => blindFamily(of, [mix[at]!]).reduce((a, b) => (b.points > a.points ? b : a));
  return {
    rates: rates.map((rate, at) => ({ ...rate, bestBlind: best(at) })), blind: blindFamily(of, mix),
    limit: { deg: of.set.limitDeg, tiedDeg: tiedLimitDeg(of), rollAuthorityPct: authorityAtPoint(of, of.set.limitDeg) },
    laboratory: false, hazardPerS: of.hazardPerS, onsets: of.onsets, steady: { runs: 1, meanPoints: steady, lo: 0, hi: 0 }, endsShort: endsShort(of),
  };
}

const failing = (keys: Partial<SetFile>, steady = 40): string[] => {
  const of = shippedSet('true-drive-calm', keys);
  return gatesOf(of, figures(of, steady)).filter(({ ok }) => !ok).map(({ gate }) => gate);
};

describe('a gate refuses', () => {
  it('nothing of the set as it is shipped', () => expect(failing({})).toEqual([]));
  it('false releases that cost too little: a blind hand gains', () => expect(failing({ points: { falseRelease: 30, missed: 100, held: 50 } })).toEqual(['blind', 'blindInClass', 'steady']));
  it('a rate at which a blind hand gains, though mixed it does not', () => expect(failing({ points: { falseRelease: 69, missed: 100, held: 50 } })).toEqual(['blindInClass']));
  it('quiet runs that give too much: never letting go pays', () => expect(failing({ points: { falseRelease: 75, missed: 100, held: 200 } })).toContain('blind'));
  it('a leg too short for the latest and slowest split', () => expect(failing({ legS: 73 })).toEqual(['decided']));
  it('a leg in which the setting is reached', () => expect(failing({ legS: 85 })).toEqual(['endsShort']));
  it('a set in which watching does not pay by far', () => {
    expect(failing({}, 16.1)).toEqual([]); // 24 below nothing and 16 above: 40
    expect(failing({}, 15.9)).toEqual(['steady']);
  });
  it('in the words of the file', () => {
    const of = shippedSet('true-drive-calm', { legS: 73 });
    expect(gateMisfits(gatesOf(of, figures(of, 40)))).toEqual([{ path: ['legS'], allowed: expect.stringMatching(/^at least the limit, 2\.5 deg; the latest onset grows to 2\.\d\d deg by the end of the leg \(ratio 0\.5\)$/) }]);
  });
});

describe('the limit', () => {
  const of = shippedSet('standard-calm');
  it('is tied to 20 % of the roll authority at 167 kt from 4, rounded down to half a degree', () => {
    expect(tiedLimitDeg(of)).toBe(2.5);
    expect(authorityAtPoint(of, 2.5)).toBeLessThanOrEqual(20);
    expect(authorityAtPoint(of, 3)).toBeGreaterThan(20);
  });
  // Table of splits that use 25 % of the roll authority, 48 t, 3500 ft: 155 kt and 175 kt at base 4, by an independent prototype.
  it('lies where the table of splits has it: 25 % at about 3.34 deg', () => expect(Math.abs(authorityAtPoint(of, 3.34) - 25)).toBeLessThan(0.5));
  it('of every shipped set is the tied one', () => {
    for (const name of setNames) expect(shippedSet(name).set.limitDeg).toBe(tiedLimitDeg(shippedSet(name)));
  });
});

describe.each(setNames)('%s', (name) => {
  it('passes every gate with an ordinary watcher flown, and says what it is', () => {
    const of = shippedSet(name);
    const all = figuresOf(of, 24); // one set of each, two of the short one: `check` flies 240 runs
    expect(gatesOf(of, all).filter(({ ok }) => !ok)).toEqual([]);
    expect(all.steady.runs).toBe(Math.ceil(24 / of.set.runs) * of.set.runs);
    expect(all.steady.lo < all.steady.meanPoints && all.steady.meanPoints < all.steady.hi).toBe(true);
    expect(setText(name)).toContain('measuring: in the aeroplane let go in doubt');
    expect(/laboratory set/i.test(setText(name))).toBe(all.laboratory);
  }, 60_000);
});
