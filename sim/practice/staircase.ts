/**
 * Practice that adapts: weighted up-down on the rate of the split (Kaernbach 1991, Percept Psychophys 49:227-229). Faster is
 * harder. A catch makes the next run a quarter of an octave faster, a miss three quarters slower: in balance where three runs
 * in four are caught, whoever flies. Its level is called difficulty; it is no measure of the person, and feedback is at once.
 */
import { dice } from '../dice.js';
import type { Outcome } from '../files/record.js';
import { exp, ln } from '../portable.js';
import { clamp } from '../units.js';

/** Steps of the level, octaves of the rate: their ratio is p / (1 - p) for the share p that is caught, here 3/4. */
export const FASTER_OCTAVES = 0.25;
/** Behind a late or missed run: three times the step of a catch, which is what balances at three in four. */
export const SLOWER_OCTAVES = 0.75;
/** One run in so many is easy, this much slower than the level, so that nobody practises failing alone. */
const EASY_ONE_IN = 10;
const EASY_OCTAVES = 1.5;
/** Rates that a practice goes to, deg/s: the slowest that a leg decides, the fastest that a lag ratio of -4 gives. */
export const RATE_RANGE = { lowest: 0.06, highest: 0.7 } as const;

/** Where a practice stands; kept by name on the machine, and in no estimate. */
export interface Practice {
  /** Rate of the next run that is not easy, deg/s. */
  readonly degPerS: number;
  /** Runs flown so far. */
  readonly runs: number;
}

/** Where a practice starts: the rate of a side that stops, deg/s. */
export const firstPractice = (degPerS: number): Practice => ({ degPerS: inRange(degPerS), runs: 0 });

const inRange = (degPerS: number): number => clamp(degPerS, RATE_RANGE.lowest, RATE_RANGE.highest);
const octaves = (degPerS: number, by: number): number => inRange(degPerS * exp(by * ln(2)));

/** The next run: at the level, or an easy one slower than it. Rates are growth of the split, within `RATE_RANGE`. */
export interface PracticeRun {
  readonly degPerS: number;
  /** Flown to keep the hand in; its outcome moves nothing. */
  readonly easy: boolean;
}

/** The next run of a practice. @param seed of the practice, unsigned 32-bit whole number */
export function nextPracticeRun({ degPerS, runs }: Practice, seed: number): PracticeRun {
  const easy = runs > 0 && dice(seed, `easy ${runs}`).uniform() < 1 / EASY_ONE_IN;
  return { degPerS: easy ? octaves(degPerS, -EASY_OCTAVES) : degPerS, easy };
}

/** The practice behind a run. Only what decides between caught and not moves it; a false release is told and moves nothing. */
export function practiceAfter(practice: Practice, run: PracticeRun, outcome: Outcome): Practice {
  const runs = practice.runs + 1;
  if (run.easy) return { ...practice, runs };
  if (outcome === 'caught') return { degPerS: octaves(practice.degPerS, FASTER_OCTAVES), runs };
  if (outcome === 'late' || outcome === 'missed') return { degPerS: octaves(practice.degPerS, -SLOWER_OCTAVES), runs };
  return { ...practice, runs };
}

/** The lag ratio that gives a rate of split on a drive. @param driveDegPerS rate of the drive itself, deg/s */
export const ratioOf = (degPerS: number, driveDegPerS: number): number => 1 - degPerS / driveDegPerS;
