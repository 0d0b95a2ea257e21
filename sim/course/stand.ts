/** Where a person stands in a course: worked out from what was flown, and kept nowhere. A step that is done stays done. */
import type { RunRecord } from '../files/record.js';
import { judgeGate, type GateShown } from '../stats/gate.js';
import type { ConditionGroup, SetFlight } from '../stats/history.js';
import type { ReadyStep } from './ready.js';

/** A run of a step's drill, flown by hand to its end. */
export interface StepRun {
  readonly atMs: number;
  readonly seed: number;
  readonly outcome: RunRecord['outcome'];
  /** null: it decides nothing, or is of another model version. */
  readonly passed: boolean | null;
  readonly assisted: boolean;
}

/** What was flown of a step. Runs in the order in which they were flown. */
export type StepFacts =
  | { readonly kind: 'drill'; readonly runs: readonly StepRun[] }
  | { readonly kind: 'set'; readonly groups: readonly ConditionGroup[]; readonly seenDeg: number; readonly underway: Underway | null };

/** A flight of a set that is not over: `done` of its `runs`, which fall into `blocks` of one length. */
export interface Underway {
  readonly done: number;
  readonly runs: number;
  readonly blocks: number;
}

/** Made by `standOf`. open: it may be flown and is not done. closed: a step that it needs is not done. */
export interface StepStand {
  readonly state: 'done' | 'open' | 'closed';
  /** Places of the steps that are not done and that this one needs. */
  readonly waitsFor: readonly number[];
  /** Runs, or flights of the set that are over. */
  readonly flown: number;
  /** Of a drill: how the latest run that decides something went; null before the first. */
  readonly lastPassed: boolean | null;
  /** Of a set: a flight was flown to its last run. */
  readonly flownThrough: boolean;
  readonly underway: Underway | null;
  readonly gate: GateShown | null;
}

/** Where a person stands, step by step. @param facts of every step, in order @throws RangeError for a step without facts */
export function standOf(steps: readonly Pick<ReadyStep, 'needs' | 'done' | 'gate'>[], facts: readonly StepFacts[]): StepStand[] {
  const stands: StepStand[] = [];
  steps.forEach((step, at) => {
    const own = facts[at];
    if (own === undefined) throw new RangeError(`no facts of step ${at}`);
    const waitsFor = step.needs.filter((place) => stands[place]?.state !== 'done');
    const { isDone, ...told } = own.kind === 'drill' ? drillStand(step, own.runs) : setStand(step, own);
    stands.push({ state: isDone ? 'done' : waitsFor.length > 0 ? 'closed' : 'open', waitsFor: isDone ? [] : waitsFor, ...told });
  });
  return stands;
}

type Told = Omit<StepStand, 'state' | 'waitsFor'> & { readonly isDone: boolean };

function drillStand({ done }: Pick<ReadyStep, 'done'>, runs: readonly StepRun[]): Told {
  const deciding = runs.filter(({ passed }) => passed !== null);
  const isDone = done === 'flown' ? runs.some(({ outcome }) => outcome !== 'void')
    : done === 'passed' ? deciding.some(({ passed }) => passed)
      : deciding.some(({ passed, seed }, at) => passed === true && deciding[at - 1]?.passed === true && deciding[at - 1]?.seed !== seed);
  return { isDone, flown: runs.length, lastPassed: deciding.at(-1)?.passed ?? null, flownThrough: false, underway: null, gate: null };
}

function setStand({ gate: asks }: Pick<ReadyStep, 'gate'>, { groups, seenDeg, underway }: Extract<StepFacts, { kind: 'set' }>): Told {
  const flights = groups.flatMap(({ flights: own }) => own);
  const flownThrough = flights.some((flight) => !flight.leftOff && isThrough(flight));
  const gate = asks === null ? null : judgeGate(asks, groups, seenDeg);
  return { isDone: flownThrough && (gate === null || gate.met), flown: flights.length, lastPassed: null, flownThrough, underway, gate };
}

const isThrough = ({ done, runs }: SetFlight): boolean => done >= runs;
