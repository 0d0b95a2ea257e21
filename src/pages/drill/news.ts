/** Which pictures of a run the twins need to know of. */
import type { Picture } from '../../view/picture.js';

/** Seconds between two readings for the twins; the state of a control is told at once. */
const READ_EVERY_S = 0.5;

const STATES = [
  'blank', 'frozen', 'guardOpen', 'armed', 'drive', 'flapLeverDeg', 'leadingEdge', 'manoeuvreHollow', 'gearLever', 'gear', 'horn', 'hornSilenced',
  'coverOpen', 'autopilot', 'holdLetGo', 'speedHold', 'selectedKt', 'handControl',
] as const;

/** A state of a control at once, a lever that a hand moves with it, everything else at a reader's pace. */
export function isNews(before: Picture | null, next: Picture): boolean {
  if (before === null || next.timeS - before.timeS >= READ_EVERY_S || next.timeS < before.timeS) return true;
  const byHand = !next.speedHold && (before.leftTlaDeg !== next.leftTlaDeg || before.rightTlaDeg !== next.rightTlaDeg);
  return byHand || before.talk?.id !== next.talk?.id || STATES.some((key) => before[key] !== next[key]);
}
