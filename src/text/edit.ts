/**
 * Changes a text of JSON with comments at one place. What stands around it stays as it was written, comments and layout
 * too; what is added is laid out like its neighbours.
 */
import { type Node, parseTree } from 'jsonc-parser';
import type { Path } from './problem.js';
import { parseText } from './read.js';
import { type Json, locator } from './values.js';

/** What stands in a text, right or wrong for any kind of file; undefined where its grammar is broken. */
export function parsedValue(text: string): Json | undefined {
  const read = parseText(text, '');
  return read.ok ? read.parsed.value : undefined;
}

/** Longest value written on one line, characters. */
const LONGEST_LINE = 140;
const STEP = '  ';

/**
 * The text with a value at a path; undefined takes it away. What is missing on the way is made. A list is added to at its
 * length. A text whose grammar is broken, or a path that leads through a plain value, comes back as it was.
 */
export function edited(text: string, path: Path, value: Json | undefined): string {
  const root = rootOf(text);
  if (root === null) return text;
  const spot = locator(root)(path);
  if (value === undefined) return spot.value === null ? text : without(text, spot.value);
  if (spot.value !== null) return replaced(text, spot.value, written(value, indentAt(text, spot.value.offset)));
  const found = deepest(root, path);
  const [key, ...rest] = path.slice(found.depth);
  if (key === undefined) return text;
  const inner = rest.reduceRight<Json>((made, part) => (typeof part === 'number' ? [made] : { [part]: made }), value);
  return put(text, found.node, key, inner);
}

/** The text with the entry of a list taken to another place in it; its own text goes with it. */
export function moved(text: string, path: Path, from: number, to: number): string {
  const entries = listAt(text, path);
  if (entries?.[from] === undefined || entries[to] === undefined || from === to) return text;
  const order = entries.map((_, index) => index);
  order.splice(to, 0, ...order.splice(from, 1));
  // From the end, so that the offsets before it hold.
  return entries.reduceRight((whole, place, index) => replaced(whole, place, raw(text, entries[order[index] as number] as Node)), text);
}

/** The text with a copy of an entry of a list behind it, as it is written. */
export function duplicated(text: string, path: Path, index: number): string {
  const entry = listAt(text, path)?.[index];
  return entry === undefined ? text : insertBehind(text, entry, raw(text, entry));
}

const rootOf = (text: string): Node | null => {
  const read = parseText(text, '');
  return read.ok ? (parseTree(text) ?? null) : null;
};
const raw = (text: string, { offset, length }: Node): string => text.slice(offset, offset + length);
const replaced = (text: string, { offset, length }: Node, by: string): string => text.slice(0, offset) + by + text.slice(offset + length);

function listAt(text: string, path: Path): Node[] | null {
  const root = rootOf(text);
  const node = root === null ? null : locator(root)(path).value;
  return node?.type === 'array' ? (node.children ?? []) : null;
}

/** The innermost value on a path that is there, and how many parts of the path lead to it. */
function deepest(root: Node, path: Path): { node: Node; depth: number } {
  const locate = locator(root);
  for (let depth = path.length; depth > 0; depth -= 1) {
    const node = locate(path.slice(0, depth)).value;
    if (node !== null) return { node, depth };
  }
  return { node: root, depth: 0 };
}

/** The text without an entry: with it go its comma, and its line where it had one to itself, with what is said there of it. */
function without(text: string, value: Node): string {
  const entry = value.parent?.type === 'property' ? value.parent : value;
  const siblings = entry.parent?.children;
  if (siblings === undefined) return text;
  const at = siblings.indexOf(entry);
  const [before, next] = [siblings[at - 1], siblings[at + 1]];
  const end = endOf(entry);
  const comma = next === undefined ? -1 : commaIn(text, end, next.offset);
  const start = text.lastIndexOf('\n', entry.offset - 1) + 1;
  const newline = text.indexOf('\n', end);
  const alone = newline >= 0 && text.slice(start, entry.offset).trim() === '' && LINE_END.test(text.slice(end, newline)) && (comma < 0 || comma < newline);
  if (alone) {
    const rest = text.slice(0, start) + text.slice(newline + 1);
    // A comma that now stands behind the last entry goes too; comments between stay.
    return next !== undefined || before === undefined ? rest : cut(rest, commaIn(text, endOf(before), entry.offset), 1);
  }
  if (next !== undefined) return cut(cut(text, comma, /^,[^\S\n]*/.exec(text.slice(comma))?.[0].length ?? 1), entry.offset, entry.length);
  if (before !== undefined) {
    const from = commaIn(text, endOf(before), entry.offset);
    return text.slice(from + 1, entry.offset).trim() === '' ? cut(text, from, end - from) : cut(cut(text, entry.offset, entry.length), from, 1);
  }
  const { offset, length } = entry.parent as Node;
  const inside = text.slice(offset + 1, entry.offset) + text.slice(end, offset + length - 1);
  return inside.trim() === '' ? cut(text, offset + 1, length - 2) : cut(text, entry.offset, entry.length);
}

