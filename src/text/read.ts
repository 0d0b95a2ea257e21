/** From the text of a file to its data, or to every problem in it. Nothing of a wrong file is used. No text makes it throw. */
import type { Node } from 'jsonc-parser';
import { type Issue, type Misfit, type Schema, tryAs } from '../../sim/files/index.js';
import { findingsOf, misfit, type Source } from './issues.js';
import { placer } from './place.js';
import { type Finding, type Read, refuse } from './problem.js';
import { readTree } from './syntax.js';
import { type Json, locator, valuesOf } from './values.js';

/** The format this Evenhand reads and writes. */
const FORMAT = 1;

/** A text whose grammar is right: its tree, its values, and keys that stand twice. */
export interface Parsed {
  file: string;
  text: string;
  root: Node;
  value: Json;
  findings: Finding[];
  /** Numbers of parameters that stand in the value. */
  numbers?: ReadonlyMap<string, number>;
}

/** Reads the grammar and refuses files of a later format, before anything else is said about them. */
export function parseText(text: string, file: string): { ok: true; parsed: Parsed } | Extract<Read<never>, { ok: false }> {
  const plain = text.startsWith('\uFEFF') ? text.slice(1) : text;
  const tree = readTree(plain);
  if (!tree.ok) return refuse(file, plain, tree.findings);
  const { root } = tree;
  const later = laterFormat(root);
  if (later !== null) return refuse(file, plain, [later]);
  const { value, findings } = valuesOf(root, placer(plain));
  return { ok: true, parsed: { file, text: plain, root, value, findings } };
}

/** A file of a higher format number, itself or a file inside it. */
function laterFormat(root: Node): Finding | null {
  const locate = locator(root);
  for (const owner of [[], ['airframe'], ['scenario'], ['scenario', 'airframe']]) {
    const node = locate([...owner, 'format']).value;
    if (node?.type === 'number' && (node.value as number) > FORMAT) {
      const found = `format ${node.value as number}`;
      return { offset: node.offset, say: () => ({ path: [...owner, 'format'].join('.'), found, allowed: `format ${FORMAT}; the file is for a later Evenhand` }) };
    }
  }
  return null;
}

/**
 * Takes a parsed text for a kind of file: schema, then `beyond` (checks across keys, given a value that keeps the schema).
 * Unknown keys do not hide what `beyond` finds; keys that are missing or of a wrong kind do.
 */
export function readAs<T>({ file, text, root, value, findings, numbers }: Parsed, schema: Schema<T>, beyond: (value: T) => Misfit[]): Read<T> {
  const source: Source = { text, locate: locator(root), schema, numbers };
  const first = tryAs(schema, value);
  const found = [...findings, ...(first.ok ? [] : findingsOf(source, first.issues))];
  const unknown = first.ok ? [] : unknownKeys(first.issues, []);
  const second = unknown.length === 0 ? first : tryAs(schema, without(value, unknown));
  if (second.ok) found.push(...beyond(second.value).map(({ path, allowed }) => misfit(source, path, allowed)));
  return found.length === 0 && first.ok ? { ok: true, value: first.value } : refuse(file, text, found);
}

function unknownKeys(issues: readonly Issue[], before: readonly (string | number)[]): (string | number)[][] {
  return issues.flatMap(({ code, path, keys, errors }) => {
    const here = [...before, ...path];
    if (code === 'unrecognized_keys') return (keys ?? []).map((key) => [...here, key]);
    return (errors ?? []).flatMap((inner) => unknownKeys(inner, here));
  });
}

/** A copy of the value without the keys at these paths. */
function without(value: Json, paths: readonly (string | number)[][]): Json {
  const dropped = new Set(paths.map((path) => JSON.stringify(path)));
  const copy = (from: Json, path: (string | number)[]): Json => {
    if (Array.isArray(from)) return from.map((item, index) => copy(item, [...path, index]));
    if (from === null || typeof from !== 'object') return from;
    const to = Object.create(null) as { [key: string]: Json };
    for (const [key, inner] of Object.entries(from)) {
      if (!dropped.has(JSON.stringify([...path, key]))) to[key] = copy(inner, [...path, key]);
    }
    return to;
  };
  return copy(value, []);
}
