/** One run of a set over the seconds of holding: when an onset can come, and how far each rate grows by the end of the leg. */
import type { ReadySet, SetFigures } from '../../../../sim/index.js';

const W = 560;
const H = 210;
const LEFT = 44;
const RIGHT = 66;
const TOP = 26;
const BASE = 150;

export function RunPicture({ of: { set }, figures }: { of: ReadySet; figures: SetFigures | null }) {
  const most = set.limitDeg * 2;
  const x = (s: number): number => LEFT + (s / set.legS) * (W - LEFT - RIGHT);
  const y = (deg: number): number => BASE - (Math.min(deg, most) / most) * (BASE - TOP);
  const last = set.onsetFromS + set.onsetForS;
  const rates = figures?.rates ?? [];
  const line = (fromS: number, degPerS: number): string => {
    const endS = Math.min(set.legS, fromS + most / degPerS);
    return `M${x(fromS)} ${y(0)}L${x(endS)} ${y((endS - fromS) * degPerS)}`;
  };
  const words = rates.map(({ ratio, degPerS, latestGrowthDeg }) => `ratio ${ratio}: ${degPerS.toFixed(2)} deg/s, ${latestGrowthDeg.toFixed(1)} deg by the end with the latest onset`).join('; ');
  return (
    <figure class="set-run">
      <svg viewBox={`0 0 ${W} ${H}`} role="img" aria-label={`Onsets from ${set.onsetFromS} to ${last} s of holding, the leg ends at ${set.legS} s, late from ${set.limitDeg} deg. ${words}`}>
        <line class="set-axis" x1={LEFT} y1={BASE} x2={x(set.legS)} y2={BASE} />
        <line class="set-limit" x1={LEFT} y1={y(set.limitDeg)} x2={x(set.legS)} y2={y(set.limitDeg)} />
        <text x={LEFT - 8} y={y(set.limitDeg) + 4} text-anchor="end">{set.limitDeg}°</text>
        <text x={LEFT - 8} y={BASE + 4} text-anchor="end">0°</text>
        <rect class="set-window" x={x(set.onsetFromS)} y={BASE} width={x(last) - x(set.onsetFromS)} height={10} />
        <line class="set-end" x1={x(set.legS)} y1={TOP} x2={x(set.legS)} y2={BASE + 10} />
        {rates.map(({ ratio, earlyDegPerS, lateDegPerS }) => (
          <g key={ratio}>
            <path class="set-early" d={line(set.onsetFromS, earlyDegPerS)} />
            <path class="set-late" d={line(last, lateDegPerS)} />
          </g>
        ))}
        {rates.map(({ ratio, lateDegPerS, degPerS }) => {
          // Beside the line where it ends at the leg's end, above it where it has left the picture before.
          const topS = last + most / lateDegPerS;
          return topS < set.legS
            ? <text key={ratio} class="set-rate" x={x(topS)} y={TOP - 6} text-anchor="middle">{degPerS.toFixed(2)}</text>
            : <text key={ratio} class="set-rate" x={x(set.legS) + 6} y={y((set.legS - last) * lateDegPerS) + 4}>{degPerS.toFixed(2)}°/s</text>;
        })}
        <text x={(x(set.onsetFromS) + x(last)) / 2} y={BASE + 27} text-anchor="middle">an onset can come, {set.onsetFromS} to {last} s</text>
        <text x={x(set.legS)} y={BASE + 45} text-anchor="end">the leg ends at {set.legS} s of holding</text>
      </svg>
      <figcaption class="small">Growth of the shown split over seconds of holding: thin with the earliest onset, bold with the latest, with its rate in deg/s.{figures === null ? ' The lines come with the gates.' : ''}</figcaption>
    </figure>
  );
}
