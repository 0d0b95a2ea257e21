/** Screen and eye from above, to one scale: how far the eye turns between speed and gauge. */

interface Props {
  readonly apartMm: number;
  readonly distanceMm: number;
  readonly apartDeg: number;
}

const [W, H] = [340, 190];

export function EyePlan({ apartMm, distanceMm, apartDeg }: Props) {
  // The wider of the two fills the drawing.
  const scale = Math.min((W - 120) / apartMm, (H - 56) / distanceMm);
  const [half, away] = [(apartMm / 2) * scale, distanceMm * scale];
  const [x, y] = [W / 2, 26];
  const eyeY = y + away;
  const bow = Math.min(away * 0.42, 44);
  const turn = Math.atan2(half, away);
  const at = (side: number, r: number): string => `${x + side * r * Math.sin(turn)} ${eyeY - r * Math.cos(turn)}`;
  return (
    <figure class="eye-plan">
      <svg viewBox={`0 0 ${W} ${H}`} width={W} height={H} role="img" aria-label={`From above: speed and gauge ${apartMm.toFixed(0)} mm apart on the screen, the eye ${distanceMm} mm before it, ${apartDeg.toFixed(0)} degrees between them.`}>
        <path class="eye-screen" d={`M${x - half - 24} ${y}H${x + half + 24}`} />
        <path class="eye-ray" d={`M${x - half} ${y}L${x} ${eyeY}L${x + half} ${y}`} />
        <path class="eye-bow" d={`M${at(-1, bow)}A${bow} ${bow} 0 0 1 ${at(1, bow)}`} />
        <circle class="eye-mark" cx={x - half} cy={y} r="4" /><circle class="eye-mark eye-open" cx={x + half} cy={y} r="4" />
        <circle class="eye-eye" cx={x} cy={eyeY} r="6" />
        <text x={x - half} y={y - 11} text-anchor="middle">speed</text><text x={x + half} y={y - 11} text-anchor="middle">gauge</text>
        <text class="eye-deg" x={x} y={eyeY - bow - 7} text-anchor="middle">{apartDeg.toFixed(0)}°</text>
        <text x={x + 14} y={eyeY + 5}>eye, {distanceMm} mm</text>
      </svg>
    </figure>
  );
}
