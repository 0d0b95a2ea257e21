/** Sums of a plot: straight scales, round figures beside them, and a line as the text of a path. */

export interface Scale {
  readonly from: number;
  readonly to: number;
  /** Where `from` and `to` stand, px. */
  readonly start: number;
  readonly end: number;
}

export type Point = readonly [x: number, y: number];

export const at = ({ from, to, start, end }: Scale, value: number): number => start + ((value - from) / (to - from || 1)) * (end - start);

/** The value that stands at a place: the inverse of `at`, kept inside the scale. */
export function valueAt({ from, to, start, end }: Scale, px: number): number {
  const part = Math.min(1, Math.max(0, (px - start) / (end - start || 1)));
  return from + part * (to - from);
}

/** Round figures inside a scale, about `count` of them, in steps of 1, 2 or 5 times a power of ten. */
export function ticks({ from, to }: Pick<Scale, 'from' | 'to'>, count: number): number[] {
  const span = to - from;
  if (!(span > 0)) return [from];
  const rough = span / count;
  const power = 10 ** Math.floor(Math.log10(rough));
  const step = [1, 2, 5, 10].map((part) => part * power).find((one) => one >= rough * 0.999) ?? 10 * power;
  const first = Math.ceil(from / step - 1e-9);
  const last = Math.floor(to / step + 1e-9);
  return Array.from({ length: last - first + 1 }, (_, index) => Number(((first + index) * step).toFixed(6)));
}

/** Ends for values that shall fit: whole steps about them, and never less than `least` apart; what hardly moves stands in the middle, but 0 stays below. */
export function ends(values: readonly number[], step: number, least: number): Pick<Scale, 'from' | 'to'> {
  const low = values.reduce((a, b) => Math.min(a, b), Infinity);
  const high = values.reduce((a, b) => Math.max(a, b), -Infinity);
  const from = Math.floor(low / step + 1e-9) * step;
  const to = Math.ceil(high / step - 1e-9) * step;
  const short = least - (to - from);
  if (short <= 0) return { from, to };
  const below = low === 0 ? 0 : Math.floor(short / 2 / step) * step;
  return { from: from - below, to: from - below + least };
}

/** A line through points as path data, to a hundredth of a px. */
export function line(points: readonly Point[]): string {
  return points.map(([x, y], index) => `${index === 0 ? 'M' : 'L'}${x.toFixed(2)} ${y.toFixed(2)}`).join('');
}

/** A line with holes: a null ends a piece. A piece of one point is drawn as a dot's length. */
export function pieces(points: readonly (Point | null)[]): string {
  const all: Point[][] = [[]];
  for (const point of points) {
    if (point === null) all.push([]);
    else all[all.length - 1]?.push(point);
  }
  return all.filter((piece) => piece.length > 0).map((piece) => line(piece.length === 1 ? [piece[0] as Point, piece[0] as Point] : thin(piece))).join('');
}

/** The same line in steps: each value holds until the next one comes. */
export function stepped(points: readonly (Point | null)[]): (Point | null)[] {
  const out: (Point | null)[] = [];
  for (const [index, point] of points.entries()) {
    const before = points[index - 1];
    if (point !== null && before !== null && before !== undefined && before[1] !== point[1]) out.push([point[0], before[1]]);
    out.push(point);
  }
  return out;
}

/**
 * Leaves points out so that the line through those that stay passes every one left out within `slack`, measured along y.
 * x never falls. A hold of a minute is two points. The cone of slopes that keep the promise narrows from each kept point
 * on; where it closes, the point before is kept.
 */
export function thin(points: readonly Point[], slack = 0.05): Point[] {
  const first = points[0];
  if (first === undefined) return [];
  const kept: Point[] = [first];
  let anchor = first;
  let [low, high] = [-Infinity, Infinity];
  for (let index = 1; index < points.length; index += 1) {
    const point = points[index] as Point;
    const run = point[0] - anchor[0];
    const slope = (point[1] - anchor[1]) / run;
    if (run > 0 && slope >= low && slope <= high) {
      low = Math.max(low, (point[1] - slack - anchor[1]) / run);
      high = Math.min(high, (point[1] + slack - anchor[1]) / run);
      continue;
    }
    const before = points[index - 1] as Point;
    if (before !== anchor) kept.push(before);
    anchor = before;
    const step = point[0] - anchor[0];
    if (step > 0) [low, high] = [(point[1] - slack - anchor[1]) / step, (point[1] + slack - anchor[1]) / step];
    else {
      // Straight up or down: both ends stay.
      kept.push(point);
      anchor = point;
      [low, high] = [-Infinity, Infinity];
    }
  }
  const last = points[points.length - 1] as Point;
  if (last !== kept[kept.length - 1]) kept.push(last);
  return kept;
}
