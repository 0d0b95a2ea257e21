/** What an intent means where the controls stand now: the acts that are filed, or none. */
import type { Act } from '../../sim/files/index.js';
import type { Panel, Picture } from '../view/picture.js';
import type { Way } from './hold.js';
import type { Intent } from './keys.js';

/** Where the controls stand for the hand: of a picture, with what was pressed since and does not show yet. */
export type Now = Pick<
  Picture,
  | 'guardOpen' | 'armed' | 'drive' | 'flapLeverDeg' | 'gearLever' | 'leftTlaDeg' | 'rightTlaDeg' | 'selectedKt' | 'speedHold'
  | 'autopilot' | 'handControl' | 'coverOpen' | 'talk'
>;

/** What is pressed on the screen and has no key of its own: the larger steps of the selected speed. */
export type Press = Exclude<Intent, Way | 'pause' | 'mute' | 'silenceCover'> | 'speedUp5' | 'speedDown5';

/** Steps of a key or a button: deg of lever angle, kt, part of full control. */
export const STEPS = { tlaDeg: 2, kt: 1, manyKt: 5, control: 0.05 } as const;

/** Acts of one press, in the order in which they are filed; none where the control has no way to go. */
export function actsOf(press: Press, now: Now, panel: Panel): readonly Act[] {
  switch (press) {
    case 'guard': return [{ do: now.guardOpen ? 'closeGuard' : 'openGuard' }];
    case 'arm': return [{ do: now.armed ? 'disarm' : 'arm' }];
    case 'off': return [{ do: 'setDrive', to: 'off' }];
    case 'leverAft': return leverStep(1, now, panel);
    case 'leverForward': return leverStep(-1, now, panel);
    case 'gear': return [{ do: 'setGear', to: now.gearLever === 'up' ? 'down' : 'up' }];
    case 'thrustForward': return thrustStep(STEPS.tlaDeg, now, panel);
    case 'thrustAft': return thrustStep(-STEPS.tlaDeg, now, panel);
    case 'goAround': return [{ do: 'goAround' }];
    case 'speedUp': return selectTo(now.selectedKt + STEPS.kt, now, panel);
    case 'speedDown': return selectTo(now.selectedKt - STEPS.kt, now, panel);
    case 'speedUp5': return selectTo(now.selectedKt + STEPS.manyKt, now, panel);
    case 'speedDown5': return selectTo(now.selectedKt - STEPS.manyKt, now, panel);
    case 'speedHold': return [{ do: 'setSpeedHold', on: !now.speedHold }];
    case 'rollLeft': return rollTo(now.handControl - STEPS.control, now);
    case 'rollRight': return rollTo(now.handControl + STEPS.control, now);
    case 'call': return [{ do: 'callSplit' }];
    case 'callClear': return [{ do: 'callClear' }];
    case 'callFailed': return [{ do: 'callDriveFailed' }];
    case 'callMoving': return [{ do: 'callStillMoving' }];
    // Two steps: under a cover that is shut the button cannot be reached.
    case 'silence': return now.coverOpen ? [{ do: 'silenceHorn' }] : [];
    case 'answer1': return answer(0, now);
    case 'answer2': return answer(1, now);
    case 'answer3': return answer(2, now);
    case 'answer4': return answer(3, now);
  }
}

/** A setting by its row; nothing for the one where the lever is already, and for a row that is not there. */
export function leverTo(row: number, now: Now, panel: Panel): readonly Act[] {
  const setting = panel.settings[row];
  return setting === undefined || setting.deg === now.flapLeverDeg ? [] : [{ do: 'setFlapLever', settingDeg: setting.deg }];
}

function leverStep(step: 1 | -1, now: Now, panel: Panel): readonly Act[] {
  return leverTo(panel.settings.findIndex(({ deg }) => deg === now.flapLeverDeg) + step, now, panel);
}

const between = (value: number, least: number, most: number): number => Math.min(Math.max(value, least), most);

