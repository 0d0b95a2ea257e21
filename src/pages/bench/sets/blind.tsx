/** Mean points of blind hands and of an ordinary watcher on one line. */
import type { SetFigures } from '../../../../sim/index.js';

const NAMES: Readonly<Record<SetFigures['blind'][number]['policy'], string>> = {
  atOnce: 'lets go at once', fixed: 'at its best moment', random: 'at any moment', pulse: 'pulses', never: 'never', arrival: 'at the setting',
};
const W = 560;
const LEFT = 168;
const RIGHT = 56;
const ROW = 22;

export function BlindStrip({ figures: { blind, steady } }: { figures: SetFigures }) {
  const rows = [
    ...blind.filter(({ policy }) => policy !== 'arrival').map(({ policy, points, atS }) => ({ name: `${NAMES[policy]}${policy === 'fixed' && atS !== null ? ` (${atS.toFixed(0)} s)` : ''}`, points, lo: points, hi: points, seeing: false })),
    { name: 'an ordinary watcher', points: steady.meanPoints, lo: steady.lo, hi: steady.hi, seeing: true },
  ];
  const least = Math.min(-60, ...rows.map(({ lo }) => lo));
  const most = Math.max(40, ...rows.map(({ hi }) => hi));
  const x = (points: number): number => LEFT + ((points - least) / (most - least)) * (W - LEFT - RIGHT);
  const height = rows.length * ROW + 26;
  return (
    <svg class="set-blind" viewBox={`0 0 ${W} ${height}`} role="img" aria-label={rows.map(({ name, points }) => `${name} ${points.toFixed(0)} points`).join(', ')}>
      <line class="set-axis" x1={x(0)} y1={4} x2={x(0)} y2={rows.length * ROW + 4} />
      <text x={x(0)} y={height - 6} text-anchor="middle">0</text>
      <line class="set-limit" x1={x(-20)} y1={4} x2={x(-20)} y2={rows.length * ROW + 4} />
      <text x={x(-20)} y={height - 6} text-anchor="end">at most −20</text>
      {rows.map(({ name, points, lo, hi, seeing }, index) => {
        const y = index * ROW + 15;
        return (
          <g key={name} class={seeing ? 'seeing' : undefined}>
            <text class="set-name" x={LEFT - 12} y={y + 4} text-anchor="end">{name}</text>
            {hi > lo && <line class="set-interval" x1={x(lo)} y1={y} x2={x(hi)} y2={y} />}
            <circle cx={x(points)} cy={y} r={4.5} />
            <text x={x(Math.max(points, hi)) + 10} y={y + 4}>{points.toFixed(0)}</text>
          </g>
        );
      })}
    </svg>
  );
}
