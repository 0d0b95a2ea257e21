/**
 * The personal margin: a person's releases laid over the room that each kind of fault leaves. Splits are expected by the
 * fit of the runs that were flown; at a rate that was not flown the fit leans on its prior, and says so by its interval.
 */
import type { Airframe } from '../files/airframe.js';
import { BUDGET_FAULTS, type BudgetFault } from '../advise/budget.js';
import { releasedAt, roomOf, type Released, type Room } from '../advise/room.js';
import { SHOWN_FROM } from './person.js';
import { race } from './race.js';
import type { Estimate } from './spread.js';
import { falsePerSOf, flownRates, isDecided, raceRunsOf } from './tally.js';
import type { JudgedTrial } from './trial.js';

/** Where the fault comes: in level flight under speed hold. */
export interface MarginPlace {
  readonly airframe: Airframe;
  readonly massT: number;
  readonly speedKt: number;
  /** Position of the drive at the fault, deg. */
  readonly flapDeg: number;
  readonly altitudeFt: number;
}

/** One kind of fault: the room it leaves, and where in it a person lets go. */
export interface MarginRow {
  readonly fault: BudgetFault;
  readonly room: Omit<Room, 'worlds'>;
  /**
   * flown: steady, at a rate that was flown on this airframe. between: not flown as such, but no slower and no faster than
   * what was. beyond: outside that, or on another airframe.
   */
  readonly basis: 'flown' | 'between' | 'beyond';
  /** Releases that were flown; none unless `flown`. */
  readonly releases: readonly Released[];
  /** Expected splits; null where the sides never come a degree apart. */
  readonly medianDeg: Estimate | null;
  /** Nine in ten are let go below it. */
  readonly q90Deg: Estimate | null;
  /** What comes of a release at the median, at the ends of its interval, at one and nine in ten and at the upper end of that; null: not reached. */
  readonly at: { readonly q10: Released | null; readonly median: Released | null; readonly medianLo: Released | null; readonly medianHi: Released | null; readonly q90: Released | null; readonly q90Hi: Released | null };
}

/** A lagging side: half the rate of the drive. A slipping one slips for half of every 6 s. */
const RATIO: Readonly<Partial<Record<BudgetFault, number>>> = { lag: 0.5, slip: 0 };
/** Rates this much apart are one. */
const ALIKE = 1.15;

const NOT_REACHED = { q10: null, median: null, medianLo: null, medianHi: null, q90: null, q90Hi: null } as const;

/** @returns null with fewer than 20 decided runs @throws RangeError for trials of different limits */
export function marginOf(trials: readonly JudgedTrial[], seenDeg: number, flownOn: string, place: MarginPlace): MarginRow[] | null {
  const limits = new Set(trials.map(({ limitDeg }) => limitDeg));
  if (limits.size > 1) throw new RangeError(`trials with limits ${[...limits].join(', ')} are not one condition`);
  const flown = flownRates(trials);
  const [slowest, fastest] = [flown[0], flown.at(-1)];
  if (trials.filter(isDecided).length < SHOWN_FROM.fit || slowest === undefined || fastest === undefined) return null;
  const rooms = BUDGET_FAULTS.map((fault) => roomOf({ ...place, fault, ratio: RATIO[fault] ?? 0 }));
  const rates = rooms.flatMap(({ splitRateDegPerS: rate }) => (rate === null ? [] : [rate]));
  const { atRates } = race(raceRunsOf(trials, seenDeg), { falsePerS: falsePerSOf(trials, seenDeg), limitDeg: [...limits][0] as number, ratesDegPerS: rates });
  const isHere = flownOn === place.airframe.name;
  return rooms.map((whole): MarginRow => {
    const { worlds: _worlds, ...room } = whole;
    const rate = room.splitRateDegPerS;
    const expected = atRates.find(({ rateDegPerS }) => rateDegPerS === rate);
    if (rate === null || expected === undefined) return { fault: room.fault, room, basis: 'beyond', releases: [], medianDeg: null, q90Deg: null, at: NOT_REACHED };
    const isSteady = room.fault === 'lag' || room.fault === 'disconnect';
    const alike = trials.filter((one) => isRelease(one) && one.rateDegPerS !== null && isAlike(one.rateDegPerS, rate));
    const basis = !isHere || rate < slowest / ALIKE || rate > fastest * ALIKE ? 'beyond' : isSteady && alike.length > 0 ? 'flown' : 'between';
    const { medianDeg, q90Deg } = expected;
    return {
      fault: room.fault, room, basis, medianDeg, q90Deg,
      releases: basis === 'flown' ? alike.map(({ growthDeg }) => releasedAt(whole, growthDeg as number)).filter((one) => one !== null) : [],
      at: {
        // Splits at one rate are log-normal: as far below the median as nine in ten lie above.
        q10: releasedAt(whole, medianDeg.median ** 2 / q90Deg.median), median: releasedAt(whole, medianDeg.median), medianLo: releasedAt(whole, medianDeg.lo), medianHi: releasedAt(whole, medianDeg.hi),
        q90: releasedAt(whole, q90Deg.median), q90Hi: releasedAt(whole, q90Deg.hi),
      },
    };
  });
}

const isRelease = ({ outcome, growthDeg }: JudgedTrial): boolean => (outcome === 'caught' || outcome === 'late') && growthDeg !== null;
const isAlike = (a: number, b: number): boolean => Math.max(a / b, b / a) <= ALIKE;
