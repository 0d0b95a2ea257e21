/** The straight way down: how fast, and how long over the ground. */
import { sin } from '../../portable.js';
import { FT, KT, PI, RAD } from '../../units.js';

/** The path down, deg. Common practice, no source. */
export const PATH_DEG = -3;
/** The path ends this high above the threshold, ft: the screen of the landing distance (14 CFR 25.125(a)). */
export const SCREEN_FT = 50;

const angle = -PATH_DEG * RAD;
/** Tangent of the path. */
const PATH_SLOPE = sin(angle) / sin(PI / 2 - angle);

/** Rate of descent on the path at a speed over the ground, ft/min. */
export const descentFtPerMin = (groundSpeedKt: number): number => (groundSpeedKt * KT / FT) * 60 * PATH_SLOPE;

/** From a height down to the screen, NM over the ground; 0 from below it. */
export const pathNm = (altitudeFt: number, groundFt: number): number =>
  Math.max(0, altitudeFt - groundFt - SCREEN_FT) * FT / PATH_SLOPE / 1852;
