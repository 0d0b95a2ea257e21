// A file is changed at one place, and what an instructor wrote around it stays.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { duplicated, edited, moved, parsedValue, type Json } from '../../src/text/index.js';

const FILE = `// Kept.
{
  "format": 1, // one
  "start": { "massT": 48, "flapDeg": 4 }, /* two */
  "task": {
    "settings": [16],
    "limitS": 180 // the end
  },
  "faults": []
}
`;

describe('by hand', () => {
  test('a figure is exchanged where it stands', () => {
    expect(edited(FILE, ['start', 'massT'], 51.5)).toBe(FILE.replace('48', '51.5'));
  });
  test('a key is added on the line of its neighbours', () => {
    expect(edited(FILE, ['start', 'speedKt'], 167)).toBe(FILE.replace('"flapDeg": 4 }', '"flapDeg": 4, "speedKt": 167 }'));
  });
  test('or on a line of its own, behind the comment of the one before it', () => {
    expect(edited(FILE, ['task', 'legS'], 51)).toBe(FILE.replace('180 // the end', '180, // the end\n    "legS": 51'));
  });
  test('what is missing on the way is made', () => {
    expect(edited(FILE, ['recognition', 'limitDeg'], 2.5)).toBe(FILE.replace('"faults": []', '"faults": [],\n  "recognition": { "limitDeg": 2.5 }'));
  });
  test('the first fault takes a line', () => {
    const once = edited(FILE, ['faults', 0], { name: 'lag', when: { flapDeg: 8 } });
    expect(once).toBe(FILE.replace('[]', '[\n    { "name": "lag", "when": { "flapDeg": 8 } }\n  ]'));
    expect(edited(once, ['faults', 1], { name: 'b' })).toContain('"flapDeg": 8 } },\n    { "name": "b" }\n  ]');
  });
  test('a key is taken away with its comma, and so is the last', () => {
    expect(edited(FILE, ['start', 'massT'], undefined)).toBe(FILE.replace('"massT": 48, ', ''));
    expect(edited(FILE, ['start', 'flapDeg'], undefined)).toBe(FILE.replace(', "flapDeg": 4', ''));
  });
  test('a line of its own goes whole, with what is said of it, and the one before keeps its comment', () => {
    expect(edited(FILE, ['task', 'limitS'], undefined)).toBe(FILE.replace('[16],', '[16]').replace('    "limitS": 180 // the end\n', ''));
    expect(edited(FILE, ['format'], undefined)).toBe(FILE.replace('  "format": 1, // one\n', ''));
    expect(edited('[\n  1, // one\n  2 // two\n]', [1], undefined)).toBe('[\n  1 // one\n]');
    expect(edited('{ "a": 1 }', ['a'], undefined)).toBe('{}');
    expect(edited('[\n  { "a": 1 }\n]', [0], undefined)).toBe('[\n]');
  });
  test('entries change places with all that is written in them', () => {
    const list = '[\n  { "a": 1 /* first */ }, // of the first line\n  2,\n  [3]\n]';
    expect(moved(list, [], 0, 2)).toBe('[\n  2, // of the first line\n  [3],\n  { "a": 1 /* first */ }\n]');
    expect(moved(list, [], 2, 0)).toBe('[\n  [3], // of the first line\n  { "a": 1 /* first */ },\n  2\n]');
    expect(moved(list, [], 0, 3)).toBe(list);
  });
  test('a copy stands behind its pattern', () => {
    expect(duplicated('[\n  { "a": 1 /* x */ }, // y\n  2\n]', [], 0)).toBe('[\n  { "a": 1 /* x */ }, // y\n  { "a": 1 /* x */ },\n  2\n]');
    expect(duplicated('[1, 2]', [], 1)).toBe('[1, 2, 2]');
    expect(duplicated('[1, 2]', [], 0)).toBe('[1, 1, 2]');
  });
  test('a broken text, and a path through a plain value, stay as they are', () => {
    expect(edited('{ "a": ', ['a'], 1)).toBe('{ "a": ');
    expect(edited(FILE, ['format', 'x'], 1)).toBe(FILE);
    expect(edited(FILE, ['faults', 3], 1)).toBe(FILE);
  });
});

const leaf = fc.oneof(fc.integer({ min: -99, max: 99 }), fc.boolean(), fc.constant(null), fc.constantFrom('a "b"', '// no comment', ''));
const json: fc.Arbitrary<Json> = fc.letrec<{ json: Json }>((tie) => ({
  json: fc.oneof({ maxDepth: 3 }, leaf, fc.array(tie('json'), { maxLength: 3 }), fc.dictionary(fc.constantFrom('a', 'b', 'c', 'd'), tie('json'), { maxKeys: 3 })),
})).json;
const path = fc.array(fc.oneof(fc.constantFrom('a', 'b', 'c', 'd'), fc.integer({ min: 0, max: 3 })), { minLength: 1, maxLength: 3 });

