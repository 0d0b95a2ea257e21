/** A climber for smooth functions of a few numbers: quasi-Newton (Broyden, Fletcher, Goldfarb, Shanno), halving steps. */

/** Value at a point; its slope is written into `slope`. */
export type Climbed = (x: readonly number[], slope: number[]) => number;

export interface Summit {
  readonly x: readonly number[];
  readonly value: number;
  /** The slope came down to the tolerance; false: a ridge without an end, or no finite value. */
  readonly flat: boolean;
}

const MOST_STEPS = 500;
/** No step is longer than this in any direction: parameters are logarithms. */
const LONGEST = 1;

/** Slope that counts as flat, and change of value that rounding may hide, both over the size of the value. */
const FLAT = 1e-11;
const ROUNDING = 1e-14;

/** Climbs from `start`. */
export function maximise(climbed: Climbed, start: readonly number[]): Summit {
  const n = start.length;
  let x = [...start];
  let slope = new Array<number>(n).fill(0);
  let value = climbed(x, slope);
  let inverse = identity(n);
  for (let step = 0; step < MOST_STEPS && Number.isFinite(value); step += 1) {
    const size = Math.max(1, Math.abs(value));
    if (steepest(slope) <= FLAT * size) return { x, value, flat: true };
    let way = inverse.map((row) => dot(row, slope));
    if (dot(way, slope) <= 0) { inverse = identity(n); way = [...slope]; }
    const gain = dot(way, slope);
    let part = Math.min(1, LONGEST / steepest(way));
    const slopeThere = new Array<number>(n).fill(0);
    let there = x;
    let valueThere = -Infinity;
    for (let halved = 0; halved < 60; halved += 1, part /= 2) {
      there = x.map((one, at) => one + part * (way[at] as number));
      valueThere = climbed(there, slopeThere);
      if (valueThere >= value + 1e-4 * part * gain) break;
      // Near the summit rounding hides the climb, and the slope along the way tells it (Hager and Zhang 2005).
      if (valueThere >= value - ROUNDING * size && Math.abs(dot(way, slopeThere)) <= 0.9 * gain) break;
    }
    if (!(valueThere >= value - ROUNDING * size)) return { x, value, flat: steepest(slope) <= 1e-6 * size };
    inverse = updated(inverse, there.map((one, at) => one - (x[at] as number)), slope.map((one, at) => one - (slopeThere[at] as number)));
    [x, value, slope] = [there, valueThere, slopeThere];
  }
  return { x, value, flat: false };
}

const steepest = (slope: readonly number[]): number => Math.max(...slope.map(Math.abs));
const identity = (n: number): number[][] => Array.from({ length: n }, (_, i) => Array.from({ length: n }, (_, j) => (i === j ? 1 : 0)));
const dot = (a: readonly number[], b: readonly number[]): number => a.reduce((sum, one, at) => sum + one * (b[at] as number), 0);

/** The inverse of the curvature after a step `moved` over which the slope fell by `fell`. */
function updated(inverse: number[][], moved: number[], fell: number[]): number[][] {
  const curve = dot(moved, fell);
  if (curve <= 1e-300) return inverse;
  const bent = inverse.map((row) => dot(row, fell));
  const scale = (1 + dot(fell, bent) / curve) / curve;
  return inverse.map((row, i) => row.map((one, j) =>
    one + scale * (moved[i] as number) * (moved[j] as number) - ((bent[i] as number) * (moved[j] as number) + (moved[i] as number) * (bent[j] as number)) / curve));
}
