/** What an intent means where the controls stand now: the act that is filed, or nothing. */
import type { Act } from '../../sim/files/index.js';
import type { Panel, Picture } from '../view/picture.js';
import type { Way } from './hold.js';
import type { Intent } from './keys.js';

export type Now = Pick<Picture, 'guardOpen' | 'armed' | 'drive' | 'flapLeverDeg'>;

export function actOf(intent: Exclude<Intent, Way | 'pause'>, now: Now, panel: Panel): Act | null {
  switch (intent) {
    case 'guard': return { do: now.guardOpen ? 'closeGuard' : 'openGuard' };
    case 'arm': return { do: now.armed ? 'disarm' : 'arm' };
    case 'off': return { do: 'setDrive', to: 'off' };
    case 'call': return { do: 'callSplit' };
    case 'leverAft': return leverStep(1, now, panel);
    case 'leverForward': return leverStep(-1, now, panel);
    default: return null;
  }
}

/** A setting by its row; null for the one where the lever is already, and for a row that is not there. */
export function leverTo(row: number, now: Now, panel: Panel): Act | null {
  const setting = panel.settings[row];
  return setting === undefined || setting.deg === now.flapLeverDeg ? null : { do: 'setFlapLever', settingDeg: setting.deg };
}

function leverStep(step: 1 | -1, now: Now, panel: Panel): Act | null {
  return leverTo(panel.settings.findIndex(({ deg }) => deg === now.flapLeverDeg) + step, now, panel);
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
    default: return now;
  }
}

/** Whether the switch, once in that place, stays there by itself. */
export const stays = (way: Way, panel: Panel): boolean => (way === 'extend' ? panel.extendSwitch : panel.retractSwitch) === 'latched';

/** A place that stays is put and not held; put again, it goes to off. */
export function putAct(way: Way, now: Now): Act {
  return { do: 'setDrive', to: now.drive === way ? 'off' : way };
}
