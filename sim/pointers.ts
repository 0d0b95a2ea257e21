/** What the gauge shows: each pointer from its own side (14 CFR 25.699(a)), with its lie, its mismatch and its wander. */
import { wanderAt, type Noise } from './noise.js';
import type { State } from './state.js';

/** Left pointer, deg on the flap scale. */
export const leftPointer = (s: State, noise: Noise): number => s.leftStuck === 1
  ? s.leftStuckDeg
  : s.leftDeg + s.leftBiasDeg + (noise.leftMismatchDeg + wanderAt(noise.leftWander, noise.perDeg, s.leftDeg));

/** Right pointer, deg on the flap scale. */
export const rightPointer = (s: State, noise: Noise): number => s.rightStuck === 1
  ? s.rightStuckDeg
  : s.rightDeg + s.rightBiasDeg + (noise.rightMismatchDeg + wanderAt(noise.rightWander, noise.perDeg, s.rightDeg));

/** Left minus right as shown, deg. */
export const shownDifference = (s: State, noise: Noise): number => leftPointer(s, noise) - rightPointer(s, noise);

/** Growth since onset, deg: change of the shown difference, positive the way the fault drives it. 0 before onset. */
export const growth = (s: State, noise: Noise): number =>
  s.onsetTick < 0 ? 0 : s.onsetSign * (shownDifference(s, noise) - s.onsetBaseDeg);
