/** One act of a desk as an entry of the agenda: in force from its tick on, whatever arrived before or behind it. */
import { condition, drawnSide, type Book } from '../agenda-of.js';
import type { Command } from '../command.js';
import { dice } from '../dice.js';
import { MOST_CROSSINGS, MOST_ENTRIES, type Agenda, type DrawnEvent, type DrawnFault, type Entry, type Span } from '../entry.js';
import type { DeskAct } from '../files/desk-act.js';
import type { Fixed } from '../fixed.js';
import type { State } from '../state.js';
import { flightTick } from '../task/rule.js';
import { ticksOf } from '../units.js';

export type DeskCommand = DeskAct & Pick<Command, 'tick'>;

/** A state is given back no sooner than this behind its tick, so that nothing that comes late can still change it. */
export const LEAST_BACK_TICKS = 50;
/** No run has more ticks than this; a record could not hold it. */
const MOST_TICKS = 360_000;

const ALWAYS: readonly Span[] = [{ from: 0, until: Infinity }];
const isWatched = ({ when }: Entry): boolean => when !== null;

/** The same run with one more act of a desk, behind all it has. @param stateAt what the run was like at an earlier tick @throws RangeError saying why it cannot be done */
export function extend(fixed: Fixed, command: DeskCommand, stateAt: (tick: number) => State): Fixed {
  switch (command.do) {
    case 'injectFault': return injected(fixed, command);
    case 'disarmFault': return withAgenda(fixed, ended(fixed.agenda, [placeOf(fixed, command.name)], command.tick));
    case 'clearFault': return cleared(fixed, [placeOf(fixed, command.name)], command.tick);
    case 'clearFaults': return cleared(fixed, faultsOf(fixed), command.tick);
    case 'reposition': return turned(fixed, command, stateAt);
    case 'failEngine': case 'loseMainDrive': case 'returnMainDrive': case 'message': case 'callout': case 'say':
    case 'clearHeading': case 'clearAltitude': case 'tellGoAround': case 'caution':
    case 'descend': case 'level': case 'selectSpeed': case 'setGear':
      return withEntry(fixed, { ...blank(fixed, command.tick), event: eventOf(command) });
    // Words for the record, and what stops the clock: nothing of the model changes.
    case 'remark': case 'saveMoment': case 'prompted': case 'freeze': case 'goOn': case 'voidRun': return fixed;
  }
}

type Happening = Extract<DeskAct, { do: 'failEngine' | 'loseMainDrive' | 'returnMainDrive' | 'message' | 'callout' | 'say' | 'clearHeading' | 'clearAltitude' | 'tellGoAround' | 'caution' | 'descend' | 'level' | 'selectSpeed' | 'setGear' }>;

/** As the same thing would stand in a file. */
const eventOf = (act: Happening): DrawnEvent => (act.do === 'say' ? { do: 'message', from: act.from, text: act.text, when: {} } : { ...act, when: {} });

/** An entry that acts in a tick of the run and does nothing yet. */
function blank({ agenda: { entries, turns } }: Fixed, tick: number): Entry {
  return {
    place: entries.length, name: null, tick: flightTick(turns, tick), when: null, memo: -1, clears: -1, fault: null, event: null,
    latch: -1, spans: [{ from: tick, until: Infinity }], mends: null,
  };
}

function injected(fixed: Fixed, { fault, tick }: Extract<DeskCommand, { do: 'injectFault' }>): Fixed {
  const { agenda, seed, task } = fixed;
  if (agenda.entries.some(({ name }) => name === fault.name)) throw new RangeError(`${fault.name} is a name in use`);
  const entry = blank(fixed, tick);
  const sided = ('side' in fault && fault.side === 'drawn' ? { ...fault, side: drawnSide(seed, entry.place) } : fault) as DrawnFault;
  const named = { ...entry, name: fault.name, fault: sided };
  const { when } = fault;
  if (when === undefined) return withEntry(fixed, named);
  // A time that has gone by is now.
  if (when.atS !== undefined) return withEntry(fixed, { ...named, tick: Math.max(entry.tick, ticksOf(when.atS)) });
  const latch = Math.max(-1, ...agenda.entries.map((one) => one.latch)) + 1;
  const book: Book = { seed, limitTicks: task.limitTicks, names: new Map(), leaves: agenda.leaves, next: 0 };
  const made = condition(when, book, dice(seed, `hazard ${entry.place}`));
  if (latch >= MOST_ENTRIES || book.leaves > MOST_CROSSINGS) throw new RangeError('no more can be armed in this run');
  return withEntry(fixed, { ...named, tick: -1, when: made, latch }, book.leaves);
}

