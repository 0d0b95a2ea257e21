/** Share of runs not yet let go, over the split: one stepped curve a rate, told apart by its end and its dashes. */
import type { RateCurve } from '../../../sim/index.js';
import { at, ticks, type Scale } from '../../charts/plot.js';
import { spread } from '../../view/strip.js';

const W = 760;
const BOX = { left: 48, right: 150, top: 34, bottom: 246 };
const DASHES = ['', '9 4', '2 4', '9 4 2 4', '5 5', '12 3', '1 3', '6 2 1 2'];

export function Curves({ curves, limitDeg }: { curves: readonly RateCurve[]; limitDeg: number }) {
  const most = Math.max(limitDeg, ...curves.flatMap(({ steps, heldToDeg }) => [...steps.map(({ splitDeg }) => splitDeg), ...heldToDeg]));
  const x: Scale = { from: 0, to: Math.ceil(most * 2) / 2, start: BOX.left, end: W - BOX.right };
  const y: Scale = { from: 0, to: 1, start: BOX.bottom, end: BOX.top };
  const lines = curves.map(({ rateDegPerS, steps, heldToDeg }, index) => {
    const last = steps[steps.length - 1];
    const endDeg = Math.max(last?.splitDeg ?? 0, ...heldToDeg);
    const share = last?.s ?? 1;
    const path = steps.reduce((so, step) => `${so}H${at(x, step.splitDeg)}V${at(y, step.s)}`, `M${at(x, 0)} ${at(y, 1)}`);
    return { rateDegPerS, steps, heldToDeg, dash: DASHES[index % DASHES.length] as string, path: `${path}H${at(x, endDeg)}`, endX: at(x, endDeg), endY: at(y, share) };
  });
  const names = spread(lines.map(({ endY }) => endY), 20, BOX.top, BOX.bottom);
  return (
    <figure class="figure curves">
      <svg viewBox={`0 0 ${W} 292`} role="img" aria-label="Share of runs not yet let go over the split, a curve for each rate; the figures stand in the table below.">
        {[0, 0.25, 0.5, 0.75, 1].map((part) => (
          <g key={part}>
            <line class="grid" x1={BOX.left} x2={W - BOX.right} y1={at(y, part)} y2={at(y, part)} />
            <text class="axis" x={BOX.left - 8} y={at(y, part) + 4} text-anchor="end">{part * 100} %</text>
          </g>
        ))}
        {ticks(x, 6).map((deg) => <text key={deg} class="axis" x={at(x, deg)} y={BOX.bottom + 22} text-anchor="middle">{deg}°</text>)}
        <text class="axis-title" x={0} y={14}>Runs not yet let go</text>
        <text class="axis-title" x={W - BOX.right} y={BOX.bottom + 40} text-anchor="end">split since onset</text>
        <line class="limit" x1={at(x, limitDeg)} x2={at(x, limitDeg)} y1={BOX.top} y2={BOX.bottom} />
        <text class="axis" x={at(x, limitDeg)} y={BOX.top - 8} text-anchor="middle">limit</text>
        {lines.map(({ rateDegPerS, dash, path, endX, endY, heldToDeg, steps }, index) => (
          <g key={rateDegPerS}>
            <path class="curve" d={path} stroke-dasharray={dash} />
            {heldToDeg.map((deg, place) => <path key={place} class="curve-held" d={`M${at(x, deg)} ${at(y, shareAt(steps, deg)) - 5}v10`} />)}
            <path class="curve-lead" d={`M${endX} ${endY}L${W - BOX.right + 8} ${names[index]}`} />
            <text class="end" x={W - BOX.right + 12} y={(names[index] ?? 0) + 4}>{rateDegPerS.toFixed(2)}° a second</text>
          </g>
        ))}
      </svg>
      <figcaption>A step down is a release; a short stroke is a run that ended while still held.</figcaption>
      <details class="rows">
        <summary>The figures as a table</summary>
        <table>
          <thead><tr>{['rate', 'split', 'runs left', 'not yet let go', '95 % interval'].map((head) => <th key={head} scope="col">{head}</th>)}</tr></thead>
          <tbody>
            {curves.flatMap(({ rateDegPerS, steps }) => steps.map(({ splitDeg, atRisk, s, lo, hi }) => (
              <tr key={`${rateDegPerS} ${splitDeg}`}><th scope="row">{rateDegPerS.toFixed(2)}°/s</th><td>{splitDeg.toFixed(2)}°</td><td>{atRisk}</td><td>{Math.round(s * 100)} %</td><td>{lo === null || hi === null ? '–' : `${Math.round(lo * 100)} to ${Math.round(hi * 100)} %`}</td></tr>
            )))}
          </tbody>
        </table>
      </details>
    </figure>
  );
}

const shareAt = (steps: RateCurve['steps'], deg: number): number => steps.findLast(({ splitDeg }) => splitDeg <= deg)?.s ?? 1;
