/** Hostile texts: any text, shipped files damaged in every way a hand or a disk can, files grown from their own schemas. */
import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import fc from 'fast-check';
import { FILE_SCHEMAS, shapeOf, type Shape } from '../../sim/files/index.js';
import { airframeText, drillNames, drillText, textOf } from '../files/shipped.js';
import { anywhere } from '../draw.js';

const inFolder = (folder: string): string[] => readdirSync(fileURLToPath(new URL(`../../scenarios/${folder}/`, import.meta.url))).map((name) => textOf(`${folder}/${name}`));

/** Every shipped file, and one of each kind that none is shipped of. */
export const SHIPPED: readonly string[] = [
  airframeText, ...drillNames.map(drillText), textOf('airframes/airframe-b.json'), ...inFolder('sets'), ...inFolder('courses'), ...inFolder('runs'),
  readFileSync(new URL('../../tests/golden/model-2.json', import.meta.url), 'utf8'),
  '{ "format": 1, "trainee": "steady", "sees": "split", "thresholdDeg": 0.2, "thresholdLogSd": 0.1, "reactionS": 0.4, "reactionLogSd": 0.1, "spread": 0.1, "lapse": 0.05, "falsePerMin": 0.5 }',
  'id,rate_deg_per_s,onset_s,release_s,end_s,limit_deg\n1,0.25,12.0,16.6,60,3\n2,0.5,10,,30,3\n3,,,20,60,3\n',
];

/** Values that a schema may not have thought of. */
export const ODD = ['null', 'true', '""', '"x"', '[]', '{}', '-1', '0', '-0', '1e308', '1e999', '-1e999', '0.005', '"\\u0000"', '"\\ud800"', '{"__proto__": {}}', '[[[]]]', '1e-320', '{"parameter":"p"}', '9007199254740993', '"\\u202egnp.exe"', '0.1e1'] as const;
const KEYS = ['__proto__', 'constructor', 'prototype', 'toString', 'hasOwnProperty', 'digest', 'steps', 'rates', 'parameters', '$schema', '', 'ключ', 'a'.repeat(300)];

/** A piece cut out, doubled, replaced or turned round. */
export const cut = (whole: string, at: number, length: number, put: string, how: number): string => {
  const from = at % Math.max(1, whole.length);
  const piece = whole.slice(from, from + length);
  const other = [put, piece + piece, '', piece.split('').reverse().join('')][how % 4] ?? '';
  return whole.slice(0, from) + other + whole.slice(from + length);
};

