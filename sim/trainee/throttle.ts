/** A scripted trainee's hand on the thrust levers, where no speed hold keeps the speed: every two seconds a little. */
import type { Act } from '../files/act.js';
import type { State } from '../state.js';
import { clamp } from '../units.js';

const EVERY_TICKS = 200;
/** Degrees of lever for a knot of error and for a knot a second of trend. */
const PER_KT = 0.5;
const PER_KT_PER_S = 6;
const MOST_DEG = 50;

/** Files lever acts that keep the selected speed. */
export function throttleOf(): (s: State, file: (what: Act) => void) => void {
  let before: number | null = null;
  return (s, file) => {
    if (s.latched.speedHold === 1 || s.latched.goAround === 1 || s.tick % EVERY_TICKS !== 0) return;
    const trend = before === null ? 0 : (s.casKt - before) / (EVERY_TICKS / 100);
    before = s.casKt;
    const change = PER_KT * (s.latched.selectedKt - s.casKt) - PER_KT_PER_S * trend;
    const tlaDeg = Math.floor(clamp(s.leftTlaDeg + change, 0, MOST_DEG) * 10 + 0.5) / 10;
    if (Math.abs(tlaDeg - s.leftTlaDeg) >= 0.1) file({ do: 'setThrust', tlaDeg });
  };
}
