/** Signs and words over a chart: each sign at its moment, its word beside it, in as few rows as will do. */

export interface Wish {
  /** Where its moment stands, px. */
  readonly x: number;
  /** Room for the word beside the sign, px. */
  readonly w: number;
  /** Lower is placed first, and gets the lower row. */
  readonly rank: number;
}

export interface Placed {
  /** Row from below, 0 first; null where no row has room: then only the sign stands. */
  readonly row: number | null;
  /** The word stands left of its sign. */
  readonly flip: boolean;
}

/** Half a sign and the air about it, px. */
export const SIGN = 9;
const GAP = 6;

/** From where to where a sign with its word reaches, px. */
export const reach = ({ x, w }: Wish, flip: boolean): readonly [left: number, right: number] => (flip ? [x - SIGN - w, x + SIGN] : [x - SIGN, x + SIGN + w]);

/** Places words between `from` and `to` in at most `rows` rows; no two in a row touch. In the order of the wishes. */
export function lane(wishes: readonly Wish[], from: number, to: number, rows: number): Placed[] {
  const taken: (readonly [number, number])[][] = Array.from({ length: rows }, () => []);
  const placed: Placed[] = wishes.map(() => ({ row: null, flip: false }));
  const order = wishes.map((_, index) => index).sort((a, b) => (wishes[a] as Wish).rank - (wishes[b] as Wish).rank || a - b);
  for (const index of order) {
    const wish = wishes[index] as Wish;
    const sides = [false, true].filter((flip) => {
      const [left, right] = reach(wish, flip);
      return left >= from - SIGN && right <= to + SIGN;
    });
    for (let row = 0; row < rows && placed[index]?.row === null; row += 1) {
      const free = sides.find((flip) => {
        const [left, right] = reach(wish, flip);
        return taken[row]?.every(([l, r]) => right + GAP <= l || left - GAP >= r);
      });
      if (free === undefined) continue;
      taken[row]?.push(reach(wish, free));
      placed[index] = { row, flip: free };
    }
  }
  return placed;
}

/** Width of a word in the face of the charts at a size, px: about what Inter needs, and a little more. */
export const widthOf = (word: string, size: number): number => word.length * size * 0.56;
