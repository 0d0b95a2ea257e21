/** From the faults and events of a scenario to the agenda of a run: dice thrown, latches given out, times counted in ticks. */
import { dice, type Dice } from './dice.js';
import {
  MOST_CROSSINGS, MOST_ENTRIES, MOST_MEMOS, type Agenda, type Condition, type DrawnEvent, type DrawnFault, type Entry, type Side,
} from './entry.js';
import type { ScenarioEvent } from './files/event.js';
import type { Fault } from './files/fault.js';
import type { Trigger } from './files/trigger.js';
import { exp } from './portable.js';
import type { ReadyScenario } from './ready.js';
import { DT, FT, ticksOf } from './units.js';

type Thing = Fault | ScenarioEvent;

/** What is given out while the entries are made: a place, a latch a crossing, a memo a name. */
export interface Book {
  readonly seed: number;
  readonly limitTicks: number;
  readonly names: Map<string, number>;
  leaves: number;
  /** Place of the next further time. */
  next: number;
}

/**
 * The agenda of a run.
 * @throws RangeError for more entries, crossings or names than the state can latch
 */
export function agendaOf(scenario: Pick<ReadyScenario, 'faults' | 'events'>, seed: number, limitTicks: number): Agenda {
  const things: Thing[] = [...scenario.faults, ...scenario.events];
  const book: Book = { seed, limitTicks, names: new Map(), leaves: 0, next: things.length };
  for (const thing of things) noteAfter(thing.when, book.names);
  things.forEach((thing, place) => { if (needsMemo(thing)) memoOf(book.names, memoName(thing, place)); });
  const inOrder = things.flatMap((thing, place) => entriesOf(thing, place, scenario.faults, book));
  const entries = [...inOrder].sort((a, b) => a.place - b.place);
  if (entries.length > MOST_ENTRIES) throw new RangeError(`${entries.length} faults and events; at most ${MOST_ENTRIES}`);
  if (book.leaves > MOST_CROSSINGS) throw new RangeError(`${book.leaves} crossings; at most ${MOST_CROSSINGS}`);
  if (book.names.size > MOST_MEMOS) throw new RangeError(`${book.names.size} names behind after; at most ${MOST_MEMOS}`);
  const order = new Map(inOrder.map((entry, at) => [entry, at]));
  const timed = inOrder.filter((entry) => entry.when === null).sort((a, b) => a.tick - b.tick || (order.get(a) as number) - (order.get(b) as number));
  return { entries, inOrder, timed, watched: inOrder.filter((entry) => entry.when !== null), byHand: 0, leaves: book.leaves, turns: [] };
}

/** A thing that acts several times, `everyS` apart and at no fixed time, counts from when it first acted. */
const needsMemo = ({ times, everyS, when }: Thing): boolean => times !== undefined && everyS !== undefined && when.atS === undefined;

/** No name of a file has a # in it. */
const memoName = ({ name }: Thing, place: number): string => name ?? `#${place}`;

function memoOf(names: Map<string, number>, name: string): number {
  const known = names.get(name);
  if (known !== undefined) return known;
  names.set(name, names.size);
  return names.size - 1;
}

/** The entries of one thing: one for each time that it may act. */
function entriesOf(thing: Thing, place: number, faults: readonly Fault[], book: Book): Entry[] {
  const hazard = dice(book.seed, `hazard ${place}`);
  const sided = 'side' in thing && thing.side === 'drawn' ? { ...thing, side: drawnSide(book.seed, place) } : thing;
  const timed = thing.when.atS !== undefined;
  const first: Entry = {
    place, name: thing.name ?? null,
    tick: timed ? ticksOf(thing.when.atS ?? 0) : -1,
    when: timed ? null : condition(thing.when, book, hazard),
    memo: book.names.get(memoName(thing, place)) ?? -1,
    clears: 'do' in thing && thing.do === 'clearFault' ? faults.findIndex(({ name }) => name === thing.fault) : -1,
    fault: 'kind' in sided ? sided as DrawnFault : null,
    event: 'do' in sided ? sided as DrawnEvent : null,
    latch: place, spans: null, mends: null,
  };
  const all = [first];
  for (let time = 1; time < (thing.times ?? 1); time += 1) {
    const behind = (all[time - 1] as Entry).place;
    const wait = time * ticksOf(thing.everyS ?? 0);
    const again = timed ? { tick: first.tick + wait }
      : { when: thing.everyS === undefined ? anew(thing.when, behind, book, hazard) : { kind: 'after', memo: first.memo, delayTicks: wait } as const };
    all.push({ ...first, place: book.next, latch: book.next, memo: -1, ...again });
    book.next += 1;
  }
  return all;
}

