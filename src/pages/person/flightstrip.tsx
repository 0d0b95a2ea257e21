/** One number of each flight over time: a dot on its interval, in the order in which they were flown. */
import { at, ticks, type Scale } from '../../charts/plot.js';

export interface Stop {
  readonly id: string;
  /** null: too few runs for a number. */
  readonly value: number | null;
  readonly lo: number | null;
  /** null: beyond what was seen. */
  readonly hi: number | null;
  readonly words: string;
  /** Below the axis: when it was flown, and its name. */
  readonly when: string;
  readonly name: string;
  /** Left off before its last run: drawn open. */
  readonly leftOff: boolean;
}

interface Props {
  readonly title: string;
  readonly unit: string;
  readonly stops: readonly Stop[];
  /** Least end of the axis. */
  readonly most: number;
  readonly tick: (value: number) => string;
  /** A line across, and its word. */
  readonly limit?: { readonly value: number; readonly word: string };
}

const W = 352;
const BOX = { left: 44, right: W - 16, top: 46, bottom: 176 };
/** Flights whose figures still have room beside each other. */
const ROOM = 5;

export function FlightStrip({ title, unit, stops, most, tick, limit }: Props) {
  const top = stops.reduce((high, { value, hi }) => Math.max(high, value ?? 0, hi ?? 0), most);
  const y: Scale = { from: 0, to: top, start: BOX.bottom, end: BOX.top };
  const step = (BOX.right - BOX.left) / stops.length;
  const told = (index: number): boolean => stops.length <= ROOM || index === 0 || index === stops.length - 1;
  return (
    <figure class="flight-strip">
      <svg viewBox={`0 0 ${W} 224`} role="img" aria-label={`${title}, ${unit}, ${stops.length === 1 ? 'one flight' : `${stops.length} flights in time order`}: ${stops.map(({ words }) => words).join('; ')}.`}>
        <text class="strip-title" x="0" y="14">{title}</text><text class="strip-unit" x={W - 16} y="14" text-anchor="end">{unit}</text>
        {ticks(y, 4).map((value) => (
          <g key={value}>
            <line class="grid" x1={BOX.left} x2={BOX.right} y1={at(y, value)} y2={at(y, value)} />
            <text class="strip-tick" x={BOX.left - 8} y={at(y, value) + 4} text-anchor="end">{tick(value)}</text>
          </g>
        ))}
        {limit !== undefined && limit.value <= top && (
          <g><line class="limit" x1={BOX.left} x2={BOX.right} y1={at(y, limit.value)} y2={at(y, limit.value)} /><text class="strip-tick" x={BOX.right} y={at(y, limit.value) - 5} text-anchor="end">{limit.word}</text></g>
        )}
        {stops.map((stop, index) => <Mark key={stop.id} stop={stop} x={BOX.left + step * (index + 0.5)} y={y} told={told(index)} />)}
      </svg>
    </figure>
  );
}

function Mark({ stop: { value, lo, hi, words, when, name, leftOff }, x, y, told }: { stop: Stop; x: number; y: Scale; told: boolean }) {
  const below = told && (
    <><text class="strip-tick" x={x} y={BOX.bottom + 20} text-anchor="middle">{when}</text>{name !== '' && <text class="strip-name" x={x} y={BOX.bottom + 37} text-anchor="middle">{name.length > 14 ? `${name.slice(0, 13)}…` : name}</text>}</>
  );
  if (value === null) return <g>{below}<path class="strip-none" d={`M${x - 4} ${BOX.bottom - 12}l8 8m0 -8l-8 8`} /></g>;
  const [low, high] = [at(y, lo ?? value), hi === null ? BOX.top : at(y, hi)];
  return (
    <g>
      {below}
      <line class="strip-range" x1={x} x2={x} y1={low} y2={high} />
      <path class="strip-range" d={`M${x - 5} ${low}h10${hi === null ? `M${x - 5} ${high + 6}L${x} ${high}L${x + 5} ${high + 6}` : `M${x - 5} ${high}h10`}`} />
      <circle class={leftOff ? 'strip-dot open' : 'strip-dot'} cx={x} cy={at(y, value)} r="5" />
      {told && <text class="strip-value" x={x} y={Math.min(high, at(y, value) - 4) - 8} text-anchor="middle">{words}</text>}
    </g>
  );
}
