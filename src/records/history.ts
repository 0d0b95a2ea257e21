/** Reads one person's flights of sets out of the logbook and judges them. */
import { adviceOf, historyOf, type Advice, type ConditionGroup, type FlightOfSet, type History, type MarginPlace, type ReadySet, type SetKind } from '../../sim/index.js';
import { nextPlace, type Book } from './logbook/index.js';
import type { RunsOf } from './runs.js';
import type { ShelvedSet } from './sets.js';

/** The flights that are over, what to practise next, and what a margin can be drawn from. */
export interface PersonHistory extends History {
  /** Flights that are not over: nothing is told of them. */
  readonly underway: number;
  /** Flights of sets that are not shipped here. */
  readonly unknown: number;
  readonly advice: Advice;
  readonly margin: MarginBasis;
}

/** What a margin is drawn from: loaded flights of the true drive under the condition flown last. */
export interface MarginBasis {
  /** Number of the set that gives it. */
  readonly set: number;
  readonly group: ConditionGroup | null;
  /** The true drive was flown, but calm. */
  readonly calmOnly: boolean;
  readonly seenDeg: number;
  /** Where the set is flown. */
  readonly place: MarginPlace;
}

/** @throws LogbookTrouble */
export async function historyIn(book: Book, sets: readonly ShelvedSet[], person: string): Promise<PersonHistory> {
  const attempts = (await book.attempts()).filter((one) => one.person === person);
  return historyFrom({ attempts, record: (id) => book.record(id) }, sets);
}

/** @param runs of one person */
export async function historyFrom({ attempts: own, record }: Pick<RunsOf, 'attempts' | 'record'>, sets: readonly ShelvedSet[]): Promise<PersonHistory> {
  const over = own.filter((one) => nextPlace(one) === null);
  const flights: FlightOfSet[] = [];
  let unknown = 0;
  for (const { id, name, startedMs, runs, leftMs, set, done } of over) {
    const at = sets.findIndex((one) => one.name === set);
    const of = sets[at]?.of;
    if (of === undefined) {
      unknown += 1;
      continue;
    }
    const records = (await Promise.all(done.map(({ entry }) => record(entry)))).filter((record) => record !== null);
    flights.push({ id, name, startedMs, runs, leftOff: leftMs !== null, set: at + 1, of, records });
  }
  const history = historyOf(flights);
  const kinds = sets.map(({ of }, at) => kindOf(of, at + 1));
  return { ...history, underway: own.length - over.length, unknown, advice: adviceOf(history, kinds), margin: marginBasis(history.groups, kinds, sets) };
}

/** A set of the true drive goes out, and drives no side back. */
function kindOf({ set, scenarios: [first] }: ReadySet, number: number): SetKind {
  const out = first !== undefined && (first.task.settings[0] ?? 0) > first.start.flapDeg;
  return { number, loaded: set.load === 'loaded', trueDrive: out && set.rates.every(({ ratio }) => ratio >= 0) };
}

function marginBasis(groups: readonly ConditionGroup[], kinds: readonly SetKind[], sets: readonly ShelvedSet[]): MarginBasis {
  const of = (loaded: boolean): SetKind | undefined => kinds.find((kind) => kind.trueDrive && kind.loaded === loaded);
  const [loaded, calm] = [of(true), of(false)];
  const ready = sets[(loaded?.number ?? 0) - 1]?.of;
  const start = ready?.scenarios[0]?.start;
  if (loaded === undefined || ready === undefined || start === undefined) throw new Error('no set of the true drive is shipped');
  // A flight that changed its condition on the way is no one condition, and is passed over.
  const group = groups.find(({ set, condition }) => set === loaded.number && condition !== null) ?? null;
  const { massT, speedKt, flapDeg, altitudeFt } = start;
  return {
    set: loaded.number, group, calmOnly: group === null && groups.some(({ set }) => set === calm?.number),
    seenDeg: ready.set.seenDeg, place: { airframe: ready.airframe, massT, speedKt, flapDeg, altitudeFt },
  };
}
