/** A class as a table of text: a row a step, a row an asked figure, three rows a flight. Never a sum of them, and no order but names. */
import type { SetFlight } from '../../../sim/index.js';
import { figure, tableText } from '../../text/table.js';
import { caught, falseReleases, median } from '../person/flightnumbers.js';
import type { StepCard } from '../course/house.js';
import type { ClassRow } from './house.js';

const HEAD = ['person', 'of', 'number', 'figure', 'state', 'asked', 'value', 'lo', 'hi', 'count', 'count_of', 'flown'];
const iso = (ms: number): string => new Date(ms).toISOString();
const n = (value: number | null): string => figure(value, 4);

/** RFC 4180. Shares from 0 to 1, splits in deg, false releases a minute; times in UTC. */
export function classTable(rows: readonly ClassRow[], steps: readonly StepCard[]): string {
  return tableText([HEAD, ...rows.flatMap(({ name, progress: { stands, firstLook, history } }) => [
    ...stands.flatMap((stand, at) => {
      const number = String(steps[at]?.number ?? at + 1);
      const asks = stand.gate?.block?.asks ?? [];
      return [
        [name, 'step', number, '', stand.state, '', '', '', '', String(stand.flown), '', ''],
        ...asks.map(({ ask, asked, value, lo, hi, count, of, answer }) => [name, 'gate', number, ask, answer, n(asked), n(value), n(lo), n(hi), n(count), n(of), '']),
      ];
    }),
    ...history.groups.flatMap(({ set, flights }) => flights.flatMap((flight) => flightRows(name, set, flight))),
    ...(firstLook === null ? [] : [[name, 'firstLook', String(firstLook.step + 1), 'afterOnsetS', firstLook.outcome, '', n(firstLook.afterOnsetS), '', '', '', '', iso(firstLook.atMs)]]),
  ])]);
}

function flightRows(name: string, set: number, flight: SetFlight): string[][] {
  const { result: { person }, leftOff, startedMs } = flight;
  const state = person.caught === null ? 'tooFew' : leftOff ? 'leftOff' : 'whole';
  const numbers = { caught: caught(flight), falseReleases: falseReleases(flight), median: median(flight) };
  const counts: Record<keyof typeof numbers, [number | null, number | null]> = {
    caught: [person.caught?.k ?? null, person.caught?.n ?? null],
    falseReleases: [person.falseReleases?.count ?? null, person.falseReleases === null ? null : person.falseReleases.quietS / 60],
    median: [person.median === null ? null : person.decided, null],
  };
  return (['caught', 'falseReleases', 'median'] as const).map((what) => {
    const { value, lo, hi } = numbers[what];
    const [count, of] = counts[what];
    return [name, 'flight', String(set), what, state, '', n(value), n(lo), n(hi), n(count), n(of), iso(startedMs)];
  });
}
