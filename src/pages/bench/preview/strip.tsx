/** How one figure is spread over the runs of a sweep: its histogram over a ruler, the middle half and the median marked. */
import type { Spread } from '../../../../sim/index.js';
import { at, ticks, type Scale } from '../../../charts/plot.js';

interface Props {
  readonly title: string;
  readonly unit: string;
  readonly places: number;
  readonly of: Spread;
  /** A standard to hold it against. */
  readonly limit?: { readonly value: number; readonly word: string };
}

const W = 400;
const H = 96;
const FOOT = 74;
const HEAD = 18;

export function Strip({ title, unit, places, of, limit }: Props) {
  const { bins, n, q05, q25, median, q75, q95 } = of;
  const [first, last] = [bins[0], bins.at(-1)];
  if (first === undefined || last === undefined) return null;
  const to = Math.max(last.to, limit?.value ?? last.to);
  const x: Scale = { from: Math.min(first.from, limit?.value ?? first.from), to, start: 4, end: W - 4 };
  const most = bins.reduce((high, { count }) => Math.max(high, count), 1);
  const told = (value: number): string => `${value.toFixed(places)}${unit}`;
  const words = `half of ${n} runs between ${told(q25)} and ${told(q75)}, median ${told(median)}; 5 of 100 below ${told(q05)}, 5 above ${told(q95)}`;
  return (
    <figure class="strip">
      <figcaption><strong>{title}</strong> <span>{words}</span></figcaption>
      <svg viewBox={`0 0 ${W} ${H}`} role="img" aria-label={`${title}: ${words}`}>
        {bins.map((bin) => {
          const height = ((FOOT - HEAD) * bin.count) / most;
          return <rect key={bin.from} class="strip-bin" x={at(x, bin.from) + 0.75} width={Math.max(1, at(x, bin.to) - at(x, bin.from) - 1.5)} y={FOOT - height} height={height} />;
        })}
        <line class="strip-rule" x1={x.start} x2={x.end} y1={FOOT} y2={FOOT} />
        {ticks(x, 6).map((value) => <text key={value} class="axis" x={at(x, value)} y={FOOT + 17} text-anchor="middle">{value}</text>)}
        <line class="strip-half" x1={at(x, q25)} x2={at(x, q75)} y1={FOOT} y2={FOOT} />
        <path class="strip-median" d={`M${at(x, median)} ${FOOT - 5}L${at(x, median) + 5} ${FOOT}L${at(x, median)} ${FOOT + 5}L${at(x, median) - 5} ${FOOT}Z`} />
        {limit !== undefined && <line class="limit" x1={at(x, limit.value)} x2={at(x, limit.value)} y1={HEAD - 4} y2={FOOT} />}
        {limit !== undefined && <text class="axis" x={at(x, limit.value) + (at(x, limit.value) > W * 0.8 ? -6 : 6)} y={HEAD + 4} text-anchor={at(x, limit.value) > W * 0.8 ? 'end' : 'start'}>{limit.word}</text>}
      </svg>
    </figure>
  );
}
