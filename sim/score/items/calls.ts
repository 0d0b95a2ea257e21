/** Calls beside a split: a failed drive called and stopped, and nothing called that was not there. */
import type { Fixed } from '../../fixed.js';
import { falselyCalled } from '../outcome.js';
import { itemOf, secondsBetween, type Watcher } from './item.js';

/** For the call of a failure behind the moment it showed itself, ticks. */
const CALL_TICKS = 1000;
/** For stopping a drive that runs on, ticks. */
const STOP_TICKS = 500;

/** A drive that fails is called within 10 s of showing it. */
export function failureCalled(): Watcher {
  return {
    see: () => undefined,
    items: ({ failure, failedCallTick }) => [itemOf(
      'failureCalled', failure.kind === null ? null : failedCallTick >= 0 && failedCallTick - failure.tick <= CALL_TICKS, failedCallTick,
      { value: secondsBetween(failure.tick, failedCallTick), limit: CALL_TICKS / 100, unit: 's' },
    )],
  };
}

/** A drive that runs on is stopped by guard or arm within 5 s of showing it. */
export function driveStopped(): Watcher {
  return {
    see: () => undefined,
    items: ({ failure: { kind, tick, stoppedTick } }) => [itemOf(
      'driveStopped', kind !== 'runsOn' ? null : stoppedTick >= 0 && stoppedTick - tick <= STOP_TICKS, stoppedTick,
      { value: secondsBetween(tick, stoppedTick), limit: STOP_TICKS / 100, unit: 's' },
    )],
  };
}

/** No split and no failure is called that had not shown itself. */
export function noFalseCall(fixed: Fixed): Watcher {
  return {
    see: () => undefined,
    items(facts) {
      const { splitCallTick, failedCallTick, growthAtCallDeg } = facts;
      const asked = splitCallTick >= 0 || failedCallTick >= 0;
      return [itemOf(
        'noFalseCall', asked ? !falselyCalled(facts, fixed.task) : null, splitCallTick >= 0 ? splitCallTick : failedCallTick,
        splitCallTick >= 0 ? { value: growthAtCallDeg, limit: fixed.task.seenDeg, unit: 'deg' } : {},
      )];
    },
  };
}
