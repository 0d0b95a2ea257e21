/** One chart of a stack on a shared time axis: its scale, its lines, and their names at the right end. */
import type { ComponentChildren } from 'preact';
import { spread } from '../view/strip.js';
import { at, pieces, stepped, ticks, type Point, type Scale } from './plot.js';

export interface Line {
  readonly name: string;
  /** Class of the path. */
  readonly look: string;
  /** Drawn beneath with this class, for a line with an edge. */
  readonly under?: string;
  readonly steps?: boolean;
  readonly points: readonly (readonly [atS: number, value: number | null])[];
}

interface Props {
  readonly time: Scale;
  readonly scale: Scale;
  readonly title: string;
  /** About how many figures stand beside the scale. */
  readonly count: number;
  readonly lines: readonly Line[];
  /** Behind the lines. */
  readonly children?: ComponentChildren;
}

const NAMES_APART = 15;

export function Panel({ time, scale, title, count, lines, children }: Props) {
  const named = lines.filter(({ name }) => name !== '').flatMap(({ name, points }) => {
    const last = points.findLast(([, value]) => value !== null);
    return last === undefined || last[1] === null ? [] : [{ name, y: at(scale, last[1]) }];
  });
  const places = spread(named.map(({ y }) => y), NAMES_APART, scale.end, scale.start);
  return (
    <g class="panel">
      <text class="axis-title" x={0} y={scale.end - 14}>{title}</text>
      {ticks(scale, count).map((value) => (
        <g key={value}>
          <line class="grid" x1={time.start} x2={time.end} y1={at(scale, value)} y2={at(scale, value)} />
          <text class="axis" x={time.start - 10} y={at(scale, value) + 4} text-anchor="end">{value}</text>
        </g>
      ))}
      {children}
      {lines.map(({ name, look, under, steps = false, points }) => {
        const placed = points.map(([atS, value]): Point | null => (value === null ? null : [at(time, atS), at(scale, value)]));
        const data = pieces(steps ? stepped(placed) : placed);
        return <g key={name + look}>{under !== undefined && <path class={under} d={data} />}<path class={look} d={data} /></g>;
      })}
      {named.map(({ name }, index) => <text key={name} class="end" x={time.end + 8} y={(places[index] ?? 0) + 4}>{name}</text>)}
    </g>
  );
}
