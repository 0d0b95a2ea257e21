/** A scripted trainee's other ear and eye: what is asked, cleared or shown beside the flaps is seen to three seconds behind. */
import type { DrawnEvent, Entry } from '../entry.js';
import type { Act } from '../files/act.js';
import type { Fixed } from '../fixed.js';
import { hasActed } from '../latches.js';
import type { State } from '../state.js';

const ANSWER_TICKS = 300;
/** Path on which a cleared height is flown down to, deg. */
const PATH_DEG = -3;

/** What an event wants done; null for nothing. Who hurries says the first thing that comes to mind and leaves the rest. */
function wanted(event: DrawnEvent | null, hurries: boolean): Act | null {
  if (event?.do === 'callout') return { do: 'answer', text: hurries ? event.answers[0] ?? event.right : event.right };
  if (hurries) return null;
  switch (event?.do) {
    case 'clearHeading': return { do: 'selectHeading', toDeg: event.toDeg };
    case 'clearAltitude': return { do: 'descend', toFt: event.toFt, pathDeg: PATH_DEG };
    case 'gaugeDrifts': return { do: 'noteGauge' };
    default: return null;
  }
}

/** Files what is due. */
export function answersOf(fixed: Fixed, hurries: boolean): (s: State, file: (what: Act) => void) => void {
  const open = fixed.agenda.entries.flatMap((entry): { entry: Entry; act: Act; tick: number }[] => {
    const act = wanted(entry.event, hurries);
    return act === null ? [] : [{ entry, act, tick: -1 }];
  });
  return (s, file) => {
    for (const one of open) {
      if (one.tick < 0 && hasActed(s, fixed, one.entry)) one.tick = s.tick;
      if (one.tick >= 0 && s.tick === one.tick + ANSWER_TICKS) file(one.act);
    }
  };
}
