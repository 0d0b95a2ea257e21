/**
 * A look at a text before any parser that calls itself sees it: how large, how deeply nested. It reads the same tokens
 * as the parser (strings, escapes and comments included), so that the two cannot disagree about what a bracket is.
 */
import { createScanner } from 'jsonc-parser';
import type { Finding } from './problem.js';

/** Largest file in bytes of UTF-8: 1 MB. */
export const MOST_BYTES = 1_048_576;
/** Deepest nesting of lists and objects. */
export const DEEPEST = 64;

// jsonc-parser declares its tokens as a const enum of declarations only, which one-file compilers cannot read.
const OPEN_OBJECT = 1;
const CLOSE_OBJECT = 2;
const OPEN_LIST = 3;
const CLOSE_LIST = 4;
const COMMA = 5;
const END = 17;

export interface Scan {
  /** Too large or too deep: nothing else may look at the text. */
  refused: Finding | null;
  /** Offsets of commas with nothing but a closing bracket behind them, by the offset of that bracket. */
  trailingCommas: ReadonlyMap<number, number>;
}

export function scan(text: string): Scan {
  const bytes = text.length > MOST_BYTES ? text.length : bytesOf(text);
  if (bytes > MOST_BYTES) {
    return refuse(0, `more than ${MOST_BYTES} bytes`, `a file of at most ${MOST_BYTES} bytes`);
  }
  return scanTokens(text);
}

function scanTokens(text: string): Scan {
  const scanner = createScanner(text, true);
  const trailingCommas = new Map<number, number>();
  const open: number[] = [];
  let comma: number | null = null;
  for (let token: number = scanner.scan(); token !== END; token = scanner.scan()) {
    const offset = scanner.getTokenOffset();
    if (token === OPEN_OBJECT || token === OPEN_LIST) {
      if (open.length === DEEPEST) return refuse(offset, `lists and objects nested more than ${DEEPEST} deep`, `at most ${DEEPEST} deep`);
      open.push(token);
    } else if (token === CLOSE_OBJECT || token === CLOSE_LIST) {
      if (comma !== null) trailingCommas.set(offset, comma);
      // A bracket that closes nothing does not make the parser shallower, so it must not count here either.
      if (open.at(-1) === token - 1) open.pop();
    }
    comma = token === COMMA ? offset : null;
  }
  return { refused: null, trailingCommas };
}

const refuse = (offset: number, found: string, allowed: string): Scan => ({
  refused: { offset, say: () => ({ path: '', found, allowed }) },
  trailingCommas: new Map(),
});

function bytesOf(text: string): number {
  let bytes = 0;
  for (let at = 0; at < text.length; at++) {
    const unit = text.charCodeAt(at);
    // Each half of a surrogate pair stands for two of its four bytes.
    bytes += unit < 0x80 ? 1 : unit < 0x800 || (unit >= 0xd800 && unit <= 0xdfff) ? 2 : 3;
  }
  return bytes;
}
