/** The straight way down: how fast, and how long over the ground. */
import { sin } from '../../portable.js';
import { FT, KT, PI, RAD } from '../../units.js';
import { PATH_DEG, SCREEN_FT } from './approach.js';

const angle = -PATH_DEG * RAD;
/** Tangent of the path. */
const PATH_SLOPE = sin(angle) / sin(PI / 2 - angle);

/** Rate of descent on the path at a speed over the ground, ft/min. */
export const descentFtPerMin = (groundSpeedKt: number): number => (groundSpeedKt * KT / FT) * 60 * PATH_SLOPE;

/** From a height down to the screen, NM over the ground; 0 from below it. */
export const pathNm = (altitudeFt: number, groundFt: number): number =>
  Math.max(0, altitudeFt - groundFt - SCREEN_FT) * FT / PATH_SLOPE / 1852;
