/** Reads one person's flights of sets out of the logbook and judges them. */
import { adviceOf, historyOf, type Advice, type FlightOfSet, type History, type ReadySet, type SetKind } from '../../sim/index.js';
import { nextPlace, type Book } from './logbook/index.js';
import type { ShelvedSet } from './sets.js';

export interface PersonHistory extends History {
  /** Flights that are not over: nothing is told of them. */
  readonly underway: number;
  /** Flights of sets that are not shipped here. */
  readonly unknown: number;
  readonly advice: Advice;
}

/** @throws LogbookTrouble */
export async function historyIn(book: Book, sets: readonly ShelvedSet[], person: string): Promise<PersonHistory> {
  const own = (await book.attempts()).filter((one) => one.person === person);
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
    const records = (await Promise.all(done.map(({ entry }) => book.record(entry)))).filter((record) => record !== null);
    flights.push({ id, name, startedMs, runs, leftOff: leftMs !== null, set: at + 1, of, records });
  }
  const history = historyOf(flights);
  return { ...history, underway: own.length - over.length, unknown, advice: adviceOf(history, sets.map(({ of }, at) => kindOf(of, at + 1))) };
}

/** A set of the true drive goes out, and drives no side back. */
function kindOf({ set, scenarios: [first] }: ReadySet, number: number): SetKind {
  const out = first !== undefined && (first.task.settings[0] ?? 0) > first.start.flapDeg;
  return { number, loaded: set.load === 'loaded', trueDrive: out && set.rates.every(({ ratio }) => ratio >= 0) };
}
