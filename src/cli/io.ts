/** Where a command writes: its result to one stream, words beside it to the other. */
import type { TroubleOutput } from '../../sim/files/index.js';
import type { Refused } from '../text/index.js';
import { problemLines } from './problems.js';
import { type Trouble, WRONG } from './trouble.js';

export interface Io {
  out(text: string): void;
  err(text: string): void;
  /** Standard error is a screen, where a line can be written over. */
  readonly screen?: boolean;
}

export const printJson = (io: Io, value: object): void => io.out(`${JSON.stringify(value)}\n`);
export const printLines = (io: Io, lines: readonly string[]): void => io.out(lines.map((line) => `${line}\n`).join(''));

/** Tells a trouble: in words, and with --json as the one object on standard output as well. */
export function tell(io: Io, trouble: Trouble, json: boolean): number {
  const { message, refused } = trouble;
  io.err(`evenhand: ${message}\n`);
  if (refused !== null) io.err(problemLines(refused).map((line) => `${line}\n`).join(''));
  if (json) printTrouble(io, message, refused);
  return WRONG;
}

/** The object that stands in place of a command's own. */
export function printTrouble(io: Io, error: string, refused: Refused | null): void {
  const output: TroubleOutput = { ok: false, error, problems: refused?.problems ?? [], more: refused?.more ?? 0 };
  printJson(io, output);
}
