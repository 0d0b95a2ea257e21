/**
 * Does a set measure anything? Four gates: no hand without eyes gains by it, nor within any class of runs that could be
 * told apart; every run with an onset is decided; and an ordinary watcher does better than the best blind hand by far.
 */
import type { Misfit } from '../files/misfit.js';
import { bestOf, blindFamily, withShares, type Blind } from './blind.js';
import { countsOf, flySet } from './fly.js';
import { endsShort, realisedRates, type RealisedRate } from './held.js';
import { authorityAtPoint, tiedLimitDeg } from './limit.js';
import type { ReadySet } from './ready.js';
import { pointsOf } from './points.js';

/** Best blind policy at most; better than it by at least; both in mean points a run. */
const BLIND_MOST = -20;
const BLIND_MOST_IN_CLASS = 0;
const STEADY_LEAD = 40;
/** Runs flown for the ordinary watcher, at least: whole sets, each with a person of its own. */
const STEADY_RUNS = 240;
const Z = 1.959963984540054;

/** Made by `figuresOf`. Of the ordinary watcher: `runs` flown, `meanPoints` a run, and `lo` and `hi`, their normal 95 % interval. */
export interface SetFigures {
  readonly rates: readonly (RealisedRate & { readonly bestBlind: Blind })[];
  /** The limit of growth, what it should be, and the roll authority it uses at the set's point. */
  readonly limit: { readonly deg: number; readonly tiedDeg: number; readonly rollAuthorityPct: number };
  /** A side is driven back. */
  readonly laboratory: boolean;
  readonly hazardPerS: number;
  readonly onsets: ReadySet['onsets'];
  readonly blind: readonly Blind[];
  readonly steady: { readonly runs: number; readonly meanPoints: number; readonly lo: number; readonly hi: number };
  /** The leg ends before the setting. */
  readonly endsShort: boolean;
}

/** One thing that a set must hold to, or `check` names it as a problem of its file. */
export interface Gate {
  readonly gate: 'blind' | 'blindInClass' | 'decided' | 'steady' | 'endsShort';
  readonly ok: boolean;
  /** What was found and what is asked, in words. */
  readonly found: string;
  readonly asked: string;
  /** Key of the set that is named where it does not hold. */
  readonly key: 'points' | 'legS' | 'limitDeg';
}

/**
 * Computes all figures of a set. Takes a second or two: whole sets are flown.
 * @param steadyRuns runs flown for the ordinary watcher, at least
 */
export function figuresOf(of: ReadySet, steadyRuns = STEADY_RUNS): SetFigures {
  const { set } = of;
  const flown = realisedRates(of);
  const shares = withShares(of, flown);
  return {
    rates: flown.map((rate, at) => ({ ...rate, bestBlind: bestOf(blindFamily(of, shares.slice(at, at + 1))) })),
    limit: { deg: set.limitDeg, tiedDeg: tiedLimitDeg(of), rollAuthorityPct: authorityAtPoint(of, set.limitDeg) },
    laboratory: set.rates.some(({ ratio }) => ratio < 0),
    hazardPerS: of.hazardPerS, onsets: of.onsets,
    blind: blindFamily(of, shares),
    steady: steadyPoints(of, steadyRuns),
    endsShort: endsShort(of),
  };
}

function steadyPoints(of: ReadySet, least: number): SetFigures['steady'] {
  const sets = Math.floor((least + of.set.runs - 1) / of.set.runs);
  const rows = Array.from({ length: sets }, (_, at) => flySet(of, at + 1, 'steady').rows).flat();
  const { meanPoints } = countsOf(of, rows);
  let squares = 0;
  for (const { outcome, growthAtReleaseDeg } of rows) squares += squareOf(pointsOf(outcome, growthAtReleaseDeg, of.set) - meanPoints);
  const half = Z * Math.sqrt(squares / (rows.length - 1) / rows.length);
  return { runs: rows.length, meanPoints, lo: meanPoints - half, hi: meanPoints + half };
}

const squareOf = (x: number): number => x * x;
const points = (value: number): string => `${value.toFixed(1)} points a run`;
const policy = ({ policy: name, atS }: Blind): string => (atS === null ? name : `${name} at ${atS.toFixed(1)} s`);

/** The gates of a set, in their order. */
export function gatesOf({ set }: ReadySet, figures: SetFigures): Gate[] {
  const best = bestOf(figures.blind);
  const known = figures.rates.reduce((worst, rate) => (rate.bestBlind.points > worst.bestBlind.points ? rate : worst));
  const slowest = figures.rates.reduce((slow, rate) => (rate.latestGrowthDeg < slow.latestGrowthDeg ? rate : slow));
  const lead = figures.steady.meanPoints - best.points;
  return [
    { gate: 'blind', key: 'points', ok: best.points <= BLIND_MOST, found: `best blind policy ${points(best.points)} (${policy(best)})`, asked: `at most ${BLIND_MOST}` },
    {
      gate: 'blindInClass', key: 'points', ok: known.bestBlind.points <= BLIND_MOST_IN_CLASS,
      found: `best blind policy with the rate known ${points(known.bestBlind.points)} (ratio ${known.ratio}, ${policy(known.bestBlind)})`, asked: `at most ${BLIND_MOST_IN_CLASS}`,
    },
    {
      gate: 'decided', key: 'legS', ok: slowest.latestGrowthDeg >= set.limitDeg,
      found: `the latest onset grows to ${slowest.latestGrowthDeg.toFixed(2)} deg by the end of the leg (ratio ${slowest.ratio})`, asked: `at least the limit, ${set.limitDeg} deg`,
    },
    { gate: 'steady', key: 'points', ok: lead >= STEADY_LEAD, found: `an ordinary watcher leads the best blind policy by ${points(lead)}`, asked: `at least ${STEADY_LEAD}` },
    { gate: 'endsShort', key: 'legS', ok: figures.endsShort, found: figures.endsShort ? 'the leg ends before the setting' : 'the setting is reached within the leg', asked: 'a leg that ends before the setting' },
  ];
}

/** The gates that do not hold, as misfits of the file. */
export const gateMisfits = (gates: readonly Gate[]): Misfit[] =>
  gates.filter(({ ok }) => !ok).map(({ key, found, asked }) => ({ path: [key], allowed: `${asked}; ${found}` }));
