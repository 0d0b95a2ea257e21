/** From a tree of places to plain values, and back from a path in the values to its place. */
import type { Node } from 'jsonc-parser';
import { type Finding, type Path, pathText, quoted } from './problem.js';
import type { Place } from './place.js';

export type Json = null | boolean | number | string | Json[] | { [key: string]: Json };

interface Seen {
  value: Json;
  /** Keys that stand twice, and texts that no file can hold. */
  findings: Finding[];
}

/**
 * The values of a tree. Of a key that stands twice the first counts, and the second is a finding. Objects have no
 * prototype, so `__proto__` and `constructor` are keys like any other. Minus zero becomes zero, as RFC 8785 writes it.
 */
export function valuesOf(root: Node, place: (offset: number) => Place): Seen {
  const findings: Finding[] = [];
  const list = (node: Node, path: Path): Json[] => (node.children ?? []).map((child, index) => visit(child, [...path, index]));
  const object = (node: Node, path: Path): { [key: string]: Json } => {
    const value = Object.create(null) as { [key: string]: Json };
    const first = new Map<string, Node>();
    for (const { key, keyNode, valueNode } of entriesOf(node)) {
      const before = first.get(key);
      if (before === undefined) {
        first.set(key, keyNode);
        value[key] = visit(valueNode, [...path, key]);
      } else {
        findings.push(twice([...path, key], keyNode, () => place(before.offset)));
      }
    }
    return value;
  };
  const visit = (node: Node, path: Path): Json => {
    if (node.type === 'object') return object(node, path);
    if (node.type === 'array') return list(node, path);
    if (node.type === 'string' && /\p{Surrogate}/u.test(node.value as string)) findings.push(halfCharacter(path, node));
    return typeof node.value === 'number' ? node.value + 0 : (node.value as Json);
  };
  return { value: visit(root, []), findings };
}

const twice = (path: Path, { offset }: Node, first: () => Place): Finding => ({
  offset,
  say: () => ({ path: pathText(path), found: 'the key a second time', allowed: `once; it stands at ${first().line}:${first().column} already` }),
});

const halfCharacter = (path: Path, { offset, value }: Node): Finding => ({
  offset,
  say: () => ({ path: pathText(path), found: quoted(value as string), allowed: 'a text of whole characters (no half of a surrogate pair)' }),
});

function* entriesOf(node: Node): Generator<{ key: string; keyNode: Node; valueNode: Node }> {
  for (const { children } of node.children ?? []) {
    const [keyNode, valueNode] = children ?? [];
    if (keyNode !== undefined && valueNode !== undefined) yield { key: keyNode.value as string, keyNode, valueNode };
  }
}

export interface Spot {
  /** The value the path leads to; null where there is none. */
  value: Node | null;
  /** The key of that value, where the path ends in one. */
  key: Node | null;
  /** The value, or else the innermost object or list on the way to it. */
  nearest: Node;
}

/** A function from a path to its place in the tree. Keys are looked up once an object, however often it is asked. */
export function locator(root: Node): (path: Path) => Spot {
  const known = new Map<Node, Map<string, { keyNode: Node; valueNode: Node }>>();
  const entries = (node: Node) => {
    const before = known.get(node);
    if (before !== undefined) return before;
    const made = new Map<string, { keyNode: Node; valueNode: Node }>();
    for (const { key, keyNode, valueNode } of entriesOf(node)) if (!made.has(key)) made.set(key, { keyNode, valueNode });
    known.set(node, made);
    return made;
  };
  return (path) => {
    let spot: Spot = { value: root, key: null, nearest: root };
    for (const part of path) {
      const from = spot.nearest;
      const entry = typeof part === 'string' && from.type === 'object' ? entries(from).get(part) : undefined;
      const value = typeof part === 'number' && from.type === 'array' ? from.children?.[part] : entry?.valueNode;
      if (value === undefined) return { value: null, key: null, nearest: from };
      spot = { value, key: entry?.keyNode ?? null, nearest: value };
    }
    return spot;
  };
}
