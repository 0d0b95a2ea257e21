/** Part of people that have let go, against growth, at a few rates; median and nine in ten as marks and in words. */
import { line, ticks } from '../../../charts/plot.js';
import { letGoBy, type Releases } from './releases.js';

const W = 560;
const H = 250;
const LEFT = 48;
const RIGHT = 92;
const TOP = 12;
const BASE = 206;
const MOST_DEG = 6;

export function ReleasePicture({ all, limitDeg }: { all: readonly Releases[]; limitDeg: number }) {
  const x = (deg: number): number => LEFT + (deg / MOST_DEG) * (W - LEFT - RIGHT);
  const y = (part: number): number => BASE - part * (BASE - TOP);
  const path = (one: Releases): string => line(Array.from({ length: 121 }, (_, at) => [x((at * MOST_DEG) / 120), y(letGoBy(one, (at * MOST_DEG) / 120))] as const));
  const said = (deg: number | null): string => (deg === null ? 'never' : `${deg.toFixed(1)}°`);
  return (
    <>
      <svg viewBox={`0 0 ${W} ${H}`} role="img" aria-label={all.map((one) => `At ${one.rateDegPerS} deg/s half have let go by ${said(one.medianDeg)}, nine in ten by ${said(one.q90Deg)}`).join('. ')}>
        <line class="set-axis" x1={LEFT} y1={BASE} x2={x(MOST_DEG)} y2={BASE} />
        {[0, 0.5, 0.9, 1].map((part) => <g key={part}><line class={part === 0 ? 'set-end' : 'set-limit'} x1={LEFT} y1={y(part)} x2={x(MOST_DEG)} y2={y(part)} /><text x={LEFT - 8} y={y(part) + (part === 1 ? 2 : part === 0.9 ? 8 : 4)} text-anchor="end">{Math.round(100 * part)} %</text></g>)}
        {ticks({ from: 0, to: MOST_DEG }, 6).map((deg) => <text key={deg} x={x(deg)} y={BASE + 18} text-anchor="middle">{deg}°</text>)}
        <line class="set-end" x1={x(limitDeg)} y1={TOP} x2={x(limitDeg)} y2={BASE} />
        <text x={x(limitDeg) + 5} y={BASE - 8}>late from {limitDeg}°</text>
        {all.map((one, index) => (
          <g key={one.rateDegPerS} class={`release-${index}`}>
            <path class="release-line" d={path(one)} />
            {one.medianDeg !== null && one.medianDeg <= MOST_DEG && <circle class="release-median" cx={x(one.medianDeg)} cy={y(0.5)} r={4} />}
            {one.q90Deg !== null && one.q90Deg <= MOST_DEG && <rect class="release-ninety" x={x(one.q90Deg) - 4} y={y(0.9) - 4} width={8} height={8} />}
          </g>
        ))}
        <text x={(LEFT + x(MOST_DEG)) / 2} y={H - 6} text-anchor="middle">growth of the shown split at release</text>
      </svg>
      <div class="wide" tabIndex={0} role="region" aria-label="Releases at each rate"><table class="release-table">
        <thead><tr><th scope="col">opens by</th><th scope="col">half by</th><th scope="col">nine in ten by</th><th scope="col">within {limitDeg}°</th></tr></thead>
        <tbody>{all.map((one, index) => (
          <tr key={one.rateDegPerS}>
            <th scope="row"><svg class="release-key" viewBox="0 0 34 10" width="34" height="10" aria-hidden="true"><g class={`release-${index}`}><path class="release-line" d="M0 5H34" /></g></svg>{one.rateDegPerS}°/s</th>
            <td>{said(one.medianDeg)}</td><td>{said(one.q90Deg)}</td><td>{Math.round(100 * letGoBy(one, limitDeg))} %</td>
          </tr>
        ))}</tbody>
      </table></div>
    </>
  );
}
