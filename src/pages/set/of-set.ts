/** Where a run of the logbook stood in its set. */
import type { Attempt } from '../../records/logbook/index.js';

/**
 * The place of every run of a set, in words, by the entry that it has in the logbook.
 * @param names of the sets that are at hand, in the order of their numbers
 */
export function placesInSets(attempts: readonly Pick<Attempt, 'set' | 'runs' | 'done'>[], names: readonly string[]): ReadonlyMap<string, string> {
  return new Map(attempts.flatMap(({ set, runs, done }) => {
    const number = names.indexOf(set) + 1;
    return number === 0 ? [] : done.map(({ entry }, at) => [entry, `Set ${number}, run ${at + 1} of ${runs}`] as const);
  }));
}
