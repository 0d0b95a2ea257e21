/** Plans as they are filled in, kept for the tab: a reload loses nothing, and Start takes the plan of its run along. */
import { effect, signal } from '@preact/signals';
import type { Planned } from '../../../sim/files/index.js';
import type { PlanRequest } from '../../../sim/index.js';
import type { PlanOf } from './house.js';

/** The figures a plan is made for, as changed on the page. */
export type Given = Omit<PlanRequest, 'airframe'> & { readonly airframe: string };

export interface Kept {
  readonly planned: Planned;
  /** Items that were checked or shown: they stand. */
  readonly settled: readonly string[];
  /** null: as the run has them. */
  readonly given: Given | null;
}

const STORE = 'evenhand.plans';

export const keyOf = (of: PlanOf): string => ('drill' in of ? `drill ${of.drill}` : 'own' in of ? `own ${of.own}` : 'free');

function stored(): Readonly<Record<string, Kept>> {
  try {
    const found: unknown = JSON.parse(sessionStorage.getItem(STORE) ?? '{}');
    if (typeof found !== 'object' || found === null) return {};
    return Object.fromEntries(Object.entries(found as Record<string, Kept>).filter(([, one]) => Array.isArray(one.settled) && Array.isArray(one.planned?.manoeuvre)));
  } catch {
    return {};
  }
}

export const plans = signal<Readonly<Record<string, Kept>>>(stored());

effect(() => {
  const text = JSON.stringify(plans.value);
  try {
    sessionStorage.setItem(STORE, text);
  } catch {
    // Not kept: the store is closed to us.
  }
});

export function keep(of: PlanOf, kept: Kept | null): void {
  const { [keyOf(of)]: _before, ...rest } = plans.value;
  plans.value = kept === null ? rest : { ...rest, [keyOf(of)]: kept };
}

/** Whether anything stands in a plan. */
export const isBegun = ({ planned }: Kept): boolean =>
  planned.manoeuvre.length > 0 || Object.entries(planned).some(([key, value]) => key !== 'manoeuvre' && key !== 'shown' && value !== null);

/** What goes along with a run: the plan as it stands; undefined where none was begun. */
export function planFor(of: PlanOf): Planned | undefined {
  const kept = plans.peek()[keyOf(of)];
  return kept === undefined || !isBegun(kept) ? undefined : kept.planned;
}
