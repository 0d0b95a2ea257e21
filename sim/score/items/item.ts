/** A procedure item: what was looked at, whether it was kept, the moment that proves it, and its figure against its limit. */
import type { Command } from '../../command.js';
import type { State } from '../../state.js';
import type { Facts } from '../facts.js';

/** Every item there is, in the order of the work. */
export const PROCEDURE_ITEMS = [
  'lossFound', 'leverFirst', 'speedFirst', 'insideLimit', 'speedKept', 'slowAfter', 'leadingEdgeOut', 'bothThere', 'motorDuty', 'hornMet',
  'aroundBegun', 'aroundGear', 'aroundHeight', 'splitCalled', 'secondLook', 'leftAlone', 'leftAsIs', 'listRead', 'planRedone',
  'failureCalled', 'driveStopped', 'returnHandled', 'challengeAnswered', 'noFalseCall',
] as const;

/** Units of an item's figure; 1 for a count. */
export const ITEM_UNITS = ['deg', 'kt', 's', 'ft', '%', '1'] as const;

/** One item of the procedure in one run. What the scenario switches off has no item at all. */
export interface ProcedureItem {
  readonly item: (typeof PROCEDURE_ITEMS)[number];
  /** null: the run never asked for it. */
  readonly ok: boolean | null;
  /** The moment that proves it, s; null where there is none. */
  readonly atS: number | null;
  /** What was measured there, and what it is held against; null where the item has no figure, or none came. */
  readonly value: number | null;
  readonly limit: number | null;
  readonly unit: (typeof ITEM_UNITS)[number] | null;
}

/** Sees every state of a run, then says what became of its items. */
export interface Watcher {
  see(state: State): void;
  /** @param log what the run was flown by, in order */
  items(facts: Facts, log: readonly Command[]): ProcedureItem[];
}

type Figure = Partial<Pick<ProcedureItem, 'value' | 'limit' | 'unit'>>;

/** Seconds of a tick; null for one that never came. */
const secondOf = (tick: number): number | null => (tick < 0 ? null : tick / 100);

/** An item with the tick that proves it. Of one that was not asked for nothing else is told. */
export const itemOf = (item: ProcedureItem['item'], ok: boolean | null, tick: number, { value = null, limit = null, unit = null }: Figure = {}): ProcedureItem =>
  (ok === null ? { item, ok, atS: null, value: null, limit: null, unit: null } : { item, ok, atS: secondOf(tick), value, limit, unit });

/** Seconds from one tick to another, to be held against a limit; null where the later one never came. */
export const secondsBetween = (from: number, to: number): number | null => (to < 0 ? null : (to - from) / 100);
