/** Parameters of a scenario at the door: each number that takes one gets its value, and every value allowed is tried there. */
import { type Misfit, type OpenParameter, type Parameter, type Schema, tryAs } from '../../sim/files/index.js';
import { misfit, type Source } from './issues.js';
import { type Finding, type Path, type Read } from './problem.js';
import { type Parsed, readAs } from './read.js';
import { type Json, locator } from './values.js';

/** Numbers set beforehand, by the names of parameters. */
export type Values = Readonly<Record<string, number>>;

/** A place of the file that takes a parameter. */
interface Taken { readonly name: string; readonly path: Path }

/** Two ends tried for a parameter, and the neighbour of the lower one: a whole number is not whole one half step on. */
const endsOf = ({ min, max, step = 0.01 }: Parameter): number[] => [...new Set([min, max, Math.min(max, min + step)])];

/**
 * Reads a file whose numbers may take parameters. The value has its numbers in place; its `parameters` hold only what is
 * left to be drawn, each with its places.
 * @param against what `beyond` looks at beside the value: the same thing gives the same answer
 */
export function readSettled<T extends { parameters?: readonly OpenParameter[] | undefined }>(
  parsed: Parsed, schema: Schema<T>, beyond: (value: T) => Misfit[], values: Values, against: unknown,
): Read<T> {
  const taken = takenIn(parsed.value, []);
  const declared = declaredIn(parsed.value);
  if (taken.length === 0 && declared.length === 0 && Object.keys(values).length === 0) return readAs(parsed, schema, beyond);
  const source: Source = { text: parsed.text, locate: locator(parsed.root), schema };
  const mistakes = [...unknownNames(source, taken, declared), ...unusedNames(source, taken, declared), ...wrongValues(source, declared, values)];
  const standing = new Map(declared.map((one) => [one.name, values[one.name] ?? one.default]));
  const settledWith = (numbers: ReadonlyMap<string, number>): Parsed => ({ ...parsed, value: withNumbers(parsed.value, numbers) as Json, numbers });
  const read = readAs({ ...settledWith(standing), findings: [...parsed.findings, ...mistakes] }, schema, beyond);
  if (!read.ok) return read;
  const about = JSON.stringify([withoutWords(parsed.value), values]);
  if (triedLast?.about !== about || triedLast.against !== against) triedLast = { about, against, bad: atTheEnds(declared, standing).find((numbers) => !sound(settledWith(numbers), schema, beyond)) };
  const { bad } = triedLast;
  if (bad !== undefined) return readAs(settledWith(bad), schema, beyond);
  const open = declared.filter(({ name, drawn }) => drawn === true && values[name] === undefined)
    .map((one): OpenParameter => ({ ...one, at: taken.filter(({ name }) => name === one.name).map(({ path }) => path) }));
  const { parameters: _all, ...rest } = read.value;
  return { ok: true, value: (open.length === 0 ? rest : { ...rest, parameters: open }) as T };
}

/** Words that no number has to do with. */
const WORDS = ['title', 'brief', 'notes', 'skill', 'lesson'];

const withoutWords = (value: Json): Json => (value === null || typeof value !== 'object' || Array.isArray(value) ? value : Object.fromEntries(Object.entries(value).filter(([key]) => !WORDS.includes(key))));

/** What came of the last file tried at its ends: a file of eight parameters is tried 136 times, and while its brief is typed no number changes. */
let triedLast: { readonly about: string; readonly against: unknown; readonly bad: ReadonlyMap<string, number> | undefined } | null = null;

/** Every value alone at its ends, then every two together: a relation of two keys is worst at the ends of both. */
function atTheEnds(declared: readonly Parameter[], standing: ReadonlyMap<string, number>): ReadonlyMap<string, number>[] {
  const alone = declared.flatMap((one) => endsOf(one).map((value) => new Map([...standing, [one.name, value]])));
  const pairs = declared.flatMap((one, at) => declared.slice(at + 1).flatMap((other) =>
    [one.min, one.max].flatMap((a) => [other.min, other.max].map((b) => new Map([...standing, [one.name, a], [other.name, b]])))));
  return [...alone, ...pairs];
}

