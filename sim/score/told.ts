/** What was told to the trainee in a run and asked for no answer: messages, and the word to go around. */
import type { Fixed } from '../fixed.js';
import { hasActed } from '../latches.js';
import type { State } from '../state.js';

export interface Told {
  /** Time at which it was said, s. */
  readonly atS: number;
  readonly kind: 'message' | 'tellGoAround';
  /** Who spoke; null where nobody is named. */
  readonly from: 'controller' | 'otherPilot' | 'cabin' | null;
  readonly text: string;
}

/** Hears what is told in a run from its start. */
export function toldWatcher(fixed: Fixed): { see(state: State): void; told(): Told[] } {
  const waiting = fixed.agenda.entries.flatMap((entry) => {
    const { event } = entry;
    return event?.do === 'message' || event?.do === 'tellGoAround' ? [{ entry, event }] : [];
  });
  const heard: (Told & { readonly place: number })[] = [];
  return {
    see(s) {
      if (heard.length === waiting.length) return;
      for (const { entry, event } of waiting) {
        if (heard.some(({ place }) => place === entry.place) || !hasActed(s, fixed, entry)) continue;
        heard.push({ place: entry.place, atS: (s.tick - 1) / 100, kind: event.do, from: event.from ?? null, text: event.text });
      }
    },
    told: () => heard.map(({ place: _place, ...one }) => one),
  };
}