const anew = (when: Trigger, behind: number, book: Book, hazard: Dice): Condition => ({ kind: 'anew', behind, of: condition(when, book, hazard) });

export const drawnSide = (seed: number, place: number): Side => (dice(seed, `side ${place}`).uniform() < 0.5 ? 'left' : 'right');

function noteAfter(when: Trigger, names: Map<string, number>): void {
  if (when.after !== undefined) memoOf(names, when.after);
  for (const inner of [...(when.all ?? []), ...(when.any ?? [])]) noteAfter(inner, names);
}

/** A trigger with its latches, counted up in the book. */
export function condition(when: Trigger, book: Book, hazard: Dice): Condition {
  const crossing = (of: 'driveDeg' | 'casKt' | 'heightM', at: number): Condition =>
    ({ kind: 'crossing', of, at, edge: when.edge ?? 'either', leaf: book.leaves++ });
  const inner = (triggers: readonly Trigger[]): Condition[] => triggers.map((trigger) => condition(trigger, book, hazard));
  if (when.atS !== undefined) return { kind: 'tick', tick: ticksOf(when.atS) };
  if (when.flapDeg !== undefined) return crossing('driveDeg', when.flapDeg);
  if (when.speedKt !== undefined) return crossing('casKt', when.speedKt);
  if (when.altitudeFt !== undefined) return crossing('heightM', when.altitudeFt * FT);
  if (when.heldS !== undefined) return { kind: 'held', ticks: ticksOf(when.heldS) };
  if (when.after !== undefined) return { kind: 'after', memo: book.names.get(when.after) as number, delayTicks: ticksOf(when.delayS ?? 0) };
  if (when.hazardPerS !== undefined) return { kind: 'held', ticks: strikeTicks(when, hazard.uniform(), book.limitTicks) };
  if (when.all !== undefined) return { kind: 'all', of: inner(when.all) };
  if (when.any !== undefined) return { kind: 'any', of: inner(when.any) };
  throw new Error('a trigger without a kind');
}

/** The trigger of a hazard. */
type Hazard = Pick<Trigger, 'hazardPerS' | 'hazardFromS' | 'hazardForS'>;

/** Held ticks until the hazard of a trigger strikes: flat inside its window, none before and none behind. Infinity for never. */
function strikeTicks({ hazardPerS = 0, hazardFromS = 0, hazardForS }: Hazard, u: number, limitTicks: number): number {
  return ticksOf(hazardFromS) + hazardTicks(hazardPerS, u, hazardForS === undefined ? limitTicks : ticksOf(hazardForS));
}

/** The same for the trigger at a place of the file, by the seed of a run: whoever draws sets knows it without flying. */
export const hazardStrikes = (when: Hazard, seed: number, place: number, limitTicks: number): number =>
  strikeTicks(when, dice(seed, `hazard ${place}`).uniform(), limitTicks);

/**
 * Held ticks until a flat hazard strikes: the chance of no strike shrinks by the same factor each tick until it falls
 * below `u`. Exact for any rate and needs no logarithm. Behind the limit of the run it never strikes.
 * @param u uniform in (0, 1)
 */
export function hazardTicks(hazardPerS: number, u: number, limitTicks: number): number {
  const kept = exp(-hazardPerS * DT);
  let survival = 1;
  for (let ticks = 1; ticks <= limitTicks; ticks += 1) {
    survival *= kept;
    if (survival < u) return ticks;
  }
  return Infinity;
}
