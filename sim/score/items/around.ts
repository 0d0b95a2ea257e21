/** A go-around: begun when it is told, thrust then climb then gear, and no flap switch before safe height. */
import type { Fixed } from '../../fixed.js';
import { hasActed } from '../../latches.js';
import { FT, ticksOf } from '../../units.js';
import { itemOf, secondsBetween, type Watcher } from './item.js';

/** The gear goes up within this time of the climb, ticks. Invented. */
const GEAR_TICKS = 1500;
/** It climbs: sine of the path, a little over one degree. Invented. */
const CLIMBS = 0.02;

/** Told to go around, the thrust goes up within the time of the event. */
export function aroundBegun(fixed: Fixed): Watcher {
  // A desk may tell it as well, before that of the file or in a run that has none: the first that comes counts.
  const telling = fixed.agenda.entries.filter(({ event }) => event?.do === 'tellGoAround');
  let ticks = 0;
  let toldTick = -1;
  let aroundTick = -1;
  let endTick = 0;
  return {
    see(s) {
      endTick = s.tick;
      const told = toldTick < 0 ? telling.find((entry) => hasActed(s, fixed, entry))?.event : undefined;
      if (told?.do === 'tellGoAround') {
        toldTick = s.tick - 1;
        ticks = ticksOf(told.withinS);
      }
      if (aroundTick < 0 && s.latched.goAround === 1) aroundTick = s.tick - 1;
    },
    items() {
      const open = toldTick < 0 || (aroundTick < 0 && endTick <= toldTick + ticks);
      return [itemOf('aroundBegun', open ? null : aroundTick >= 0 && aroundTick - toldTick <= ticks, aroundTick,
        { value: secondsBetween(toldTick, aroundTick), limit: ticks / 100, unit: 's' })];
    },
  };
}

/** With the gear down: its lever goes up once the aeroplane climbs, within 15 s, and not before. */
export function aroundGear(): Watcher {
  let aroundTick = -1;
  let wasDown = false;
  let leverBefore = 0;
  let climbTick = -1;
  let upTick = -1;
  return {
    see(s) {
      if (aroundTick < 0) {
        if (s.latched.goAround === 1) { aroundTick = s.tick - 1; wasDown = leverBefore === 1; }
        leverBefore = s.latched.gearLever;
        if (aroundTick < 0) return;
      }
      if (climbTick < 0 && s.pathSin > CLIMBS) climbTick = s.tick - 1;
      if (upTick < 0 && s.latched.gearLever === 0) upTick = s.tick - 1;
    },
    items() {
      const kept = upTick >= 0 && climbTick >= 0 && upTick >= climbTick && upTick - climbTick <= GEAR_TICKS;
      return [itemOf('aroundGear', aroundTick < 0 || !wasDown ? null : kept, upTick,
        { value: climbTick < 0 ? null : secondsBetween(climbTick, upTick), limit: GEAR_TICKS / 100, unit: 's' })];
    },
  };
}

/** Behind a go-around the flap switch is first used at safe height above the ground. @param safeFt that height, ft */
export function aroundHeight(fixed: Fixed, safeFt: number): Watcher {
  let aroundTick = -1;
  let pressTick = -1;
  let heightFt = 0;
  return {
    see(s) {
      if (aroundTick < 0 && s.latched.goAround === 1) aroundTick = s.tick - 1;
      if (aroundTick < 0 || pressTick >= 0 || s.latched.pressTick < aroundTick) return;
      pressTick = s.latched.pressTick;
      heightFt = (s.heightM - fixed.groundM) / FT;
    },
    items: () => [itemOf('aroundHeight', pressTick < 0 ? null : heightFt >= safeFt, pressTick, { value: heightFt, limit: safeFt, unit: 'ft' })],
  };
}
