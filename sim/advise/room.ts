/**
 * The room a fault leaves: what is used of the roll authority, second by second, while the drive is held on; and what is
 * used in the end when the hand comes off at a given split. The drive itself is run, as for the budget.
 */
import type { Command } from '../command.js';
import type { World } from '../fixed.js';
import { ONE_DEGREE } from '../score/events.js';
import { authorityNow } from '../score/facts.js';
import { advance } from '../world.js';
import type { BudgetFault, BudgetRequest } from './budget.js';
import { HELD, splitOf, start } from './driving.js';

/** A moment of holding on. */
export interface RoomPoint {
  /** Since onset, s. */
  readonly afterS: number;
  /** True split, deg. */
  readonly splitDeg: number;
  readonly usedPct: number;
}

/** Parts of the roll authority by which a row is divided, %. */
export const ROOM_LEVELS = [20, 50, 100] as const;

/** Made by `roomOf`: one fault held on through, from onset. Splits are true ones; parts are of the roll authority. */
export interface Room {
  readonly fault: BudgetFault;
  /** Mean growth over the first degree, deg/s; null where a degree is never reached. */
  readonly splitRateDegPerS: number | null;
  /** Ten points a second from onset on, to the end of the roll authority, of the drive's way, or of two minutes. */
  readonly course: readonly RoomPoint[];
  /** Where each part is used up; null where it is not. */
  readonly levels: readonly { readonly usedPct: number; readonly at: RoomPoint | null }[];
  /** How long behind a release the sides are looked at, s: a side that is blown back goes on. */
  readonly settleS: number;
  /** Kept for `releasedAt`: a world for each point. */
  readonly worlds: readonly World[];
}

/** The hand came off at a split. */
export interface Released {
  readonly splitDeg: number;
  readonly afterS: number;
  /** When all has settled. */
  readonly finalSplitDeg: number;
  readonly usedPct: number;
}

/** Longest holding: two minutes, in which the standby drive does all it has to do. */
const LONGEST_TICKS = 12_000;
const STEP_TICKS = 10;

/** Holds on through a fault. @throws RangeError where the drive never comes to it */
export function roomOf(request: BudgetRequest): Room {
  const worlds: World[] = [];
  const course: RoomPoint[] = [];
  let world = start(request);
  while (world.state.latched.onsetTick < 0 && world.state.tick < LONGEST_TICKS) world = advance(world, HELD, 1);
  const { onsetTick } = world.state.latched;
  if (onsetTick < 0) throw new RangeError(`the drive never passes flap ${request.flapDeg}`);
  for (;;) {
    const { state, fixed } = world;
    const usedPct = authorityNow(state, fixed);
    worlds.push(world);
    course.push({ afterS: (state.tick - onsetTick) / 100, splitDeg: splitOf(world), usedPct });
    if (usedPct >= 100 || state.latched.limiterTripped === 1 || state.tick - onsetTick >= LONGEST_TICKS) break;
    world = advance(world, HELD, Math.min(STEP_TICKS, LONGEST_TICKS - (state.tick - onsetTick)));
  }
  const oneDegree = crossing(course, 'splitDeg', ONE_DEGREE);
  return {
    fault: request.fault, course, worlds, settleS: request.fault === 'blowback' ? 15 : 1,
    splitRateDegPerS: oneDegree === null ? null : ONE_DEGREE / oneDegree.afterS,
    levels: ROOM_LEVELS.map((usedPct) => ({ usedPct, at: crossing(course, 'usedPct', usedPct) })),
  };
}

/** Where a course first comes to a value, linear between two points; null where it never does. */
function crossing(course: readonly RoomPoint[], what: 'splitDeg' | 'usedPct', value: number): RoomPoint | null {
  const at = course.findIndex((point) => point[what] >= value);
  const to = course[at];
  const from = course[at - 1];
  if (to === undefined) return null;
  if (from === undefined) return to;
  const part = (value - from[what]) / (to[what] - from[what]);
  const between = (a: number, b: number): number => a + (b - a) * part;
  return { afterS: between(from.afterS, to.afterS), splitDeg: between(from.splitDeg, to.splitDeg), usedPct: between(from.usedPct, to.usedPct) };
}

/**
 * Lets go in the tick in which the split is reached.
 * @param splitDeg above 0 @returns null where the split is not reached
 */
export function releasedAt({ course, worlds, settleS }: Room, splitDeg: number): Released | null {
  const at = course.findIndex((point) => point.splitDeg >= splitDeg);
  const from = worlds[Math.max(0, at - 1)];
  if (at < 0 || from === undefined) return null;
  let world = from;
  while (splitOf(world) < splitDeg) world = advance(world, HELD, 1);
  const { tick, latched: { onsetTick } } = world.state;
  const log: Command[] = [...HELD, { do: 'releaseDrive', tick, rank: 2, seq: 2 }, { do: 'setDrive', to: 'off', tick, rank: 2, seq: 3 }];
  const settled = advance(world, log, settleS * 100);
  return { splitDeg, afterS: (tick - onsetTick) / 100, finalSplitDeg: splitOf(settled), usedPct: authorityNow(settled.state, settled.fixed) };
}
