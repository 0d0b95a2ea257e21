/** The run of a practice: that of a set, with one rate of its own and few quiet runs, so that there is something to practise. */
import { ln } from '../portable.js';
import type { ReadyScenario } from '../ready.js';
import type { ReadySet } from '../set/ready.js';
import { ratioOf, type PracticeRun } from './staircase.js';

/** Share of runs in which nothing happens: fewer than where it is measured. */
export const QUIET_SHARE = 0.12;

/** Told at once: the run ends so long behind its release, s. The sides have stopped by then. */
const AFTER_S = 2;

/**
 * @param of a set on whose run the practice is flown
 * @param stopDegPerS rate at which a split opens there when a side stops, deg/s
 * @throws RangeError for a set without a rate
 */
export function practiceScenario(of: ReadySet, stopDegPerS: number, { degPerS }: PracticeRun): ReadyScenario {
  const [first] = of.scenarios;
  if (first === undefined) throw new RangeError('a set has at least one rate');
  const { set } = of;
  return {
    ...first,
    task: { ...first.task, afterS: AFTER_S },
    faults: [{
      name: 'lag', kind: 'lag', side: 'drawn', ratio: Math.max(-4, Math.min(0.95, ratioOf(degPerS, stopDegPerS))),
      when: { hazardPerS: -ln(QUIET_SHARE) / set.onsetForS, hazardFromS: set.onsetFromS, hazardForS: set.onsetForS },
    }],
    recognition: { limitDeg: set.limitDeg, seenDeg: set.seenDeg, measuring: false },
  };
}
