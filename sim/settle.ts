/** Parameters that are drawn get their numbers from the seed of a run, before anything else is worked out from the scenario. */
import { dice } from './dice.js';
import type { Airframe } from './files/airframe.js';
import type { Parameter } from './files/parameter.js';
import type { Scenario } from './files/scenario.js';
import { ready, type ReadyScenario } from './ready.js';

type Path = readonly (string | number)[];

/** A parameter that is still to be drawn, and the places whose number it is. */
export interface OpenParameter extends Parameter {
  readonly at?: readonly Path[];
}

const STEP = 0.01;

/** Values that a parameter can take, from min on; the last is at or below max. */
export const valuesCount = ({ min, max, step = STEP }: Pick<Parameter, 'min' | 'max' | 'step'>): number => Math.floor((max - min) / step + 1e-9) + 1;

/** The k-th of them, from 0; rounded to a millionth, so that hundredths stay hundredths. */
export const valueAt = ({ min, step = STEP }: Pick<Parameter, 'min' | 'step'>, k: number): number => Math.floor((min + k * step) * 1e6 + 0.5) / 1e6;

/** The number of a drawn parameter in the run of a seed; a stream of dice for each name, so that one more moves no other. */
export function drawnValue(parameter: Pick<Parameter, 'name' | 'min' | 'max' | 'step'>, seed: number): number {
  const count = valuesCount(parameter);
  return valueAt(parameter, Math.min(count - 1, Math.floor(dice(seed, `parameter ${parameter.name}`).uniform() * count)));
}

/**
 * The scenario of one run: what was left to be drawn is drawn, and nothing in it asks for a parameter any more.
 * One without parameters comes back as it is. @param seed unsigned 32-bit whole number
 */
export function settled<T extends Scenario>(scenario: T, seed: number): T {
  const { parameters, ...rest } = scenario;
  if (parameters === undefined) return scenario;
  let whole: unknown = rest;
  for (const parameter of parameters as readonly OpenParameter[]) {
    const value = drawnValue(parameter, seed);
    for (const path of parameter.at ?? []) whole = withNumber(whole, path, value);
  }
  return whole as T;
}

/** A scenario made ready for the run of a seed. */
export const readyFor = (scenario: Scenario, airframe: Airframe, seed: number): ReadyScenario => ready(settled(scenario, seed), airframe);

/** A copy with a number at a path; what lies beside the path is shared. */
function withNumber(from: unknown, path: Path, value: number): unknown {
  const [first, ...rest] = path;
  if (first === undefined) return value;
  if (Array.isArray(from)) return from.map((item: unknown, index) => (index === first ? withNumber(item, rest, value) : item));
  return { ...from as object, [first]: withNumber((from as Record<string, unknown>)[first], rest, value) };
}
