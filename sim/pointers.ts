/** What the gauge shows: each pointer from its own side (14 CFR 25.699(a)), with its lie, its mismatch and its wander. */
import { wanderAt, type Noise } from './noise.js';
import type { State } from './state.js';

/** A pointer that follows its side, deg on the flap scale. */
const following = (deg: number, biasDeg: number, mismatchDeg: number, wander: readonly number[], perDeg: number): number =>
  deg + biasDeg + (mismatchDeg + wanderAt(wander, perDeg, deg));

/** Left pointer of a side at `deg` whose pointer is off by `biasDeg`, unless stuck, deg on the flap scale. */
export const leftPointerAt = (noise: Noise, deg: number, biasDeg: number): number =>
  following(deg, biasDeg, noise.leftMismatchDeg, noise.leftWander, noise.perDeg);

/** The right one. */
export const rightPointerAt = (noise: Noise, deg: number, biasDeg: number): number =>
  following(deg, biasDeg, noise.rightMismatchDeg, noise.rightWander, noise.perDeg);

/** Left pointer, deg on the flap scale. */
export const leftPointer = (s: State, noise: Noise): number =>
  (s.latched.leftStuck === 1 ? s.latched.leftStuckDeg : leftPointerAt(noise, s.leftDeg, s.leftBiasDeg));

/** Right pointer, deg on the flap scale. */
export const rightPointer = (s: State, noise: Noise): number =>
  (s.latched.rightStuck === 1 ? s.latched.rightStuckDeg : rightPointerAt(noise, s.rightDeg, s.rightBiasDeg));

/** Left minus right as shown, deg. */
export const shownDifference = (s: State, noise: Noise): number => leftPointer(s, noise) - rightPointer(s, noise);

/** Growth since onset, deg, of a shown difference: its change, positive the way the fault drives it. 0 before onset. */
export const growthOf = (s: State, shownDeg: number): number => (s.latched.onsetTick < 0 ? 0 : s.latched.onsetSign * (shownDeg - s.latched.onsetBaseDeg));

/** Growth since onset as shown now, deg. */
export const growth = (s: State, noise: Noise): number => (s.latched.onsetTick < 0 ? 0 : growthOf(s, shownDifference(s, noise)));
