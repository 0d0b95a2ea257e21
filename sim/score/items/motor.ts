/** The motor inside its duty, and a gear horn that is met. */
import type { Fixed } from '../../fixed.js';
import { itemOf, type Watcher } from './item.js';

/** The heat cut-out never opens; proved where the motor was hottest. */
export function motorDuty(): Watcher {
  let hottest = -1;
  let at = -1;
  let opened = false;
  return {
    see(s) {
      if (s.latched.contactor === 0) return;
      if (s.motorHeat > hottest) { hottest = s.motorHeat; at = s.tick - 1; }
      if (s.latched.cutOutOpen === 1) opened = true;
    },
    items: () => [itemOf('motorDuty', at < 0 ? null : !opened, at, { value: 100 * hottest, limit: 100, unit: '%' })],
  };
}

/** A horn with the gear lever up is met within this time: levers forward, gear down, or silenced where it may be, ticks. Invented. */
const MET_TICKS = 3000;

/** The gear horn, sounding by the trainee's own flying, is met. In a go-around it may sound until the flaps are in. */
export function hornMet(fixed: Fixed): Watcher {
  let sounding = 0;
  let longest = 0;
  let at = -1;
  let around = false;
  return {
    see(s) {
      if (s.latched.goAround === 1) around = true;
      if (fixed.otherFlies || around) return;
      sounding = s.latched.horn !== 0 && s.latched.gearLever === 0 ? sounding + 1 : 0;
      if (sounding > longest) { longest = sounding; at = s.tick - sounding; }
    },
    items: () => [itemOf('hornMet', longest === 0 ? null : longest <= MET_TICKS, at, { value: longest / 100, limit: MET_TICKS / 100, unit: 's' })],
  };
}