function placeOf({ agenda }: Fixed, name: string): number {
  const entry = agenda.entries.find((one) => one.name === name && one.fault !== null);
  if (entry === undefined) throw new RangeError(`no fault is called ${name}`);
  return entry.place;
}

const faultsOf = ({ agenda }: Fixed): number[] => agenda.entries.flatMap(({ place, fault }) => (fault === null ? [] : [place]));

/** Mends what has acted and disarms what has not. */
const cleared = (fixed: Fixed, places: readonly number[], tick: number): Fixed =>
  withEntry(withAgenda(fixed, ended(fixed.agenda, places, tick)), { ...blank(fixed, tick), mends: places });

/** The agenda with some entries that stand no longer. */
function ended(agenda: Agenda, places: readonly number[], tick: number): Agenda {
  return arranged(agenda, agenda.entries.map((entry) => (places.includes(entry.place) ? { ...entry, spans: until(entry.spans ?? ALWAYS, tick) } : entry)));
}

const until = (spans: readonly Span[], tick: number): Span[] =>
  spans.flatMap((span) => (span.from >= tick ? [] : [{ from: span.from, until: Math.min(span.until, tick) }]));

/** What stood at the tick that returns stands again; what was put in or taken out since, does not or does. */
function turned(fixed: Fixed, { tick, toTick }: Extract<DeskCommand, { do: 'reposition' }>, stateAt: (tick: number) => State): Fixed {
  const { agenda, task } = fixed;
  if (toTick > tick - LEAST_BACK_TICKS) throw new RangeError('that moment is not long enough ago');
  const by = tick - flightTick(agenda.turns, toTick);
  if (task.limitTicks + by > MOST_TICKS) throw new RangeError('the run would become too long for a record');
  const state = stateAt(toTick);
  if (state.latched.endTick >= 0) throw new RangeError('the run was over then');
  const turns = [...agenda.turns, { from: tick, to: toTick, by, state }];
  const entries = agenda.entries.map((entry): Entry => {
    if (entry.spans === null) return entry;
    const stood = entry.spans.some(({ from, until: end }) => toTick > from && toTick <= end);
    return { ...entry, spans: [...until(entry.spans, tick), ...(stood ? [{ from: tick, until: Infinity }] : [])] };
  });
  return withAgenda({ ...fixed, task: { ...task, turns } }, { ...arranged(agenda, entries), turns });
}

const withEntry = (fixed: Fixed, entry: Entry, leaves = fixed.agenda.leaves): Fixed =>
  withAgenda(fixed, arranged({ ...fixed.agenda, leaves }, [...fixed.agenda.entries, entry]));

function arranged({ inOrder, byHand, leaves, turns }: Agenda, entries: readonly Entry[]): Agenda {
  // In the order of the file, and behind it in that of the desk.
  const ordered = [...inOrder.map(({ place }) => entries[place] as Entry), ...entries.slice(inOrder.length)];
  const order = new Map(ordered.map((entry, at) => [entry, at]));
  const timed = ordered.filter((entry) => !isWatched(entry)).sort((a, b) => a.tick - b.tick || (order.get(a) as number) - (order.get(b) as number));
  return { entries, inOrder: ordered, timed, watched: ordered.filter(isWatched), byHand: byHand + entries.length - inOrder.length, leaves, turns };
}

/** Written out, as in `expand`: a spread would give the run a shape of its own. */
const withAgenda = ({ drive, flight, horn, gearPerTick, task, seed, noise, otherFlies, headingRad, groundM }: Fixed, agenda: Agenda): Fixed =>
  ({ drive, flight, horn, gearPerTick, task, agenda, seed, noise, otherFlies, headingRad, groundM });
