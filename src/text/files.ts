/** The kinds of files by name: each from its text to its data, or to every problem in it. */
import {
  type Airframe, airframeSchema, canonical, type CourseFile, courseMisfits, courseSchema, type Inputs, inputsSchema, leverMisfits, type Lookup, misfitsOf, recordMisfits, recordSchema, type RunRecord,
  type Misfit, type Scenario, type ScenarioLookup, scenarioSchema, type SetFile, type SetLookup, setMisfits, setSchema, type Shelves, type TraineeFile, traineeSchema,
} from '../../sim/files/index.js';
import { misfit } from './issues.js';
import { type Problem, type Read, type Refused, refuse } from './problem.js';
import { type Parsed, parseText, readAs } from './read.js';
import { readSettled, type Values } from './settle.js';
import { locator } from './values.js';

/** A file of any kind, told by its shape. */
export type AnyFile =
  | { kind: 'airframe'; value: Airframe }
  | { kind: 'scenario'; value: Scenario }
  | { kind: 'inputs'; value: Inputs }
  | { kind: 'record'; value: RunRecord }
  | { kind: 'trainee'; value: TraineeFile }
  | { kind: 'set'; value: SetFile }
  | { kind: 'course'; value: CourseFile };
type Kind = AnyFile['kind'];

const nothing = () => [];
const noDrills: ScenarioLookup = () => undefined;
const noSets: SetLookup = () => undefined;

const readers = {
  airframe: (parsed: Parsed): Read<Airframe> => readAs(parsed, airframeSchema, nothing),
  scenario: (parsed: Parsed, lookup: Lookup, values: Values): Read<Scenario> =>
    readSettled<Scenario>(parsed, scenarioSchema, (scenario) => misfitsOf(scenario, lookup), values, namedAirframe(parsed, lookup)),
  inputs: (parsed: Parsed, airframe: Airframe | null): Read<Inputs> => readAs(parsed, inputsSchema, (inputs) => (airframe === null ? [] : leverMisfits(inputs, airframe))),
  record: (parsed: Parsed): Read<RunRecord> => inFull(parsed, readAs(parsed, recordSchema, recordMisfits)),
  trainee: (parsed: Parsed): Read<TraineeFile> => readAs(parsed, traineeSchema, nothing),
  set: (parsed: Parsed, lookup: Lookup, drills: ScenarioLookup): Read<SetFile> => readAs(parsed, setSchema, (set) => setMisfits(set, lookup, drills)),
  course: (parsed: Parsed, airframes: Lookup, drills: ScenarioLookup, sets: SetLookup): Read<CourseFile> =>
    readAs(parsed, courseSchema, (course) => courseMisfits(course, { airframes, drills, sets })),
};

/** The shipped airframe that a scenario names; undefined where it names none. */
function namedAirframe({ value }: Parsed, lookup: Lookup): Airframe | undefined {
  const name = value !== null && typeof value === 'object' && !Array.isArray(value) ? value['airframe'] : undefined;
  return typeof name === 'string' ? lookup(name) : undefined;
}

/** A digest is taken of what is written, so a record may leave no default to be filled in. */
function inFull(parsed: Parsed, read: Read<RunRecord>): Read<RunRecord> {
  if (!read.ok || canonical(parsed.value) === canonical(read.value)) return read;
  const say = () => ({ path: '', found: 'a record with keys left out', allowed: 'every key in full, defaults included' });
  return refuse(parsed.file, parsed.text, [{ offset: parsed.root.offset, say }]);
}

/** Reads an airframe file. `file` names it in problems. */
export const readAirframe = (text: string, file: string): Read<Airframe> => after(parseText(text, file), readers.airframe);

/**
 * Reads a scenario file and checks that it can be flown; `lookup` finds the shipped airframes. Its parameters have the
 * numbers of `values`, else their defaults; those that are drawn are left to `settled`.
 */
