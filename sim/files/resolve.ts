/** The airframe of a scenario: in full, or by the name of a shipped one. Never a path. */
import type { Airframe } from './airframe.js';
import { misfits } from './fit.js';
import type { Misfit } from './misfit.js';
import type { Scenario } from './scenario.js';

/** Finds a shipped airframe by its name; undefined where there is none of that name. */
export type Lookup = (name: string) => Airframe | undefined;

/** The airframe a scenario asks for, or undefined when it names one that is not there. */
export function airframeOf({ airframe }: Scenario, lookup: Lookup): Airframe | undefined {
  return typeof airframe === 'string' ? lookup(airframe) : airframe;
}

/** What is wrong with a scenario once its airframe is known; a name that leads nowhere is all that is said of it. */
export function misfitsOf(scenario: Scenario, lookup: Lookup): Misfit[] {
  const airframe = airframeOf(scenario, lookup);
  return airframe === undefined
    ? [{ path: ['airframe'], allowed: 'the name of a shipped airframe, or an airframe in full' }]
    : misfits(scenario, airframe);
}
