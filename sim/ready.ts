/** A scenario with nothing left open: what depends on the airframe is filled in. */
import type { Airframe } from './files/airframe.js';
import type { Scenario } from './files/scenario.js';

type Start = Scenario['start'] & {
  /** Setting of the flap lever, deg. */
  flapLeverDeg: number;
  leadingEdge: 'in' | 'out';
};

type Recognition = NonNullable<Scenario['recognition']> & {
  /** Growth at which a release is late, deg. */
  limitDeg: number;
};

/** A scenario whose defaults from the airframe are filled in. Every ready scenario is a scenario as well. */
export type ReadyScenario = Omit<Scenario, 'start' | 'recognition' | 'pointerNoise'> & {
  start: Start;
  recognition?: Recognition | undefined;
  pointerNoise: boolean;
};

/**
 * Fills in what a scenario leaves to its airframe; what it says stays. Filling in twice changes nothing.
 * The flap lever stands at the largest setting at or below `flapDeg` (the lowest setting if there is none), the leading
 * edge is out with any flap, the limit of growth is the airframe's, and the pointers are noisy where the release is scored.
 */
export function ready(scenario: Scenario, airframe: Airframe): ReadyScenario {
  const { start, recognition, ...rest } = scenario;
  return {
    ...rest,
    start: {
      ...start,
      flapLeverDeg: start.flapLeverDeg ?? settingAtOrBelow(start.flapDeg, airframe),
      leadingEdge: start.leadingEdge ?? (start.flapDeg > 0 ? 'out' : 'in'),
    },
    ...(recognition && { recognition: { ...recognition, limitDeg: recognition.limitDeg ?? airframe.recognition.limitDeg } }),
    pointerNoise: scenario.pointerNoise ?? recognition !== undefined,
  };
}

/** Settings stand in rising order in the file. */
function settingAtOrBelow(flapDeg: number, { settings }: Airframe): number {
  const below = settings.filter((setting) => setting.deg <= flapDeg);
  return (below.at(-1) ?? settings[0])?.deg ?? 0;
}
