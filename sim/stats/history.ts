/**
 * One person over time: flights of sets side by side, those of one condition together and never others. The three numbers
 * of each flight stay three. Blocks that were named beforehand are compared, each with the one before it.
 */
import type { RunRecord } from '../files/record.js';
import type { ReadySet } from '../set/ready.js';
import { compareBlocks, type BlockChange } from './blocks.js';
import { flownSet, ratesOf, trialOfRun, type FlownSet } from './flown-set.js';
import type { JudgedTrial } from './trial.js';
import { visualMin } from './visual.js';

/** A flight of a set that is over, and the records of its runs in the order in which they were flown. */
export interface FlightOfSet {
  readonly id: string;
  /** Name given beforehand; empty for none. */
  readonly name: string;
  readonly startedMs: number;
  readonly runs: number;
  readonly leftOff: boolean;
  /** Number of the set among the shipped ones, from 1. */
  readonly set: number;
  readonly of: ReadySet;
  readonly records: readonly RunRecord[];
}

/** What must be alike for splits to be compared: an eye and a hand at one gauge. */
export interface Condition {
  readonly set: number;
  readonly airframe: string;
  readonly limitDeg: number;
  /** Size of the gauge on a screen of unknown size, px per degree of flap, to a hundredth; null where the eye's own measure is known. */
  readonly pxPerDeg: number | null;
  /** Size of the gauge for the eye, minutes of arc per degree of flap, to a tenth; null where screen or distance is unknown. */
  readonly minPerDeg: number | null;
  /** How far the eye goes between speed and gauge, whole deg of visual angle; null where unknown. */
  readonly apartDeg: number | null;
  /** Kinds of input, as the record names them. */
  readonly input: string;
  /** Helps in use, sorted; empty for none. */
  readonly assisted: readonly string[];
}

/** A flight, judged. */
export interface SetFlight extends Pick<FlightOfSet, 'id' | 'name' | 'startedMs' | 'runs' | 'leftOff'> {
  readonly done: number;
  readonly trials: readonly JudgedTrial[];
  readonly result: FlownSet;
}

/** A named block of flights against the one before it. */
export interface BlockPair {
  readonly earlier: string;
  readonly later: string;
  readonly change: BlockChange;
}

export interface ConditionGroup {
  /** null: the condition changed within the flight, so that it stands alone and is compared with nothing. */
  readonly condition: Condition | null;
  readonly set: number;
  /** In the order in which they were flown. */
  readonly flights: readonly SetFlight[];
  readonly pairs: readonly BlockPair[];
}

export interface History {
  /** The group flown last comes first. */
  readonly groups: readonly ConditionGroup[];
  /** Runs left out because a script or a desk had a hand in them. */
  readonly notByHand: number;
  /** Flights of which no run is left. */
  readonly gone: number;
}

/** Under which condition a run was flown. A card laid on the screen anew is a hair off the last time, so true sizes are rounded coarser. */
export const conditionOf = (set: number, { airframe, scenario, gauge, device }: RunRecord): Condition => {
  const minPerDeg = minutesOf(gauge);
  return {
    set, airframe: airframe.name, limitDeg: scenario.recognition?.limitDeg ?? 0,
    pxPerDeg: minPerDeg === null ? Math.round(gauge.pxPerDeg * 100) / 100 : null,
    minPerDeg: minPerDeg === null ? null : Math.round(minPerDeg * 10) / 10,
    apartDeg: gauge.apartDeg === undefined ? null : Math.round(gauge.apartDeg),
    input: device.input, assisted: [...device.assisted ?? []].sort(),
  };
};

/** One degree of flap at the pointer's tip as the eye meets it, minutes of arc; null where screen or distance is unknown. */
const minutesOf = ({ pxPerDeg, mmPerPx, distanceMm }: RunRecord['gauge']): number | null =>
  (mmPerPx === null || distanceMm === undefined ? null : visualMin(pxPerDeg * mmPerPx, distanceMm));
const keyOf = (condition: Condition): string => JSON.stringify(Object.values(condition));

/** The one condition of a flight; null where its runs had several. A run without any input says nothing of the hand. */
function oneCondition(set: number, records: readonly RunRecord[]): Condition | null {
  const used = records.filter(({ device: { input } }) => input !== 'none');
  const all = (used.length === 0 ? records : used).map((record) => conditionOf(set, record));
  const [first] = all;
  return first !== undefined && new Set(all.map(keyOf)).size === 1 ? first : null;
}

/**
 * Groups and judges the flights of one person.
 * @param flights of one person, all over: while a set is being flown, nothing is told of it
 */
export function historyOf(flights: readonly FlightOfSet[]): History {
  const rates = new Map<number, Map<number, number>>();
  const groups = new Map<string, { condition: Condition | null; set: number; seenDeg: number; flights: SetFlight[] }>();
  let [notByHand, gone] = [0, 0];
  for (const flight of [...flights].sort((a, b) => a.startedMs - b.startedMs)) {
    const records = flight.records.filter(({ source }) => source === 'flown');
    notByHand += flight.records.length - records.length;
    if (records.length === 0) {
      gone += 1;
      continue;
    }
    const { of, set, id, name, startedMs, runs, leftOff } = flight;
    const own = rates.get(set) ?? ratesOf(of);
    rates.set(set, own);
    const condition = oneCondition(set, records);
    const key = condition === null ? `alone ${id}` : keyOf(condition);
    const group = groups.get(key) ?? { condition, set, seenDeg: of.set.seenDeg, flights: [] };
    group.flights.push({ id, name, startedMs, runs, leftOff, done: records.length, trials: records.map((record) => trialOfRun(record, own)), result: flownSet(of, records, own) });
    groups.set(key, group);
  }
  const last = ({ flights: all }: { flights: readonly SetFlight[] }): number => all.at(-1)?.startedMs ?? 0;
  return {
    groups: [...groups.values()].sort((a, b) => last(b) - last(a))
      .map(({ condition, set, seenDeg, flights: own }) => ({ condition, set, flights: own, pairs: condition === null ? [] : pairsOf(own, seenDeg) })),
    notByHand, gone,
  };
}

/** Flights of one name behind each other are one block; flights without a name were not meant to be compared. */
function pairsOf(flights: readonly SetFlight[], seenDeg: number): BlockPair[] {
  const blocks: { name: string; trials: JudgedTrial[] }[] = [];
  for (const { name, trials } of flights) {
    if (name === '') continue;
    const block = blocks.at(-1);
    if (block?.name === name) block.trials.push(...trials);
    else blocks.push({ name, trials: [...trials] });
  }
  return blocks.slice(1).map(({ name, trials }, at) => {
    const before = blocks[at] as (typeof blocks)[number];
    return { earlier: before.name, later: name, change: compareBlocks(before.trials, trials, seenDeg) };
  });
}
