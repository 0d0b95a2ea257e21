/** Calls beside a split: a failed drive called and stopped, and nothing called that was not there. */
import type { Fixed } from '../../fixed.js';
import { falselyCalled } from '../outcome.js';
import { secondOf, type Watcher } from './item.js';

/** For the call of a failure behind the moment it showed itself, ticks. */
const CALL_TICKS = 1000;
/** For stopping a drive that runs on, ticks. */
const STOP_TICKS = 500;

/** A drive that fails is called within 10 s of showing it. */
export function failureCalled(): Watcher {
  return {
    see: () => undefined,
    items: ({ failure, failedCallTick }) => [{
      item: 'failureCalled',
      ok: failure.kind === null ? null : failedCallTick >= 0 && failedCallTick - failure.tick <= CALL_TICKS,
      atS: failure.kind === null ? null : secondOf(failedCallTick),
    }],
  };
}

/** A drive that runs on is stopped by guard or arm within 5 s of showing it. */
export function driveStopped(): Watcher {
  return {
    see: () => undefined,
    items: ({ failure: { kind, tick, stoppedTick } }) => [{
      item: 'driveStopped',
      ok: kind !== 'runsOn' ? null : stoppedTick >= 0 && stoppedTick - tick <= STOP_TICKS,
      atS: kind !== 'runsOn' ? null : secondOf(stoppedTick),
    }],
  };
}

/** No split and no failure is called that had not shown itself. */
export function noFalseCall(fixed: Fixed): Watcher {
  return {
    see: () => undefined,
    items(facts) {
      const { splitCallTick, failedCallTick } = facts;
      const asked = splitCallTick >= 0 || failedCallTick >= 0;
      return [{ item: 'noFalseCall', ok: asked ? !falselyCalled(facts, fixed.task) : null, atS: asked ? secondOf(splitCallTick >= 0 ? splitCallTick : failedCallTick) : null }];
    },
  };
}
