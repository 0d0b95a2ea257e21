/**
 * A gate of a course against what a person flew. Flights of the set under one condition fall into blocks of the size that
 * the gate names, in the order in which they were flown, each flight in one block: so nothing is looked at twice, and no
 * best flight is picked. A block that is whole is judged; a gate that was met stays met. Every ask stands for itself.
 */
import type { AskKey, GateFile } from '../files/course.js';
import type { ConditionGroup, SetFlight } from './history.js';
import { medianSplitOf, SHOWN_FROM } from './person.js';
import { binomialTail, clopperPearson } from './proportion.js';
import { garwood } from './rate.js';
import { falseReleasesOf, isDecided, observationsOf } from './tally.js';
import type { JudgedTrial } from './trial.js';

/** met: the end of the interval lies inside what is asked. notMet: the whole interval lies outside. open: neither is shown. */
export type Answer = 'met' | 'notMet' | 'open';

/** One figure that a gate asks for, beside what was flown. */
export interface AskShown {
  readonly ask: 'caught' | 'median' | 'ninety' | 'falseReleases';
  /** The bound in the file, in the unit of `value`. */
  readonly asked: number;
  /** Own figure, null where too few runs are decided or it lies beyond what was seen: a share, deg, deg, 1/min. */
  readonly value: number | null;
  /** 95 %, exact; null: beyond what was seen. */
  readonly lo: number | null;
  readonly hi: number | null;
  /** What was counted: caught of decided, splits, splits, false releases in quiet minutes. */
  readonly count: number;
  readonly of: number;
  readonly answer: Answer;
  /** Decided runs (false releases: quiet minutes) that would show it, if they went on like these; null: these would not. 0 where it is answered. */
  readonly more: number | null;
}

/** Flights that are judged together; fewer than the gate names while it is not whole. */
export interface GateBlock {
  /** Ids of its flights. */
  readonly flights: readonly string[];
  readonly startedMs: number;
  /** All its flights are flown: it is judged. */
  readonly whole: boolean;
  /** Its runs that were caught, late or missed. */
  readonly decided: number;
  readonly asks: readonly AskShown[];
  readonly met: boolean;
}

/** Made by `judgeGate`, of all flights of the set that a person flew. */
export interface GateShown {
  readonly met: boolean;
  /** The first block that met it; else the latest; null before the first flight. */
  readonly block: GateBlock | null;
  /** Blocks that were judged, up to the one that met it: a gate tried often is met by luck now and then. */
  readonly tries: number;
  /** Flights left out because the gauge, the hand or a help changed within them. */
  readonly passedOver: number;
}

const TAIL = 0.025;
const TOUCH = 1e-12;
const NINETY = 0.9;
/** Beyond so many runs or minutes nobody is told how many more. */
const MOST = 1000;

/** @param groups of the set of this gate */
export function judgeGate(gate: GateFile, groups: readonly ConditionGroup[], seenDeg: number): GateShown {
  const blocks = groups.filter(({ condition }) => condition !== null)
    .flatMap(({ flights }) => chunked(flights, gate.flights)).map((flights) => blockOf(gate, flights, seenDeg))
    .sort((a, b) => a.startedMs - b.startedMs);
  const at = blocks.findIndex(({ met }) => met);
  const judged = blocks.filter(({ whole }) => whole);
  return {
    met: at >= 0,
    block: (at >= 0 ? blocks[at] : blocks.at(-1)) ?? null,
    tries: at >= 0 ? blocks.slice(0, at + 1).filter(({ whole }) => whole).length : judged.length,
    passedOver: groups.filter(({ condition }) => condition === null).reduce((sum, { flights }) => sum + flights.length, 0),
  };
}

function chunked<T>(all: readonly T[], size: number): T[][] {
  return Array.from({ length: Math.ceil(all.length / size) }, (_, at) => all.slice(at * size, (at + 1) * size));
}

function blockOf(gate: GateFile, flights: readonly SetFlight[], seenDeg: number): GateBlock {
  const trials = flights.flatMap(({ trials: own }) => own);
  const asks = asksOf(gate, trials, seenDeg);
  const whole = flights.length === gate.flights;
  return {
    flights: flights.map(({ id }) => id), startedMs: flights.at(-1)?.startedMs ?? 0, whole, decided: trials.filter(isDecided).length, asks,
    met: whole && asks.every(({ answer }) => answer === 'met'),
  };
}

/** Every ask of a gate against trials of one condition. */
export function asksOf(gate: GateFile, trials: readonly JudgedTrial[], seenDeg: number): AskShown[] {
  const short = SHOWN_FROM.counts - trials.filter(isDecided).length;
  return (Object.keys(JUDGES) as AskKey[]).flatMap((key): AskShown[] => {
    const [[ask, shown], asked] = [JUDGES[key], gate[key]];
    if (asked === undefined) return [];
    if (short > 0) return [{ ask, asked, value: null, lo: null, hi: null, count: 0, of: SHOWN_FROM.counts - short, answer: 'open', more: short }];
    return [{ ask, asked, ...shown(trials, asked, seenDeg) }];
  });
}

type Shown = Omit<AskShown, 'ask' | 'asked'>;

