/** The next useful quarter of an hour: one thing to do, and why. The first reason that holds; words are for pages. */
import type { Advice } from '../stats/practise.js';
import type { ReadyStep } from './ready.js';
import type { StepStand } from './stand.js';

/** A sitting: beyond it the eye tires sooner than it learns, min. Common practice, no source. */
const SITTING_MIN = 15;
/** Start, judgement and next of a run of a set, s; and the part of its leg that a run lasts. As on the page of a set. */
const BETWEEN_S = 20;
const PART_FLOWN = 0.5;
/** Brief, own judgement and debrief of a drill, min. */
const AROUND_MIN = 4;
/** Runs of practice that warm the hand before the first set (measures 12.1), and min of one. */
const WARM_RUNS = 4;
const PRACTICE_RUN_MIN = 1;

/**
 * One thing to fly. `minutes` it takes, about; `step` is a place in the course, from 0; `runs` so many of them; `more` is what a
 * gate lacks, in `unit`; `perMin` false releases a minute of quiet holding, as flown.
 */
export type Proposal = { readonly minutes: number } & (
  | { readonly fly: 'step'; readonly step: number; readonly why: 'begin' | 'next' | 'again' | 'once more' }
  /** Runs of a set that is under way, or of a new flight: how many fit a sitting. */
  | { readonly fly: 'set'; readonly step: number; readonly why: 'underway' | 'first flight' | 'block'; readonly runs: number }
  | { readonly fly: 'set'; readonly step: number; readonly why: 'short'; readonly runs: number; readonly more: number; readonly unit: 'runs' | 'minutes' }
  | { readonly fly: 'practice'; readonly why: 'before set'; readonly step: number; readonly runs: number }
  | { readonly fly: 'practice'; readonly why: 'false releases'; readonly step: number; readonly runs: number; readonly perMin: number }
  /** The course is done. */
  | { readonly fly: 'advised'; readonly advice: Advice }
);

/** What is known of a person in a course; `stands` beside `steps`, place by place. */
export interface NextAsk {
  readonly steps: readonly ReadyStep[];
  readonly stands: readonly StepStand[];
  readonly advice: Advice;
  /** Minutes of a set by its advice number, for when the course is done. */
  readonly adviceMinutes: number;
  /** Runs of practice: ever, and since the last run of a set. */
  readonly practised: { readonly ever: number; readonly since: number };
}

/** What to fly in the next quarter of an hour, and why: a set that is underway first, then the first step that is open. */
export function nextOf({ steps, stands, advice, adviceMinutes, practised }: NextAsk): Proposal {
  const underway = stands.findIndex((stand) => stand.underway !== null && stand.state !== 'closed');
  if (underway >= 0) return { fly: 'set', why: 'underway', ...sittingOf(steps, stands, underway) };
  const at = stands.findIndex(({ state }) => state === 'open');
  const [step, stand] = [steps[at], stands[at]];
  if (step === undefined || stand === undefined) return { fly: 'advised', advice, minutes: Math.min(SITTING_MIN, adviceMinutes) };
  if (step.flies.kind === 'drill') {
    const why = stand.lastPassed === true ? 'once more' : stand.lastPassed === false ? 'again' : stands.some(({ flown }) => flown > 0) ? 'next' : 'begin';
    return { fly: 'step', step: at, why, minutes: minutesOfDrill(step.flies.scenario.task.limitS) };
  }
  const falses = stand.gate?.block?.asks.find(({ ask, answer }) => ask === 'falseReleases' && answer === 'notMet');
  if (falses?.value != null && practised.since < WARM_RUNS) {
    return { fly: 'practice', why: 'false releases', step: at, runs: 2 * WARM_RUNS, perMin: falses.value, minutes: 2 * WARM_RUNS * PRACTICE_RUN_MIN };
  }
  const isFirstSet = stands.every(({ flown }, place) => steps[place]?.flies.kind === 'drill' || flown === 0);
  if (isFirstSet && practised.ever < WARM_RUNS) return { fly: 'practice', why: 'before set', step: at, runs: WARM_RUNS, minutes: WARM_RUNS * PRACTICE_RUN_MIN };
  const sitting = sittingOf(steps, stands, at);
  const block = stand.gate?.block ?? null;
  const short = block?.asks.find(({ answer, more }) => answer === 'open' && more !== null && more > 0);
  if (short?.more != null) return { fly: 'set', why: 'short', ...sitting, more: short.more, unit: short.ask === 'falseReleases' && short.value !== null ? 'minutes' : 'runs' };
  return { fly: 'set', why: block !== null ? 'block' : 'first flight', ...sitting };
}

const minutesOfDrill = (limitS: number): number => Math.floor(limitS / 60 + 0.5) + AROUND_MIN;

/** As many runs as fit a sitting, and no further than the next pause. */
function sittingOf(steps: readonly ReadyStep[], stands: readonly StepStand[], at: number): { step: number; runs: number; minutes: number } {
  const flies = steps[at]?.flies;
  if (flies?.kind !== 'set') throw new RangeError(`step ${at} is no set`);
  const { runs, blocks, legS } = flies.of.set;
  const done = stands[at]?.underway?.done ?? 0;
  const perBlock = runs / blocks;
  const toPause = perBlock - done % perBlock;
  const runMin = (legS * PART_FLOWN + BETWEEN_S) / 60;
  const fit = Math.max(1, Math.min(toPause, Math.floor(SITTING_MIN / runMin)));
  return { step: at, runs: fit, minutes: Math.max(1, Math.floor(fit * runMin + 0.5)) };
}
