/** One step of a plan on the drive: the switch away from off until the setting is there, with the rests that its motor asks for. */
import type { Fixed } from '../../fixed.js';
import type { State } from '../../state.js';
import { seconds, type Do, type Script } from './script.js';

/** Hands take a second between two acts. */
const PAUSE_S = 1;
/** The drive is let go so much before the setting, for what it coasts, deg. */
const COAST_DEG = 0.015;
/** The hand comes off so much before the heat cut-out, which would otherwise decide when the drive stops. */
const HEAT_ROOM = 0.02;
const FIRST_TOUCH_S = 0.5;

export interface Held {
  /** Times of the script, s. */
  fromS: number;
  toS: number;
  /** Resting for heat on the way, s. */
  restS: number;
}

const switchOn = (act: Do, fixed: Fixed, way: 'extend' | 'retract'): void =>
  act((way === 'extend' ? fixed.drive.extendSwitch : fixed.drive.retractSwitch) === 'sprung' ? { do: 'holdDrive', way } : { do: 'setDrive', to: way });

/** Lets a sprung switch go, and puts one that stays to off. */
const switchOff = (act: Do, fixed: Fixed, way: 'extend' | 'retract'): void =>
  act((way === 'extend' ? fixed.drive.extendSwitch : fixed.drive.retractSwitch) === 'sprung' ? { do: 'releaseDrive' } : { do: 'setDrive', to: 'off' });

export const pause = (): ReturnType<typeof seconds> => seconds(PAUSE_S);
const atRest = (s: State): boolean => s.latched.contactor === 0 && s.rateDegPerS === 0;

/** Drives to a setting, either way. */
export function* driveTo(act: Do, fixed: Fixed, now: () => State, settingDeg: number, held: (h: Held) => void): Script {
  const way = settingDeg > now().driveDeg ? 'extend' : 'retract';
  const isThere = (s: State): boolean => (way === 'extend' ? s.driveDeg >= settingDeg - COAST_DEG : s.driveDeg <= settingDeg + COAST_DEG);
  const isHot = (s: State): boolean => s.latched.cutOutOpen === 1 || s.motorHeat >= fixed.drive.cutOut - HEAT_ROOM;
  const h: Held = { fromS: now().tick / 100, toS: 0, restS: 0 };
  while (!isThere(now())) {
    if (isHot(now())) {
      const restFrom = now().tick;
      yield (s) => s.latched.cutOutOpen === 0 && s.motorHeat < fixed.drive.reset;
      h.restS += (now().tick - restFrom) / 100;
    }
    switchOn(act, fixed, way);
    yield (s) => isThere(s) || isHot(s);
    switchOff(act, fixed, way);
    h.toS = now().tick / 100;
    yield atRest;
  }
  held(h);
  yield pause();
}

/** Touches the switch once, and waits for the leading edge. */
export function* firstTouch(act: Do, fixed: Fixed, now: () => State, touched: (atS: number, outS: number) => void): Script {
  const atS = now().tick / 100;
  switchOn(act, fixed, 'extend');
  yield seconds(FIRST_TOUCH_S);
  switchOff(act, fixed, 'extend');
  yield (s) => s.leadingEdge >= 1 && atRest(s);
  touched(atS, now().tick / 100);
  yield pause();
}

/** Guard open, armed. */
export function* makeReady(act: Do, now: () => State): Script {
  if (now().latched.guardOpen === 0) {
    act({ do: 'openGuard' });
    yield pause();
  }
  act({ do: 'arm' });
  yield pause();
}
