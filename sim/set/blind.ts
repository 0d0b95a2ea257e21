/**
 * What a hand without eyes can make of a set: every policy that goes by time alone. Computed exactly for growth at a
 * constant rate: the onset is an exponential one in its window, and the mean over it has a closed form.
 */
import { exp } from '../portable.js';
import type { RealisedRate } from './held.js';
import type { ReadySet } from './ready.js';

/** A release sooner after onset than this is no reaction, s. */
const SOONEST_S = 0.15;
/** Moments that are looked at lie this far apart, s. */
const STEP_S = 0.05;
/** A hand that pulses lets go this often, s. The first release ends the scoring, so one pulse is a fixed moment. */
const PULSE_S = 5;

/**
 * One policy. atOnce lets go with the first press, fixed at the moment that pays best, random at any, pulse every 5 s; never and
 * arrival hold on.
 */
export interface Blind {
  readonly policy: 'atOnce' | 'fixed' | 'random' | 'pulse' | 'never' | 'arrival';
  /** Mean points a run. */
  readonly points: number;
  /** Held seconds at which it lets go; null where it has no moment. */
  readonly atS: number | null;
}

/** Chance that nothing has begun by `heldS`: 1 before the window, the share of quiet runs behind it. */
function survival({ set, hazardPerS }: ReadySet, heldS: number): number {
  const into = Math.min(set.onsetForS, Math.max(0, heldS - set.onsetFromS));
  return exp(-hazardPerS * into);
}

/** Mean points at one rate of a release at `heldS`, whatever is seen. */
export function pointsAt(of: ReadySet, degPerS: number, heldS: number): number {
  const { set, hazardPerS: hazard } = of;
  const { falseRelease, missed } = set.points;
  const soonest = Math.max(SOONEST_S, set.seenDeg / degPerS);
  const width = set.limitDeg / degPerS;
  // Seconds since onset for which a release is caught, as far as the window of onsets allows.
  const from = Math.max(soonest, heldS - set.onsetFromS - set.onsetForS);
  const to = Math.min(width, heldS - set.onsetFromS);
  // 100 (1 - x / width) times the density of onsets x seconds ago, hazard e^(-hazard (since the window opened - x)).
  const whole = (x: number): number => exp(hazard * x) * (1 - x / width + 1 / (hazard * width));
  const caught = to <= from ? 0 : 100 * exp(-hazard * (heldS - set.onsetFromS)) * (whole(to) - whole(from));
  return caught - falseRelease * survival(of, heldS - soonest) - missed * (1 - survival(of, heldS - width));
}

/** Mean points of never letting go at one rate; a run whose split stays below the limit counts nothing. */
function pointsNever(of: ReadySet, degPerS: number): number {
  const { set } = of;
  const decided = 1 - survival(of, set.legS - set.limitDeg / degPerS);
  return set.quiet * set.points.held - decided * set.points.missed;
}

/** The blind family against a mix of rates; each weighs as its `share` of all shares, from 0. */
export function blindFamily(of: ReadySet, rates: readonly { readonly degPerS: number; readonly share: number }[]): Blind[] {
  const { set } = of;
  const shares = rates.reduce((sum, { share }) => sum + share, 0);
  const mean = (points: (degPerS: number) => number): number =>
    rates.reduce((sum, { degPerS, share }) => sum + share * points(degPerS), 0) / shares;
  const at = (heldS: number): number => mean((degPerS) => pointsAt(of, degPerS, heldS));
  const moments = Array.from({ length: Math.floor(set.legS / STEP_S) }, (_, k) => (k + 1) * STEP_S);
  const all = moments.map((atS): Blind => ({ policy: 'fixed', atS, points: at(atS) }));
  const fixed = all.reduce((best, one) => (one.points > best.points ? one : best));
  const never = mean((degPerS) => pointsNever(of, degPerS));
  return [
    { policy: 'atOnce', atS: STEP_S, points: at(STEP_S) },
    fixed,
    { policy: 'random', atS: null, points: all.reduce((sum, { points }) => sum + points, 0) / all.length },
    { policy: 'pulse', atS: PULSE_S, points: at(Math.min(PULSE_S, set.legS)) },
    { policy: 'never', atS: null, points: never },
    { policy: 'arrival', atS: null, points: never }, // the leg ends before the setting; a gate holds sets to it
  ];
}

/** The best of a family. */
export const bestOf = (family: readonly Blind[]): Blind => family.reduce((best, one) => (one.points > best.points ? one : best));

/** Rates as flown, each with the `share` it has in the set. */
export const withShares = ({ set }: ReadySet, rates: readonly RealisedRate[]): { degPerS: number; share: number }[] =>
  rates.map(({ degPerS }, at) => ({ degPerS, share: set.rates[at]?.share ?? 0 }));
