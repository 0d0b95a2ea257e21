/** Runs flown without a page: by an inputs file, or by a scripted trainee. */
import type { Command } from '../command.js';
import type { Inputs } from '../files/inputs.js';
import type { Airframe } from '../files/airframe.js';
import type { ReadyScenario } from '../ready.js';
import type { Fixed } from '../fixed.js';
import { runBy, type Pilot } from '../replay.js';
import { fly, judge, type Flight } from '../score/flight.js';
import { safeFtOf } from '../score/procedure.js';
import { ticksOf } from '../units.js';
import { manoeuvreKt } from '../marks.js';
import { TRAINEE_NUMBERS, type TraineeName, type TraineeNumbers } from './numbers.js';
import { scriptedTrainee } from './scripted.js';
import type { Sheet } from './sheet.js';
import { watcherOf, watchOf, type Watcher } from './watcher.js';

/** A run without a page. Commands of an inputs file may go on behind the end of the flight. */
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

/** A trainee by name, by numbers (a person is drawn from them by the seed), or a person as drawn. */
export type Trainee = TraineeName | TraineeNumbers | Watcher;

/** The person of a trainee: drawn by a seed, unless it is one already. */
export const watcherFor = (trainee: Trainee, seed: number): Watcher => {
  if (typeof trainee === 'string') return watcherOf(TRAINEE_NUMBERS[trainee], seed);
  return 'thresholdLogSd' in trainee ? watcherOf(trainee, seed) : trainee;
};

/** A pilot for the run of a seed: what a scripted trainee does with this scenario. */
export function pilotOf(scenario: ReadyScenario, airframe: Airframe, seed: number, trainee: Trainee, fixed: Fixed): Pilot {
  const sheet: Sheet = {
    scored: scenario.recognition !== undefined,
    manoeuvreKt: (settingDeg) => manoeuvreKt(airframe, fixed, settingDeg, scenario.start.icing),
    settingsDeg: airframe.settings.map(({ deg }) => deg),
    normalFirst: scenario.mainDrive === 'works',
    list: scenario.procedure.list === true,
    safeFt: safeFtOf(scenario),
    holdMostTicks: scenario.task.holdMostS === undefined ? Infinity : ticksOf(scenario.task.holdMostS),
    restTicks: ticksOf(scenario.task.restS ?? 0),
  };
  return scriptedTrainee(watchOf(watcherFor(trainee, seed), seed), fixed, sheet);
}

/** Flies a scripted trainee to the end by the scenario's own rule. */
export function flyTrainee(scenario: ReadyScenario, airframe: Airframe, seed: number, trainee: Trainee): Flown {
  const commands: Command[] = [];
  const flight = judge({ scenario, airframe, seed }, (world, see) =>
    runBy(world, pilotOf(scenario, airframe, seed, trainee, world.fixed), commands, see));
  return { commands, flight };
}
