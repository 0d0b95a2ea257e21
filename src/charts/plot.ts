/** Sums of a plot: straight scales, round figures beside them, and a line as the text of a path. */

export interface Scale {
  readonly from: number;
  readonly to: number;
  /** Where `from` and `to` stand, px. */
  readonly start: number;
  readonly end: number;
}

export const at = ({ from, to, start, end }: Scale, value: number): number => start + ((value - from) / (to - from || 1)) * (end - start);

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

/** A line through points as path data, to a hundredth of a px. */
export function line(points: readonly (readonly [x: number, y: number])[]): string {
  return points.map(([x, y], index) => `${index === 0 ? 'M' : 'L'}${x.toFixed(2)} ${y.toFixed(2)}`).join('');
}

/** Leaves out points on a straight line between their neighbours: a hold of a minute is two points. */
export function thin(points: readonly (readonly [number, number])[], slack = 0.05): (readonly [number, number])[] {
  const kept: (readonly [number, number])[] = [];
  for (const [index, point] of points.entries()) {
    const before = kept[kept.length - 1];
    const after = points[index + 1];
    if (before !== undefined && after !== undefined) {
      const wanted = before[1] + ((after[1] - before[1]) * (point[0] - before[0])) / (after[0] - before[0] || 1);
      if (Math.abs(wanted - point[1]) < slack) continue;
    }
    kept.push(point);
  }
  return kept;
}
