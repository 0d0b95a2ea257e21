/** `run`: flies a scenario without a page. */
import { resolve } from 'node:path';
import { flyInputs, flyTrainee, type Flown, MODEL_VERSION, traceRows } from '../../sim/index.js';
import { type Airframe, type ReadyScenario, scriptedRecord } from '../../sim/files/index.js';
import type { Values } from '../text/index.js';
import { flownLines, flownOutput } from './flown.js';
import { type Io, printJson, printLines } from './io.js';
import { openInputs, openScenario, openSet, openTrainee } from './opened.js';
import { writeText } from './paper.js';
import { runSet } from './run-set.js';
import { version } from './places.js';
import { DONE, Trouble } from './trouble.js';
import { DEFAULT_TRAINEE } from './values.js';

export interface RunOptions {
  seed: number;
  /** A name, or the path of a trainee file. */
  trainee?: string;
  /** Path of an inputs file. */
  inputs?: string;
  /** Ticks between two rows. */
  trace?: number;
  /** Where to write the record: a file, for a set a folder. */
  record?: string;
  /** Numbers of parameters. */
  set?: Values;
  json?: boolean;
}

export function run(io: Io, typed: string, options: RunOptions): number {
  const { seed, json = false } = options;
  for (const read of [typed, options.inputs, options.trainee]) {
    if (options.record !== undefined && read !== undefined && resolve(read) === resolve(options.record)) {
      throw new Trouble(`${options.record} is read by this run; the record needs a file of its own.`);
    }
  }
  const set = openSet(typed);
  if (set !== null) {
    if (options.set !== undefined) throw new Trouble(`${typed} is a set: --set is for the parameters of one scenario.`);
    if (options.inputs !== undefined || options.trace !== undefined) throw new Trouble(`${typed} is a set: --inputs and --trace are for one run.`);
    if (options.trainee === undefined) sayWho(io);
    return runSet(io, typed, set, { seed, trainee: options.trainee ?? DEFAULT_TRAINEE, record: options.record, json });
  }
  const { scenario, airframe } = openScenario(typed, seed, options.set);
  const flown = options.inputs === undefined
    ? byTrainee(io, scenario, airframe, seed, options.trainee)
    : flyInputs(scenario, airframe, seed, openInputs(options.inputs, airframe));
  const { commands, flight } = flown;
  if (options.record !== undefined) {
    const { end, hash, outcome, score } = flight;
    const record = scriptedRecord({ model: MODEL_VERSION, app: `evenhand ${version()}`, seed, airframe, scenario, commands, end, hash, outcome, score });
    writeText(options.record, `${JSON.stringify(record)}\n`);
    io.err(`Record written: ${options.record}\n`);
  }
  const request = { scenario, airframe, seed, whole: options.inputs !== undefined };
  const trace = options.trace === undefined ? undefined : traceRows(request, commands, flight.ticks, options.trace);
  const output = flownOutput(typed, flight, trace);
  if (json) printJson(io, output);
  else printLines(io, flownLines(output, scenario.recognition?.limitDeg ?? null));
  return DONE;
}

function byTrainee(io: Io, scenario: ReadyScenario, airframe: Airframe, seed: number, name: string | undefined): Flown {
  if (name === undefined) sayWho(io);
  return flyTrainee(scenario, airframe, seed, openTrainee(name ?? DEFAULT_TRAINEE));
}

const sayWho = (io: Io): void => io.err(`Flown by the trainee "${DEFAULT_TRAINEE}"; --trainee or --inputs names another.\n`);
