/** What is told for a while and then no more: worked out from the log, so that a replay tells it too. */
import type { Command } from '../../sim/index.js';

/** How long the letting go of the speed hold is told, ticks. */
const TOLD_TICKS = 1000;

/**
 * Whether the speed hold has let go a short while ago, by a lever that was moved, a go-around or its own switch
 * (14 CFR 25.1329(k), from memory: the end of an autothrust function is told as a caution).
 * @param startsOn whether it was on when the run began
 */
export function holdHasLetGo(log: readonly Command[], startsOn: boolean, now: number): boolean {
  let on = startsOn;
  let letGo = -Infinity;
  for (const filed of log) {
    if (filed.tick >= now) break;
    const next = filed.do === 'setSpeedHold' ? filed.on : filed.do === 'setThrust' || filed.do === 'goAround' ? false : on;
    if (on && !next) letGo = filed.tick;
    on = next;
  }
  return !on && now - letGo <= TOLD_TICKS;
}
