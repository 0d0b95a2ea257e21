/** From what the schema refuses to findings in our own words: where it stands, what was found, what is allowed. */
import type { Node } from 'jsonc-parser';
import { allowedBy, type Issue, type Schema, type Shape, shapeOf } from '../../sim/files/index.js';
import { type Finding, type Path, pathText, quoted } from './problem.js';
import { nearest } from './near.js';
import { shapeAt } from './shape-at.js';
import type { locator } from './values.js';

/** Where the findings of a file come from: its text, its tree, its schema. */
export interface Source {
  text: string;
  locate: ReturnType<typeof locator>;
  schema: Schema;
  /** Numbers of parameters that stand in the value. */
  numbers?: ReadonlyMap<string, number> | undefined;
}

export function findingsOf(source: Source, issues: readonly Issue[]): Finding[] {
  return issues.flatMap((issue) => findings(source, issue, []));
}

function findings(source: Source, issue: Issue, before: Path): Finding[] {
  const path = [...before, ...issue.path];
  if (issue.code === 'unrecognized_keys') return (issue.keys ?? []).map((key) => unknownKey(source, path, key));
  if (issue.code === 'invalid_union' && issue.errors !== undefined && issue.errors.length > 0) return either(source, issue.errors, path);
  return [misfit(source, path, issue.code === 'custom' ? issue.message : null)];
}

/** Of a name or an object, the branch that was meant is told by what stands there. */
function either(source: Source, branches: Issue[][], path: Path): Finding[] {
  const { value } = source.locate(path);
  const branch = branches.find((issues) => value?.type === 'object' && issues.every(({ path: inner, code }) => inner.length > 0 || code !== 'invalid_type'));
  return branch?.flatMap((issue) => findings(source, issue, path)) ?? [misfit(source, path, null)];
}

/** A value that is wrong or missing. `allowed` is what a check across keys asks for; null: what the schema says of this place. */
export function misfit(source: Source, path: Path, allowed: string | null): Finding {
  const { value, nearest: around } = source.locate(path);
  return {
    offset: (value ?? around).offset,
    say: () => {
      const shape = shapeAt(shapeOf(source.schema), path, source.locate);
      return { path: pathText(path), found: foundAt(value, source), allowed: wording(shape, allowed, value) };
    },
  };
}

/** What a check asks for, said with the range where it is a rule of one number; else what the schema says. */
function wording(shape: Shape | null, allowed: string | null, value: Node | null): string {
  if (shape === null) return allowed ?? 'nothing';
  if (allowed !== null && !(shape.kind === 'number' && shape.rules.includes(allowed))) return allowed;
  return allowedBy(shape) + meant(shape, value);
}

/** Of a mistyped word, the one that was probably meant. */
function meant(shape: Shape, value: Node | null): string {
  if (shape.kind !== 'word' || value?.type !== 'string') return '';
  const near = nearest(value.value as string, shape.words.map(String));
  return near === null ? '' : ` (did you mean ${quoted(near)}?)`;
}

function unknownKey(source: Source, path: Path, key: string): Finding {
  const { key: node, nearest: around } = source.locate([...path, key]);
  return {
    offset: (node ?? around).offset,
    say: () => {
      const shape = shapeAt(shapeOf(source.schema), path, source.locate);
      const known = shape?.kind === 'object' ? [...shape.keys.keys()] : [];
      const near = nearest(key, known);
      const allowed = near === null ? `one of the keys ${known.join(', ')}` : `did you mean ${near}?`;
      return { path: pathText([...path, key]), found: 'an unknown key', allowed };
    },
  };
}

const MOST_KEYS = 6;

/** What stands at a place, in words. Numbers as they are written in the file. */
function foundAt(node: Node | null, { text, numbers }: Source): string {
  if (node === null) return 'nothing';
  if (node.type === 'string') return quoted(node.value as string);
  if (node.type === 'array') return count(node.children ?? [], 'a list of', 'entry', 'entries', 'an empty list');
  if (node.type !== 'object') return text.slice(node.offset, node.offset + Math.min(node.length, 40));
  const [key, name] = node.children?.length === 1 ? node.children[0]?.children ?? [] : [];
  const number = key?.value === 'parameter' ? numbers?.get(String(name?.value)) : undefined;
  if (number !== undefined) return `the parameter ${quoted(String(name?.value))} at ${number}`;
  const keys = (node.children ?? []).slice(0, MOST_KEYS).map(({ children }) => pathText([String(children?.[0]?.value)]));
  if (keys.length === 0) return 'an empty object';
  return `an object with ${keys.join(', ')}${(node.children ?? []).length > MOST_KEYS ? ', ...' : ''}`;
}

const count = (nodes: Node[], before: string, one: string, many: string, none: string): string =>
  nodes.length === 0 ? none : `${before} ${nodes.length} ${nodes.length === 1 ? one : many}`;
