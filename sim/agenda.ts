/**
 * What is due when, and what is watched for. Timed entries act in their tick; watchers are looked at once, at the end of
 * every tick, and act at the start of the next. Order: tick, rank, place in the file (faults stand before events; what acts
 * several times stands there once for each time).
 */
import { clearEntry, mendFault } from './clear.js';
import { releaseDrive } from './drive/switchgear.js';
import type { Condition, Entry } from './entry.js';
import { actEvent } from './events.js';
import { actFault } from './faults.js';
import type { Fixed } from './fixed.js';
import type { InTick } from './in-tick.js';
import { has, isDone, isPending, put, stands } from './latches.js';
import { latch, takeOver, type State } from './state.js';
import { flightTick } from './task/rule.js';
import type { Turn } from './turns.js';

type Before = Pick<InTick, 'driveDeg' | 'casKt' | 'heightM'>;
type Memo = 'memo0' | 'memo1' | 'memo2' | 'memo3' | 'memo4' | 'memo5' | 'memo6' | 'memo7';
const MEMOS: readonly Memo[] = ['memo0', 'memo1', 'memo2', 'memo3', 'memo4', 'memo5', 'memo6', 'memo7'];

/**
 * Before all else in a tick: where a desk takes the run back, the state of the earlier tick returns, with the hand off a
 * switch that springs back. Waiting times behind a thing that had happened go on from where they were.
 */
export function comeBack(s: State, { agenda, drive }: Fixed): void {
  for (const { from, to, state } of agenda.turns) {
    if (from !== s.tick) continue;
    takeOver(s, state);
    s.tick = from;
    for (const memo of MEMOS) if (s.latched[memo] >= 0) latch(s, memo, s.latched[memo] + from - to);
    releaseDrive(s, drive);
  }
}

/** Start of a tick: what is due acts, in file order. */
export function actDue(s: State, fixed: Fixed): void {
  const { inOrder, timed, turns } = fixed.agenda;
  const tick = flightTick(turns, s.tick);
  const due = s.latched.agendaNext < timed.length && (timed[s.latched.agendaNext] as Entry).tick <= tick;
  if (!due && s.latched.pending0 === 0 && s.latched.pending1 === 0) return;
  for (const entry of inOrder) {
    if (entry.when === null ? entry.tick === tick && stands(entry, s.tick) : isPending(s, entry.latch)) act(s, fixed, entry);
  }
  latch(s, 'pending0', 0);
  latch(s, 'pending1', 0);
  while (s.latched.agendaNext < timed.length && (timed[s.latched.agendaNext] as Entry).tick <= tick) latch(s, 'agendaNext', s.latched.agendaNext + 1);
}

function act(s: State, fixed: Fixed, entry: Entry): void {
  if (entry.memo >= 0) latch(s, MEMOS[entry.memo] as Memo, s.tick);
  if (entry.fault !== null) actFault(s, fixed, entry.fault, entry.place);
  if (entry.clears >= 0) clearEntry(s, fixed, fixed.agenda.entries[entry.clears] as Entry);
  else if (entry.event !== null) actEvent(s, entry.event);
  if (entry.mends !== null) for (const place of entry.mends) mendFault(s, fixed, fixed.agenda.entries[place] as Entry);
}

/** End of a tick: every watcher is looked at once. @param before with drive, speed and height before the tick */
export function watch(s: State, fixed: Fixed, before: Before): void {
  const { watched, turns } = fixed.agenda;
  for (const entry of watched) {
    if (isDone(s, entry.latch) || !stands(entry, s.tick)) continue;
    if (holds(s, turns, entry.when as Condition, before)) {
      put(s, 'done0', 'done1', entry.latch);
      put(s, 'pending0', 'pending1', entry.latch);
    }
  }
}

function holds(s: State, turns: readonly Turn[], when: Condition, before: Before): boolean {
  switch (when.kind) {
    case 'tick': return flightTick(turns, s.tick) + 1 >= when.tick;
    case 'held': return s.heldTicks >= when.ticks;
    case 'after': {
      const acted = s.latched[MEMOS[when.memo] as Memo];
      return acted >= 0 && s.tick + 1 - acted >= Math.max(1, when.delayTicks);
    }
    case 'crossing': {
      if (has(s.latched.leaf0, s.latched.leaf1, when.leaf)) return true;
      const was = before[when.of];
      const now = s[when.of];
      const rises = was < when.at && now >= when.at;
      const falls = was > when.at && now <= when.at;
      const crossed = (rises && when.edge !== 'falling') || (falls && when.edge !== 'rising');
      if (crossed) put(s, 'leaf0', 'leaf1', when.leaf);
      return crossed;
    }
    // The next of several times: its crossing counts once the time before has acted.
    case 'anew': return isDone(s, when.behind) && !isPending(s, when.behind) && holds(s, turns, when.of, before);
    case 'all': {
      // Every leaf is looked at in every tick, so that no crossing is missed while another is awaited.
      let all = true;
      for (const inner of when.of) if (!holds(s, turns, inner, before)) all = false;
      return all;
    }
    case 'any': {
      let any = false;
      for (const inner of when.of) if (holds(s, turns, inner, before)) any = true;
      return any;
    }
  }
}
