/** Runs flown without a page: by an inputs file, or by a scripted trainee. */
import type { Command } from '../command.js';
import type { Inputs } from '../files/inputs.js';
import type { Airframe } from '../files/airframe.js';
import type { ReadyScenario } from '../ready.js';
import { runBy } from '../replay.js';
import { fly, judge, type Flight } from '../score/flight.js';
import { ticksOf } from '../units.js';
import { scriptedTrainee, type TraineeName } from './scripted.js';

export interface Flown {
  readonly commands: readonly Command[];
  readonly flight: Flight;
}

/** Commands of an inputs file, in file order within a tick. */
export const commandsOf = (inputs: Inputs): Command[] =>
  inputs.map(({ atS, ...act }, seq) => ({ ...act, tick: ticksOf(atS), rank: 2, seq }) as Command);

/** Flies an inputs file. The run lasts its whole `limitS`; the outcome is judged as for a run that ends by its rule. */
export function flyInputs(scenario: ReadyScenario, airframe: Airframe, seed: number, inputs: Inputs): Flown {
  const commands = commandsOf(inputs);
  return { commands, flight: fly({ scenario, airframe, seed, whole: true }, commands) };
}

/** Flies a scripted trainee to the end by the scenario's own rule. */
export function flyTrainee(scenario: ReadyScenario, airframe: Airframe, seed: number, trainee: TraineeName): Flown {
  const commands: Command[] = [];
  const flight = judge({ scenario, airframe, seed }, (world, see) =>
    runBy(world, scriptedTrainee(trainee, world.fixed), commands, see));
  return { commands, flight };
}
