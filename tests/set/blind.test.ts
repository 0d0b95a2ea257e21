// Hands without eyes: the closed form against a plain sum and against flown runs; and on every shipped set they lose.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  bestOf, blindFamily, drawSet, fly, pointsAt, pointsOf, realisedRates, withShares, type Command, type ReadySet,
} from '../../sim/index.js';
import { setNames, shippedSet } from './shipped.js';
import { anywhere } from '../draw.js';

const mixes = new Map<string, ReturnType<typeof withShares>>();
/** The rates of a shipped set as flown, with their shares; flown once. Points and load change nothing of them. */
function mixOf(name: string): ReturnType<typeof withShares> {
  const key = name.replace('loaded', 'calm');
  if (!mixes.has(key)) mixes.set(key, withShares(shippedSet(key), realisedRates(shippedSet(key))));
  return mixes.get(key)!;
}

/** The same mean by summing over onsets one hundredth of a second apart. */
function summed({ set, hazardPerS }: ReadySet, degPerS: number, heldS: number): number {
  const soonest = Math.max(0.15, set.seenDeg / degPerS);
  const step = 0.01;
  let sum = 0;
  let left = 1;
  for (let u = 0; u < set.onsetForS - step / 2; u += step) {
    const chance = left * (1 - Math.exp(-hazardPerS * step));
    left -= chance;
    const since = heldS - (set.onsetFromS + u + step / 2);
    const growth = degPerS * since;
    sum += chance * (since < soonest ? -set.points.falseRelease : growth < set.limitDeg ? 100 * (1 - growth / set.limitDeg) : -set.points.missed);
  }
  return sum - left * set.points.falseRelease;
}

describe('mean points of a moment', () => {
  const of = shippedSet('standard-calm');
  it('are the sum over all onsets', () => {
    fc.assert(fc.property(anywhere(0.05, 1), anywhere(0, 76), (degPerS, heldS) => {
      expect(Math.abs(pointsAt(of, degPerS, heldS) - summed(of, degPerS, heldS))).toBeLessThan(0.15);
    }), { numRuns: 40 });
  });
  it('before anything can happen are those of a false release', () => expect(pointsAt(of, 0.3, 3)).toBe(-75));
  it('at the end: every split has passed the limit, quiet runs are let go for nothing', () => {
    expect(pointsAt(of, 0.3, 76)).toBeCloseTo(-100 * 2 / 3 - 75 / 3, 9);
  });
  // G = (e^x - 1 - x) / x with x = hazard times the seconds from onset to the limit: 0.07263 at 0.1386 (computed, flat hazard).
  it('in the middle of the window are those of the textbook: 100 e^(-hazard s) G, less false and late', () => {
    const flat = shippedSet('standard-calm', { seenDeg: 0 });
    const x = 0.1386;
    const degPerS = flat.set.limitDeg * flat.hazardPerS / x; // so that hazard times width is x
    const s = 20;
    const none = Math.exp(-flat.hazardPerS * (s - 3));
    const caught = 100 * none * (Math.exp(x) - 1 - x) / x;
    const late = 1 - none * Math.exp(x);
    // The first 0.15 s behind onset are no reaction: there a catch of nearly 100 becomes a false release.
    const soon = none * (Math.exp(flat.hazardPerS * 0.15) - 1);
    expect(caught / (100 * none)).toBeCloseTo(0.07263, 4);
    expect(pointsAt(flat, degPerS, s)).toBeCloseTo(caught - 75 * none - 100 * late - soon * (99.2 + 75), 1);
  });
});

/** A hand that presses at 3 s and lets go so many held seconds later, whatever is seen. */
const blindHand = (heldS: number): Command[] => ([
  { do: 'openGuard', tick: 100 }, { do: 'arm', tick: 200 }, { do: 'holdDrive', way: 'extend', tick: 300 }, { do: 'releaseDrive', tick: 300 + Math.round(heldS * 100) },
] as const).map((act, seq) => ({ ...act, rank: 2, seq }) as Command);

describe('flown runs', () => {
  it.each([19.9, 37.4])('let go blindly at %f s score what was computed', (heldS) => {
    const of = shippedSet('true-drive-calm');
    const scores = [1, 2, 3, 4].flatMap((seed) => drawSet(of, seed)).map((run) => {
      const { outcome, score } = fly({ scenario: of.scenarios[run.rate]!, airframe: of.airframe, seed: run.seed }, blindHand(heldS));
      return pointsOf(outcome, score.growthAtReleaseDeg, of.set);
    });
    const mean = scores.reduce((sum, one) => sum + one, 0) / scores.length;
    const error = Math.sqrt(scores.reduce((sum, one) => sum + (one - mean) ** 2, 0) / (scores.length - 1) / scores.length);
    const mix = mixOf('true-drive-calm');
    const computed = mix.reduce((sum, { degPerS, share }) => sum + share * pointsAt(of, degPerS, heldS), 0) / 2;
    expect(Math.abs(mean - computed)).toBeLessThan(3.5 * error + 2); // 2: the growth is not quite even along the leg
    expect(error).toBeLessThan(9);
  }, 60_000);
});

// Best blind policy with the rates hidden, and with the slowest known, computed for round rates (.075, .155, .30, .60 deg/s).
const EXPECTED: Record<string, [number, number]> = {
  'standard-calm': [-46, -3], 'standard-loaded': [-46, -3], 'true-drive-calm': [-26, -3], 'true-drive-loaded': [-26, -3], short: [-40, -24],
};

it.each(Object.entries(EXPECTED))('the best blind hand on %s is about what was expected of it', (name, [hidden, known]) => {
  const of = shippedSet(name);
  const mix = mixOf(name);
  expect(Math.abs(bestOf(blindFamily(of, mix)).points - hidden)).toBeLessThan(2.5);
  expect(Math.abs(Math.max(...mix.map((one) => bestOf(blindFamily(of, [one])).points)) - known)).toBeLessThan(2.5);
});

describe.each(setNames)('the blind family on %s', (name) => {
  const of = shippedSet(name);
  const mix = mixOf(name);
  it('loses: 20 points a run at the least, and nothing is gained where the rate is known', () => {
    for (const { points } of blindFamily(of, mix)) expect(points).toBeLessThanOrEqual(-20);
    for (const one of mix) for (const { points } of blindFamily(of, [one])) expect(points).toBeLessThanOrEqual(0);
  });
  it('has random, at once, pulse, never and arrival, none better than the best', () => {
    const family = blindFamily(of, mix);
    expect(new Set(family.map(({ policy }) => policy))).toEqual(new Set(['atOnce', 'fixed', 'random', 'pulse', 'never', 'arrival']));
    const { points } = family.find(({ policy }) => policy === 'fixed')!;
    for (const policy of ['atOnce', 'random', 'pulse']) expect(family.find((one) => one.policy === policy)!.points).toBeLessThanOrEqual(points + 0.5);
  });
});

describe('where points are cheap', () => {
  it('never letting go pays once quiet runs give enough, and letting go blindly once it costs little', () => {
    const rich = shippedSet('standard-calm', { points: { falseRelease: 75, missed: 100, held: 400 } });
    expect(bestOf(blindFamily(rich, mixOf('standard-calm'))).policy).toBe('never');
    const cheap = shippedSet('true-drive-calm', { points: { falseRelease: 10, missed: 100, held: 50 } });
    expect(bestOf(blindFamily(cheap, mixOf('true-drive-calm'))).points).toBeGreaterThan(0);
  });
});
