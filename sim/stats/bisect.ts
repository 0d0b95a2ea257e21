/** Root of a rising function by halving. */

/** @param rises a function that does not fall on [low, high] @returns the place where it passes 0, to the last bits */
export function bisect(rises: (x: number) => number, low: number, high: number): number {
  let [a, b] = [low, high];
  for (let i = 0; i < 200; i += 1) {
    const middle = a + (b - a) / 2;
    if (middle <= a || middle >= b) break;
    if (rises(middle) < 0) a = middle;
    else b = middle;
  }
  return a + (b - a) / 2;
}