/** A text of a value, with comments and line ends where the dice put them. */
function text(value: Json, dice: () => number): string {
  const gap = (): string => ['', ' ', '\n  ', ' /* c */ ', ' // c\n', '\n\n'][dice() % 6] as string;
  const pairs = Array.isArray(value) ? value.map((item) => text(item, dice))
    : value !== null && typeof value === 'object' ? Object.entries(value).map(([key, item]) => `${JSON.stringify(key)}${gap()}:${gap()}${text(item, dice)}`) : null;
  if (pairs === null) return JSON.stringify(value);
  const [open, close] = Array.isArray(value) ? '[]' : '{}';
  return `${open}${gap()}${pairs.join(`${gap()},${gap()}`)}${gap()}${close}`;
}
const written = fc.tuple(json, fc.array(fc.nat(5), { minLength: 1, maxLength: 40 })).map(([value, throws]) => {
  let at = 0;
  return { value, text: `// head\n${text(value, () => throws[at++ % throws.length] as number)}\n// foot\n` };
});

/** The same done to the value: what `edited` must come to; undefined where it changes nothing. */
function put(value: Json, [key, ...rest]: readonly (string | number)[], to: Json): Json | undefined {
  if (key === undefined) return to;
  const isList = Array.isArray(value);
  if (value === null || typeof value !== 'object' || isList !== (typeof key === 'number')) return undefined;
  if (isList && (key as number) > value.length) return undefined;
  const before = (value as Record<string | number, Json>)[key];
  const after = before === undefined ? made(rest, to) : put(before, rest, to);
  if (after === undefined) return undefined;
  return isList ? Object.assign([...value], { [key]: after }) : { ...value, [key]: after };
}
const made = (rest: readonly (string | number)[], to: Json): Json => rest.reduceRight<Json>((inner, part) => (typeof part === 'number' ? [inner] : { [part]: inner }), to);
const plain = (value: unknown): unknown => JSON.parse(JSON.stringify(value));

test('whatever the layout, the value at the path is the new one and everything else is what it was', () => {
  fc.assert(fc.property(written, path, json, ({ value, text: before }, at, to) => {
    const wanted = put(value, at, to);
    const after = edited(before, at, to);
    if (wanted === undefined) expect(after).toBe(before);
    else expect(plain(parsedValue(after))).toEqual(plain(wanted));
    expect(after.startsWith('// head\n')).toBe(true);
    expect(after.endsWith('\n// foot\n')).toBe(true);
  }), { numRuns: 500 });
});

test('a list that is turned about and back is the text it was', () => {
  fc.assert(fc.property(fc.array(json, { minLength: 2, maxLength: 5 }), fc.array(fc.nat(5), { minLength: 1, maxLength: 30 }), fc.nat(4), fc.nat(4), (list, throws, a, b) => {
    let at = 0;
    const before = text(list, () => throws[at++ % throws.length] as number);
    const [from, to] = [a % list.length, b % list.length];
    const there = moved(before, [], from, to);
    const wanted = [...list];
    wanted.splice(to, 0, ...wanted.splice(from, 1));
    expect(plain(parsedValue(there))).toEqual(plain(wanted));
    expect(moved(there, [], to, from)).toBe(before);
  }));
});

test('a copy is the same value once more', () => {
  fc.assert(fc.property(fc.array(json, { minLength: 1, maxLength: 4 }), fc.array(fc.nat(5), { minLength: 1, maxLength: 30 }), fc.nat(3), (list, throws, one) => {
    let at = 0;
    const before = text(list, () => throws[at++ % throws.length] as number);
    const index = one % list.length;
    expect(plain(parsedValue(duplicated(before, [], index)))).toEqual(plain([...list.slice(0, index + 1), ...list.slice(index)]));
  }));
});

/** The same taken away from the value; undefined where it is not there. */
function without(value: Json, [key, ...rest]: readonly (string | number)[]): Json | undefined {
  const isList = Array.isArray(value);
  if (key === undefined || value === null || typeof value !== 'object' || isList !== (typeof key === 'number')) return undefined;
  const before = (value as Record<string | number, Json>)[key];
  if (before === undefined) return undefined;
  if (rest.length === 0) return isList ? value.filter((_, at) => at !== key) : Object.fromEntries(Object.entries(value).filter(([name]) => name !== key));
  const after = without(before, rest);
  return after === undefined ? undefined : isList ? Object.assign([...value], { [key]: after }) : { ...value, [key]: after };
}

test('whatever the layout, what is taken away is gone and everything else is there', () => {
  fc.assert(fc.property(written, path, ({ value, text: before }, at) => {
    const wanted = without(value, at);
    const after = edited(before, at, undefined);
    if (wanted === undefined) expect(after).toBe(before);
    else expect(plain(parsedValue(after))).toEqual(plain(wanted));
    expect(after.startsWith('// head\n')).toBe(true);
    expect(after.endsWith('\n// foot\n')).toBe(true);
  }), { numRuns: 1000 });
});
