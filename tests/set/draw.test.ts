// The runs of a set: enough onsets, at every rate; where an onset is drawn, there it comes.
import { describe, expect, it } from 'vitest';
import { drawSet, flyRow } from '../../sim/index.js';
import { setNames, shippedSet } from './shipped.js';

describe.each(setNames)('%s', (name) => {
  const of = shippedSet(name);
  const { set, onsets } = of;
  const draws = Array.from({ length: 60 }, (_, seed) => drawSet(of, seed + 1));

  it('has enough onsets in every draw, enough at each rate, and never all', () => {
    for (const runs of draws) {
      expect(runs).toHaveLength(set.runs);
      const with_ = runs.filter(({ onsetHeldS }) => onsetHeldS !== null);
      expect(with_.length).toBeGreaterThanOrEqual(onsets.from);
      expect(with_.length).toBeLessThanOrEqual(onsets.to);
      set.rates.forEach((_, rate) => expect(with_.filter((run) => run.rate === rate).length).toBeGreaterThanOrEqual(onsets.perRate));
    }
  });
  it('has its onsets inside the window, all over it', () => {
    const all = draws.flat().flatMap(({ onsetHeldS }) => onsetHeldS ?? []);
    expect(Math.min(...all)).toBeGreaterThan(set.onsetFromS);
    expect(Math.min(...all)).toBeLessThan(set.onsetFromS + 1);
    expect(Math.max(...all)).toBeLessThanOrEqual(set.onsetFromS + set.onsetForS);
    expect(Math.max(...all)).toBeGreaterThan(set.onsetFromS + set.onsetForS - 1);
  });
  it('falls into blocks of equal length', () => {
    const perBlock = set.runs / set.blocks;
    expect(draws[0]!.map(({ block }) => block)).toEqual(Array.from({ length: set.runs }, (_, at) => Math.floor(at / perBlock)));
  });
  it('is the same for the same seed and another for another', () => {
    expect(drawSet(of, 7)).toEqual(drawSet(of, 7));
    expect(drawSet(of, 8)).not.toEqual(drawSet(of, 7));
  });
});

describe('counts', () => {
  it('of 30 runs with a third quiet: 18 to 22 onsets, at least 4 at each of four rates; of 12: 7 to 9, at least 3 at each of two', () => {
    expect(shippedSet('standard-calm').onsets).toEqual({ from: 18, to: 22, perRate: 4 });
    expect(shippedSet('true-drive-calm').onsets).toEqual({ from: 18, to: 22, perRate: 4 });
    expect(shippedSet('short').onsets).toEqual({ from: 7, to: 9, perRate: 3 });
  });
  it('the hazard leaves the quiet share: ln 3 / 36 s', () => expect(shippedSet('standard-calm').hazardPerS).toBeCloseTo(0.0305170080, 9));
  it('that no draw can have are told', () => {
    expect(() => drawSet(shippedSet('short', { onsets: { from: 12, to: 12, perRate: 12 } }), 1)).toThrow('no set with 12 to 12 onsets');
  });
});

describe('a run', () => {
  const of = shippedSet('standard-calm');
  // A trainee opens the guard, arms, and presses 3 s after the start; the fault is in force in the tick behind the held second.
  it('parts where it was drawn to, at the rate it was drawn for, or not at all', () => {
    for (const run of drawSet(of, 5).slice(0, 12)) {
      const row = flyRow(of.scenarios[run.rate]!, of.airframe, run.seed, 'never');
      if (run.onsetHeldS === null) expect(row.onsetS).toBeNull();
      else expect(row.onsetS).toBeCloseTo(3 + run.onsetHeldS, 9);
    }
  });
});
