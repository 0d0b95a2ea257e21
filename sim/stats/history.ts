/**
 * One person over time: flights of sets side by side, those of one condition together and never others. The three numbers
 * of each flight stay three. Blocks that were named beforehand are compared, each with the one before it.
 */
import type { RunRecord } from '../files/record.js';
import type { ReadySet } from '../set/ready.js';
import { compareBlocks, type BlockChange } from './blocks.js';
import { conditionOf, keyOf, type Condition } from './condition.js';
import { flownSet, ratesOf, trialOfRun, type FlownSet } from './flown-set.js';
import type { JudgedTrial } from './trial.js';

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

/** A flight whose runs have been judged; only those flown by hand are in it. */
export interface SetFlight extends Pick<FlightOfSet, 'id' | 'name' | 'startedMs' | 'runs' | 'leftOff'> {
  /** So many of its `runs` were flown. */
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

/** Flights that may be compared: one set, one airframe, one gauge, one kind of input. */
export interface ConditionGroup {
  /** null: the condition changed within the flight, so that it stands alone and is compared with nothing. */
  readonly condition: Condition | null;
  /** Number of the set among the shipped ones, from 1. */
  readonly set: number;
  /** In the order in which they were flown. */
  readonly flights: readonly SetFlight[];
  readonly pairs: readonly BlockPair[];
}

/** Made by `historyOf`, of one person. */
export interface History {
  /** The group flown last comes first. */
  readonly groups: readonly ConditionGroup[];
  /** Runs left out because a script or a desk had a hand in them. */
  readonly notByHand: number;
  /** Flights of which no run is left. */
  readonly gone: number;
}

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
