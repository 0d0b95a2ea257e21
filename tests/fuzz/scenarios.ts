/** Random scenarios, each flown and held to every promise. */
import fc from 'fast-check';
import { AIRFRAME, AIRFRAME_B } from '../sim/bench.js';
import { keepsAll } from './promises.js';
import { flyableOf, fuzzedRun, type FuzzedRun } from './run-of.js';
import { throwBatch, type Thrown } from './throw.js';

/** What was come across so far, by name: a fuzz that never sees an outcome finds nothing about it. */
export const seen = new Map<string, number>();
const count = (what: string): void => { seen.set(what, (seen.get(what) ?? 0) + 1); };

export function check(one: FuzzedRun): void {
  const flyable = flyableOf(one);
  fc.pre(flyable !== null);
  const flight = keepsAll(flyable!, one);
  count(`by ${one.by}`);
  count(`outcome ${flight.outcome}`);
  count(`end ${flight.end.why}`);
  if (flyable!.log.some(({ rank }) => rank === 1)) count('acts of a desk');
  if (one.changes.length > 0 && flyable!.airframe !== one.made.airframe) count('an airframe of its own');
  for (const { kind } of flyable!.scenario.faults) count(`fault ${kind}`);
  for (const { do: what } of flyable!.scenario.events) count(`event ${what}`);
}

/** A shipped airframe by its name. */
const named = (_: string, value: unknown): unknown => [AIRFRAME, AIRFRAME_B].find((one) => one === value)?.name ?? value;

export const batch = (seed: number, size: number): Promise<Thrown> => throwBatch(fuzzedRun, check, seed, (one) => JSON.stringify({ ...one, flown: flyableOf(one) }, named, 1), size);
