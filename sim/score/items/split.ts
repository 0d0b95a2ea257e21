/** What is kept around a split: called, looked at again, and left alone with everything as it is. */
import type { Fixed } from '../../fixed.js';
import { ONE_DEGREE } from '../events.js';
import { calledBehind, type Facts } from '../facts.js';
import { isReaction } from '../outcome.js';
import type { TaskRule } from '../../task/rule.js';
import { itemOf, secondsBetween, type Watcher } from './item.js';

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
      return [itemOf(
        'splitCalled', asked ? calledBehind(facts.splitCallTick, facts.releaseTick) : null, facts.splitCallTick,
        { value: secondsBetween(facts.releaseTick, facts.splitCallTick), limit: LOOK_TICKS / 100, unit: 's' },
      )];
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
      if (s.latched.releaseTick !== releaseTick) { releaseTick = s.latched.releaseTick; moves = false; }
      const fast = Math.abs(s.leftDeg - before.left - (s.rightDeg - before.right)) * 100 > MOVES_DEG_PER_S;
      if (releaseTick >= 0 && s.latched.drive === 0 && s.tick >= releaseTick + REST_TICKS && s.tick <= releaseTick + LOOK_TICKS && fast) moves = true;
      movingCallTick = s.latched.movingCallTick;
      before = { left: s.leftDeg, right: s.rightDeg };
    },
    items(facts) {
      const asked = moves && isForSplit(facts, fixed.task);
      const ok = movingCallTick >= releaseTick && movingCallTick - releaseTick <= LOOK_TICKS;
      return [itemOf('secondLook', asked ? ok : null, movingCallTick, { value: secondsBetween(releaseTick, movingCallTick), limit: LOOK_TICKS / 100, unit: 's' })];
    },
  };
}

/** No press behind a release for a split, nor against a jam that has stopped the drive. */
export function leftAlone(fixed: Fixed): Watcher {
  let releaseTick = -1;
  let pressTick = -1;
  let again = -1; // first press behind the release
  let presses = 0;
  let jammed = false;
  let onJam = -1;
  return {
    see(s) {
      if (s.latched.limiterTripped === 1 && (s.latched.leftJam === 1 || s.latched.rightJam === 1)) jammed = true;
      if (s.latched.releaseTick !== releaseTick) { releaseTick = s.latched.releaseTick; again = -1; presses = 0; }
      if (s.latched.pressTick === pressTick) return;
      pressTick = s.latched.pressTick;
      if (releaseTick >= 0 || jammed) presses += 1;
      if (releaseTick >= 0 && again < 0) again = pressTick;
      if (jammed && onJam < 0) onJam = pressTick;
    },
    items(facts) {
      const split = isForSplit(facts, fixed.task);
      const tick = onJam >= 0 ? onJam : split ? again : -1;
      return [itemOf('leftAlone', split || jammed ? tick < 0 : null, tick, { value: tick < 0 ? 0 : presses, limit: 0, unit: '1' })];
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
      const now = { lever: s.latched.flapLeverDeg, guard: s.latched.guardOpen, arm: s.latched.armed };
      if (s.latched.releaseTick !== releaseTick) { releaseTick = s.latched.releaseTick; changed = -1; }
      else if (releaseTick >= 0 && changed < 0 && (now.lever !== stood.lever || now.guard !== stood.guard || now.arm !== stood.arm)) changed = s.tick - 1;
      stood = now;
    },
    items(facts) {
      const asked = isForSplit(facts, fixed.task);
      return [itemOf('leftAsIs', asked ? changed < 0 : null, changed)];
    },
  };
}
