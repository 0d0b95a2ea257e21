/**
 * What may be written at a place in a text, and what stands there, told from the schema. Read from whatever is there:
 * a text that is being typed is broken most of the time.
 */
import { getLocation, type Node, parseTree } from 'jsonc-parser';
import { allowedBy, type ChoiceShape, type Key, type Shape } from '../../sim/files/index.js';
import type { Path } from './problem.js';
import { scan } from './scan.js';
import { shapeAt, wordsOf } from './shape-at.js';
import { type Json, locator } from './values.js';

interface Suggestion {
  /** As it is listed. */
  readonly label: string;
  /** As it is written. */
  readonly write: string;
  /** Where the caret goes within it, characters from its start. */
  readonly caret: number;
  /** Unit and range, or the default. */
  readonly detail: string;
  readonly meaning: string;
}

export interface Suggested {
  /** What is replaced, UTF-16 units. */
  readonly from: number;
  readonly to: number;
  readonly options: readonly Suggestion[];
}

/** What stands at a place: a key, with all that the schema says of it. */
export interface Told {
  readonly from: number;
  readonly to: number;
  readonly path: Path;
  readonly meaning: string;
  readonly allowed: string;
  /** "required", "180 if left out", or that it may be left out. */
  readonly otherwise: string;
}

/** Names that a place refers to, which no schema knows: airframes, faults of this file. Empty where there are none. */
export type Names = (path: Path) => readonly (string | number)[];

const EMPTY: Node = { type: 'object', offset: 0, length: 0, children: [] };

/** @returns null where nothing may be written, or nothing is known */
export function suggest(text: string, offset: number, top: Shape, names: Names): Suggested | null {
  if (scan(text).refused !== null) return null;
  const { path, isAtPropertyKey, previousNode } = getLocation(text, offset);
  const root = parseTree(text) ?? EMPTY;
  const locate = locator(root);
  const inside = previousNode !== undefined && previousNode.offset < offset && offset <= previousNode.offset + previousNode.length ? previousNode : null;
  const from = inside?.offset ?? wordStart(text, offset);
  const to = inside === null ? offset : inside.offset + inside.length;
  if (isAtPropertyKey) {
    const owner = path.slice(0, -1);
    const shape = shapeAt(top, owner, locate);
    const written = new Set((locate(owner).value?.children ?? []).filter((one) => !(one.offset <= offset && offset <= one.offset + (one.children?.[0]?.length ?? 0))).map(({ children }) => String(children?.[0]?.value)));
    const colon = /^\s*:/.test(text.slice(to));
    return { from, to, options: keysFor(shape).filter(([name]) => !written.has(name)).map(([name, key]) => keyOption(name, key, colon)) };
  }
  const shape = shapeAt(top, path, locate);
  if (shape === null) return null;
  const owner = shapeAt(top, path.slice(0, -1), EMPTY_LOCATE);
  const meanings = owner?.kind === 'choice' && path.at(-1) === owner.by ? meaningsOf(owner) : new Map<string, string>();
  return { from, to, options: valuesFor(shape, path, keyAt(top, path, locate), names, meanings) };
}

/** Finds nothing: with it a shape is told as if nothing were written yet. */
const EMPTY_LOCATE = locator(EMPTY);

/** What is told of the key at a place, or of the key of the value there; null where there is none. */
export function tellAt(text: string, offset: number, top: Shape): Told | null {
  if (scan(text).refused !== null) return null;
  const { path } = getLocation(text, offset);
  const root = parseTree(text);
  if (root === undefined) return null;
  const locate = locator(root);
  for (let depth = path.length; depth > 0; depth -= 1) {
    const here = path.slice(0, depth);
    const node = locate(here).key;
    const key = keyAt(top, here, locate);
    if (node === null || key === null) continue;
    return {
      from: node.offset, to: node.offset + node.length, path: here, meaning: key.shape.description ?? '', allowed: allowedBy(key.shape),
      otherwise: key.required ? 'required' : key.fallback === undefined ? 'may be left out' : `${JSON.stringify(key.fallback)} if left out`,
    };
  }
  return null;
}

/** The start of a bare word that ends at the offset. */
const wordStart = (text: string, offset: number): number => offset - (/[\w.+-]*$/.exec(text.slice(Math.max(0, offset - 64), offset))?.[0].length ?? 0);

