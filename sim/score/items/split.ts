/** What is kept around a split: called, looked at again, and left alone with everything as it is. */
import type { Fixed } from '../../fixed.js';
import { ONE_DEGREE } from '../events.js';
import { calledBehind, type Facts } from '../facts.js';
import { isReaction } from '../outcome.js';
import type { TaskRule } from '../../task/rule.js';
import { secondOf, type Watcher } from './item.js';

/** A side that moves faster than this with the drive at rest is still moving, deg/s. */
const MOVES_DEG_PER_S = 0.05;
/** The drive is at rest this long behind a release: drop-out and braking together take 0.14 s. */
const REST_TICKS = 50;
/** For a second look, and for its call, ticks behind the release. */
const LOOK_TICKS = 500;

/** Whether the run came to a release for a split; an arrival with less than 1 degree shown is none. */
export const isForSplit = (facts: Facts, rule: TaskRule): boolean =>
  isReaction(facts, rule) && !(facts.arrived && facts.splitAtReleaseDeg < ONE_DEGREE && !calledBehind(facts.splitCallTick, facts.releaseTick));

/** Called within 5 s of the release. */
export function splitCalled(fixed: Fixed): Watcher {
  return {
    see: () => undefined,
    items(facts) {
      const asked = isForSplit(facts, fixed.task);
      return [{ item: 'splitCalled', ok: asked ? calledBehind(facts.splitCallTick, facts.releaseTick) : null, atS: asked ? secondOf(facts.splitCallTick) : null }];
    },
  };
}

/** A second look within 5 s where a side still moves behind the release, proved by its call. */
export function secondLook(fixed: Fixed): Watcher {
  let releaseTick = -1;
  let moves = false;
  let movingCallTick = -1;
  let before = { left: 0, right: 0 };
  return {
    see(s) {
      if (s.releaseTick !== releaseTick) { releaseTick = s.releaseTick; moves = false; }
      const fast = Math.abs(s.leftDeg - before.left - (s.rightDeg - before.right)) * 100 > MOVES_DEG_PER_S;
      if (releaseTick >= 0 && s.drive === 0 && s.tick >= releaseTick + REST_TICKS && s.tick <= releaseTick + LOOK_TICKS && fast) moves = true;
      movingCallTick = s.movingCallTick;
      before = { left: s.leftDeg, right: s.rightDeg };
    },
    items(facts) {
      const asked = moves && isForSplit(facts, fixed.task);
      const ok = movingCallTick >= releaseTick && movingCallTick - releaseTick <= LOOK_TICKS;
      return [{ item: 'secondLook', ok: asked ? ok : null, atS: asked ? secondOf(movingCallTick) : null }];
    },
  };
}

/** No press behind a release for a split, nor against a jam that has stopped the drive. */
export function leftAlone(fixed: Fixed): Watcher {
  let releaseTick = -1;
  let pressTick = -1;
  let again = -1; // first press behind the release
  let jammed = false;
  let onJam = -1;
  return {
    see(s) {
      if (s.limiterTripped === 1 && (s.leftJam === 1 || s.rightJam === 1)) jammed = true;
      if (s.releaseTick !== releaseTick) { releaseTick = s.releaseTick; again = -1; }
      if (s.pressTick === pressTick) return;
      pressTick = s.pressTick;
      if (releaseTick >= 0 && again < 0) again = pressTick;
      if (jammed && onJam < 0) onJam = pressTick;
    },
    items(facts) {
      const split = isForSplit(facts, fixed.task);
      const tick = onJam >= 0 ? onJam : split ? again : -1;
      return [{ item: 'leftAlone', ok: split || jammed ? tick < 0 : null, atS: secondOf(tick) }];
    },
  };
}

/** Behind a release for a split the flap lever, guard and arm stay as they are: a closed guard hands the flaps to the normal drive. */
export function leftAsIs(fixed: Fixed): Watcher {
  let releaseTick = -1;
  let stood = { lever: 0, guard: 0, arm: 0 };
  let changed = -1;
  return {
    see(s) {
      const now = { lever: s.flapLeverDeg, guard: s.guardOpen, arm: s.armed };
      if (s.releaseTick !== releaseTick) { releaseTick = s.releaseTick; changed = -1; }
      else if (releaseTick >= 0 && changed < 0 && (now.lever !== stood.lever || now.guard !== stood.guard || now.arm !== stood.arm)) changed = s.tick - 1;
      stood = now;
    },
    items(facts) {
      const asked = isForSplit(facts, fixed.task);
      return [{ item: 'leftAsIs', ok: asked ? changed < 0 : null, atS: asked ? secondOf(changed) : null }];
    },
  };
}
