/** Changes a text of JSON with comments at one place: what stands around it, comments and layout, stays. */
import { applyEdits, modify } from 'jsonc-parser';
import type { Path } from './problem.js';
import { parseText } from './read.js';
import type { Json } from './values.js';

/** What stands in a text, right or wrong for any kind of file; undefined where its grammar is broken. */
export function parsedValue(text: string): Json | undefined {
  const read = parseText(text, '');
  return read.ok ? read.parsed.value : undefined;
}

/** The text with a value at a path; undefined takes it away. A list is added to at its length. */
export function edited(text: string, path: Path, value: Json | undefined): string {
  return applyEdits(text, modify(text, [...path], value, { formattingOptions: { insertSpaces: true, tabSize: 2, eol: '\n' } }));
}
