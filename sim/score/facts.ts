/** The figures a run is judged by, gathered while its states go by. */
import type { Fixed } from '../fixed.js';
import { dynamicPressure } from '../flight/motion.js';
import { rollAuthorityPct } from '../flight/roll.js';
import { growth, shownDifference } from '../pointers.js';
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
  readonly repressTick: number;
  readonly finalSplitDeg: number;
  readonly rollAuthorityPct: number;
  readonly settingsReached: number;
}

export interface Gatherer {
  see(state: State): void;
  facts(end: State): Facts;
}

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
  return {
    see(s) {
      const shown = shownDifference(s, fixed.noise);
      const grown = growth(s, fixed.noise);
      if (s.releaseTick !== releaseTick) {
        releaseTick = s.releaseTick;
        fraction = fractionAt(releaseTick);
        // Linear between the ends of the tick that holds the stamp.
        growthAt = growthBefore + (grown - growthBefore) * fraction;
        splitAt = Math.abs(shownBefore + (shown - shownBefore) * fraction);
        arrived = s.settingNext >= fixed.task.settings.length;
      }
      shownBefore = shown;
      growthBefore = grown;
    },
    facts: (end) => ({
      onsetTick: end.onsetTick,
      releaseTick, releaseFraction: fraction, arrived,
      growthAtReleaseDeg: growthAt, splitAtReleaseDeg: splitAt,
      growthAtEndDeg: growth(end, fixed.noise),
      splitCallTick: end.splitCallTick, repressTick: end.repressTick,
      finalSplitDeg: Math.abs(end.leftDeg - end.rightDeg),
      rollAuthorityPct: authorityNow(end, fixed),
      settingsReached: end.settingNext,
    }),
  };
}
