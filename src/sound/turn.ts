/**
 * Which sound has its turn. One at a time; a running one ends its cycle before a more urgent one begins, unless that one
 * would then be late; a less urgent one waits (AMC 25.1322, 8b). Pure: what is heard of the aeroplane and the time go in.
 */
import { BY_URGENCY, PLANS, type SoundName } from './plan.js';

/** What of the aeroplane is to be heard. */
export interface Heard {
  /** The gear horn sounds; false also when it is silenced. */
  readonly horn: boolean;
  /** The autopilot does not fly. */
  readonly autopilotOff: boolean;
}

/** A cause must be heard within this time, s. */
export const LATE_S = 0.1;

interface Playing {
  readonly name: SoundName;
  readonly sinceS: number;
}

export interface Turn {
  readonly playing: Playing | null;
  /** The autopilot is off and that has been heard, or it was so from the start. */
  readonly told: boolean;
}

/** Nothing sounds; an autopilot that is off from the start has not just let go. */
export const firstTurn = (heard: Heard): Turn => ({ playing: null, told: heard.autopilotOff });

/** When the cycle that runs at `nowS` ends, s. */
function cycleEndS({ name, sinceS }: Playing, nowS: number): number {
  const { cycleS } = PLANS[name];
  return sinceS + Math.ceil(Math.max(0, nowS - sinceS) / cycleS) * cycleS;
}

const isOver = ({ name, sinceS }: Playing, nowS: number): boolean => {
  const { cycles, cycleS } = PLANS[name];
  return cycles !== null && nowS >= sinceS + cycles * cycleS;
};

/** @param heard null while everything is blanked: silence, and what was cut short is said again afterwards */
export function nextTurn({ playing, told }: Turn, heard: Heard | null, nowS: number): Turn {
  const saidNow = told || (playing?.name === 'autopilotOff' && isOver(playing, nowS));
  if (heard === null) return { playing: null, told: saidNow };
  const toldNow = heard.autopilotOff && saidNow;
  const wanted: Readonly<Record<SoundName, boolean>> = { horn: heard.horn, autopilotOff: heard.autopilotOff && !toldNow };
  const running = playing !== null && wanted[playing.name] && !isOver(playing, nowS) ? playing : null;
  const first = BY_URGENCY.find((name) => wanted[name]);
  if (first === undefined || first === running?.name) return { playing: running, told: toldNow };
  if (running === null) return { playing: { name: first, sinceS: nowS }, told: toldNow };
  // Something less urgent runs: its cycle may end if that is soon enough.
  const endS = cycleEndS(running, nowS);
  return { playing: { name: first, sinceS: endS - nowS <= LATE_S ? endS : nowS }, told: toldNow };
}
