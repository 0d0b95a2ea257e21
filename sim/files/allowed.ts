/** What a shape allows, in words: "a number from 60 to 400 kt". Said in problems, in the key table and in --help. */
import type { NumberShape, Shape } from './shape.js';

/** Most words that are listed one by one. */
const LONGEST_LIST = 40;

/** What may stand where this shape stands. */
export function allowedBy(shape: Shape): string {
  return shape.nullable ? `${plain(shape)}, or null` : plain(shape);
}

function plain(shape: Shape): string {
  switch (shape.kind) {
    case 'number': return number(shape);
    case 'text': return shape.pattern ?? (shape.max === undefined ? 'a text' : `a text of at most ${shape.max} characters`);
    case 'word': return oneOf(shape.words);
    case 'flag': return 'true or false';
    case 'object': return 'an object';
    case 'choice': return `an object with ${shape.by}`;
    case 'list': return list(shape.min, shape.max);
    case 'either': return shape.options.map(plain).join('; or ');
  }
}

/** The words with "or" before the last: "left", "right" or "drawn". */
export function oneOf(words: readonly (string | number)[]): string {
  const all = words.slice(0, LONGEST_LIST).map((word) => JSON.stringify(word));
  const last = all.pop() ?? 'nothing';
  return all.length === 0 ? last : `${all.join(', ')} or ${last}`;
}

function number(shape: NumberShape): string {
  const kind = shape.whole ? 'a whole number' : 'a number';
  return [kind, rangeText(shape), ...shape.rules.map((rule) => `(${rule})`)].filter((part) => part !== '').join(' ');
}

/** Range with its unit: "from 60 to 400 kt", "in kt"; empty where there is neither. */
function rangeText({ min, max, unit }: NumberShape): string {
  const ends = [Number.isFinite(min) ? `from ${min}` : '', Number.isFinite(max) ? `${Number.isFinite(min) ? 'to' : 'up to'} ${max}` : ''];
  const range = ends.filter((end) => end !== '').join(' ');
  if (unit === '1') return range;
  return range === '' ? `in ${unit}` : `${range} ${unit}`;
}

function list(min: number, max: number | undefined): string {
  if (max === undefined) return min > 0 ? `a list of at least ${min}` : 'a list';
  return min > 0 ? `a list of ${min} to ${max}` : `a list of at most ${max}`;
}
