/** What was told to the trainee in a run and asked for no answer: messages, and the word to go around. */
import type { DrawnEvent, Entry } from '../entry.js';
import type { Fixed } from '../fixed.js';
import { hasActed } from '../latches.js';
import type { State } from '../state.js';

const TELLING = ['message', 'tellGoAround'] as const satisfies readonly DrawnEvent['do'][];

/** An event whose words are read and ask for no answer. */
export type Telling = Extract<DrawnEvent, { do: (typeof TELLING)[number] }>;

/** Whether an event of this kind is read and not answered, as its file has it. */
export const tells = (event: { readonly do: string }): boolean => TELLING.some((one) => one === event.do);

/** Whether an entry of the agenda is an event that is read and not answered. */
export const isTelling = (event: Entry['event']): event is Telling => event !== null && tells(event);

export interface Told {
  /** Time at which it was said, s. */
  readonly atS: number;
  readonly kind: Telling['do'];
  /** Who spoke; null where nobody is named. */
  readonly from: 'controller' | 'otherPilot' | 'cabin' | null;
  readonly text: string;
}

/** Hears what is told in a run from its start. */
export function toldWatcher(fixed: Fixed): { see(state: State): void; told(): Told[] } {
  const waiting = fixed.agenda.entries.flatMap((entry) => {
    const { event } = entry;
    return isTelling(event) ? [{ entry, event }] : [];
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
