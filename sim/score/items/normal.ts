/** The normal drive, lost and back: found out by the lever, and not handed the flaps by mistake. */
import { ARRIVAL_DEG } from '../../task/rule.js';
import type { State } from '../../state.js';
import { itemOf, type Watcher } from './item.js';

/** Nothing has followed the lever for so long: the drive is lost, ticks. And for putting the lever back. Invented. */
const NOTHING_TICKS = 300;
const BACK_TICKS = 3000;

/** How far the lever stands from the side that is further from it, deg. */
const gapDeg = (s: State): number => Math.max(Math.abs(s.latched.flapLeverDeg - s.leftDeg), Math.abs(s.latched.flapLeverDeg - s.rightDeg));

/** Lever moved and nothing follows: it goes back to what the flaps have reached before the standby drive is armed, within 30 s. */
export function lossFound(): Watcher {
  let worked = false;
  let lost = false;
  let waited = 0;
  let shownTick = -1;
  let backTick = -1;
  let armTick = -1;
  return {
    see(s) {
      if (s.latched.mainDrive === 1) worked = true;
      if (worked && s.latched.mainDrive === 0) lost = true;
      if (!lost) return;
      const ahead = s.latched.flapLeverDeg > Math.min(s.leftDeg, s.rightDeg) + ARRIVAL_DEG;
      waited = ahead && s.latched.armed === 0 ? waited + 1 : 0;
      if (shownTick < 0 && waited >= NOTHING_TICKS) shownTick = s.tick - 1;
      if (shownTick >= 0 && backTick < 0 && !ahead) backTick = s.tick - 1;
      if (armTick < 0 && s.latched.armed === 1) armTick = s.tick - 1;
    },
    items() {
      const asked = lost && (armTick >= 0 || shownTick >= 0);
      const kept = backTick >= 0 && (armTick < 0 || backTick <= armTick) && backTick - shownTick <= BACK_TICKS;
      return [itemOf('lossFound', asked ? kept : null, backTick >= 0 ? backTick : armTick,
        { value: backTick < 0 ? null : (backTick - shownTick) / 100, limit: BACK_TICKS / 100, unit: 's' })];
    },
  };
}

/** The normal drive back: the standby drive gives up the flaps only with the lever where both sides are. */
export function returnHandled(): Watcher {
  let was: number | null = null;
  let before: number | null = null; // the gap before this tick: the normal drive moves in the very tick it is given the flaps
  let back = false;
  let at = -1;
  let offDeg = 0;
  return {
    see(s) {
      if (was === 0 && s.latched.mainDrive === 1) back = true;
      was = s.latched.mainDrive;
      const gap = before;
      before = gapDeg(s);
      if (!back || at >= 0 || s.latched.armed === 1 || s.latched.contactor !== 0 || s.rateDegPerS !== 0) return;
      at = s.tick - 1;
      offDeg = gap ?? before;
    },
    items: () => [itemOf('returnHandled', at < 0 ? null : offDeg <= ARRIVAL_DEG, at, { value: offDeg, limit: ARRIVAL_DEG, unit: 'deg' })],
  };
}
