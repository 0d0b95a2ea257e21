/** What was asked of the trainee in a run beside the flaps, what was answered or flown, and how soon. */
import { hasActed } from '../latches.js';
import type { Command } from '../command.js';
import type { Fixed } from '../fixed.js';
import type { State } from '../state.js';
import { ticksOf } from '../units.js';
import { isAsking, replyTo, rightOf, type Asking } from './asking.js';

/** One thing asked, with the reply that came; `right` and `answer` are texts of its choices. */
export interface Callout {
  /** Time at which it was asked, s. */
  readonly atS: number;
  readonly kind: Asking['do'];
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

interface Asked { readonly tick: number; readonly place: number; readonly event: Asking; readonly ticks: number }

/** Hears what is asked in a run from its start. */
export function calloutWatcher(fixed: Fixed): { see(state: State): void; callouts(log: readonly Command[], endTick: number): Callout[] } {
  const waiting = fixed.agenda.entries.filter(({ event }) => isAsking(event));
  const asked: Asked[] = [];
  return {
    see(s) {
      if (asked.length === waiting.length) return;
      for (const entry of waiting) {
        if (!isAsking(entry.event) || asked.some(({ place }) => place === entry.place) || !hasActed(s, fixed, entry)) continue;
        asked.push({ tick: s.tick - 1, place: entry.place, event: entry.event, ticks: ticksOf(entry.event.withinS) });
      }
    },
    callouts: (log, endTick) => answered(asked, log, endTick),
  };
}

/** An answer belongs to the oldest open question that offers it; the first one given counts. */
function answered(asked: readonly Asked[], log: readonly Command[], endTick: number): Callout[] {
  const given = new Map<Asked, { tick: number; text: string }>();
  for (const command of log) {
    if (command.rank !== 2) continue;
    const to = asked.find((one) => !given.has(one) && command.tick >= one.tick && command.tick <= one.tick + one.ticks && replyTo(one.event, command) !== null);
    if (to !== undefined) given.set(to, { tick: command.tick, text: replyTo(to.event, command) ?? '' });
  }
  return asked.map((one): Callout => {
    const answer = given.get(one);
    const open = answer === undefined && endTick < one.tick + one.ticks;
    const right = rightOf(one.event);
    return {
      atS: one.tick / 100, kind: one.event.do, from: ('from' in one.event ? one.event.from : null) ?? null, text: one.event.text, right, answer: answer?.text ?? null,
      answeredS: answer === undefined ? null : (answer.tick - one.tick) / 100,
      ok: open ? null : answer?.text === right,
    };
  });
}
