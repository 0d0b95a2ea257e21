/** The callouts of a run: what was asked, what was answered, and how soon. */
import { hasActed } from '../latches.js';
import type { Command } from '../command.js';
import type { Fixed } from '../fixed.js';
import type { State } from '../state.js';
import { ticksOf } from '../units.js';

export interface Callout {
  /** Time at which it was asked, s. */
  readonly atS: number;
  /** Who spoke; null where nobody is named. */
  readonly from: 'controller' | 'otherPilot' | 'cabin' | null;
  readonly text: string;
  readonly right: string;
  /** null: no answer, or none in time to count at all. */
  readonly answer: string | null;
  /** Seconds from the asking to the answer. */
  readonly answeredS: number | null;
  /** Right and inside the time allowed; null where the run ended before that. */
  readonly ok: boolean | null;
}

interface Asked { readonly tick: number; readonly place: number; readonly from: Callout['from']; readonly text: string; readonly answers: readonly string[]; readonly right: string; readonly ticks: number }

/** Hears the callouts of a run from its start. */
export function calloutWatcher(fixed: Fixed): { see(state: State): void; callouts(log: readonly Command[], endTick: number): Callout[] } {
  const waiting = fixed.agenda.entries.filter(({ event }) => event?.do === 'callout');
  const asked: Asked[] = [];
  return {
    see(s) {
      if (asked.length === waiting.length) return;
      for (const entry of waiting) {
        if (entry.event?.do !== 'callout' || asked.some(({ place }) => place === entry.place) || !hasActed(s, fixed, entry)) continue;
        const { from = null, text, answers, right, withinS } = entry.event;
        asked.push({ tick: s.tick - 1, place: entry.place, from, text, answers, right, ticks: ticksOf(withinS) });
      }
    },
    callouts: (log, endTick) => answered(asked, log, endTick),
  };
}

/** An answer belongs to the oldest open callout that offers it; the first one given counts. */
function answered(asked: readonly Asked[], log: readonly Command[], endTick: number): Callout[] {
  const given = new Map<Asked, { tick: number; text: string }>();
  for (const command of log) {
    if (command.do !== 'answer') continue;
    const to = asked.find((one) => !given.has(one) && command.tick >= one.tick && command.tick <= one.tick + one.ticks && one.answers.includes(command.text));
    if (to !== undefined) given.set(to, { tick: command.tick, text: command.text });
  }
  return asked.map((one): Callout => {
    const answer = given.get(one);
    const open = answer === undefined && endTick < one.tick + one.ticks;
    return {
      atS: one.tick / 100, from: one.from, text: one.text, right: one.right, answer: answer?.text ?? null,
      answeredS: answer === undefined ? null : (answer.tick - one.tick) / 100,
      ok: open ? null : answer?.text === one.right,
    };
  });
}
