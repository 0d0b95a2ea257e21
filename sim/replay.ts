/** A run from its inputs: steps the world to its end, hashing every 100th state and showing every state to a witness. */
import { firstAt, step } from './world.js';
import { byOrder, type Command } from './command.js';
import type { World } from './fixed.js';
import { startHash } from './hash.js';
import { copyState, type State } from './state.js';
import { END_WHYS, type EndWhy } from './task/rule.js';

/** States are hashed at this distance, so that a press undone before the end leaves a trace. */
const HASH_EVERY = 100;

/** What is left of a run that was stepped to its end. */
export interface Run {
  /** Tick count at the end. */
  readonly ticks: number;
  readonly why: EndWhy;
  /** Chain of the states of every 100th tick and the last, 16 hexadecimal digits. */
  readonly hash: string;
  readonly state: State;
  /** What it was flown by, in order. */
  readonly log: readonly Command[];
}

/** Called with the state at the end of every tick. Must not write to it. */
export type See = (state: State) => void;

/**
 * Runs a world to its end, or to a given tick.
 * @param world with what a desk did in it: see `withDesk`
 * @param log commands in any order
 * @param stopTick where a run that was stopped ended; undefined: where its rule ends it
 */
export function run(world: World, log: readonly Command[], see?: See, stopTick?: number): Run {
  return loop(world, [...log].sort(byOrder), null, see, stopTick);
}

/** Says what a pilot does in the tick that begins: pushes commands of that tick. */
export type Pilot = (state: State, push: (command: Command) => void) => void;

/** As `run`, with a pilot who acts on what the state shows. What the pilot does is added to `log`, in order. */
export function runBy(world: World, pilot: Pilot, log: Command[], see?: See): Run {
  return loop(world, log, pilot, see, undefined);
}

function loop(world: World, log: Command[], pilot: Pilot | null, see: See | undefined, stopTick: number | undefined): Run {
  const s = copyState(world.state);
  const hash = startHash();
  const push = (command: Command): void => { log.push(command); };
  let next = firstAt(log, s.tick);
  const { task, agenda: { turns } } = world.fixed;
  // What was taken back is no part of the time allowed.
  const last = stopTick ?? task.limitTicks + (turns[turns.length - 1]?.by ?? 0);
  while (s.tick < last && (stopTick !== undefined || s.latched.endTick < 0)) {
    if (s.tick % HASH_EVERY === 0) hash.add(s);
    pilot?.(s, push);
    next = step(world.fixed, s, log, next);
    see?.(s);
  }
  hash.add(s);
  const ended = s.latched.endTick >= 0 && s.latched.endTick <= s.tick;
  return { ticks: s.tick, why: (ended ? END_WHYS[s.latched.endWhy] : null) ?? 'stopped', hash: hash.digits(), state: s, log };
}
