/** The state of a recorded run at any of its ticks, exactly: states kept on the way, and the ticks between stepped anew. */
import { byOrder } from '../command.js';
import { withDesk } from '../desk/plan.js';
import { expand } from '../expand.js';
import type { RunRecord } from '../files/record.js';
import { copyState, type State } from '../state.js';
import { firstAt, step, type World } from '../world.js';
import { debriefRow, type DebriefRow } from './debrief-row.js';
import { commandsOfRecord, requestOf } from './replayed.js';

/** Made by `timelineOf`. Ticks may be asked for in any order; a jump back costs at most 500 steps. */
export interface Timeline {
  /** Last tick of the run. */
  readonly endTick: number;
  /** What the trainee flew, at the end of so many ticks. The state is the caller's own. @param tick whole number; cut to 0 .. endTick */
  at(tick: number): World;
  /** The same as a row of the charts. */
  rowAt(tick: number): DebriefRow;
}

/** A state is kept at this distance: a step back costs no more ticks than this, and an hour keeps 720 states. */
const KEEP_EVERY = 500;

/**
 * Opens a record for looking about in it. Nothing is stepped before it is asked for, and playing on from one tick to a
 * later one steps only what lies between.
 */
export function timelineOf(record: RunRecord): Timeline {
  const request = requestOf(record);
  const log = commandsOfRecord(record).sort(byOrder);
  const { fixed, state } = withDesk(expand(request.scenario, request.airframe, request.seed, request.whole), log);
  const endTick = record.end.tick;
  /** States at every KEEP_EVERY-th tick, as far as the run has been looked at. */
  const kept: State[] = [copyState(state)];
  let now = copyState(state);

  const go = (tick: number): State => {
    const place = Math.min(Math.floor(tick / KEEP_EVERY), kept.length - 1);
    const from = kept[place] as State;
    // Nearer than the state that stands already, or that one has gone past.
    if (now.tick > tick || now.tick < from.tick) now = copyState(from);
    let next = firstAt(log, now.tick);
    while (now.tick < tick) {
      next = step(fixed, now, log, next);
      if (now.tick === kept.length * KEEP_EVERY) kept.push(copyState(now));
    }
    return now;
  };
  const inside = (tick: number): number => Math.max(0, Math.min(endTick, Math.floor(tick)));
  return {
    endTick,
    at: (tick) => ({ fixed, state: copyState(go(inside(tick))) }),
    rowAt: (tick) => debriefRow(go(inside(tick)), fixed, request),
  };
}
