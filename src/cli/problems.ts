/** Problems as aligned lines: file:line:column, path, found and allowed. */
import type { Refused } from '../text/index.js';
import { columns } from './columns.js';

export function problemLines({ problems, more }: Pick<Refused, 'problems' | 'more'>): string[] {
  const lines = columns(problems.map(({ file, line, column, path, found, allowed }) =>
    [`${file}:${line}:${column}`, path === '' ? '(file)' : path, `found ${found}; allowed: ${allowed}`]));
  return more === 0 ? lines : [...lines, `... and ${more} more`];
}

/** "no problem", "1 problem", "12 problems". */
export const counted = (count: number, one: string): string => (count === 0 ? `no ${one}` : `${count} ${one}${count === 1 ? '' : 's'}`);
