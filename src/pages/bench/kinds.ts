/** The kinds of files that the bench writes. A further kind is a row here, and its panels in `write.tsx`. */
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
  /** As a heading over several. */
  readonly nouns: string;
  /** What is in it, in a few words. */
  readonly holds: string;
  /** What a sound one can do. */
  readonly can: string;
  readonly read: (text: string, file: string, known: Known) => Read<BenchValues[K]>;
  readonly shape: Shape;
  /** A sound file with nothing in it that need not be. */
  readonly blank: string;
}

export const KINDS: { readonly [K in BenchKind]: Kind<K> } = {
  scenario: {
    noun: 'scenario', nouns: 'Scenarios', holds: 'One run: what goes wrong, when, and what is scored.', can: 'be flown', shape: shapeOf(FILE_SCHEMAS.scenario), blank: emptyScenario,
    read: (text, file, { airframes }) => readScenario(text, file, (name) => airframes.get(name)),
  },
  set: {
    noun: 'set', nouns: 'Sets', holds: 'Many short runs of one scenario, to measure.', can: 'be flown', shape: shapeOf(FILE_SCHEMAS.set), blank: emptySet,
    read: (text, file, { airframes, drills }) => readSet(text, file, (name) => airframes.get(name), (name) => drills.get(name)),
  },
  trainee: {
    noun: 'trainee', nouns: 'Trainees', holds: 'Who flies a preview: when the eye sees, when the hand lets go.', can: 'fly', shape: shapeOf(FILE_SCHEMAS.trainee), blank: emptyTrainee,
    read: (text, file) => readTrainee(text, file),
  },
  airframe: {
    noun: 'airframe', nouns: 'Airframes', holds: 'Every number of the aeroplane and its drive.', can: 'be flown', shape: shapeOf(FILE_SCHEMAS.airframe), blank: emptyAirframe,
    read: (text, file) => readAirframe(text, file),
  },
};

export const BENCH_KINDS = Object.keys(KINDS) as readonly BenchKind[];

export const isBenchKind = (word: unknown): word is BenchKind => typeof word === 'string' && Object.hasOwn(KINDS, word);

/** Reads a text as a file of a kind. Never throws. */
export function readKind(kind: BenchKind, text: string, file: string, known: Known): Read<BenchValue> {
  const read = KINDS[kind].read(text, file, known);
  return read.ok ? { ok: true, value: { kind, value: read.value } as BenchValue } : read;
}