function keyAt(top: Shape, path: Path, locate: ReturnType<typeof locator>): Key | null {
  const owner = shapeAt(top, path.slice(0, -1), locate);
  const name = String(path.at(-1));
  if (owner?.kind === 'choice' && name === owner.by) return { shape: wordsOf(owner.options, owner.by), required: true, fallback: undefined };
  return owner?.kind === 'object' ? (owner.keys.get(name) ?? null) : null;
}

/** Keys that may stand in a shape; where its kind is not told yet, the key that tells it and those that all kinds have. */
function keysFor(shape: Shape | null): (readonly [string, Key])[] {
  if (shape?.kind === 'object') return [...shape.keys];
  if (shape?.kind !== 'choice') return [];
  const [first, ...others] = [...shape.options.values()];
  const shared = [...(first?.keys ?? [])].filter(([name]) => name !== shape.by && others.every(({ keys }) => keys.has(name)));
  return [[shape.by, { shape: { ...wordsOf(shape.options, shape.by), description: undefined }, required: true, fallback: undefined }], ...shared];
}

function keyOption(name: string, { shape, required, fallback }: Key, hasColon: boolean): Suggestion {
  const [before, behind] = opening(shape);
  const write = hasColon ? JSON.stringify(name) : `${JSON.stringify(name)}: ${before}${behind}`;
  const otherwise = required ? 'required' : fallback === undefined ? '' : `${JSON.stringify(fallback)} if left out`;
  return { label: name, write, caret: write.length - (hasColon ? 0 : behind.length), detail: [otherwise, briefly(shape)].filter((one) => one !== '').join(', '), meaning: shape.description ?? '' };
}

/** Most words that are listed one by one beside a key. */
const MOST_WORDS = 4;

const briefly = (shape: Shape): string => (shape.kind === 'word' && shape.words.length > MOST_WORDS ? `one of ${shape.words.length} words` : allowedBy(shape));

/** What a value of a shape begins and ends with; the caret stands between. */
function opening(shape: Shape): readonly [string, string] {
  switch (shape.kind) {
    case 'object': case 'choice': return ['{ ', ' }'];
    case 'list': return ['[', ']'];
    case 'text': return ['"', '"'];
    default: return ['', ''];
  }
}

function valuesFor(shape: Shape, path: Path, key: Key | null, names: Names, meanings: ReadonlyMap<string, string>): Suggestion[] {
  const values: (readonly [Json, string])[] = names(path).map((name) => [name, 'a name of this file or of what is shipped'] as const);
  if (shape.kind === 'word') values.push(...shape.words.map((word) => [word, ''] as const));
  if (shape.kind === 'flag') values.push([true, ''], [false, '']);
  if (key?.fallback !== undefined && (shape.kind === 'number' || shape.kind === 'flag')) values.unshift([key.fallback as Json, 'as if left out']);
  if (shape.kind === 'number' && values.length === 0) return [];
  const plain = values.map(([value, detail]) => option(value, typeof value === 'number' ? `${detail}, ${allowedBy(shape)}` : detail, meanings.get(typeof value === 'string' ? value : '') ?? shape.description ?? ''));
  const open = shape.kind === 'object' || shape.kind === 'choice' || shape.kind === 'list' ? [opened(shape)] : [];
  const all = shape.kind === 'either' ? [...plain, opened(shape.options.find(({ kind }) => kind === 'object') ?? shape)] : [...plain, ...open];
  return all.filter(({ label }, index) => all.findIndex((other) => other.label === label) === index);
}

const option = (value: Json, detail: string, meaning: string): Suggestion => {
  const write = JSON.stringify(value);
  return { label: typeof value === 'string' ? value : write, write, caret: write.length, detail, meaning };
};

function opened(shape: Shape): Suggestion {
  const [before, behind] = opening(shape);
  return { label: shape.kind === 'list' ? '[ ]' : '{ }', write: before + behind, caret: before.length, detail: allowedBy(shape), meaning: shape.description ?? '' };
}

/** What each word of a choice means. */
const meaningsOf = ({ options, by }: ChoiceShape): Map<string, string> =>
  new Map([...options].map(([word, { keys }]) => [word, keys.get(by)?.shape.description ?? '']));
