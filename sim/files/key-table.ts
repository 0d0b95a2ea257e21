/** Every key of a kind of file in one table, made from the schema: DEVELOPERS.md and --help print it. */
import { allowedBy } from './allowed.js';
import type { Schema } from './door.js';
import { FILE_SCHEMAS, type FileKind } from './json-schema.js';
import { type Key, type Shape, shapeOf } from './shape.js';

/** One key as a person reads of it; everything is taken from the schema. */
export interface KeyRow {
  /** `start.speedKt`, `faults[].ratio (lag)`; triggers inside triggers are not repeated. */
  path: string;
  /** As in key names; empty where there is none. */
  unit: string;
  /** What is allowed, in words. */
  allowed: string;
  /** "required", the default as JSON, or empty where the key may be left out without a default in the file. */
  default: string;
  meaning: string;
}

/** The keys of a kind of file in the order of its schema. What has a table of its own (airframe, scenario, set) is one row inside another. */
export function keyTable(kind: FileKind): KeyRow[] {
  return keysOf(FILE_SCHEMAS[kind], [FILE_SCHEMAS.airframe, FILE_SCHEMAS.scenario, FILE_SCHEMAS.set]);
}

/** The keys of any schema, in its order. What stands in `apart` has a table of its own and is one row here. */
export function keysOf(schema: Schema, apart: readonly Schema[] = []): KeyRow[] {
  const top = shapeOf(schema);
  return inside(top, top.kind === 'list' ? '[]' : '', new Set([top, ...apart.map(shapeOf)]));
}

/** Rows of what is inside a shape; `seen` are the shapes that are being told or stand in a table of their own. */
function inside(shape: Shape, path: string, seen: ReadonlySet<Shape>): KeyRow[] {
  switch (shape.kind) {
    case 'object': return [...shape.keys].flatMap(([name, key]) => rowsOf(name, key, path, seen));
    case 'list': return inside(shape.item, path.endsWith('[]') ? path : `${path}[]`, seen);
    case 'choice': return choiceRows(shape, path, seen);
    default: return [];
  }
}

function rowsOf(name: string, key: Key, path: string, seen: ReadonlySet<Shape>, of = ''): KeyRow[] {
  const { shape } = key;
  const here = path === '' ? name : `${path}.${name}`;
  const row: KeyRow = {
    path: of === '' ? here : `${here} (${of})`,
    unit: shape.kind === 'number' && shape.unit !== '1' ? shape.unit : '',
    allowed: allowedBy(shape),
    default: key.required ? 'required' : key.fallback === undefined ? '' : JSON.stringify(key.fallback),
    meaning: shape.description ?? '',
  };
  const item = shape.kind === 'list' ? shape.item : shape;
  return seen.has(item) ? [row] : [row, ...inside(shape, here, new Set([...seen, item]))];
}

/** Keys that all options share stand once; the others name the words that have them. */
function choiceRows(shape: Extract<Shape, { kind: 'choice' }>, path: string, seen: ReadonlySet<Shape>): KeyRow[] {
  const options = [...shape.options];
  const told = new Map<string, { name: string; key: Key; words: string[] }>();
  for (const [word, option] of options) {
    for (const [name, key] of option.keys) {
      if (name === shape.by) continue;
      const id = `${name} ${allowedBy(key.shape)} ${key.shape.description ?? ''}`;
      const before = told.get(id);
      if (before === undefined) told.set(id, { name, key, words: [word] });
      else before.words.push(word);
    }
  }
  const words = options.map(([word, option]): KeyRow => ({
    path: `${path}.${shape.by}`, unit: '', allowed: JSON.stringify(word), default: 'required', meaning: option.keys.get(shape.by)?.shape.description ?? '',
  }));
  const keys = [...told.values()].flatMap(({ name, key, words: having }) =>
    rowsOf(name, key, path, seen, having.length === options.length ? '' : having.join(', ')));
  return [...words, ...keys];
}

/** The table in Markdown; the words of a choice share a row. */
export function keyTableMarkdown(kind: FileKind): string {
  const cell = (text: string) => text.replaceAll('|', '\\|');
  const rows = together(keyTable(kind)).map((row) => `| \`${row.path}\` | ${[row.allowed, row.default, row.meaning].map(cell).join(' | ')} |`);
  return ['| key | allowed | default | meaning |', '|---|---|---|---|', ...rows].join('\n');
}

function together(rows: readonly KeyRow[]): KeyRow[] {
  const byPath = new Map<string, KeyRow[]>();
  for (const row of rows) byPath.set(row.path, [...(byPath.get(row.path) ?? []), row]);
  return [...byPath.values()].map((same) => (same.length === 1 ? same[0] as KeyRow : {
    ...same[0] as KeyRow,
    allowed: 'one of the words told behind', meaning: same.map(({ allowed, meaning }) => `${allowed} ${meaning}`).join(' '),
  }));
}
