/** The stairs of a practice: a step a run over a scale of doublings, each run by the sign of its outcome. */
import { RATES } from './rates.js';
import type { Practised } from './ongoing.js';

const W = 760;
const H = 190;
const BOX = { left: 64, right: 16, top: 14, bottom: 160 };

/** Signs: filled for caught, a wedge for late or missed, a ring for what moves nothing. */
const signOf = ({ outcome }: Practised): string => (outcome === 'caught' ? 'M-5 0A5 5 0 1 1 5 0A5 5 0 1 1 -5 0Z' : outcome === 'late' || outcome === 'missed' ? 'M-6 5H6L0 -6Z' : 'M-4 0A4 4 0 1 1 4 0A4 4 0 1 1 -4 0Z');
const lookOf = ({ outcome }: Practised): string => (outcome === 'caught' ? 'stair-sign full' : 'stair-sign');

export function Stairs({ runs, degPerS }: { runs: readonly Practised[]; degPerS: number }) {
  const low = Math.log2(RATES.lowest);
  const high = Math.log2(RATES.highest);
  const y = (rate: number): number => BOX.bottom - ((Math.log2(rate) - low) / (high - low)) * (BOX.bottom - BOX.top);
  const x = (at: number): number => BOX.left + ((at + 0.5) / Math.max(runs.length + 1, 12)) * (W - BOX.left - BOX.right);
  const levels = [0.075, 0.15, 0.3, 0.6];
  return (
    <figure class="figure stairs">
      <svg viewBox={`0 0 ${W} ${H}`} role="img" aria-label={`The latest ${runs.length} runs; the level stands at ${degPerS.toFixed(2)} degrees a second.`}>
        {levels.map((rate) => (
          <g key={rate}>
            <line class="grid" x1={BOX.left} x2={W - BOX.right} y1={y(rate)} y2={y(rate)} />
            <text class="axis" x={BOX.left - 8} y={y(rate) + 4} text-anchor="end">{rate.toFixed(rate < 0.1 ? 3 : 2)}°/s</text>
          </g>
        ))}
        <path class="stair" d={runs.reduce((so, run, at) => (run.easy ? so : `${so}${so === '' ? 'M' : 'H'}${x(at)}${so === '' ? ' ' : 'V'}${y(run.degPerS)}`), '')} />
        {runs.map((run, at) => <path key={at} class={lookOf(run)} d={signOf(run)} transform={`translate(${x(at)} ${y(run.degPerS)})`} />)}
        <path class="stair-next" d={`M${x(runs.length) - 6} ${y(degPerS)}H${W - BOX.right}`} />
      </svg>
      <figcaption>Filled: caught. Wedge: late or missed. Ring: quiet, or let go without a split. A sign below the stairs is an easy run.</figcaption>
    </figure>
  );
}
