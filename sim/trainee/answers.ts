/** A scripted trainee's other ear: callouts are answered rightly, three seconds behind. */
import { hasActed } from '../latches.js';
import type { Act } from '../files/act.js';
import type { Fixed } from '../fixed.js';
import type { State } from '../state.js';

const ANSWER_TICKS = 300;

/** Files the answers that are due. */
export function answersOf(fixed: Fixed): (s: State, file: (what: Act) => void) => void {
  const open = fixed.agenda.entries.flatMap((entry) => (entry.event?.do === 'callout' ? [{ entry, text: entry.event.right, tick: -1 }] : []));
  return (s, file) => {
    for (const callout of open) {
      if (callout.tick < 0 && hasActed(s, fixed, callout.entry)) callout.tick = s.tick;
      if (callout.tick >= 0 && s.tick === callout.tick + ANSWER_TICKS) file({ do: 'answer', text: callout.text });
    }
  };
}
