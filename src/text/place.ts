/** From an offset in a text to a line and a column. */

export interface Place {
  /** From 1. A line ends at LF, CR LF or a lone CR, as in editors. */
  line: number;
  /** From 1, in characters: a character beyond 16 bits (an emoji, say) counts once, a tab counts once. */
  column: number;
}

/** A function that places offsets (UTF-16 units, as JavaScript counts) of this text; an offset behind its end is its end. */
export function placer(text: string): (offset: number) => Place {
  const starts = lineStarts(text);
  return (offset) => {
    const at = Math.max(0, Math.min(offset, text.length));
    const line = lastAtOrBelow(starts, at);
    return { line: line + 1, column: characters(text, starts[line] ?? 0, at) + 1 };
  };
}

function lineStarts(text: string): number[] {
  const starts = [0];
  for (const end of text.matchAll(/\r\n|\n|\r/g)) starts.push(end.index + end[0].length);
  return starts;
}

/** Index of the last of the rising `values` at or below `value`; the first is 0. */
function lastAtOrBelow(values: readonly number[], value: number): number {
  let low = 0;
  let high = values.length - 1;
  while (low < high) {
    const middle = Math.ceil((low + high) / 2);
    if ((values[middle] ?? 0) <= value) low = middle;
    else high = middle - 1;
  }
  return low;
}

function characters(text: string, from: number, to: number): number {
  let count = 0;
  for (let at = from; at < to; count++) at += (text.codePointAt(at) ?? 0) > 0xffff && at + 1 < to ? 2 : 1;
  return count;
}
