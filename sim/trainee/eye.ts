/** What a scripted trainee's eye tells the hand, from the pointers and from nothing that a person cannot see. */
import type { Fixed } from '../fixed.js';
import { leftPointer, rightPointer } from '../pointers.js';
import type { State } from '../state.js';
import { ARRIVAL_DEG } from '../task/rule.js';
import type { Watch } from './watcher.js';

/** A drive that moves no pointer by this much in 5 s of holding does not run. */
const MOVED_DEG = 0.1;
const NOTHING_TICKS = 500;
/** Pointers that still move this long behind a release: the drive runs on. */
const COAST_TICKS = 150;
const COAST_DEG = 0.1;

export interface Eye {
  /** Pointers now, deg. */
  readonly leftDeg: number;
  readonly rightDeg: number;
  /** Looks once a tick. */
  look(s: State): void;
  /** The pointers have been apart for long enough that the hand comes off. */
  splits(s: State): boolean;
  /** The hand comes off without cause. */
  doubts(s: State): boolean;
  /** The switch is held and nothing moves. */
  drivesNothing(s: State): boolean;
  /** The switch was let go and the pointers go on, both alike. */
  runsOn(s: State): boolean;
  /** One pointer still moves against the other, the switch let go. */
  stillParts(s: State): boolean;
  /** At an arrival: the pointers stand apart by what this eye notices, or one of them is short of the setting. */
  isUneven(settingDeg: number): boolean;
}

export function openEye(fixed: Fixed, watch: Watch): Eye {
  let left = 0;
  let right = 0;
  let baseDeg: number | null = watch.sees === 'split' ? 0 : null;
  let seenTick = -1;
  let falseTicks = watch.nextFalse();
  let still = { tick: -1, left: 0, right: 0 };
  let letGo = { tick: -1, left: 0, right: 0 };
  let held = false;
  const apartDeg = (): number => Math.abs(left - right - (baseDeg ?? 0));
  const isApart = (): boolean => !watch.lapsed && baseDeg !== null && apartDeg() >= watch.thresholdDeg;
  return {
    get leftDeg() { return left; },
    get rightDeg() { return right; },
    look(s) {
      left = leftPointer(s, fixed.noise);
      right = rightPointer(s, fixed.noise);
      const holds = s.latched.drive !== 0;
      if (holds && !held) {
        baseDeg ??= left - right;
        still = { tick: s.tick, left, right };
      }
      if (!holds && held) letGo = { tick: s.tick, left, right };
      held = holds;
      if (Math.abs(left - still.left) >= MOVED_DEG || Math.abs(right - still.right) >= MOVED_DEG) still = { tick: s.tick, left, right };
      if (seenTick < 0 && isApart()) seenTick = s.tick;
    },
    isUneven: (settingDeg) => !watch.lapsed && (isApart() || Math.max(Math.abs(left - settingDeg), Math.abs(right - settingDeg)) > ARRIVAL_DEG),
    splits: (s) => seenTick >= 0 && s.tick >= seenTick + watch.reactionTicks,
    doubts(s) {
      if (s.heldTicks < falseTicks) return false;
      falseTicks += watch.nextFalse();
      return true;
    },
    drivesNothing: (s) => held && !watch.lapsed && s.tick - still.tick >= NOTHING_TICKS,
    runsOn: (s) => {
      const moved = Math.min(Math.abs(left - letGo.left), Math.abs(right - letGo.right));
      return !held && !watch.lapsed && letGo.tick >= 0 && s.tick >= letGo.tick + COAST_TICKS && moved >= COAST_DEG;
    },
    stillParts: (s) => {
      const before = letGo.left - letGo.right;
      return !held && letGo.tick >= 0 && s.tick >= letGo.tick + COAST_TICKS && Math.abs(left - right - before) >= COAST_DEG;
    },
  };
}
