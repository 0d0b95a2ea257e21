/** What a plan is made for, with what was changed on the page, and the plan worked out from it. */
import { useSignal, type ReadonlySignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import type { Airframe } from '../../../sim/files/index.js';
import { BLANK, type Plan, type PlanRequest } from '../../../sim/index.js';
import type { House } from '../house.js';
import type { PlanOf } from './house.js';
import { keyOf, plans, type Given, type Kept } from './kept.js';

export const FRESH: Kept = { planned: BLANK, settled: [], given: null };

export interface Asked {
  /** undefined while it is fetched, null where there is no such run. */
  readonly request: PlanRequest | null | undefined;
  /** Changes with every figure of the request. */
  readonly key: string;
  readonly kept: Kept;
  readonly airframes: readonly Airframe[];
  /** null while the approach is flown. */
  readonly plan: ReadonlySignal<Plan | null>;
  /** Why it could not be worked out; null: it could. */
  readonly failed: ReadonlySignal<string | null>;
}

const why = (problem: unknown): string => (problem instanceof Error ? problem.message : String(problem));

export function useAsked(house: House, of: PlanOf): Asked {
  const first = useSignal<PlanRequest | null | undefined>(undefined);
  const airframes = useSignal<readonly Airframe[]>([]);
  const plan = useSignal<Plan | null>(null);
  const failed = useSignal<string | null>(null);
  useEffect(() => {
    first.value = undefined;
    void Promise.all([house.plan.request(of), house.airframes()]).then(([request, all]) => {
      airframes.value = all;
      first.value = request;
    }, (problem: unknown) => { failed.value = why(problem); });
  }, [house, keyOf(of)]);
  const kept = plans.value[keyOf(of)] ?? FRESH;
  const request = first.value ? requestOf(first.value, kept.given, airframes.value) : first.value;
  const key = request ? JSON.stringify({ ...request, airframe: request.airframe.name }) : '';
  useEffect(() => {
    if (!request) return;
    let over = false;
    plan.value = null;
    failed.value = null;
    house.plan.workOut(request).then((made) => { if (!over) plan.value = made; }, (problem: unknown) => { if (!over) failed.value = why(problem); });
    return () => { over = true; };
  }, [key]);
  return { request, key, kept, airframes: airframes.value, plan, failed };
}

/** What the run asks for, with what was changed on the page. */
function requestOf(first: PlanRequest, given: Given | null, airframes: readonly Airframe[]): PlanRequest {
  if (given === null) return first;
  const airframe = given.airframe === first.airframe.name ? first.airframe : airframes.find(({ name }) => name === given.airframe) ?? first.airframe;
  return { ...given, airframe };
}