const endOf = ({ offset, length }: Node): number => offset + length;
const cut = (text: string, offset: number, length: number): string => text.slice(0, offset) + text.slice(offset + length);

/** Where the comma stands between two entries, comments passed over. */
function commaIn(text: string, from: number, to: number): number {
  const gap = text.slice(from, to).replace(/\/\*[^]*?\*\/|\/\/.*/g, (comment) => ' '.repeat(comment.length));
  return from + gap.indexOf(',');
}

/** What may stand behind an entry that has the rest of its line to itself: a comma, and a comment of it. */
const LINE_END = /^[^\S\n]*(,?)[^\S\n]*(?:\/\/.*|\/\*(?:(?!\*\/).)*\*\/[^\S\n]*)?$/;

/** A new entry behind the last of an object or a list. */
function put(text: string, into: Node, key: string | number, value: Json): string {
  const fits = typeof key === 'string' ? into.type === 'object' : into.type === 'array' && key === (into.children ?? []).length;
  if (!fits) return text;
  const last = into.children?.at(-1);
  const before = typeof key === 'string' ? `${JSON.stringify(key)}: ` : '';
  if (last !== undefined) return insertBehind(text, last, before + written(value, indentAt(text, last.offset)));
  const own = indentAt(text, into.offset);
  const opens = into.type === 'object' ? '{}' : '[]';
  // A list of objects is read line by line.
  const lines = isFilled(value) && into.type === 'array';
  const inside = before + written(value, own + STEP);
  return replaced(text, into, lines ? `[\n${own}${STEP}${inside}\n${own}]` : `${opens[0]} ${inside} ${opens[1]}`);
}

/** An entry behind another: on its line where the list ends there, else on a line of its own, behind what is said of the other. */
function insertBehind(text: string, last: Node, entry: string): string {
  const end = last.offset + last.length;
  const newline = text.indexOf('\n', end);
  const rest = newline < 0 ? text.slice(end) : text.slice(end, newline);
  const behind = LINE_END.exec(rest);
  if (newline < 0 || behind === null) return `${text.slice(0, end)}, ${entry}${text.slice(end)}`;
  const line = `\n${indentAt(text, last.offset)}${entry}`;
  const comma = behind[1] === ',';
  return `${text.slice(0, end)}${comma ? '' : ','}${rest.trimEnd()}${line}${comma ? ',' : ''}${text.slice(newline)}`;
}

/** The white space that the line of an offset begins with. */
function indentAt(text: string, offset: number): string {
  const start = text.lastIndexOf('\n', offset - 1) + 1;
  return /^[^\S\n]*/.exec(text.slice(start, offset))?.[0] ?? '';
}

const isFilled = (value: Json): boolean => typeof value === 'object' && value !== null && Object.keys(value).length > 0;

/** A value as a file of ours writes it: on one line where it fits, else an entry a line. */
function written(value: Json, indent: string): string {
  const line = oneLine(value);
  if (line.length <= LONGEST_LINE || !isFilled(value)) return line;
  const inner = indent + STEP;
  const entries = Array.isArray(value)
    ? value.map((item) => written(item, inner))
    : Object.entries(value as { [key: string]: Json }).map(([key, item]) => `${JSON.stringify(key)}: ${written(item, inner)}`);
  const [open, close] = Array.isArray(value) ? '[]' : '{}';
  return `${open}\n${entries.map((entry) => inner + entry).join(',\n')}\n${indent}${close}`;
}

function oneLine(value: Json): string {
  if (Array.isArray(value)) return `[${value.map(oneLine).join(', ')}]`;
  if (typeof value !== 'object' || value === null) return JSON.stringify(value);
  const entries = Object.entries(value).map(([key, item]) => `${JSON.stringify(key)}: ${oneLine(item)}`);
  return entries.length === 0 ? '{}' : `{ ${entries.join(', ')} }`;
}
