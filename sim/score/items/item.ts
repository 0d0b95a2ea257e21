/** A procedure item: what was looked at, whether it was kept, and the moment that proves it. */
import type { State } from '../../state.js';
import type { Facts } from '../facts.js';

export const PROCEDURE_ITEMS = [
  'leverFirst', 'insideLimit', 'leadingEdgeOut', 'bothThere', 'splitCalled', 'secondLook', 'leftAlone', 'leftAsIs',
  'failureCalled', 'driveStopped', 'noFalseCall',
] as const;

export interface ProcedureItem {
  readonly item: (typeof PROCEDURE_ITEMS)[number];
  /** null: the run never asked for it. */
  readonly ok: boolean | null;
  /** The moment that proves it, s; null where there is none. */
  readonly atS: number | null;
}

/** Sees every state of a run, then says what became of its items. */
export interface Watcher {
  see(state: State): void;
  items(facts: Facts): ProcedureItem[];
}

/** Seconds of a tick; null for one that never came. */
export const secondOf = (tick: number): number | null => (tick < 0 ? null : tick / 100);
