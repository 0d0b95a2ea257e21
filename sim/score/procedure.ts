/** The procedure of a run: its items in the order of the work, each with the moment that proves it. */
import type { Airframe } from '../files/airframe.js';
import type { Outcome } from '../files/record.js';
import type { Fixed } from '../fixed.js';
import type { ReadyScenario } from '../ready.js';
import { driveStopped, failureCalled, noFalseCall } from './items/calls.js';
import { bothThere, insideLimit, leadingEdgeOut, leverFirst } from './items/driving.js';
import type { ProcedureItem, Watcher } from './items/item.js';
import { leftAlone, leftAsIs, secondLook, splitCalled } from './items/split.js';

/** Watches the procedure from the start of a run; what the scenario does not ask for is left out. */
export function procedureWatcher(fixed: Fixed, { procedure }: ReadyScenario, airframe: Airframe): Watcher {
  const watchers: Watcher[] = [
    ...(procedure.leverFirst ? [leverFirst(fixed, airframe)] : []),
    insideLimit(airframe), leadingEdgeOut(), bothThere(fixed, 0),
    ...(procedure.call ? [splitCalled(fixed), secondLook(fixed)] : []),
    ...(procedure.leaveAlone ? [leftAlone(fixed), leftAsIs(fixed)] : []),
    ...(procedure.call ? [failureCalled(), driveStopped(), noFalseCall(fixed)] : []),
  ];
  return {
    see(s) { for (const one of watchers) one.see(s); },
    items: (facts) => watchers.flatMap((one) => one.items(facts)),
  };
}

const PASSED: readonly Outcome[] = ['caught', 'held', 'completed'];
const OPEN: readonly Outcome[] = ['void', 'undecided'];

/** Whether a run passed: a good outcome and no item broken. null where the run decides nothing. */
export const passedOf = (outcome: Outcome, items: readonly ProcedureItem[]): boolean | null =>
  OPEN.includes(outcome) ? null : PASSED.includes(outcome) && items.every(({ ok }) => ok !== false);
