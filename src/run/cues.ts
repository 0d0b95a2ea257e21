/**
 * Words of the outside: messages to read and callouts to answer. Which are due is read from the world; how long each
 * is shown follows from when it came and from the answers in the log. Nothing of it is in the state of the model.
 */
import { hasActed, ticksOf, type Entry, type World } from '../../sim/index.js';
import type { Talk } from '../view/picture.js';
import type { Filed } from './session.js';

/** A cue that has come, and the tick in which it was first seen to have acted. */
export interface Cue {
  readonly place: number;
  readonly tick: number;
}

/** Time for a message, s: as long as twice an unhurried reading of it, and no less than this. Common practice, no source. */
const LEAST_S = 8;
const S_A_WORD = 0.6;

type Event = NonNullable<Entry['event']>;
type Message = Extract<Event, { do: 'message' }>;
type Callout = Extract<Event, { do: 'callout' }>;
const isSaid = ({ event }: Entry): boolean => event?.do === 'message' || event?.do === 'callout';

/** The cues that have come by this world, each with its tick. One that a rewind took back is gone again. */
export function cuesOf(before: readonly Cue[], { fixed, state }: World): readonly Cue[] {
  const come = fixed.agenda.entries.filter((entry) => isSaid(entry) && hasActed(state, fixed, entry));
  if (come.length === before.length && come.every(({ place }, index) => before[index]?.place === place)) return before;
  const known = new Map(before.map(({ place, tick }) => [place, tick]));
  // A watcher acts when it does; so does what a desk put in, and all behind a reposition.
  const late = fixed.agenda.turns.length > 0;
  return come.map(({ place, tick, spans }) => ({ place, tick: known.get(place) ?? (tick < 0 || late || spans !== null ? state.tick : tick) }));
}

/** A stretch of ticks, the last not in it. */
interface Span {
  readonly from: number;
  readonly to: number;
}
type Shown = Span & Cue & { readonly text: string; readonly answers: readonly string[] };

/**
 * What is shown now, one at a time: the oldest callout that is open, else the oldest message that has not been up long
 * enough. A callout's time runs from when it came, shown or not, as its score counts it; a message waits its turn.
 */
export function talkNow(cues: readonly Cue[], { fixed, state }: World, log: readonly Filed[]): Talk | null {
  if (cues.length === 0) return null;
  const events = [...cues].sort((a, b) => a.tick - b.tick || a.place - b.place).map((cue) => ({ ...cue, event: fixed.agenda.entries[cue.place]?.event ?? null }));
  const callouts = events.flatMap(({ event, ...cue }) => (event?.do === 'callout' ? [open(event, cue)] : []));
  const asked = closed(callouts, log, state.tick);
  const messages = inTurn(events.flatMap(({ event, ...cue }) => (event?.do === 'message' ? [{ event, cue }] : [])), asked);
  const now = state.tick;
  const up = [...asked, ...messages].filter(({ to }) => now < to);
  const first = up.find(({ from }) => now >= from);
  if (first === undefined) return null;
  const { place, text, answers, from } = first;
  const whole = callouts.find((one) => one.place === place)?.to ?? first.to;
  return { id: place, text, answers, part: (whole - now) / (whole - from), waiting: up.length - 1 };
}

/** Who speaks, as it stands before the words. */
const SPEAKERS = { controller: 'Controller', otherPilot: 'Other pilot', cabin: 'Cabin' } as const satisfies Record<NonNullable<Message['from']>, string>;
const spoken = ({ from, text }: Pick<Message, 'from' | 'text'>): string => (from === undefined ? text : `${SPEAKERS[from]}: ${text}`);

const open = ({ answers, withinS, ...said }: Callout, cue: Cue): Shown => ({ ...cue, text: spoken(said), answers, from: cue.tick, to: cue.tick + ticksOf(withinS) + 1 });

/** An answer closes the oldest open callout that offers it, as in the score. */
function closed(callouts: readonly Shown[], log: readonly Filed[], now: number): Shown[] {
  const given = new Map<number, number>();
  for (const filed of log) {
    if (filed.do !== 'answer' || filed.tick >= now) continue;
    const to = callouts.find((one) => !given.has(one.place) && filed.tick >= one.from && filed.tick < one.to && one.answers.includes(filed.text));
    if (to !== undefined) given.set(to.place, filed.tick + 1);
  }
  return callouts.map((one) => ({ ...one, to: given.get(one.place) ?? one.to }));
}

/** Messages one behind the other; while a callout is up none of their time runs. */
function inTurn(messages: readonly { event: Message; cue: Cue }[], asked: readonly Span[]): Shown[] {
  let free = 0;
  return messages.map(({ event, cue }) => {
    const text = spoken(event);
    const from = Math.max(cue.tick, free);
    let to = from + ticksOf(Math.max(LEAST_S, S_A_WORD * text.split(/\s+/).length));
    for (const block of asked) if (block.to > from && block.from < to) to += block.to - Math.max(block.from, from);
    free = to;
    return { ...cue, text, answers: [], from, to };
  });
}
