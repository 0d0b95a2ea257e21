/** `run` for a set: one scripted person flies all its runs. Rows, counts and points; nothing about the person. */
import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { countsOf, drawSet, flyTrainee, MODEL_VERSION, pointsOf, watcherFor, wordsOf, type ReadySet, type SetRun } from '../../sim/index.js';
import { scriptedRecord, type SetOutput } from '../../sim/files/index.js';
import { columns } from './columns.js';
import { type Io, printJson, printLines } from './io.js';
import { openTrainee } from './opened.js';
import { writeText } from './paper.js';
import { version } from './places.js';
import { DONE, Trouble } from './trouble.js';

export interface RunSetOptions {
  seed: number;
  /** A name, or the path of a trainee file. */
  trainee: string;
  /** Folder for the records. */
  record?: string | undefined;
  json: boolean;
}

export function runSet(io: Io, typed: string, of: ReadySet, { seed, trainee, record, json }: RunSetOptions): number {
  const person = watcherFor(openTrainee(trainee), seed);
  const runs = drawn(of, seed);
  const flown = runs.map((run) => ({ run, ...flyTrainee(of.scenarios[run.rate] as ReadySet['scenarios'][number], of.airframe, run.seed, person) }));
  if (record !== undefined) {
    makeFolder(record);
    for (const one of flown) writeText(join(record, fileName(one.run, runs.length)), recordText(of, one));
    io.err(`${flown.length} records written: ${record}\n`);
  }
  const output: SetOutput = {
    set: typed, words: wordsOf(of), trainee, seed,
    runs: flown.map(({ run, flight: { hash, outcome, score } }) => ({
      run: run.place + 1, block: run.block + 1, ratio: of.set.rates[run.rate]?.ratio ?? 0, seed: run.seed, hash, outcome,
      onsetS: score.onsetS, releaseS: score.releaseS, growthAtReleaseDeg: score.growthAtReleaseDeg,
      finalSplitDeg: score.finalSplitDeg, rollAuthorityPct: score.rollAuthorityPct, points: pointsOf(outcome, score.growthAtReleaseDeg, of.set),
    })),
    counts: countsOf(of, flown.map(({ flight: { outcome, score } }) => ({ outcome, growthAtReleaseDeg: score.growthAtReleaseDeg }))),
  };
  if (json) printJson(io, output);
  else printLines(io, lines(of, output));
  return DONE;
}

function drawn(of: ReadySet, seed: number): SetRun[] {
  try {
    return drawSet(of, seed);
  } catch (problem) {
    throw new Trouble(`The set cannot be drawn: ${problem instanceof Error ? problem.message : String(problem)}.`);
  }
}

function makeFolder(path: string): void {
  try {
    mkdirSync(path, { recursive: true });
  } catch {
    throw new Trouble(`${path}: a folder that cannot be made`);
  }
}

const fileName = ({ place }: SetRun, runs: number): string => `run-${String(place + 1).padStart(String(runs).length, '0')}.json`;

function recordText(of: ReadySet, { run, commands, flight }: { run: SetRun } & ReturnType<typeof flyTrainee>): string {
  const { end, hash, outcome, score } = flight;
  const scenario = of.scenarios[run.rate] as ReadySet['scenarios'][number];
  return `${JSON.stringify(scriptedRecord({ model: MODEL_VERSION, app: `evenhand ${version()}`, seed: run.seed, airframe: of.airframe, scenario, commands, end, hash, outcome, score }))}\n`;
}

const seconds = (s: number | null): string => (s === null ? '' : s.toFixed(2));

function lines({ set }: ReadySet, { words, trainee, seed, runs, counts }: SetOutput): string[] {
  const { caught, late, missed, undecided, falseRelease, held } = counts;
  const rows = runs.map((one) => [
    String(one.run), String(one.block), String(one.ratio), seconds(one.onsetS), seconds(one.releaseS), seconds(one.growthAtReleaseDeg), one.outcome, one.points.toFixed(0),
  ]);
  return [
    set.title, ...words, `Flown by "${trainee}", seed ${seed}`, '',
    ...columns([['run', 'block', 'ratio', 'onset s', 'release s', 'growth deg', 'outcome', 'points'], ...rows], [0, 1, 2, 3, 4, 5, 7]), '',
    `${counts.runs} runs: caught ${caught}, late ${late}, missed ${missed}, undecided ${undecided}, false releases ${falseRelease}, held ${held}`,
    `points ${counts.points.toFixed(0)}, ${counts.meanPoints.toFixed(1)} a run`,
  ];
}
