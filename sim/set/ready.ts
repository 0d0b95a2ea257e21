/** A set with nothing left open, and the scenario of each of its rates. */
import type { Airframe } from '../files/airframe.js';
import type { Scenario } from '../files/scenario.js';
import type { SetFile } from '../files/set.js';
import { ln } from '../portable.js';
import { ready, type ReadyScenario } from '../ready.js';

/** Said on brief and report of every measuring run, and nowhere else would it be right. */
export const MEASURING = 'measuring: in the aeroplane let go in doubt';
/** Said of a set in which a side is driven back. */
export const LABORATORY = 'laboratory set: a side driven back is an impossible picture';

/** No side is driven back: every picture of the set can happen. */
export const isTrueDrive = ({ rates }: Pick<SetFile, 'rates'>): boolean => rates.every(({ ratio }) => ratio >= 0);

/** What is said of a set wherever it is told. */
export const wordsOf = ({ set }: Pick<ReadySet, 'set'>): string[] =>
  [MEASURING, ...(isTrueDrive(set) ? [] : [LABORATORY])];

type Onsets = NonNullable<SetFile['onsets']>;

/** A set whose scenario is at hand and whose counts are filled in. */
export interface ReadySet {
  readonly set: SetFile;
  readonly airframe: Airframe;
  /** The run of each rate, in the order of the rates. */
  readonly scenarios: readonly ReadyScenario[];
  /** Chance a second of an onset inside its window, so that the share of quiet runs comes out. */
  readonly hazardPerS: number;
  readonly onsets: Onsets;
}

/** Runs with an onset: what is expected, a tenth more or less; at each rate at least four fifths of its part, and 4 are enough. */
function onsetsOf({ onsets, runs, quiet, rates }: SetFile): Onsets {
  if (onsets !== undefined) return onsets;
  const expected = runs * (1 - quiet);
  const shares = rates.reduce((sum, { share }) => sum + share, 0);
  const least = Math.min(...rates.map(({ share }) => expected * share / shares));
  return {
    from: Math.floor(0.9 * expected), to: Math.min(runs, Math.floor(1.1 * expected + 0.999999)),
    perRate: Math.min(4, Math.floor(0.8 * least + 1e-9)),
  };
}

/** Fills a set in. The door has made sure that everything fits. */
export function readySet(set: SetFile, base: Scenario, airframe: Airframe): ReadySet {
  const hazardPerS = -ln(set.quiet) / set.onsetForS;
  const { limitDeg, seenDeg } = set;
  const scenarios = set.rates.map(({ ratio }) => ready({
    ...base,
    airframe: airframe.name === base.airframe ? base.airframe : airframe,
    task: { ...base.task, legS: set.legS },
    faults: [{
      name: 'lag', kind: 'lag', side: 'drawn', ratio,
      when: { hazardPerS, hazardFromS: set.onsetFromS, hazardForS: set.onsetForS },
    }],
    recognition: { limitDeg, seenDeg, measuring: true },
  }, airframe));
  return { set, airframe, scenarios, hazardPerS, onsets: onsetsOf(set) };
}
