/** One run of a sweep as figures: no list of events, no procedure, since nobody asks for them. */
import { expand } from '../expand.js';
import type { Airframe } from '../files/airframe.js';
import type { Outcome } from '../files/record.js';
import { limitKtNow, lowestLimitKt } from '../marks.js';
import { growthOf, shownDifference } from '../pointers.js';
import type { ReadyScenario } from '../ready.js';
import { runBy } from '../replay.js';
import { ONE_DEGREE } from '../score/events.js';
import { authorityNow, gatherer } from '../score/facts.js';
import { outcomeOf } from '../score/outcome.js';
import { pilotOf, type Trainee } from '../trainee/fly.js';
import { secondsOf } from '../units.js';

/** Times in s from the start of the run; null where the thing did not happen. */
export interface SweepRow {
  readonly outcome: Outcome;
  readonly onsetS: number | null;
  readonly releaseS: number | null;
  /** Growth of the shown split at a release behind onset, deg. */
  readonly growthAtReleaseDeg: number | null;
  /** True split at the end, deg, and the roll authority it uses, %. */
  readonly finalSplitDeg: number;
  readonly rollAuthorityPct: number;
  /** Seconds for which the gear horn sounded, and for which the speed was above the limit of the moment. */
  readonly hornS: number;
  readonly overLimitS: number;
  /** First time that 1 degree was shown behind onset. */
  readonly oneDegreeS: number | null;
  /** First time that the growth reached its limit, and the roll authority used then, %. */
  readonly atLimitS: number | null;
  readonly rollAuthorityAtLimitPct: number | null;
  /** Of the states of the run. */
  readonly hash: string;
}

/** Flies one run of a scenario by a trainee. @param seed unsigned 32-bit whole number */
export function flyRow(scenario: ReadyScenario, airframe: Airframe, seed: number, trainee: Trainee): SweepRow {
  const world = expand(scenario, airframe, seed);
  const { fixed } = world;
  const gathered = gatherer(fixed, world.state, () => 0);
  const neverOverKt = lowestLimitKt(airframe);
  let hornTicks = 0;
  let overTicks = 0;
  let oneDegreeTick = -1;
  let limitTick = -1;
  let atLimitPct: number | null = null;
  const flown = runBy(world, pilotOf(scenario, airframe, seed, trainee, fixed), [], (s) => {
    gathered.see(s);
    if (s.latched.horn !== 0) hornTicks += 1;
    if (s.casKt > neverOverKt && s.casKt > limitKtNow(s, airframe)) overTicks += 1;
    if (s.latched.onsetTick < 0 || (oneDegreeTick >= 0 && limitTick >= 0)) return;
    const shownDeg = shownDifference(s, fixed.noise);
    if (oneDegreeTick < 0 && Math.abs(shownDeg) >= ONE_DEGREE) oneDegreeTick = s.tick - 1;
    if (limitTick < 0 && growthOf(s, shownDeg) >= fixed.task.limitDeg) {
      limitTick = s.tick - 1;
      atLimitPct = authorityNow(s, fixed);
    }
  });
  const facts = gathered.facts(flown.state);
  const { onsetTick, releaseTick } = facts;
  const at = (tick: number): number | null => (tick < 0 ? null : secondsOf(tick));
  return {
    outcome: outcomeOf(facts, fixed.task, flown.why, false),
    onsetS: at(onsetTick), releaseS: at(releaseTick),
    growthAtReleaseDeg: onsetTick >= 0 && releaseTick >= onsetTick ? facts.growthAtReleaseDeg : null,
    finalSplitDeg: facts.finalSplitDeg, rollAuthorityPct: facts.rollAuthorityPct,
    hornS: secondsOf(hornTicks), overLimitS: secondsOf(overTicks),
    oneDegreeS: at(oneDegreeTick), atLimitS: at(limitTick), rollAuthorityAtLimitPct: atLimitPct,
    hash: flown.hash,
  };
}
