/** Does a set fit its scenario? What keeps it from being flown; whether it measures anything is a matter for its gates. */
import { asks } from '../score/asking.js';
import { readySet } from '../set/ready.js';
import type { Airframe } from './airframe.js';
import { misfits } from './fit.js';
import { broken, type Misfit } from './misfit.js';
import { airframeOf, type Lookup } from './resolve.js';
import type { Scenario } from './scenario.js';
import type { SetFile } from './set.js';

/** Finds a shipped drill by its name; undefined where there is none of that name. */
export type ScenarioLookup = (name: string) => Scenario | undefined;

/** The scenario and the airframe of a set, or what stands in place of them. */
export function baseOf(set: SetFile, airframes: Lookup, scenarios: ScenarioLookup): { base: Scenario; airframe: Airframe } | Misfit {
  const base = typeof set.scenario === 'string' ? scenarios(set.scenario) : set.scenario;
  if (base === undefined) return { path: ['scenario'], allowed: 'the name of a shipped drill, or a scenario in full' };
  const airframe = airframeOf(base, airframes);
  return airframe === undefined
    ? { path: ['scenario', ...(typeof set.scenario === 'string' ? [] : ['airframe'])], allowed: 'the name of a shipped airframe, or an airframe in full' }
    : { base, airframe };
}

/** Everything that keeps a set from being flown. */
export function setMisfits(set: SetFile, airframes: Lookup, scenarios: ScenarioLookup): Misfit[] {
  const found = baseOf(set, airframes, scenarios);
  if (!('base' in found)) return [found];
  const { base, airframe } = found;
  const inside = typeof set.scenario !== 'string';
  const at = (path: string): string => (inside ? `scenario.${path}` : 'scenario');
  const onsets = readySet(set, base, airframe).onsets;
  const loaded = base.events.some(asks);
  return [
    ...misfits(base, airframe).map(({ path, allowed }) => ({ path: inside ? ['scenario', ...path] : ['scenario'], allowed })),
    ...broken([
      [base.parameters === undefined, at('parameters'), 'no parameter that is drawn'],
      [base.faults.length === 0, at('faults'), 'no fault: the set has its own'],
      [base.recognition === undefined, at('recognition'), 'no recognition: the set says what is scored'],
      [base.task.settings.length === 1, at('task.settings'), 'one setting'],
      [base.task.legS === undefined, at('task.legS'), 'no leg: the set has its own'],
      [base.task.limitS >= set.legS + 20, at('task.limitS'), `at least legS and 20 s to begin (${set.legS + 20} s)`],
      [loaded === (set.load === 'loaded'), 'load', loaded ? '"loaded": the scenario wants answers beside the flaps' : '"calm": the scenario wants nothing beside the flaps'],
      [onsets.to <= set.runs && onsets.perRate * set.rates.length <= onsets.to, 'onsets', `at most ${set.runs} runs with an onset, enough of them for every rate`],
    ]),
  ];
}
