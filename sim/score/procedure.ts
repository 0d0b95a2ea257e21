/** The procedure of a run: its items in the order of the work, each with the moment that proves it. */
import type { Airframe } from '../files/airframe.js';
import type { Outcome } from '../files/record.js';
import type { Fixed } from '../fixed.js';
import type { ReadyScenario } from '../ready.js';
import { challengeAnswered, listRead } from './items/answers.js';
import { aroundBegun, aroundGear, aroundHeight } from './items/around.js';
import { driveStopped, failureCalled, noFalseCall } from './items/calls.js';
import { bothThere, insideLimit, leadingEdgeOut, leverFirst } from './items/driving.js';
import type { ProcedureItem, Watcher } from './items/item.js';
import { hornMet, motorDuty } from './items/motor.js';
import { lossFound, returnHandled } from './items/normal.js';
import { slowAfter, speedFirst, speedKept } from './items/speed.js';
import { leftAlone, leftAsIs, secondLook, splitCalled } from './items/split.js';

/** Watches the procedure from the start of a run; what the scenario does not ask for is left out. */
export function procedureWatcher(fixed: Fixed, { procedure, start: { icing } }: ReadyScenario, airframe: Airframe): Watcher {
  const watchers: Watcher[] = [
    lossFound(),
    ...(procedure.leverFirst ? [leverFirst(fixed, airframe)] : []),
    speedFirst(fixed, airframe, icing), insideLimit(airframe), speedKept(fixed, airframe, icing), slowAfter(fixed, airframe, icing),
    leadingEdgeOut(), bothThere(fixed, 0), motorDuty(), hornMet(fixed),
    aroundBegun(fixed), aroundGear(), aroundHeight(fixed, safeFtOf({ procedure })),
    ...(procedure.call ? [splitCalled(fixed), secondLook(fixed)] : []),
    ...(procedure.leaveAlone ? [leftAlone(fixed), leftAsIs(fixed)] : []),
    ...(procedure.list === true ? [listRead(fixed)] : []),
    ...(procedure.call ? [failureCalled(), driveStopped()] : []),
    returnHandled(), challengeAnswered(fixed),
    ...(procedure.call ? [noFalseCall(fixed)] : []),
  ];
  return {
    see(s) { for (const one of watchers) one.see(s); },
    items: (facts, log) => watchers.flatMap((one) => one.items(facts, log)),
  };
}

/** Height above the ground from which the flap switch may be used behind a go-around, where the scenario gives none, ft. Invented. */
const SAFE_FT = 1000;
export const safeFtOf = ({ procedure }: Pick<ReadyScenario, 'procedure'>): number => procedure.safeFt ?? SAFE_FT;

const PASSED: readonly Outcome[] = ['caught', 'held', 'completed'];
const OPEN: readonly Outcome[] = ['void', 'undecided'];

/** Whether a run passed: a good outcome and no item broken. null where the run decides nothing. */
export const passedOf = (outcome: Outcome, items: readonly ProcedureItem[]): boolean | null =>
  OPEN.includes(outcome) ? null : PASSED.includes(outcome) && items.every(({ ok }) => ok !== false);
