/** What is flown on the bench: the sound document with all that was chosen, as plain data that a worker can be sent. */
import { readyFor, type Airframe, type ReadyScenario, type Scenario } from '../../../../sim/files/index.js';
import type { Trainee } from '../../../../sim/index.js';
import type { BenchProps } from '../bench.js';
import { role, seed, traineeOf, who } from './chosen.js';

export interface FlightOrder {
  /** Its drawn parameters are still open. */
  readonly scenario: Scenario;
  readonly airframe: Airframe;
  readonly trainee: Trainee;
  readonly seed: number;
}

/** Reads signals: whoever calls it in an effect follows them. null where nothing sound has been written yet. */
export function orderOf({ draft, kit }: Pick<BenchProps, 'draft' | 'kit'>): FlightOrder | null {
  const sound = draft.sound.value;
  if (sound?.kind !== 'scenario') return null;
  const { airframe: named } = sound.value;
  const airframe = typeof named === 'string' ? kit.airframes.get(named) : named;
  if (airframe === undefined) return null;
  const scenario = role.value === null ? sound.value : { ...sound.value, role: role.value };
  return { scenario, airframe, trainee: traineeOf(who.value), seed: seed.value };
}

/** The scenario of the very run. */
export const readyOf = ({ scenario, airframe, seed: dice }: FlightOrder): ReadyScenario => readyFor(scenario, airframe, dice);
