/** A sweep cut into parts that may be flown anywhere and in any order, and put together again. */
import type { Airframe } from '../files/airframe.js';
import type { Scenario } from '../files/scenario.js';
import { readyFor } from '../settle.js';
import type { Trainee } from '../trainee/fly.js';
import type { TraineeName } from '../trainee/numbers.js';
import { DIFFICULTY_RUNS, HOLDS_ON, ORDINARY } from './difficulty.js';
import { flyRow, type SweepRow } from './row.js';

/** Runs a part has at most: small enough that a stop is heard soon, and that workers end together. */
export const PART_RUNS = 8;

/** Runs of one kind from place `from`, below `to`. `sweep` is flown by the trainee asked for, the others for the difficulty. */
export interface Part {
  readonly of: 'sweep' | 'ordinary' | 'held';
  readonly from: number;
  readonly to: number;
}

/** Who flies the parts that tell how hard the scenario is. */
const FLOWN_BY: Readonly<Record<'ordinary' | 'held', TraineeName>> = { ordinary: ORDINARY, held: HOLDS_ON };

/** The parts of a sweep of `runs` runs, at most `size` runs each. */
export function partsOf(runs: number, size: number): Part[] {
  const cut = (of: Part['of'], count: number): Part[] =>
    Array.from({ length: Math.floor((count + size - 1) / size) }, (_, at) => ({ of, from: at * size, to: Math.min(count, (at + 1) * size) }));
  const few = Math.min(runs, DIFFICULTY_RUNS);
  return [...cut('sweep', runs), ...cut('ordinary', few), ...cut('held', few)];
}

/** All rows, each in its place. */
export type Rows = Readonly<Record<Part['of'], readonly SweepRow[]>>;

/** Puts parts together, in whatever order they came. @throws Error when a run is missing or came twice */
export function together(flown: readonly { readonly part: Part; readonly rows: readonly SweepRow[] }[]): Rows {
  const rows: Record<Part['of'], SweepRow[]> = { sweep: [], ordinary: [], held: [] };
  for (const { part, rows: some } of flown) {
    some.forEach((row, at) => {
      const place = part.from + at;
      if (place >= part.to || rows[part.of][place] !== undefined) throw new Error(`run ${place} of ${part.of} came twice`);
      rows[part.of][place] = row;
    });
  }
  for (const [of, list] of Object.entries(rows)) {
    for (let place = 0; place < list.length; place += 1) if (list[place] === undefined) throw new Error(`run ${place} of ${of} is missing`);
  }
  return rows;
}

/** What is swept: plain data that a worker can be sent. */
export interface SweepOrder {
  /** Its drawn parameters are drawn anew in every run. */
  readonly scenario: Scenario;
  readonly airframe: Airframe;
  readonly trainee: Trainee;
  /** A seed a run. */
  readonly seeds: readonly number[];
}

/** One row a run of the part, in the order of its seeds. */
export function flyPart({ scenario, airframe, trainee, seeds }: SweepOrder, part: Part): SweepRow[] {
  const by = part.of === 'sweep' ? trainee : FLOWN_BY[part.of];
  return seeds.slice(part.from, part.to).map((seed) => flyRow(readyFor(scenario, airframe, seed), airframe, seed, by));
}
