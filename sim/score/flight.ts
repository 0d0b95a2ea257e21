/** A whole run and all that is said of it, from scenario, airframe, seed and commands. */
import type { Command } from '../command.js';
import { withDesk } from '../desk/plan.js';
import { expand } from '../expand.js';
import type { Airframe } from '../files/airframe.js';
import type { Outcome, Score } from '../files/record.js';
import type { ReadyScenario } from '../ready.js';
import type { World } from '../fixed.js';
import { run, type Run, type See } from '../replay.js';
import { copyState } from '../state.js';
import { isTakenBack } from '../turns.js';
import type { EndWhy } from '../task/rule.js';
import { witness, type RunEvent } from './events.js';
import type { Failure } from './failure.js';
import { gatherer, type Facts } from './facts.js';
import { outcomeOf } from './outcome.js';
import type { ProcedureItem } from './items/item.js';
import { passedOf, procedureWatcher } from './procedure.js';

/** Made by `fly` or `judge`. `ticks` is the length of the run, 100 a second; `hash` has 16 hexadecimal digits. */
export interface Flight {
  readonly seed: number;
  readonly ticks: number;
  readonly hash: string;
  readonly outcome: Outcome;
  readonly score: Score;
  readonly end: { readonly tick: number; readonly why: EndWhy };
  readonly events: readonly RunEvent[];
  readonly procedure: readonly ProcedureItem[];
  /** How the drive failed, and the moment it showed itself, s; null where it did not. */
  readonly failure: { readonly kind: NonNullable<Failure['kind']>; readonly atS: number } | null;
  /** A good outcome and no item of the procedure broken; null where the run decides nothing. */
  readonly passed: boolean | null;
}

/** What a page adds to a run; without one the tick's own time stands for frame and stamp. */
export interface Timing {
  /** Part of a tick that had passed at the stamp of its release. */
  readonly fractionAt: (tick: number) => number;
  /** First frame drawn after an onset, s; null where none was drawn. */
  readonly firstFrameS: (onsetTick: number) => number | null;
  /** Something other than the hand disturbed the run. */
  readonly voided: boolean;
}

const NO_PAGE: Timing = { fractionAt: () => 0, firstFrameS: () => null, voided: false };

/** All that a run follows from, but for its commands. The seed is an unsigned 32-bit whole number. */
export interface FlightRequest {
  readonly scenario: ReadyScenario;
  readonly airframe: Airframe;
  readonly seed: number;
  /** The run lasts its whole time (scripted inputs). */
  readonly whole?: boolean;
  /** Where a stopped run ended. */
  readonly stopTick?: number;
  readonly timing?: Timing;
}

/** Flies a log of commands to the end of the run and judges it. */
export function fly(request: FlightRequest, log: readonly Command[]): Flight {
  return judge(request, (world, see) => run(world, log, see, request.stopTick), log);
}

/**
 * Judges a run that `go` steps: the same words for a log, a trainee or a page. What a desk took back is not looked at.
 * @param log acts known beforehand, those of a desk among them
 */
export function judge(request: FlightRequest, go: (world: World, see: See) => Run, log: readonly Command[] = []): Flight {
  const { scenario, airframe, seed, timing = NO_PAGE } = request;
  const world = withDesk(expand(scenario, airframe, seed, request.whole), log);
  const { turns } = world.fixed.agenda;
  const start = copyState(world.state);
  const seen = [
    witness(world.fixed, start),
    gatherer(world.fixed, start, timing.fractionAt),
    procedureWatcher(world.fixed, scenario, airframe),
  ] as const;
  const [happened, gathered, procedure] = seen;
  const flown = go(world, (state) => { if (turns.length === 0 || !isTakenBack(turns, state.tick)) for (const one of seen) one.see(state); });
  const facts = gathered.facts(flown.state);
  const outcome = outcomeOf(facts, world.fixed.task, flown.why, timing.voided);
  // An inputs file may go on behind the end; what stands there never acted, and no record holds it.
  const items = procedure.items(facts, flown.log.filter(({ tick }) => tick < flown.ticks));
  return {
    seed, ticks: flown.ticks, hash: flown.hash,
    outcome,
    score: scoreOf(facts, timing),
    end: { tick: flown.ticks, why: flown.why },
    events: happened.events,
    procedure: items,
    failure: facts.failure.kind === null ? null : { kind: facts.failure.kind, atS: facts.failure.tick / 100 },
    passed: passedOf(outcome, items),
  };
}

function scoreOf(facts: Facts, timing: Timing): Score {
  const onsetS = facts.onsetTick < 0 ? null : facts.onsetTick / 100;
  const releaseS = facts.releaseTick < 0 ? null : (facts.releaseTick + facts.releaseFraction) / 100;
  const firstFrameS = onsetS === null ? null : timing.firstFrameS(facts.onsetTick) ?? onsetS;
  const both = onsetS !== null && releaseS !== null && releaseS >= onsetS;
  return {
    onsetS, firstFrameS, releaseS,
    afterOnsetS: both && firstFrameS !== null ? releaseS - firstFrameS : null,
    growthAtReleaseDeg: both ? facts.growthAtReleaseDeg : null,
    splitAtReleaseDeg: releaseS === null ? null : facts.splitAtReleaseDeg,
    finalSplitDeg: facts.finalSplitDeg,
    rollAuthorityPct: facts.rollAuthorityPct,
  };
}
