/** The seeds of a sweep: from one seed, by a stream of their own, so that the first ones are the same for any number of runs. */
import { dice } from '../dice.js';

/** Seeds of `runs` runs. @param seed unsigned 32-bit whole number */
export function seedsOf(seed: number, runs: number): number[] {
  const stream = dice(seed, 'seeds of runs');
  return Array.from({ length: runs }, () => stream.bits());
}
