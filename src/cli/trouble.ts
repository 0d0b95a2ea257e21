/** What ends a command: wrong usage, or a file that cannot be used. Told in words, never with a stack. */
import type { Refused } from '../text/index.js';

export const DONE = 0;
/** The thing checked failed. */
export const FAILED = 1;
/** Wrong usage, or a file that cannot be read, used or written. */
export const WRONG = 2;
/** Stopped by a signal: what a shell gives for an interrupt. */
export const CANCELLED = 130;

export class Trouble extends Error {
  /** @param refused the problems of the file, where it could be read */
  constructor(message: string, readonly refused: Refused | null = null) {
    super(message);
  }
}