function sound<T>({ value }: Parsed, schema: Schema<T>, beyond: (value: T) => Misfit[]): boolean {
  const tried = tryAs(schema, value);
  return tried.ok && beyond(tried.value).length === 0;
}

const isTaking = (value: Json): value is { parameter: string } =>
  value !== null && typeof value === 'object' && !Array.isArray(value) && typeof value['parameter'] === 'string' && Object.keys(value).length === 1;

function takenIn(value: Json, path: Path): Taken[] {
  if (isTaking(value)) return [{ name: value.parameter, path }];
  if (value === null || typeof value !== 'object') return [];
  return Object.entries(value).flatMap(([key, inner]) => takenIn(inner, [...path, Array.isArray(value) ? Number(key) : key]));
}

/** Those that are whole enough to be counted with; what is wrong with the others the schema says. */
function declaredIn(value: Json): Parameter[] {
  if (value === null || typeof value !== 'object' || Array.isArray(value) || !Array.isArray(value['parameters'])) return [];
  return value['parameters'].filter((one) => {
    if (one === null || typeof one !== 'object' || Array.isArray(one) || typeof one['name'] !== 'string') return false;
    const step = one['step'] ?? 0.01;
    return [one['default'], one['min'], one['max'], step].every((number) => typeof number === 'number') && (step as number) > 0;
  }) as unknown as Parameter[];
}

/** The value with the numbers of parameters in their places; a name without a number is left as it stands. */
function withNumbers(value: Json, numbers: ReadonlyMap<string, number>): Json {
  if (isTaking(value)) return numbers.get(value.parameter) ?? value;
  if (Array.isArray(value)) return value.map((item) => withNumbers(item, numbers));
  if (value === null || typeof value !== 'object') return value;
  const copy = Object.create(null) as { [key: string]: Json };
  for (const [key, inner] of Object.entries(value)) copy[key] = withNumbers(inner, numbers);
  return copy;
}

const named = (declared: readonly Parameter[]): string => (declared.length === 0 ? 'a number; the file has no parameters' : `the name of a parameter: ${declared.map(({ name }) => name).join(', ')}`);

const unknownNames = (source: Source, taken: readonly Taken[], declared: readonly Parameter[]): Finding[] =>
  taken.filter(({ name }) => !declared.some((one) => one.name === name)).map(({ path }) => misfit(source, [...path, 'parameter'], named(declared)));

const unusedNames = (source: Source, taken: readonly Taken[], declared: readonly Parameter[]): Finding[] =>
  declared.flatMap(({ name }, index) => (taken.some((one) => one.name === name) ? []
    : [misfit(source, ['parameters', index, 'name'], `a parameter that a number of the file takes, as { "parameter": "${name}" }`)]));

/** Values that nobody asked for, and those out of range. */
function wrongValues(source: Source, declared: readonly Parameter[], values: Values): Finding[] {
  return Object.entries(values).flatMap(([name, value]) => {
    const index = declared.findIndex((one) => one.name === name);
    const one = declared[index];
    if (one === undefined) return [{ offset: 0, say: () => ({ path: 'parameters', found: `${name} set to ${value}`, allowed: named(declared) }) }];
    if (value >= one.min && value <= one.max) return [];
    const { offset } = misfit(source, ['parameters', index], null);
    const unit = one.unit === undefined ? '' : ` ${one.unit}`;
    return [{ offset, say: () => ({ path: `parameters[${index}]`, found: `${name} set to ${value}`, allowed: `a number from ${one.min} to ${one.max}${unit}` }) }];
  });
}

/** The parameters of a text as they stand in it, right or wrong elsewhere; for whoever offers them to be set. */
export const parametersOf = (value: Json): readonly Parameter[] => declaredIn(value);

