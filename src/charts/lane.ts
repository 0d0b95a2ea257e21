/** Words over a chart: each as near its moment as the others let it, in as few rows as will do. */

export interface Wish {
  /** Where its moment stands, px. */
  readonly x: number;
  /** Width of the word, px. */
  readonly w: number;
  /** Lower is placed first, and gets the lower row. */
  readonly rank: number;
}

export interface Placed {
  /** Middle of the word, px. */
  readonly x: number;
  /** Row from below, 0 first; null where no row has room: then only the sign stands. */
  readonly row: number | null;
}

const GAP = 10;

/** Places words between `from` and `to` in at most `rows` rows; no two in a row touch. In the order of the wishes. */
export function lane(wishes: readonly Wish[], from: number, to: number, rows: number): Placed[] {
  const taken: (readonly [number, number])[][] = Array.from({ length: rows }, () => []);
  const placed: Placed[] = wishes.map(({ x }) => ({ x, row: null }));
  const order = wishes.map((_, index) => index).sort((a, b) => (wishes[a] as Wish).rank - (wishes[b] as Wish).rank || a - b);
  for (const index of order) {
    const { x, w } = wishes[index] as Wish;
    const middle = Math.min(Math.max(x, from + w / 2), to - w / 2);
    const span = [middle - w / 2 - GAP / 2, middle + w / 2 + GAP / 2] as const;
    const row = taken.findIndex((spans) => spans.every(([left, right]) => span[1] <= left || span[0] >= right));
    if (row < 0) continue;
    taken[row]?.push(span);
    placed[index] = { x: middle, row };
  }
  return placed;
}

/** Width of a word in the face of the charts at a size, px: about what Inter needs, and a little more. */
export const widthOf = (word: string, size: number): number => word.length * size * 0.56;
