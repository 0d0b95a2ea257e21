/** A scripted trainee's hand on the roll control, once the autopilot has let go: wings level, four times a second. */
import type { Act } from '../files/act.js';
import type { State } from '../state.js';
import { clamp } from '../units.js';

const EVERY_TICKS = 25;
/** Part of full control for a radian of bank, for a radian a second of roll, and gathered for a radian of bank held a second. */
const PER_RAD = 2;
const PER_RAD_PER_S = 2.5;
const SUM_PER_RAD_S = 0.8;

/** Files roll acts that hold the wings level. */
export function rollOf(): (s: State, file: (what: Act) => void) => void {
  let sum: number | null = null;
  return (s, file) => {
    if (s.latched.autopilot === 1 || s.tick % EVERY_TICKS !== 0) return;
    // The hand takes over where the autopilot's control stood.
    sum = sum === null ? s.control : clamp(sum - (SUM_PER_RAD_S * s.bankRad * EVERY_TICKS) / 100, -1, 1);
    const control = clamp(sum - PER_RAD * s.bankRad - PER_RAD_PER_S * s.rollRate, -1, 1);
    const rounded = Math.floor(control * 100 + 0.5) / 100;
    if (rounded !== s.latched.handControl) file({ do: 'roll', control: rounded });
  };
}
