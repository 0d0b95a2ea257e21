/** What of an agenda is due, has acted, has ended or will not come, for whoever may know it: a desk, never the trainee. */
import type { Condition, DrawnEvent, DrawnFault, Entry } from '../entry.js';
import type { World } from '../fixed.js';
import { hasActed, stands } from '../latches.js';
import type { State } from '../state.js';
import { flightTick } from '../task/rule.js';
import { FT } from '../units.js';

/**
 * What an entry waits for: `at` the value it acts at and `left` what is missing to it, 0 or more, in s, deg, kt or ft by `of`.
 * Behind another only the delay is known, s.
 */
export type Wait =
  | { readonly of: 's' | 'heldS'; readonly at: number; readonly left: number }
  | { readonly of: 'flapDeg' | 'speedKt' | 'altitudeFt'; readonly at: number; readonly edge: 'rising' | 'falling' | 'either'; readonly left: number }
  | { readonly of: 'another'; readonly left: number }
  | { readonly of: 'all' | 'any'; readonly waits: readonly Wait[] };

/** One fault or event of a run, for a desk. ended: it acted, and another act has mended it. disarmed: it will not act. */
export interface DueRow {
  /** Its place in the agenda, from 0; see `Entry`. */
  readonly place: number;
  readonly name: string | null;
  readonly fault: DrawnFault | null;
  readonly event: DrawnEvent | null;
  /** Put in by a desk. */
  readonly byDesk: boolean;
  readonly state: 'waits' | 'acted' | 'ended' | 'disarmed';
  /** null for what does not wait. */
  readonly waits: Wait | null;
}

/** Every fault and event of a run, in the order of its agenda; what only mends is none. */
export function dueRows({ fixed, state: s }: World): DueRow[] {
  const { agenda } = fixed;
  const { entries, inOrder, turns } = agenda;
  const ended = new Set(entries.filter((entry) => hasActed(s, fixed, entry)).flatMap(({ clears, mends }) => [...(mends ?? []), ...(clears >= 0 ? [clears] : [])]));
  return inOrder.filter(({ fault, event }) => fault !== null || event !== null).map((entry): DueRow => {
    const acted = hasActed(s, fixed, entry);
    const state = acted ? (ended.has(entry.place) ? 'ended' : 'acted') : stands(entry, s.tick) && !isPast(entry, flightTick(turns, s.tick)) ? 'waits' : 'disarmed';
    return {
      place: entry.place, name: entry.name, fault: entry.fault, event: entry.event, byDesk: entry.place >= entries.length - agenda.byHand, state,
      waits: state === 'waits' ? waitOf(entry, s, flightTick(turns, s.tick)) : null,
    };
  });
}

/** A timed entry whose time went by without it: it was taken out before. */
const isPast = ({ when, tick }: Entry, now: number): boolean => when === null && tick < now;

const waitOf = ({ when, tick }: Entry, s: State, now: number): Wait => (when === null ? { of: 's', at: tick / 100, left: Math.max(0, tick - now) / 100 } : conditionWait(when, s, now));

function conditionWait(when: Condition, s: State, now: number): Wait {
  switch (when.kind) {
    case 'tick': return { of: 's', at: when.tick / 100, left: Math.max(0, when.tick - now) / 100 };
    case 'held': return { of: 'heldS', at: when.ticks / 100, left: Math.max(0, when.ticks - s.heldTicks) / 100 };
    case 'after': return { of: 'another', left: when.delayTicks / 100 };
    case 'anew': return conditionWait(when.of, s, now);
    case 'crossing': {
      const scale = when.of === 'heightM' ? FT : 1;
      const of = when.of === 'driveDeg' ? 'flapDeg' : when.of === 'casKt' ? 'speedKt' : 'altitudeFt';
      return { of, at: when.at / scale, edge: when.edge, left: Math.abs(when.at - s[when.of]) / scale };
    }
    case 'all': case 'any': return { of: when.kind, waits: when.of.map((inner) => conditionWait(inner, s, now)) };
  }
}
