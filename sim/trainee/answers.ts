/** A scripted trainee's other ear and eye: what is asked, cleared or shown beside the flaps is seen to three seconds behind. */
import type { Entry } from '../entry.js';
import type { Act } from '../files/act.js';
import type { Fixed } from '../fixed.js';
import { hasActed } from '../latches.js';
import { choicesOf, isAsking, rightOf } from '../score/asking.js';
import type { State } from '../state.js';

const ANSWER_TICKS = 300;
/** What an event wants done; null for nothing. Who hurries says the first thing that comes to mind, and leaves cautions alone. */
function wanted({ event, place }: Entry, hurries: boolean, groundM: number): Act | null {
  if (!isAsking(event) || (hurries && event.do === 'caution')) return null;
  const choices = choicesOf(event, place, groundM);
  const right = rightOf(event);
  return (hurries ? choices[0] : choices.find(({ text }) => text === right))?.act ?? null;
}

/** Files what is due. */
export function answersOf(fixed: Fixed, hurries: boolean): (s: State, file: (what: Act) => void) => void {
  const open = fixed.agenda.entries.flatMap((entry): { entry: Entry; act: Act; tick: number }[] => {
    const act = wanted(entry, hurries, fixed.groundM);
    return act === null ? [] : [{ entry, act, tick: -1 }];
  });
  return (s, file) => {
    for (const one of open) {
      if (one.tick < 0 && hasActed(s, fixed, one.entry)) one.tick = s.tick;
      if (one.tick >= 0 && s.tick === one.tick + ANSWER_TICKS) file(one.act);
    }
  };
}
