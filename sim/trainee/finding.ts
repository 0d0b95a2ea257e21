/** A scripted trainee who does not know yet that the normal drive is lost: lever, look, lever back. */
import type { Act } from '../files/act.js';
import type { Eye } from './eye.js';
import type { State } from '../state.js';
import { ARRIVAL_DEG } from '../task/rule.js';

/** Nothing follows for so long. */
const NOTHING_TICKS = 400;
const MOVED_DEG = 0.05;

/** @returns whether the standby drive is wanted: the lever was tried, nothing followed, and it was put back */
export function findingOf(eye: Eye, settingsDeg: readonly number[]): (s: State, settingDeg: number, act: (what: Act) => void) => boolean {
  let found = false;
  let tried = false;
  let still = { tick: 0, deg: 0 };
  return (s, settingDeg, act) => {
    if (found) return true;
    if (!tried) {
      tried = true;
      still = { tick: s.tick, deg: eye.leftDeg };
      act({ do: 'setFlapLever', settingDeg });
      return false;
    }
    if (Math.abs(eye.leftDeg - still.deg) >= MOVED_DEG) still = { tick: s.tick, deg: eye.leftDeg };
    if (s.tick < still.tick + NOTHING_TICKS) return false;
    found = true;
    const reached = settingsDeg.filter((deg) => deg <= Math.min(eye.leftDeg, eye.rightDeg) + ARRIVAL_DEG).at(-1) ?? 0;
    act({ do: 'setFlapLever', settingDeg: reached });
    return false;
  };
}
