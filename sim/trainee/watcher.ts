/** One person drawn from a trainee's numbers, and how that person watches in one run. Dice are thrown before the run. */
import { dice, type Dice } from '../dice.js';
import { exp, ln } from '../portable.js';
import { TICKS_PER_S } from '../units.js';
import type { TraineeNumbers } from './numbers.js';

/** A person, the same in every run of a set; `spread` from run to run and `lapse` mean what they do in `TraineeNumbers`. */
export interface Watcher {
  readonly sees: TraineeNumbers['sees'];
  readonly thresholdDeg: number;
  readonly reactionS: number;
  readonly spread: number;
  readonly lapse: number;
  readonly falsePerMin: number;
  readonly hurries?: boolean | undefined;
}

/** How a person watches in one run. */
export interface Watch {
  readonly sees: TraineeNumbers['sees'];
  readonly thresholdDeg: number;
  readonly reactionTicks: number;
  /** Waits for nothing. */
  readonly hurries: boolean;
  /** Nothing is noticed in this run. */
  readonly lapsed: boolean;
  /** Ticks of holding until the next release without cause; Infinity for never. */
  nextFalse(): number;
}

/** Draws a person. @param seed unsigned 32-bit whole number; the run's own, or a set's for one person throughout */
export function watcherOf(numbers: TraineeNumbers, seed: number): Watcher {
  const person = dice(seed, 'person');
  const { sees, spread, lapse, falsePerMin, hurries = false } = numbers;
  return {
    sees, spread, lapse, falsePerMin, hurries,
    thresholdDeg: numbers.thresholdDeg * exp(numbers.thresholdLogSd * person.normal()),
    reactionS: numbers.reactionS * exp(numbers.reactionLogSd * person.normal()),
  };
}

/** Draws how a person watches in the run of a seed. A release at the growth s has ln s ~ N(ln(threshold + rate x reaction), spread). */
export function watchOf(watcher: Watcher, seed: number): Watch {
  const eye = dice(seed, 'eye');
  const factor = exp(watcher.spread * eye.normal());
  const without: Dice = dice(seed, 'releases without cause');
  return {
    sees: watcher.sees,
    hurries: watcher.hurries === true,
    thresholdDeg: watcher.thresholdDeg * factor,
    reactionTicks: Math.floor(watcher.reactionS * factor * TICKS_PER_S + 0.5),
    lapsed: eye.uniform() < watcher.lapse,
    nextFalse: () => (watcher.falsePerMin > 0 ? 1 + Math.floor((-ln(without.uniform()) * 60 * TICKS_PER_S) / watcher.falsePerMin) : Infinity),
  };
}