const JUDGES: Readonly<Record<AskKey, readonly [ask: AskShown['ask'], shown: (trials: readonly JudgedTrial[], asked: number, seenDeg: number) => Shown]>> = {
  caughtFrom: ['caught', caughtAsk], medianToDeg: ['median', medianAsk], ninetyToDeg: ['ninety', ninetyAsk], falseToPerMin: ['falseReleases', falseAsk],
};

function caughtAsk(trials: readonly JudgedTrial[], share: number): Shown {
  const n = trials.filter(isDecided).length;
  const k = trials.filter(({ outcome }) => outcome === 'caught').length;
  const { lo, hi } = clopperPearson(k, n);
  const answer = shows(k, n, share) ? 'met' : hi < share ? 'notMet' : 'open';
  return { value: k / n, lo, hi, count: k, of: n, answer, more: answer === 'open' ? moreRuns(k, n, share) : 0 };
}

/** The lower end of the exact interval of k of n lies at a share or above it. */
const shows = (k: number, n: number, share: number): boolean => binomialTail(k, n, share) <= TAIL + TOUCH;

/** The smallest number of further runs of the same share that shows it. */
function moreRuns(k: number, n: number, share: number): number | null {
  if (k / n <= share) return null;
  for (let more = 1; more <= MOST; more += 1) if (shows(Math.floor(k / n * (n + more) + 1e-9), n + more, share)) return more;
  return null;
}

function medianAsk(trials: readonly JudgedTrial[], toDeg: number): Shown {
  const { deg, lo, hi } = medianSplitOf(trials);
  const n = observationsOf(trials).length;
  const answer = hi !== null && hi <= toDeg ? 'met' : lo !== null && lo > toDeg ? 'notMet' : 'open';
  return { value: deg, lo, hi, count: n, of: n, answer, more: answer === 'open' ? moreForMedian(trials, deg, toDeg) : 0 };
}

/** Log-spread of splits where none can be worked out. */
const USUAL_SIGMA = 0.35;
/** Limits by ranks are wider than those of a log-normal by the root of pi/2, for large samples. */
const RANKS = Math.sqrt(Math.PI / 2);

/** From the factor e^(1.96 sigma RANKS / sqrt n) on the median. */
function moreForMedian(trials: readonly JudgedTrial[], median: number | null, toDeg: number): number | null {
  if (median === null || median >= toDeg) return null;
  const logs = observationsOf(trials).filter(({ value, event }) => event && value > 0).map(({ value }) => Math.log(value));
  const mean = logs.reduce((sum, one) => sum + one, 0) / logs.length;
  const sigma = logs.length < 2 ? USUAL_SIGMA : Math.sqrt(logs.reduce((sum, one) => sum + (one - mean) ** 2, 0) / (logs.length - 1));
  const needed = Math.ceil((1.96 * sigma * RANKS / Math.log(toDeg / median)) ** 2);
  const more = Math.max(1, needed - observationsOf(trials).length);
  return more > MOST ? null : more;
}

/** The nine-in-ten split by ranks alone: a run that was held through lies above every split. */
function ninetyAsk(trials: readonly JudgedTrial[], toDeg: number): Shown {
  const sorted = observationsOf(trials).map(({ value, event }) => (event ? value : Infinity)).sort((a, b) => a - b);
  const n = sorted.length;
  const at = (rank: number | null): number => (rank === null ? Infinity : sorted[rank - 1] ?? Infinity);
  const ranks = Array.from({ length: n }, (_, index) => index + 1);
  const hi = at(ranks.find((rank) => shows(rank, n, NINETY)) ?? null);
  const below = ranks.filter((rank) => 1 - binomialTail(rank, n, NINETY) <= TAIL).at(-1);
  const lo = below === undefined ? 0 : at(below);
  const k = sorted.filter((split) => split <= toDeg).length;
  const answer = hi <= toDeg ? 'met' : lo > toDeg ? 'notMet' : 'open';
  return {
    value: finite(at(Math.ceil(NINETY * n - 1e-9))), lo: finite(lo), hi: finite(hi), count: n, of: n, answer, more: answer === 'open' ? moreRuns(k, n, NINETY) : 0,
  };
}

const finite = (deg: number): number | null => (deg === Infinity ? null : deg);

function falseAsk(trials: readonly JudgedTrial[], toPerMin: number, seenDeg: number): Shown {
  const found = falseReleasesOf(trials, seenDeg);
  if (found === null) return { value: null, lo: null, hi: null, count: 0, of: 0, answer: 'open', more: null };
  const { count, quietS, perMin, lo, hi } = found;
  const answer = hi <= toPerMin + TOUCH ? 'met' : lo > toPerMin ? 'notMet' : 'open';
  return { value: perMin, lo, hi, count, of: quietS / 60, answer, more: answer === 'open' ? moreMinutes(count, quietS / 60, toPerMin) : 0 };
}

/** Further quiet minutes with false releases as often as up to now. */
function moreMinutes(count: number, minutes: number, toPerMin: number): number | null {
  const perMin = count / minutes;
  if (perMin >= toPerMin) return null;
  for (let more = 1; more <= MOST; more += 1) if (garwood(Math.ceil(perMin * (minutes + more) - 1e-9), minutes + more).hi <= toPerMin) return more;
  return null;
}
