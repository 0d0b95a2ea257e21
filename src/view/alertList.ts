/**
 * Alerts as words, each with one level (14 CFR 25.1322(b)): what is so, and what can be done. Most urgent first, always
 * in the same order, gone with their cause. Whoever draws them adds colour and shape; the words alone say it too.
 */
import type { Picture } from './picture.js';
import { upper } from './words.js';

/** warning: know and act at once. caution: know at once, act behind it. advisory: know. In our own words. */
export type Level = 'warning' | 'caution' | 'advisory';

export interface Alert {
  readonly level: Level;
  readonly title: string;
  readonly detail: string;
}

type Told = Pick<Picture, 'blank' | 'horn' | 'hornSilenced' | 'autopilot' | 'holdLetGo' | 'talk' | 'otherFlies'>;

/** None while the instruments are blanked. */
export function alertsOf({ blank, horn, hornSilenced, autopilot, holdLetGo, talk, otherFlies }: Told): Alert[] {
  if (blank) return [];
  const all: (Alert | false)[] = [
    horn === 'insists' && { level: 'warning', title: 'Gear horn', detail: 'cannot be silenced' },
    horn === 'sounds' && { level: 'warning', title: 'Gear horn', detail: 'can be silenced' },
    !autopilot && { level: 'warning', title: 'Autopilot off', detail: 'roll by hand' },
    holdLetGo && { level: 'caution', title: 'Speed hold off', detail: 'thrust by hand' },
    talk !== null && talk.caution !== null && { level: 'caution', title: upper(talk.caution), detail: 'note it' },
    otherFlies && { level: 'advisory', title: 'Other pilot flies', detail: 'speed, thrust, gear are theirs' },
    hornSilenced && { level: 'advisory', title: 'Horn silenced', detail: 'until the levers go forward' },
  ];
  return all.filter((one) => one !== false);
}

/** As a voice says them; empty for none. */
export const alertWords = (now: Told): string => alertsOf(now).map(({ level, title, detail }) => `${level}: ${title.toLowerCase()}, ${detail}`).join('; ');
