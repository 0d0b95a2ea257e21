// A file that has to be scrolled through holds more than one noun.
import type { Source } from './source.js';
import { longestFile, tables } from './table.js';

export function linesProblems({ path, text }: Source): string[] {
  const lines = text.trimEnd().split('\n').length;
  return lines > longestFile && !tables.includes(path) ? [`${path}: ${lines} lines, at most ${longestFile}`] : [];
}
