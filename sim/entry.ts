/** The entries of an agenda: faults and events after the dice, each with its time or its condition. */
import type { ScenarioEvent } from './files/event.js';
import type { Fault } from './files/fault.js';
import type { Turn } from './turns.js';

export type Side = 'left' | 'right';
type Drawn<T> = T extends { side: string } ? Omit<T, 'side'> & { side: Side } : T;
/** A fault whose side has been drawn. */
export type DrawnFault = Drawn<Fault>;
/** An event whose side has been drawn. */
export type DrawnEvent = Drawn<ScenarioEvent>;

/** A condition with its latch place; everything in it was worked out before the run. */
export type Condition =
  | { readonly kind: 'tick'; readonly tick: number }
  | { readonly kind: 'crossing'; readonly of: 'driveDeg' | 'casKt' | 'heightM'; readonly at: number; readonly edge: 'rising' | 'falling' | 'either'; readonly leaf: number }
  | { readonly kind: 'held'; readonly ticks: number }
  | { readonly kind: 'after'; readonly memo: number; readonly delayTicks: number }
  /** Looked at only once the entry at the place `behind` has acted. */
  | { readonly kind: 'anew'; readonly behind: number; readonly of: Condition }
  | { readonly kind: 'all' | 'any'; readonly of: readonly Condition[] };

/** One fault or one event, acting once: what acts several times has an entry a time. Made by `expand`, and by `withDesk` for a desk. */
export interface Entry {
  /** Its latch: the place in the file, faults before events; further times of one thing stand behind all of these, and behind them what a desk did. */
  readonly place: number;
  readonly name: string | null;
  /** Tick of the flight in which a timed entry acts, -1 for a watcher. */
  readonly tick: number;
  /** Condition of a watcher, null for a timed entry. */
  readonly when: Condition | null;
  /** Where the tick of its acting is kept for `after`, -1 for nowhere. */
  readonly memo: number;
  /** Place of the fault that this event ends, -1 for none. */
  readonly clears: number;
  readonly fault: DrawnFault | null;
  readonly event: DrawnEvent | null;
  /** Where a watcher latches: its place, but for what a desk put in; -1 where nothing does. */
  readonly latch: number;
  /** Ticks of the run in which it stands; null: from the start to the end, as all that a file names. */
  readonly spans: readonly Span[] | null;
  /** Places of the faults that a desk mends; null for none. */
  readonly mends: readonly number[] | null;
}

/** From a tick on, until before another. */
export interface Span {
  readonly from: number;
  readonly until: number;
}

export interface Agenda {
  /** By place. */
  readonly entries: readonly Entry[];
  /** In the order in which they act within a tick: as in the file, further times of a thing right behind its first. */
  readonly inOrder: readonly Entry[];
  /** Timed entries by tick, then order. */
  readonly timed: readonly Entry[];
  /** The others, in order. */
  readonly watched: readonly Entry[];
  /** How many of the last entries a desk put in. */
  readonly byHand: number;
  /** Crossings latched so far. */
  readonly leaves: number;
  /** Where a desk took the run back, in order. */
  readonly turns: readonly Turn[];
}

/** Most entries and crossings that the latches of the state can hold. */
export const MOST_ENTRIES = 60;
export const MOST_CROSSINGS = 60;
export const MOST_MEMOS = 8;