export const readScenario = (text: string, file: string, lookup: Lookup, values: Values = {}): Read<Scenario> =>
  after(parseText(text, file), (parsed) => readers.scenario(parsed, lookup, values));

/** Reads an inputs file. @param airframe whose settings the lever is moved to; null where that is not known */
export const readInputs = (text: string, file: string, airframe: Airframe | null = null): Read<Inputs> => after(parseText(text, file), (parsed) => readers.inputs(parsed, airframe));

/** Reads a record file. That it follows from its inputs is a matter for `verify`. */
export const readRecord = (text: string, file: string): Read<RunRecord> => after(parseText(text, file), readers.record);

/** Reads a trainee file. */
export const readTrainee = (text: string, file: string): Read<TraineeFile> => after(parseText(text, file), readers.trainee);

/** Reads a set file and checks that it can be flown. That it measures anything is a matter for its gates. */
export const readSet = (text: string, file: string, lookup: Lookup, drills: ScenarioLookup): Read<SetFile> =>
  after(parseText(text, file), (parsed) => readers.set(parsed, lookup, drills));

/** Reads a course file and checks that it holds together: steps, needs, gates that their sets can show. */
export const readCourse = (text: string, file: string, { airframes, drills, sets }: Shelves): Read<CourseFile> =>
  after(parseText(text, file), (parsed) => readers.course(parsed, airframes, drills, sets));

/** Whether a text is meant to be a set, right or wrong. */
export function looksLikeSet(text: string, file: string): boolean {
  const read = parseText(text, file);
  return read.ok && kindOf(read.parsed) === 'set';
}

/** What was found wrong with a set that can be flown, placed in its text. */
export function setProblems(text: string, file: string, misfits: readonly Misfit[]): Problem[] {
  const read = parseText(text, file);
  if (!read.ok) return read.problems;
  const { parsed } = read;
  const source = { text: parsed.text, locate: locator(parsed.root), schema: setSchema };
  return refuse(file, parsed.text, misfits.map(({ path, allowed }) => misfit(source, path, allowed))).problems;
}

/** Reads a file of any kind. `drills` and `sets` find the shipped ones that a set or a course may name. */
export function readAny(text: string, file: string, lookup: Lookup, drills: ScenarioLookup = noDrills, sets: SetLookup = noSets): Read<AnyFile> {
  return after(parseText(text, file), (parsed): Read<AnyFile> => {
    const kind = kindOf(parsed);
    if (kind === null) return refuse(file, parsed.text, [...parsed.findings, unknownKind(parsed)]);
    const read = kind === 'scenario' ? readers.scenario(parsed, lookup, {}) : kind === 'inputs' ? readers.inputs(parsed, null) : readers[kind](parsed, lookup, drills, sets);
    return read.ok ? { ok: true, value: { kind, value: read.value } as AnyFile } : read;
  });
}

function after<T>(parsed: { ok: true; parsed: Parsed } | Refused, read: (parsed: Parsed) => Read<T>): Read<T> {
  return parsed.ok ? read(parsed.parsed) : parsed;
}

/** What kind of file this is meant to be: told by the one key that only this kind has. */
function kindOf({ value }: Parsed): Kind | null {
  if (Array.isArray(value)) return 'inputs';
  if (value === null || typeof value !== 'object') return null;
  if ('digest' in value || 'commands' in value) return 'record';
  if ('steps' in value) return 'course';
  if ('rates' in value || 'legS' in value) return 'set';
  if ('drive' in value || 'gauge' in value) return 'airframe';
  if ('task' in value || 'start' in value) return 'scenario';
  if ('trainee' in value) return 'trainee';
  return null;
}

const unknownKind = ({ root }: Parsed) => ({
  offset: root.offset,
  say: () => ({
    path: '', found: 'no kind of file that Evenhand knows',
    allowed: 'a scenario (has task), an airframe (has drive), a set (has rates), a course (has steps), a record (has digest), a trainee (has trainee) or inputs (a list)',
  }),
});
