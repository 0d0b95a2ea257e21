/** Where a command writes: its result to one stream, words beside it to the other. */
import type { Refused } from '../text/index.js';
import { problemLines } from './problems.js';
import { type Trouble, WRONG } from './trouble.js';

export interface Io {
  out(text: string): void;
  err(text: string): void;
}

export const printJson = (io: Io, value: object): void => io.out(`${JSON.stringify(value)}\n`);
export const printLines = (io: Io, lines: readonly string[]): void => io.out(lines.map((line) => `${line}\n`).join(''));

/** Tells a trouble: in words, and with --json as the one object on standard output as well. */
export function tell(io: Io, trouble: Trouble, json: boolean): number {
  const { message, refused } = trouble;
  io.err(`evenhand: ${message}\n`);
  if (refused !== null) io.err(problemLines(refused).map((line) => `${line}\n`).join(''));
  if (json) printJson(io, { ok: false, error: message, ...listed(refused) });
  return WRONG;
}

const listed = (refused: Refused | null): Pick<Refused, 'problems' | 'more'> =>
  ({ problems: refused?.problems ?? [], more: refused?.more ?? 0 });
