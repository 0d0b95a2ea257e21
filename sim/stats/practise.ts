/** What to practise next, from figures, and why: the first reason that holds. Words are for pages. */
import type { ConditionGroup, History, SetFlight } from './history.js';
import { isDecided, rateGroups } from './tally.js';

/** A set as advice needs to know it. */
export interface SetKind {
  /** Number among the shipped sets, from 1. */
  readonly number: number;
  readonly loaded: boolean;
  /** No side is driven back, and the flaps go out: pictures of the true drive. */
  readonly trueDrive: boolean;
}

/**
 * first: nothing is flown. falseReleases: the lower limit of the rate lies above a false release in two minutes. fastRate:
 * runs at the fastest rate that were late or missed, while the slowest were all caught. loaded: no flight of the true drive
 * with questions has its numbers. finish: the last flight has too few decided runs for its numbers. moreRuns: a comparison
 * lacks runs. steady: nothing stands out. `fly` is the number of the set to fly, from 1; `notCaught` of `decided` runs.
 */
export type Advice = { readonly fly: number } & (
  | { readonly why: 'first' }
  | { readonly why: 'falseReleases'; readonly loPerMin: number; readonly count: number; readonly quietS: number }
  | { readonly why: 'fastRate'; readonly rateDegPerS: number; readonly notCaught: number; readonly decided: number }
  | { readonly why: 'loaded' }
  | { readonly why: 'finish'; readonly runs: number }
  | { readonly why: 'moreRuns'; readonly name: string; readonly runs: number }
  | { readonly why: 'steady' }
);

/** Above this a hand lets go too readily, 1/min. Common practice, no source. */
const READY_PER_MIN = 0.5;

/** @param sets the shipped sets, in the order of their numbers; at least one */
export function adviceOf({ groups }: Pick<History, 'groups'>, sets: readonly SetKind[]): Advice {
  const [latest] = groups;
  const flight = latest?.flights.at(-1);
  if (latest === undefined || flight === undefined) return { why: 'first', fly: sets[0]?.number ?? 1 };
  const fly = latest.set;
  const { person: { falseReleases, needed } } = flight.result;
  if (needed.runsForCounts > 0) return { why: 'finish', fly, runs: needed.runsForCounts };
  if (falseReleases !== null && falseReleases.lo > READY_PER_MIN) {
    return { why: 'falseReleases', fly, loPerMin: falseReleases.lo, count: falseReleases.count, quietS: falseReleases.quietS };
  }
  const fast = slowAtFast(flight);
  if (fast !== null) return { why: 'fastRate', fly, ...fast };
  const loaded = sets.find((set) => set.loaded && set.trueDrive);
  if (loaded !== undefined && !groups.some((group) => group.set === loaded.number && hasNumbers(group))) return { why: 'loaded', fly: loaded.number };
  const pair = latest.pairs.at(-1);
  if (pair?.change.verdict === 'noClearChange' && pair.change.moreRuns > 0) return { why: 'moreRuns', fly, name: pair.later, runs: pair.change.moreRuns };
  return { why: 'steady', fly };
}

const hasNumbers = ({ flights }: ConditionGroup): boolean => flights.some(({ result }) => result.person.caught !== null);

function slowAtFast({ trials }: SetFlight): { rateDegPerS: number; notCaught: number; decided: number } | null {
  const rates = rateGroups(trials).map(({ rateDegPerS, trials: own }) => {
    const decided = own.filter(isDecided);
    return { rateDegPerS, decided: decided.length, notCaught: decided.filter(({ outcome }) => outcome !== 'caught').length };
  });
  const [slowest, fastest] = [rates[0], rates.at(-1)];
  if (slowest === undefined || fastest === undefined || slowest === fastest) return null;
  return fastest.notCaught >= 2 && slowest.notCaught === 0 ? fastest : null;
}
