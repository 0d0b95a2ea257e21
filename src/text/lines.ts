/** Problems as lines for people. */
import type { Problem, Refused } from './problem.js';

/** `file:line:column  path  found ..., allowed: ...` */
export function lineOf({ file, line, column, path, found, allowed }: Problem): string {
  return `${file}:${line}:${column}  ${path === '' ? 'the file' : path}  found ${found}; allowed: ${allowed}`;
}

/** The line behind a list that was cut, or null. */
export const moreLine = ({ more }: Pick<Refused, 'more'>): string | null =>
  more === 0 ? null : `... and ${more} more ${more === 1 ? 'problem' : 'problems'}`;
