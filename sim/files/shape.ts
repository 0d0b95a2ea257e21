/**
 * What a schema says, as plain data: kind, unit, range, words, keys, defaults, meaning. Problem texts, the key table and
 * --help are made from shapes, so none of them can say anything else than the schema does.
 */
import * as z from 'zod/mini';

/** What may stand at one place of a file, told apart by `kind`. Made by `shapeOf`. */
export type Shape = NumberShape | TextShape | WordShape | FlagShape | ObjectShape | ListShape | ChoiceShape | EitherShape;

interface Common {
  /** Meaning in one line, where the schema gives one. */
  description: string | undefined;
  nullable: boolean;
}
export interface NumberShape extends Common {
  kind: 'number';
  /** As in key names; '1' for a pure number. */
  unit: string;
  min: number;
  max: number;
  whole: boolean;
  /** What a refinement asks beyond the range, in its own words. */
  rules: string[];
}
interface TextShape extends Common { kind: 'text'; max: number | undefined; pattern: string | undefined }
interface WordShape extends Common { kind: 'word'; words: (string | number)[] }
interface FlagShape extends Common { kind: 'flag' }
/** Keys in the order of the schema; none besides them is taken. */
export interface ObjectShape extends Common { kind: 'object'; keys: ReadonlyMap<string, Key> }
/** From `min` to `max` items of one shape; `max` undefined for any number. */
export interface ListShape extends Common { kind: 'list'; min: number; max: number | undefined; item: Shape }
/** One of several objects, told apart by the word under the key `by`. */
export interface ChoiceShape extends Common { kind: 'choice'; by: string; options: ReadonlyMap<string, ObjectShape> }
interface EitherShape extends Common { kind: 'either'; options: Shape[] }

/** One key of an object, and what happens where it is left out. */
export interface Key {
  /** Made when asked for: triggers hold triggers. */
  readonly shape: Shape;
  required: boolean;
  /** Value taken when the key is left out; undefined where there is none. */
  fallback: unknown;
}

/** The part of zod's definitions that is read here. */
interface Check { _zod: { def: { check: string; value?: number; maximum?: number; minimum?: number; error?: (issue: unknown) => unknown } } }
interface Def {
  type: string;
  innerType?: z.ZodMiniType; defaultValue?: unknown; getter?: () => z.ZodMiniType;
  shape?: Record<string, z.ZodMiniType>; element?: z.ZodMiniType; options?: z.ZodMiniType[]; discriminator?: string;
  values?: (string | number)[]; entries?: Record<string, string>; check?: string; checks?: Check[];
}

const defOf = (schema: z.ZodMiniType): Def => schema._zod.def as unknown as Def;
const made = new WeakMap<z.ZodMiniType, Shape>();

/** The shape of a schema; the same object for the same schema. Throws on a kind of schema that files do not use. */
export function shapeOf(schema: z.ZodMiniType): Shape {
  const known = made.get(schema);
  if (known !== undefined) return known;
  const shape = makeShape(schema);
  made.set(schema, shape);
  return shape;
}

function makeShape(schema: z.ZodMiniType): Shape {
  const def = defOf(schema);
  const meta = z.globalRegistry.get(schema) as { description?: string; unit?: string } | undefined;
  const common: Common = { description: meta?.description, nullable: false };
  const inner = () => shapeOf(def.innerType as z.ZodMiniType);
  switch (def.type) {
    case 'optional': case 'default': return withMeaning(inner(), common);
    case 'nullable': return { ...withMeaning(inner(), common), nullable: true };
    case 'lazy': return shapeOf((def.getter as () => z.ZodMiniType)());
    case 'number': return { ...common, kind: 'number', unit: meta?.unit ?? '1', ...rangeOf(def), rules: rulesOf(def) };
    case 'string': return { ...common, kind: 'text', max: checkOf(def, 'max_length')?.maximum, pattern: patternOf(def) };
    case 'boolean': return { ...common, kind: 'flag' };
    case 'literal': return { ...common, kind: 'word', words: def.values ?? [] };
    case 'enum': return { ...common, kind: 'word', words: Object.values(def.entries ?? {}) };
    case 'object': return { ...common, kind: 'object', keys: keysOf(def) };
    case 'array': return {
      ...common, kind: 'list', item: shapeOf(def.element as z.ZodMiniType),
      min: checkOf(def, 'min_length')?.minimum ?? 0, max: checkOf(def, 'max_length')?.maximum,
    };
    case 'union': return unionShape(def, common);
    default: throw new Error(`a schema of kind ${def.type} has no shape`);
  }
}

const withMeaning = (shape: Shape, { description }: Common): Shape => ({ ...shape, description: description ?? shape.description });

const checksOf = (def: Def) => (def.checks ?? []).map((check) => check._zod.def);
const checkOf = (def: Def, name: string) => checksOf(def).find(({ check }) => check === name);

function rangeOf(def: Def): { min: number; max: number; whole: boolean } {
  return {
    min: checkOf(def, 'greater_than')?.value ?? -Infinity,
    max: checkOf(def, 'less_than')?.value ?? Infinity,
    whole: def.check === 'number_format',
  };
}

const said = (check: Check['_zod']['def']): string[] => {
  const words = check.error?.({});
  return typeof words === 'string' ? [words] : [];
};
const rulesOf = (def: Def): string[] => checksOf(def).filter(({ check }) => check === 'custom').flatMap(said);
const patternOf = (def: Def): string | undefined => checksOf(def).filter(({ check }) => check === 'string_format').flatMap(said)[0];

function keysOf(def: Def): Map<string, Key> {
  return new Map(Object.entries(def.shape ?? {}).map(([name, schema]) => {
    const own = defOf(schema);
    return [name, {
      get shape() { return shapeOf(schema); },
      required: own.type !== 'optional' && own.type !== 'default',
      fallback: own.type === 'default' ? own.defaultValue : undefined,
    }];
  }));
}

function unionShape(def: Def, common: Common): ChoiceShape | EitherShape {
  const options = def.options ?? [];
  const by = def.discriminator;
  if (by === undefined) return { ...common, kind: 'either', options: options.map(shapeOf) };
  const named = options.flatMap((option) => {
    const shape = shapeOf(option) as ObjectShape;
    const word = shape.keys.get(by)?.shape;
    return word?.kind === 'word' ? word.words.map((value) => [String(value), shape] as const) : [];
  });
  return { ...common, kind: 'choice', by, options: new Map(named) };
}
