/** A scripted trainee behind its call of a split: the second look, and the list, line by line. */
import type { Act } from '../files/act.js';
import { ASYMMETRY_LIST } from '../score/list.js';
import type { State } from '../state.js';
import type { Eye } from './eye.js';

/** Behind the release: when the second look is taken, when the list is begun, and how long a line takes, ticks. */
const LOOK_TICKS = 200;
const BEGIN_TICKS = 700;
const LINE_TICKS = 400;

/** Does what is due so long behind the release. @param reads the scenario has the list, and the trainee reads it */
export function readingOf(eye: Eye, reads: boolean): (s: State, behindTicks: number, act: (what: Act) => void) => void {
  let saidMoving = false;
  let lines = 0;
  return (s, behindTicks, act) => {
    if (!saidMoving && behindTicks >= LOOK_TICKS && eye.stillParts(s)) {
      saidMoving = true;
      act({ do: 'callStillMoving' });
      return;
    }
    const line = ASYMMETRY_LIST[lines];
    if (!reads || line === undefined || behindTicks < BEGIN_TICKS + lines * LINE_TICKS) return;
    lines += 1;
    act({ do: 'answer', text: line.right ?? (line.answers.length > 1 && saidMoving ? line.answers[1] as string : line.answers[0] as string) });
  };
}
