/** What may be told of a set before it is flown: how long it is and how it counts, and nothing of a run. */
import type { Airframe } from '../../../sim/files/index.js';
import type { ReadySet } from '../../../sim/index.js';
import { MEASURING, wordsOf } from '../../../sim/index.js';

export interface SetCard {
  readonly number: number;
  /** Comes with Evenhand; else it stands in a course. */
  readonly shipped: boolean;
  readonly brief: string;
  readonly runs: number;
  readonly blocks: number;
  readonly loaded: boolean;
  /** Flaps go in instead of out. */
  readonly back: boolean;
  /** About how long, min: legs, and a start, a judgement and a next for each run. */
  readonly minutes: number;
  readonly limitDeg: number;
  /** Said wherever the set is told. */
  readonly words: readonly string[];
  readonly from: string;
  readonly to: string;
  readonly speedKt: number;
  readonly airframe: Airframe;
}

/** Start, judgement and next of a run, s. */
const BETWEEN_S = 20;
/** A set of runs that are let go or held is flown in about this part of its legs. */
const PART_FLOWN = 0.5;

export function setCard({ set, airframe, scenarios }: ReadySet, number: number): SetCard {
  const [first] = scenarios;
  if (first === undefined) throw new RangeError('a set has at least one rate');
  const name = (deg: number): string => airframe.settings.find((setting) => setting.deg === deg)?.name ?? `${deg}`;
  const to = first.task.settings[0] ?? 0;
  return {
    number, shipped: set.order !== undefined, brief: set.brief, runs: set.runs, blocks: set.blocks, loaded: set.load === 'loaded', back: to < first.start.flapDeg,
    minutes: Math.round((set.runs * (set.legS * PART_FLOWN + BETWEEN_S)) / 60),
    limitDeg: set.limitDeg,
    words: wordsOf({ set }).map((words) => (words === MEASURING ? 'Measuring: in the aeroplane let go in doubt.' : 'Laboratory set: a side driven back is an impossible picture.')),
    from: name(first.start.flapDeg), to: name(to), speedKt: first.start.speedKt, airframe,
  };
}
