/**
 * Words of the outside: messages to read and callouts to answer. Which are due is read from the world; how long each
 * is shown follows from when it came and from the answers in the log. Nothing of it is in the state of the model.
 */
import { ASYMMETRY_LIST, choicesOf, hasActed, isAsking, isTelling, listReading, replyTo, ticksOf, type Asking, type Command, type Entry, type Telling, type World } from '../../sim/index.js';
import type { Talk } from '../view/picture.js';

/** A cue that has come, and the tick in which it was first seen to have acted. */
export interface Cue {
  readonly place: number;
  readonly tick: number;
}

/** Time for a message, s: as long as twice an unhurried reading of it, and no less than this. Common practice, no source. */
const LEAST_S = 8;
const S_A_WORD = 0.6;

/** Whether an entry puts words before the trainee. */
export const isSaid = ({ event }: Entry): boolean => isTelling(event) || isAsking(event);

/** The cues that have come by this world, each with its tick. One that a rewind took back is gone again. */
export function cuesOf(before: readonly Cue[], { fixed, state }: World): readonly Cue[] {
  if (!fixed.agenda.entries.some(isSaid)) return before; // most drills say nothing, and are asked in every frame
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
type Shown = Span & Cue & Pick<Talk, 'text' | 'answers' | 'acts'> & { readonly event: Asking | null };

/**
 * What is shown now, one at a time: the oldest callout that is open, else the oldest message that has not been up long
 * enough, else the next line of the list. A callout's time runs from when it came, shown or not, as its score counts it;
 * a message waits its turn.
 * @param list behind a split that was called the asymmetry list is read
 */
export function talkNow(cues: readonly Cue[], { fixed, state }: World, log: readonly Command[], list = false): Talk | null {
  const line = list ? lineNow(state.latched.splitCallTick, log, state.tick) : null;
  if (cues.length === 0) return line;
  const events = [...cues].sort((a, b) => a.tick - b.tick || a.place - b.place).map((cue) => ({ ...cue, event: fixed.agenda.entries[cue.place]?.event ?? null }));
  const callouts = events.flatMap(({ event, ...cue }) => (isAsking(event) ? [open(event, cue, fixed.groundM)] : []));
  const asked = closed(callouts, log, state.tick);
  const messages = inTurn(events.flatMap(({ event, ...cue }) => (isTelling(event) ? [{ event, cue }] : [])), asked);
  const now = state.tick;
  const up = [...asked, ...messages].filter(({ to }) => now < to);
  const first = up.find(({ from }) => now >= from);
  if (first === undefined) return line;
  const { place, text, answers, acts, from } = first;
  const whole = callouts.find((one) => one.place === place)?.to ?? first.to;
  return { id: place, text, answers, acts, caution: first.event?.do === 'caution' ? first.event.text : null, part: (whole - now) / (whole - from), waiting: up.length - 1 };
}

/** Told from the places of entries, of which there are fewer. */
const LIST_ID = 1000;

/** The line of the asymmetry list that is to be read next; null before a call and behind the last. */
function lineNow(splitCallTick: number, log: readonly Command[], now: number): Talk | null {
  if (splitCallTick < 0) return null;
  const { lines } = listReading(log, splitCallTick, now);
  const line = ASYMMETRY_LIST[lines];
  if (line === undefined) return null;
  return {
    id: LIST_ID + lines, text: `List ${lines + 1} of ${ASYMMETRY_LIST.length}: ${line.text}`, answers: line.answers, caution: null,
    acts: line.answers.map((text) => ({ do: 'answer', text })), part: 0, waiting: 0,
  };
}

/** Who speaks, as it stands before the words. */
const SPEAKERS = { controller: 'Controller', otherPilot: 'Other pilot', cabin: 'Cabin' } as const satisfies Record<NonNullable<Telling['from']>, string>;
const spoken = ({ from, text }: Pick<Telling, 'from' | 'text'>): string => (from === undefined ? text : `${SPEAKERS[from]}: ${text}`);
const wordsOf = (event: Asking): string => (event.do === 'caution' ? `Caution: ${event.text}` : spoken(event));

function open(event: Asking, cue: Cue, groundM: number): Shown {
  const choices = choicesOf(event, cue.place, groundM);
  return { ...cue, event, text: wordsOf(event), answers: choices.map(({ text }) => text), acts: choices.map(({ act }) => act), from: cue.tick, to: cue.tick + ticksOf(event.withinS) + 1 };
}

/** An answer closes the oldest open callout that offers it, as in the score. */
function closed(callouts: readonly Shown[], log: readonly Command[], now: number): Shown[] {
  const given = new Map<number, number>();
  for (const filed of log) {
    if (filed.rank !== 2 || filed.tick >= now) continue;
    const to = callouts.find((one) => !given.has(one.place) && filed.tick >= one.from && filed.tick < one.to && one.event !== null && replyTo(one.event, filed) !== null);
    if (to !== undefined) given.set(to.place, filed.tick + 1);
  }
  return callouts.map((one) => ({ ...one, to: given.get(one.place) ?? one.to }));
}

/** Messages one behind the other; while a callout is up none of their time runs. */
function inTurn(messages: readonly { event: Telling; cue: Cue }[], asked: readonly Span[]): Shown[] {
  let free = 0;
  return messages.map(({ event, cue }) => {
    const text = spoken(event);
    const from = Math.max(cue.tick, free);
    let to = from + ticksOf(Math.max(LEAST_S, S_A_WORD * text.split(/\s+/).length));
    for (const block of asked) if (block.to > from && block.from < to) to += block.to - Math.max(block.from, from);
    free = to;
    return { ...cue, text, answers: [], acts: [], event: null, from, to };
  });
}
