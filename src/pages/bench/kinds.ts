/** The kinds of files that the bench writes. A further kind is a row here, and its panel in `bench.tsx`. */
import {
  type Airframe, FILE_SCHEMAS, type Scenario, type SetFile, type Shape, shapeOf, type TraineeFile,
} from '../../../sim/files/index.js';
import { type Read, readAirframe, readScenario, readSet, readTrainee } from '../../text/index.js';
import { emptyAirframe, emptyScenario, emptySet, emptyTrainee } from './blank.js';

/** What a sound file of each kind comes to. */
interface BenchValues {
  scenario: Scenario;
  set: SetFile;
  trainee: TraineeFile;
  airframe: Airframe;
}
export type BenchKind = keyof BenchValues;
export type BenchValue = { [K in BenchKind]: { readonly kind: K; readonly value: BenchValues[K] } }[BenchKind];

/** What a file may refer to by its name. */
export interface Known {
  readonly airframes: ReadonlyMap<string, Airframe>;
  readonly drills: ReadonlyMap<string, Scenario>;
}

interface Kind<K extends BenchKind> {
  /** As a word within a sentence. */
  readonly noun: string;
  readonly read: (text: string, file: string, known: Known) => Read<BenchValues[K]>;
  readonly shape: Shape;
  /** A sound file with nothing in it that need not be. */
  readonly blank: string;
}

export const KINDS: { readonly [K in BenchKind]: Kind<K> } = {
  scenario: {
    noun: 'scenario', shape: shapeOf(FILE_SCHEMAS.scenario), blank: emptyScenario,
    read: (text, file, { airframes }) => readScenario(text, file, (name) => airframes.get(name)),
  },
  set: {
    noun: 'set', shape: shapeOf(FILE_SCHEMAS.set), blank: emptySet,
    read: (text, file, { airframes, drills }) => readSet(text, file, (name) => airframes.get(name), (name) => drills.get(name)),
  },
  trainee: { noun: 'trainee', shape: shapeOf(FILE_SCHEMAS.trainee), blank: emptyTrainee, read: (text, file) => readTrainee(text, file) },
  airframe: { noun: 'airframe', shape: shapeOf(FILE_SCHEMAS.airframe), blank: emptyAirframe, read: (text, file) => readAirframe(text, file) },
};

export const BENCH_KINDS = Object.keys(KINDS) as readonly BenchKind[];

export const isBenchKind = (word: unknown): word is BenchKind => typeof word === 'string' && Object.hasOwn(KINDS, word);

/** Reads a text as a file of a kind. Never throws. */
export function readKind(kind: BenchKind, text: string, file: string, known: Known): Read<BenchValue> {
  const read = KINDS[kind].read(text, file, known);
  return read.ok ? { ok: true, value: { kind, value: read.value } as BenchValue } : read;
}
