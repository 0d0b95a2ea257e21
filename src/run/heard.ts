/** What stood on the screen to be read or answered in a recorded run, at any of its ticks. */
import type { Command, World } from '../../sim/index.js';
import type { Talk } from '../view/picture.js';
import { cuesOf, isSaid, talkNow, type Cue } from './cues.js';

/**
 * The run is walked once, as far as it is looked at, for when each cue came.
 * @param at the world at the end of so many ticks
 * @param list whether the asymmetry list is read in this run
 */
export function heardIn(at: (tick: number) => World, log: readonly Command[], list: boolean): (tick: number) => Talk | null {
  const some = at(0).fixed.agenda.entries.some(isSaid);
  /** What had come, from each tick at which that changed. */
  const changes: { readonly tick: number; readonly cues: readonly Cue[] }[] = [{ tick: 0, cues: [] }];
  let seen = 0;
  return (tick) => {
    if (!some && !list) return null;
    while (some && seen < tick) {
      seen += 1;
      const before = (changes[changes.length - 1] as (typeof changes)[number]).cues;
      const cues = cuesOf(before, at(seen));
      if (cues !== before) changes.push({ tick: seen, cues });
    }
    const { cues } = changes.findLast((one) => one.tick <= tick) ?? { cues: [] };
    return talkNow(cues, at(tick), log, list);
  };
}