/** One value replaced by another text. */
export function withValue(whole: string, at: number, value: (old: string) => string): string {
  const values = [...whole.matchAll(/: ?(-?[\d.]+(?:e-?\d+)?|"[^"]*"|true|false|null)/g)];
  const match = values[at % Math.max(1, values.length)];
  return match === undefined ? whole : `${whole.slice(0, match.index)}: ${value(match[1] ?? '')}${whole.slice(match.index + match[0].length)}`;
}

const scaled = (by: number) => (old: string): string => (Number.isNaN(Number(old)) ? old : String(Number(old) * by));
type Change = (whole: string) => string;
const change: fc.Arbitrary<Change> = fc.oneof(
  fc.tuple(fc.nat(), fc.nat(60), fc.string({ unit: 'binary', maxLength: 8 }), fc.nat(3)).map(([at, length, put, how]): Change => (whole) => cut(whole, at, length, put, how)),
  { weight: 3, arbitrary: fc.tuple(fc.nat(), fc.constantFrom(...ODD)).map(([at, odd]): Change => (whole) => withValue(whole, at, () => odd)) },
  { weight: 3, arbitrary: fc.tuple(fc.nat(), fc.constantFrom(0, -1, 0.5, 1.0000001, 2, 10, 1e6, 1e-9, 1.1, 0.9)).map(([at, by]): Change => (whole) => withValue(whole, at, scaled(by))) },
  // A key by another's name; a key twice; a comment; a letter of the file flipped.
  fc.tuple(fc.nat(), fc.constantFrom(...KEYS)).map(([at, key]): Change => (whole) => replaceNth(whole, /"(\w+)":/g, at, () => `${JSON.stringify(key)}:`)),
  fc.nat().map((at): Change => (whole) => replaceNth(whole, /"\w+": ?[\d.]+/g, at, (old) => `${old}, ${old}`)),
  fc.tuple(fc.nat(), fc.constantFrom('/* x */', '// x\n', '/*', ',', ';', '\u2028', '\uFEFF', '\0', '{', ']')).map(([at, put]): Change => (whole) => replaceNth(whole, /[,:{[\]}]/g, at, (old) => old + put)),
  fc.tuple(fc.nat(), fc.nat(255)).map(([at, by]): Change => (whole) => cut(whole, at, 1, String.fromCharCode(whole.charCodeAt(at % Math.max(1, whole.length)) ^ by), 0)),
  fc.tuple(fc.nat(), fc.integer({ min: 1, max: 90 }), fc.boolean()).map(([at, deep, list]): Change => (whole) => withValue(whole, at, (old) => (list ? '['.repeat(deep) + old + ']'.repeat(deep) : '{"all":['.repeat(deep) + old + ']}'.repeat(deep)))),
);

function replaceNth(whole: string, pattern: RegExp, at: number, to: (old: string) => string): string {
  const all = [...whole.matchAll(pattern)];
  const match = all[at % Math.max(1, all.length)];
  return match === undefined ? whole : whole.slice(0, match.index) + to(match[0]) + whole.slice(match.index + match[0].length);
}

const damagedOf = (texts: fc.Arbitrary<string>): fc.Arbitrary<string> => fc.tuple(texts, fc.array(change, { minLength: 1, maxLength: 4 })).map(([whole, changes]) => changes.reduce((now, one) => one(now), whole));
const shipped = fc.constantFrom(...SHIPPED);

/** The beginning of one and the end of another. */
const spliced = fc.tuple(shipped, shipped, anywhere(0, 1), anywhere(0, 1))
  .map(([one, other, to, from]) => one.slice(0, Math.floor(to * one.length)) + other.slice(Math.floor(from * other.length)));

/** A value of a shape, mostly inside what it allows and sometimes at its ends or past them. */
export function valueOfShape(shape: Shape, depth = 0): fc.Arbitrary<unknown> {
  const made = valuesMade.get(shape)?.get(depth) ?? makeValue(shape, depth);
  valuesMade.set(shape, (valuesMade.get(shape) ?? new Map<number, fc.Arbitrary<unknown>>()).set(depth, made));
  return made;
}
/** Made once: triggers hold triggers. */
const valuesMade = new Map<Shape, Map<number, fc.Arbitrary<unknown>>>();

function makeValue(shape: Shape, depth: number): fc.Arbitrary<unknown> {
  const wrong = { weight: 1, arbitrary: fc.constantFrom<unknown>(null, -1, 0, 1e308, '', 'x', [], {}, true, Number.MAX_SAFE_INTEGER + 1) };
  const right = (arbitrary: fc.Arbitrary<unknown>) => fc.oneof({ weight: 60, arbitrary }, wrong);
  switch (shape.kind) {
    case 'number': {
      const [min, max] = [Math.max(shape.min, -1e9), Math.min(shape.max, 1e9)];
      const inside = shape.whole ? fc.integer({ min: Math.ceil(min), max: Math.floor(max) }) : fc.integer({ min: 0, max: 10_000 }).map((part) => Math.round((min + ((max - min) * part) / 10_000) * 100) / 100);
      return right(fc.oneof({ weight: 8, arbitrary: inside }, fc.constantFrom(min, max), { weight: 1, arbitrary: fc.constantFrom(min - 1e-9, max + 1e-9, min - 1, max + 1) }));
    }
    case 'word': return right(fc.constantFrom(...shape.words));
    case 'flag': return right(fc.boolean());
    case 'text': return right(fc.oneof(fc.constantFrom('a', 'airframe-a', 'set-16-from-4', 'f0', 'steady', 'p'), fc.string({ unit: 'grapheme', maxLength: Math.min(40, shape.max ?? 40) })));
    case 'list': return right(depth > 6 ? fc.constant([]) : fc.array(valueOfShape(shape.item, depth + 1), { minLength: Math.min(3, shape.min), maxLength: Math.min(4, shape.max ?? 4) }));
    case 'either': return fc.oneof(...shape.options.map((one) => valueOfShape(one, depth + 1)));
    case 'choice': return right(fc.oneof(...[...shape.options].map(([word, of]) => valueOfShape(of, depth + 1).map((value) => (isObject(value) ? { ...value, [shape.by]: word } : value)))));
    case 'object': {
      if (depth > 7) return fc.constant({});
      const keys = [...shape.keys];
      const record = Object.fromEntries(keys.map(([key, { shape: of }]) => [key, valueOfShape(of, depth + 1)]));
      return right(fc.record(record, { requiredKeys: keys.filter(([, { required }]) => required).map(([key]) => key) }));
    }
  }
}
const isObject = (value: unknown): value is object => typeof value === 'object' && value !== null && !Array.isArray(value);

/** A file grown from its own schema: mostly nearly right. */
const grown = fc.oneof(...Object.values(FILE_SCHEMAS).map((schema) => valueOfShape(shapeOf(schema)))).map((value) => JSON.stringify(value));

export const anyText = fc.oneof(
  { weight: 1, arbitrary: fc.string({ unit: 'binary', maxLength: 200 }) },
  { weight: 1, arbitrary: fc.uint8Array({ maxLength: 200 }).map((bytes) => new TextDecoder().decode(bytes)) },
  { weight: 1, arbitrary: fc.json({ maxDepth: 6 }) },
);
export const damaged = damagedOf(shipped);
export const hostileText = fc.oneof({ weight: 2, arbitrary: anyText }, { weight: 12, arbitrary: damaged }, { weight: 2, arbitrary: spliced }, { weight: 6, arbitrary: grown });
export const damagedFrom = (texts: readonly string[]): fc.Arbitrary<string> => damagedOf(fc.constantFrom(...texts));
