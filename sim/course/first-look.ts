/** In which of several ordinary holds the fault comes that nobody announces. */
import { dice } from '../dice.js';

/**
 * The place of the step in whose next run it comes; null once every hold has been flown without it. The dice order the
 * holds; the first in their order that is not flown yet has it. So it cannot be missed by flying one of them elsewhere.
 * @param among places of the steps @param seed of this person in this course, unsigned 32 bit @param flown the step was flown
 */
export function firstLookAt(among: readonly number[], seed: number, flown: (step: number) => boolean): number | null {
  const stream = dice(seed, 'firstLook');
  const left = [...among];
  while (left.length > 0) {
    const [step] = left.splice(Math.floor(stream.uniform() * left.length), 1) as [number];
    if (!flown(step)) return step;
  }
  return null;
}
