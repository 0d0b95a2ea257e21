/** What is kept while driving: lever before drive, inside the limit, leading edge out first, both pointers there. */
import type { Airframe } from '../../files/airframe.js';
import type { Fixed } from '../../fixed.js';
import { limitKtNow } from '../../marks.js';
import { leftPointer, rightPointer } from '../../pointers.js';
import type { State } from '../../state.js';
import { ARRIVAL_DEG } from '../../task/rule.js';
import { calledBehind } from '../facts.js';
import { itemOf, type Watcher } from './item.js';

/**
 * The flap lever stands at the setting, or beyond it, before the drive is pressed toward it. Where the airframe's
 * procedure has the first touch before the first lever move, that press is not looked at.
 */
export function leverFirst(fixed: Fixed, { procedure }: Airframe): Watcher {
  let pressTick = -1;
  let ok: boolean | null = null;
  let at = -1;
  let stood = { value: 0, limit: 0 };
  return {
    see(s) {
      if (s.latched.pressTick === pressTick) return;
      pressTick = s.latched.pressTick;
      const setting = fixed.task.settings[s.latched.settingNext];
      if (setting === undefined || s.latched.drive === 0 || ok === false) return;
      if (procedure.firstTouch === 'beforeLever' && s.latched.drive > 0 && s.latched.pressLeadingEdge === 0) return;
      ok = s.latched.drive > 0 ? s.latched.flapLeverDeg >= setting : s.latched.flapLeverDeg <= setting;
      at = s.tick - 1;
      stood = { value: s.latched.flapLeverDeg, limit: setting };
    },
    items: () => [itemOf('leverFirst', ok, at, { ...stood, unit: 'deg' })],
  };
}

/** Never faster than the lowest limit in force; proved where it was closest. */
export function insideLimit(airframe: Airframe): Watcher {
  let closestKt = Infinity;
  let speedKt = 0;
  let at = 0;
  return {
    see(s) {
      const under = limitKtNow(s, airframe) - s.casKt;
      if (under < closestKt) { closestKt = under; speedKt = s.casKt; at = s.tick - 1; }
    },
    items: () => [itemOf('insideLimit', closestKt >= 0, at, closestKt < Infinity ? { value: speedKt, limit: speedKt + closestKt, unit: 'kt' } : {})],
  };
}

/** The first touch moves the flaps this little, deg: more is driven through it. */
const TOUCH_DEG = 0.5;

/** With the leading edge in at the start: behind the first touch, nothing is driven until it is out. */
export function leadingEdgeOut(): Watcher {
  let wasIn = false;
  let inDeg = 0;
  let pressTick = -1;
  let ok: boolean | null = null;
  let at = -1;
  let outPct = 0;
  return {
    see(s) {
      if (s.leadingEdge === 0) { wasIn = true; inDeg = s.driveDeg; }
      if (wasIn && ok !== false && s.leadingEdge < 1 && s.driveDeg > inDeg + TOUCH_DEG) { ok = false; at = s.tick - 1; outPct = 100 * s.leadingEdge; }
      if (s.latched.pressTick === pressTick) return;
      pressTick = s.latched.pressTick;
      if (!wasIn || s.latched.pressLeadingEdge === 0 || s.latched.drive <= 0 || ok === false) return;
      ok = s.latched.pressLeadingEdge >= 1;
      at = s.tick - 1;
      outPct = 100 * s.latched.pressLeadingEdge;
    },
    items: () => [itemOf('leadingEdgeOut', ok, at, { value: outPct, limit: 100, unit: '%' })],
  };
}

interface Stop {
  readonly tick: number;
  /** The farther pointer off the setting, deg. */
  readonly offDeg: number;
}

/**
 * At each arrival both pointers stand at the setting, unless a split was called there. A setting that the standby drive
 * was driven past, and that was never come back to, is proved where the drive left its neighbourhood, by how far off it
 * came to be. What the normal drive carries past it is nobody's.
 */
export function bothThere(fixed: Fixed, from: number): Watcher {
  let settingNext = from;
  let way = 0;
  let past: Stop | null = null;
  let wasBeyond = false;
  const arrivals: Stop[] = [];
  const offDeg = (s: State, setting: number): number => Math.max(Math.abs(leftPointer(s, fixed.noise) - setting), Math.abs(rightPointer(s, fixed.noise) - setting));
  return {
    see(s) {
      const setting = fixed.task.settings[settingNext];
      if (setting === undefined) return;
      if (s.latched.settingNext !== settingNext) {
        settingNext = s.latched.settingNext;
        arrivals.push({ tick: s.tick - 1, offDeg: offDeg(s, setting) });
        way = 0;
        past = null;
        wasBeyond = false;
        return;
      }
      if (way === 0) way = s.driveDeg < setting ? 1 : -1;
      const beyond = (s.driveDeg - setting) * way > ARRIVAL_DEG;
      const crossed = beyond && !wasBeyond && s.latched.contactor !== 0;
      wasBeyond = beyond;
      if (!beyond || (past === null && !crossed)) return;
      past = { tick: past?.tick ?? s.tick - 1, offDeg: Math.max(past?.offDeg ?? 0, offDeg(s, setting)) };
    },
    items({ splitCallTick }) {
      const counted = [...arrivals, ...(past === null ? [] : [past])].filter(({ tick, offDeg }) => offDeg <= ARRIVAL_DEG || !calledBehind(splitCallTick, tick));
      const shown = counted.find(({ offDeg }) => offDeg > ARRIVAL_DEG) ?? counted.at(-1);
      return [itemOf(
        'bothThere', shown === undefined ? null : shown.offDeg <= ARRIVAL_DEG, shown?.tick ?? -1,
        { value: shown?.offDeg ?? null, limit: ARRIVAL_DEG, unit: 'deg' },
      )];
    },
  };
}
