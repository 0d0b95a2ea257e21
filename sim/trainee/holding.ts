/** A scripted trainee with the drive held: what brings the hand off, and what it does behind that. */
import type { Act } from '../files/act.js';
import type { Fixed } from '../fixed.js';
import type { State } from '../state.js';
import type { Eye } from './eye.js';
import type { Hand } from './hand.js';
import type { Leg } from './pressing.js';
import type { Sheet } from './sheet.js';

/** The drive is let go this much before the setting, for what it coasts. */
const COAST_DEG = 0.015;
const FIRST_TOUCH_TICKS = 50;
/** After a release in doubt: three seconds to look, then on. */
const LOOK_TICKS = 300;

/** Looks whether the hand has to come off, and lets go. */
export function holdingOf(leg: Leg, eye: Eye, hand: Hand, fixed: Fixed, sheet: Sheet, hurries: boolean): (s: State) => void {
  const { settings } = fixed.task;
  return (s) => {
    const setting = settings[leg.target];
    const there = setting !== undefined && isThere(s, eye, setting);
    const touched = leg.touching && s.tick >= leg.touchTick + FIRST_TOUCH_TICKS;
    const splits = eye.splits(s);
    const nothing = eye.drivesNothing(s);
    const doubts = !splits && !nothing && eye.doubts(s);
    const warm = !hurries && s.tick - s.latched.pressTick >= sheet.holdMostTicks;
    if (hurries && setting !== undefined && s.latched.flapLeverDeg !== setting && hand.isFree()) hand.act({ do: 'setFlapLever', settingDeg: setting });
    const behind = s.latched.mainDrive === 1 && hurries && !sheet.normalFirst;
    if (!there && !touched && !splits && !nothing && !doubts && !warm && !behind) return;
    hand.act(letGo(s, fixed));
    if (splits || (there && eye.isUneven(setting))) hand.comeOff({ do: 'callSplit' });
    else if (nothing) hand.comeOff({ do: 'callDriveFailed' });
    else if (there) leg.target += 1;
    else if (doubts && sheet.scored) hand.comeOff(null);
    else if (doubts) hand.rest(LOOK_TICKS);
    else if (warm) hand.rest(sheet.restTicks);
    leg.touching = false;
  };
}

const isThere = (s: State, { leftDeg, rightDeg }: Eye, settingDeg: number): boolean =>
  (s.latched.drive > 0 ? Math.max(leftDeg, rightDeg) >= settingDeg - COAST_DEG : Math.min(leftDeg, rightDeg) <= settingDeg + COAST_DEG);

function letGo(s: State, fixed: Fixed): Act {
  const kind = s.latched.drive > 0 ? fixed.drive.extendSwitch : fixed.drive.retractSwitch;
  return kind === 'sprung' ? { do: 'releaseDrive' } : { do: 'setDrive', to: 'off' };
}
