/** The figures a run is judged by, gathered while its states go by. */
import type { Fixed } from '../fixed.js';
import { dynamicPressure } from '../flight/motion.js';
import { rollAuthorityPct } from '../flight/roll.js';
import { growth, growthOf, shownDifference } from '../pointers.js';
import { ONE_DEGREE } from './events.js';
import { failureWatcher, type Failure } from './failure.js';
import type { State } from '../state.js';

export interface Facts {
  readonly onsetTick: number;
  /** Tick of the scored release and the part of it that had passed at the stamp; -1 for none. */
  readonly releaseTick: number;
  readonly releaseFraction: number;
  /** The release was at the last setting of the task. */
  readonly arrived: boolean;
  readonly growthAtReleaseDeg: number;
  readonly splitAtReleaseDeg: number;
  readonly growthAtEndDeg: number;
  readonly splitCallTick: number;
  /** Most that had grown by the first call of a split, deg; 0 without one. */
  readonly growthAtCallDeg: number;
  readonly failedCallTick: number;
  readonly failure: Failure;
  /** First arrival at any setting with 1 degree or more shown and no call within 5 s; -1 for none. */
  readonly missedArrivalTick: number;
  /** Last press of the drive; -1 for none. */
  readonly pressTick: number;
  readonly finalSplitDeg: number;
  readonly rollAuthorityPct: number;
  readonly settingsReached: number;
}

export interface Gatherer {
  see(state: State): void;
  facts(end: State): Facts;
}

/** A call counts for a release or an arrival up to this long behind it, ticks. */
const CALL_TICKS = 500;

/** Whether a call came at most 5 s behind a moment; one before it counts as well. */
export const calledBehind = (callTick: number, tick: number): boolean => callTick >= 0 && callTick - tick <= CALL_TICKS;

/** Roll authority used by the true split of a state, %. */
export const authorityNow = (s: State, fixed: Fixed): number =>
  rollAuthorityPct(fixed.flight, dynamicPressure(s.speedMps, s.heightM), s.leftDeg, s.rightDeg, s.leadingEdge);

/**
 * Gathers from the start of a run.
 * @param fractionAt part of a tick that had passed when its release was stamped, 0 to below 1; 0 without a page
 */
export function gatherer(fixed: Fixed, start: State, fractionAt: (tick: number) => number): Gatherer {
  let shownBefore = shownDifference(start, fixed.noise);
  let growthBefore = 0;
  let releaseTick = -1;
  let fraction = 0;
  let arrived = false;
  let growthAt = 0;
  let splitAt = 0;
  let mostGrown = 0;
  let growthAtCall = 0;
  let settingNext = start.latched.settingNext;
  const apartArrivals: number[] = [];
  const failures = failureWatcher();
  return {
    see(s) {
      const shown = shownDifference(s, fixed.noise);
      const grown = growthOf(s, shown);
      mostGrown = Math.max(mostGrown, grown);
      failures.see(s);
      if (s.latched.splitCallTick === s.tick - 1 && s.latched.splitCallTick >= 0) growthAtCall = mostGrown;
      if (s.latched.settingNext !== settingNext) {
        settingNext = s.latched.settingNext;
        if (Math.abs(shown) >= ONE_DEGREE) apartArrivals.push(s.tick - 1);
      }
      if (s.latched.releaseTick !== releaseTick) {
        releaseTick = s.latched.releaseTick;
        fraction = fractionAt(releaseTick);
        // Linear between the ends of the tick that holds the stamp.
        growthAt = growthBefore + (grown - growthBefore) * fraction;
        splitAt = Math.abs(shownBefore + (shown - shownBefore) * fraction);
        arrived = s.latched.settingNext >= fixed.task.settings.length;
      }
      shownBefore = shown;
      growthBefore = grown;
    },
    facts: (end) => ({
      onsetTick: end.latched.onsetTick,
      releaseTick, releaseFraction: fraction, arrived,
      growthAtReleaseDeg: growthAt, splitAtReleaseDeg: splitAt,
      growthAtEndDeg: growth(end, fixed.noise),
      splitCallTick: end.latched.splitCallTick, growthAtCallDeg: growthAtCall,
      failedCallTick: end.latched.failedCallTick, failure: failures.failure(),
      missedArrivalTick: apartArrivals.find((tick) => !calledBehind(end.latched.splitCallTick, tick)) ?? -1,
      pressTick: end.latched.pressTick,
      finalSplitDeg: Math.abs(end.leftDeg - end.rightDeg),
      rollAuthorityPct: authorityNow(end, fixed),
      settingsReached: end.latched.settingNext,
    }),
  };
}
