/** Speeds as the procedure asks for them: that of what is out while driving, slow only once both are there, fast before retracting. */
import type { Airframe } from '../../files/airframe.js';
import type { Fixed } from '../../fixed.js';
import { manoeuvreKt } from '../../marks.js';
import { ARRIVAL_DEG } from '../../task/rule.js';
import type { State } from '../../state.js';
import { itemOf, type Watcher } from './item.js';

/** The manoeuvre speed is kept to this much above and below, kt. Invented. */
const ABOVE_KT = 10;
const BELOW_KT = 5;

/**
 * Manoeuvre speed of what is out, kt: of the largest setting that both sides have reached. It stays where a side is then
 * driven or blown back: what is slow behind a split is the list's affair.
 */
function speedOut(fixed: Fixed, airframe: Airframe, icing: boolean): (s: State) => number {
  const table = airframe.settings.map(({ deg }) => ({ deg, kt: manoeuvreKt(airframe, fixed, deg, icing) }));
  let place = 0;
  return ({ leftDeg, rightDeg }) => {
    const deg = Math.min(leftDeg, rightDeg) + ARRIVAL_DEG;
    while ((table[place + 1]?.deg ?? Infinity) <= deg) place += 1;
    return (table[place] as { kt: number }).kt;
  };
}

/** Keeps the worst of many moments: how far out of its bounds a speed was, and which bound that was. */
function worst() {
  let by = -Infinity;
  let tick = -1;
  let kt = 0;
  let boundKt = 0;
  return {
    note(outBy: number, speedKt: number, bound: number, at: number): void {
      if (outBy <= by) return;
      by = outBy; kt = speedKt; boundKt = bound; tick = at;
    },
    item: (item: 'speedKept' | 'slowAfter' | 'speedFirst') => itemOf(item, tick < 0 ? null : by <= 0, tick, { value: kt, limit: boundKt, unit: 'kt' }),
  };
}

/** Whether the speed is still the trainee's to keep by this procedure: not another's, no split called, no go-around begun. */
function asks(fixed: Fixed): (s: State) => boolean {
  let around = false;
  return (s) => {
    if (s.latched.goAround === 1) around = true;
    return !around && !fixed.otherFlies && s.latched.splitCallTick < 0;
  };
}

/** While the flaps are driven out, the manoeuvre speed of what was out when the step began, 5 kt below to 10 kt above. */
export function speedKept(fixed: Fixed, airframe: Airframe, icing: boolean): Watcher {
  const outKt = speedOut(fixed, airframe, icing);
  const asked = asks(fixed);
  const found = worst();
  let step = -1;
  let kt = 0;
  return {
    see(s) {
      const now = outKt(s);
      if (!asked(s)) return;
      if (s.latched.drive <= 0 || s.latched.contactor === 0) return;
      // Of the whole step: who pauses between two settings goes on at the same speed.
      if (s.latched.settingNext !== step) { step = s.latched.settingNext; kt = now; }
      const over = s.casKt - (kt + ABOVE_KT);
      const under = kt - BELOW_KT - s.casKt;
      if (over > under) found.note(over, s.casKt, kt + ABOVE_KT, s.tick - 1);
      else found.note(under, s.casKt, kt - BELOW_KT, s.tick - 1);
    },
    items: () => [found.item('speedKept')],
  };
}

/** Between the steps no slower than 5 kt below the manoeuvre speed of what both sides have reached. */
export function slowAfter(fixed: Fixed, airframe: Airframe, icing: boolean): Watcher {
  const outKt = speedOut(fixed, airframe, icing);
  const asked = asks(fixed);
  const found = worst();
  let driven = false;
  return {
    see(s) {
      const bound = outKt(s) - BELOW_KT;
      if (!asked(s)) return;
      if (s.latched.drive > 0) driven = true;
      if (!driven || s.latched.drive !== 0 || s.latched.settingNext >= fixed.task.settings.length) return;
      found.note(bound - s.casKt, s.casKt, bound, s.tick - 1);
    },
    items: () => [found.item('slowAfter')],
  };
}

/** Retracting: the lever goes up only at the manoeuvre speed of the setting it goes to, 5 kt below at the least. */
export function speedFirst(fixed: Fixed, airframe: Airframe, icing: boolean): Watcher {
  const found = worst();
  let leverDeg: number | null = null;
  return {
    see(s) {
      const before = leverDeg ?? s.latched.flapLeverDeg;
      leverDeg = s.latched.flapLeverDeg;
      if (s.latched.flapLeverDeg >= before || fixed.otherFlies || Math.max(s.leftDeg, s.rightDeg) <= s.latched.flapLeverDeg + ARRIVAL_DEG) return;
      if (!airframe.settings.some(({ deg }) => deg === s.latched.flapLeverDeg)) return;
      const bound = manoeuvreKt(airframe, fixed, s.latched.flapLeverDeg, icing) - BELOW_KT;
      found.note(bound - s.casKt, s.casKt, bound, s.tick - 1);
    },
    items: () => [found.item('speedFirst')],
  };
}