/** A lever, or both, to an angle in whole degrees; nothing where it stands already. */
export function thrustTo(lever: 'left' | 'right' | 'both', tlaDeg: number, now: Now, panel: Panel): readonly Act[] {
  const to = between(Math.round(tlaDeg), 0, panel.tlaMaxDeg);
  const there = (lever === 'right' || now.leftTlaDeg === to) && (lever === 'left' || now.rightTlaDeg === to);
  return there && !now.speedHold ? [] : [{ do: 'setThrust', tlaDeg: to, lever }];
}

/** Both levers by as much; levers that stand apart stay apart. */
function thrustStep(stepDeg: number, now: Now, panel: Panel): readonly Act[] {
  if (Math.abs(now.leftTlaDeg - now.rightTlaDeg) < 1) return thrustTo('both', (now.leftTlaDeg + now.rightTlaDeg) / 2 + stepDeg, now, panel);
  return [...thrustTo('left', now.leftTlaDeg + stepDeg, now, panel), ...thrustTo('right', now.rightTlaDeg + stepDeg, now, panel)];
}

/** A speed in whole knots, inside the strip; nothing where it is selected already. */
export function selectTo(kt: number, now: Now, { stripKt: [low, high] }: Panel): readonly Act[] {
  const to = between(Math.round(kt), low, high);
  return to === now.selectedKt ? [] : [{ do: 'selectSpeed', speedKt: to }];
}

/** Roll control by hand, in steps; only once the autopilot is off. */
export function rollTo(control: number, now: Now): readonly Act[] {
  // Divided and not multiplied: 0.15 and not 0.15000000000000002. Adding zero turns a minus zero into a plain one.
  const to = between(Math.round(control / STEPS.control) / (1 / STEPS.control), -1, 1) + 0;
  return now.autopilot || Math.abs(to - now.handControl) < STEPS.control / 2 ? [] : [{ do: 'roll', control: to }];
}

/** The answer at a place of the callout that is shown. */
export function answer(place: number, { talk }: Now): readonly Act[] {
  const act = talk?.acts[place];
  return act === undefined ? [] : [act];
}

/** Where the controls will stand behind an act: a second press may come before the next picture. */
export function afterAct(now: Now, act: Act): Now {
  switch (act.do) {
    case 'openGuard': return { ...now, guardOpen: true };
    case 'closeGuard': return { ...now, guardOpen: false, armed: false, drive: 'off' };
    case 'arm': return now.guardOpen ? { ...now, armed: true } : now;
    case 'disarm': return { ...now, armed: false };
    case 'setDrive': return act.to === 'off' || now.guardOpen ? { ...now, drive: act.to } : now;
    case 'setFlapLever': return { ...now, flapLeverDeg: act.settingDeg };
    case 'setGear': return { ...now, gearLever: act.to };
    case 'setThrust': return {
      ...now, speedHold: false,
      ...(act.lever === 'right' ? {} : { leftTlaDeg: act.tlaDeg }), ...(act.lever === 'left' ? {} : { rightTlaDeg: act.tlaDeg }),
    };
    case 'goAround': return { ...now, speedHold: false };
    case 'selectSpeed': return { ...now, selectedKt: act.speedKt };
    case 'setSpeedHold': return { ...now, speedHold: act.on };
    case 'roll': return { ...now, autopilot: false, handControl: act.control };
    // What has been answered is not answered again; another callout may be up already.
    case 'answer': case 'selectHeading': case 'descend': return now.talk?.acts.some((one) => one === act) === true ? { ...now, talk: null } : now;
    default: return now;
  }
}

/** Whether the switch, once in that place, stays there by itself. */
export const stays = (way: Way, panel: Panel): boolean => (way === 'extend' ? panel.extendSwitch : panel.retractSwitch) === 'latched';

/** A place that stays is put and not held; put again, it goes to off. */
export function putAct(way: Way, now: Now): Act {
  return { do: 'setDrive', to: now.drive === way ? 'off' : way };
}
