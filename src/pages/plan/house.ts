/** What the plan's page, its brief and its debrief need of the rest of the house. */
import type { RunRecord } from '../../../sim/files/index.js';
import type { FlownItem, Plan, PlanRequest } from '../../../sim/index.js';

/** What is planned: a drill, a run from a bench, or an approach of one's own. */
export type PlanOf = { readonly drill: number } | { readonly own: string } | { readonly free: true };

export interface PlanHouse {
  /** What a plan is made for; null where there is no such run. */
  request(of: PlanOf): Promise<PlanRequest | null>;
  /** Flies it, apart from the page. @throws Error in words, where it cannot be worked out */
  workOut(request: PlanRequest): Promise<Plan>;
  /** Planned and flown; null for a run without a plan, or of another model version. */
  flown(record: RunRecord): Promise<readonly FlownItem[] | null>;
}
