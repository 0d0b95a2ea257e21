/** `sweep`: many runs of one scenario, and how their figures are spread. The same for any number of workers. */
import { type Part, PART_RUNS, partsOf, readyFor, type Rows, seedsOf, type SweepOrder, together } from '../../sim/index.js';
import { sweptOutput } from '../../sim/files/index.js';
import type { Values } from '../text/index.js';
import { crewOf, type FlownPart } from './crew.js';
import { type Io, printJson, printLines } from './io.js';
import { openDrill, openTrainee } from './opened.js';
import { progressOf } from './progress.js';
import { sweptLines } from './swept.js';
import { CANCELLED, DONE } from './trouble.js';
import { DEFAULT_TRAINEE } from './values.js';

export interface SweepOptions {
  seed: number;
  runs: number;
  workers: number;
  /** A name, or the path of a trainee file. */
  trainee?: string;
  /** Numbers of parameters. */
  set?: Values;
  json?: boolean;
}

export async function sweep(io: Io, typed: string, options: SweepOptions): Promise<number> {
  const { seed, runs, workers, trainee = DEFAULT_TRAINEE, json = false } = options;
  const { scenario, airframe } = openDrill(typed, options.set ?? {});
  const order: SweepOrder = { scenario, airframe, trainee: openTrainee(trainee), seeds: seedsOf(seed, runs) };
  const rows = await flown(io, order, workers);
  if (rows === null) return CANCELLED;
  const output = sweptOutput({ scenario: typed, trainee, seed }, readyFor(scenario, airframe, seed), airframe, rows);
  if (json) printJson(io, output);
  else printLines(io, sweptLines(output));
  return DONE;
}

/** All rows, or null when the sweep was cancelled. */
async function flown(io: Io, order: SweepOrder, workers: number): Promise<Rows | null> {
  const parts = partsOf(order.seeds.length, PART_RUNS);
  const count = parts.reduce((sum, part) => sum + runsOf(part), 0);
  const progress = progressOf(io, count, 'runs');
  const cancelled = new AbortController();
  const cancel = (): void => cancelled.abort(new Error('cancelled'));
  const done: FlownPart[] = [];
  process.once('SIGINT', cancel).once('SIGTERM', cancel);
  try {
    await crewOf(workers).fly(order, parts, (part) => {
      done.push(part);
      progress.add(runsOf(part.part));
    }, cancelled.signal);
    progress.end();
    return together(done);
  } catch (problem) {
    progress.end();
    if (!cancelled.signal.aborted) throw problem;
    io.err(`Cancelled after ${done.reduce((sum, { part }) => sum + runsOf(part), 0)} of ${count} runs; nothing is told of them.\n`);
    return null;
  } finally {
    process.off('SIGINT', cancel).off('SIGTERM', cancel);
  }
}

const runsOf = ({ from, to }: Part): number => to - from;
