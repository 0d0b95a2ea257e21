/** What a desk did in a run, worked into its agenda from the log: known in full before a tick is stepped, like all else. */
import { byOrder, type Command } from '../command.js';
import type { World } from '../fixed.js';
import { advance } from '../world.js';
import { extend, type DeskCommand } from './extend.js';

/**
 * The world at the start of a run with all that a desk did in it. Entries stand in the order of their acts, so a world
 * that is kept from before an act is the same with it and without.
 * @param start world at tick 0, as `expand` makes it
 * @param log commands of the run in any order
 * @throws RangeError for an act that cannot be done: a name that is unknown or in use, no room, a moment too near
 */
export function withDesk(start: World, log: readonly Command[]): World {
  const acts = log.filter(({ rank }) => rank === 1);
  if (acts.length === 0) return start;
  let world = start;
  for (const act of acts.sort(byOrder)) {
    const before = world;
    const fixed = extend(before.fixed, act as DeskCommand, (tick) => advance(before, log, tick).state);
    world = { fixed, state: start.state };
  }
  return world;
}
