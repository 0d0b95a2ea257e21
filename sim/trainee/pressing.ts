/** A scripted trainee on the way to the next hold: guard, arming, speed, lever and leading edge, in the order of the procedure. */
import type { Act } from '../files/act.js';
import type { Fixed } from '../fixed.js';
import type { State } from '../state.js';
import type { Eye } from './eye.js';
import { findingOf } from './finding.js';
import type { Hand } from './hand.js';
import type { Sheet } from './sheet.js';
import type { Watch } from './watcher.js';

/** How long who hurries waits for the normal drive. */
const TRY_TICKS = 600;
/** The leading edge should have been out by now. */
const LEADING_EDGE_TICKS = 1500;
/** Slow enough for the next setting, or fast enough to retract, kt. */
const SLOW_KT = 8;
const FAST_KT = 2;

/** How far the task is. */
export interface Leg {
  /** Place of the setting that is next, from 0. */
  target: number;
  /** The switch is held for the leading edge alone. */
  touching: boolean;
  /** Tick of the last first touch; -1 for none. */
  touchTick: number;
}

/** Does what is next towards a hold; `flaps`: the flaps may be thought of. */
export function pressingOf(leg: Leg, eye: Eye, hand: Hand, fixed: Fixed, sheet: Sheet, watch: Watch): (s: State, flaps: boolean) => void {
  const { settings } = fixed.task;
  const { hurries } = watch;
  const { act } = hand;
  const finds = findingOf(eye, sheet.settingsDeg);
  return (s, flaps) => {
    const { latched } = s;
    const setting = settings[leg.target];
    // The normal drive is back: handed over once all is reached, with the lever there; in a hurry at once.
    if (latched.mainDrive === 1 && !sheet.normalFirst && (setting === undefined || hurries)) {
      if (latched.guardOpen === 1 && s.rateDegPerS === 0) act({ do: 'closeGuard' });
      return;
    }
    if (setting === undefined) return;
    const extends_ = setting > s.driveDeg;
    if (sheet.normalFirst && !hurries && !finds(s, setting, act)) return;
    if (sheet.normalFirst && hurries && latched.guardOpen === 0 && latched.flapLeverDeg !== setting) {
      act({ do: 'setFlapLever', settingDeg: setting });
      hand.rest(TRY_TICKS);
      return;
    }
    if (latched.guardOpen === 0) act({ do: 'openGuard' });
    else if (latched.armed === 0) act({ do: 'arm' });
    else if (!flaps) return;
    else if (!hurries && !fitSpeed(s, extends_ ? settings[leg.target - 1] : setting, extends_, fixed.otherFlies, sheet, act)) return;
    else if (latched.flapLeverDeg !== setting && !hurries) act({ do: 'setFlapLever', settingDeg: setting });
    else if (latched.leadingEdgeGoing === 1 && s.leadingEdge < 1 && !hurries) {
      if (leg.touchTick >= 0 && s.tick >= leg.touchTick + LEADING_EDGE_TICKS && !watch.lapsed) hand.comeOff({ do: 'callDriveFailed' });
    } else {
      leg.touching = latched.leadingEdgeGoing === 0 && extends_ && !hurries;
      if (leg.touching) leg.touchTick = s.tick;
      act(press(extends_ ? 'extend' : 'retract', fixed));
    }
  };
}

/**
 * Speed first where it matters: extending, the manoeuvre speed of what is out before the next setting; retracting, that
 * of the setting to come before the lever. @returns whether the speed is there
 */
function fitSpeed(s: State, settingDeg: number | undefined, extending: boolean, otherFlies: boolean, sheet: Sheet, act: (what: Act) => void): boolean {
  if (settingDeg === undefined || (s.latched.speedHold === 0 && s.latched.goAround === 0)) return true;
  const wanted = Math.floor(sheet.manoeuvreKt(settingDeg) + 0.5);
  if (!otherFlies && (extending ? s.latched.selectedKt > wanted : s.latched.selectedKt < wanted)) {
    act({ do: 'selectSpeed', speedKt: wanted });
    return false;
  }
  const aimedKt = otherFlies ? wanted : s.latched.selectedKt;
  return extending ? s.casKt <= aimedKt + SLOW_KT : s.casKt >= aimedKt - FAST_KT;
}

function press(way: 'extend' | 'retract', fixed: Fixed): Act {
  const kind = way === 'extend' ? fixed.drive.extendSwitch : fixed.drive.retractSwitch;
  return kind === 'sprung' ? { do: 'holdDrive', way } : { do: 'setDrive', to: way };
}
