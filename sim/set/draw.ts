/** The runs of a set, drawn from one seed: again and again until there are enough onsets, and at every rate. */
import { dice } from '../dice.js';
import { hazardStrikes } from '../agenda-of.js';
import { ticksOf } from '../units.js';
import type { ReadySet } from './ready.js';

/** One run of a drawn set. Its block and place count from 0. */
export interface SetRun {
  /** From 0. */
  readonly place: number;
  readonly block: number;
  /** Place in the rates of the set. */
  readonly rate: number;
  /** Seed of the run. */
  readonly seed: number;
  /** Held seconds at which the side begins to lag; null for a quiet run. */
  readonly onsetHeldS: number | null;
}

/** More draws than any set that passes its checks needs. */
const MOST_DRAWS = 10_000;

/**
 * Draws the runs. Rates, seeds and so onsets are independent from run to run: nothing before tells what comes.
 * @param seed unsigned 32-bit whole number
 * @throws RangeError when no draw has the onsets asked for
 */
export function drawSet(of: ReadySet, seed: number): SetRun[] {
  const stream = dice(seed, 'set');
  for (let draw = 0; draw < MOST_DRAWS; draw += 1) {
    const runs = drawnRuns(of, () => ({ rate: rateAt(of, stream.uniform()), seed: stream.bits() }));
    if (isEnough(of, runs)) return runs;
  }
  throw new RangeError(`no set with ${of.onsets.from} to ${of.onsets.to} onsets in ${MOST_DRAWS} draws`);
}

function drawnRuns({ set, scenarios }: ReadySet, next: () => { rate: number; seed: number }): SetRun[] {
  const perBlock = set.runs / set.blocks;
  return Array.from({ length: set.runs }, (_, place) => {
    const { rate, seed } = next();
    const { faults: [fault], task } = scenarios[rate] as (typeof scenarios)[number];
    const ticks = fault === undefined ? Infinity : hazardStrikes(fault.when, seed, 0, ticksOf(task.limitS));
    return { place, block: Math.floor(place / perBlock), rate, seed, onsetHeldS: ticks === Infinity ? null : ticks / 100 };
  });
}

/** The rate whose share holds a part of all shares, `u` from 0 to 1. */
function rateAt({ set: { rates } }: ReadySet, u: number): number {
  let left = u * rates.reduce((sum, { share }) => sum + share, 0);
  for (let at = 0; at < rates.length - 1; at += 1) {
    left -= (rates[at] as (typeof rates)[number]).share;
    if (left < 0) return at;
  }
  return rates.length - 1;
}

function isEnough({ set, onsets }: ReadySet, runs: readonly SetRun[]): boolean {
  const counts = new Array<number>(set.rates.length).fill(0);
  for (const { rate, onsetHeldS } of runs) if (onsetHeldS !== null) counts[rate] = (counts[rate] as number) + 1;
  const all = counts.reduce((sum, count) => sum + count, 0);
  return all >= onsets.from && all <= onsets.to && counts.every((count) => count >= onsets.perRate);
}
