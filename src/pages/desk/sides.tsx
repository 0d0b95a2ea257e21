/** True travel beside the pointers: what the trainee sees of each side, and where the side is. */
import type { DeskLive } from './house.js';

const WIDTH = 300;
const LEFT = 26;
const deg = (value: number): string => `${value.toFixed(2)}°`;

export function Sides({ live }: { live: DeskLive }) {
  const { picture, panel, leftDeg, rightDeg, heldS, rollAuthorityPct } = live;
  const x = (at: number): number => LEFT + Math.max(0, Math.min(1, at / panel.stopDeg)) * (WIDTH - LEFT - 8);
  const rows = [
    { name: 'L', y: 40, pointer: picture.leftPointerDeg, side: leftDeg, solid: true },
    { name: 'R', y: 92, pointer: picture.rightPointerDeg, side: rightDeg, solid: false },
  ];
  const shown = Math.abs(picture.leftPointerDeg - picture.rightPointerDeg);
  const split = Math.abs(leftDeg - rightDeg);
  return (
    <section aria-labelledby="desk-sides">
      <h2 id="desk-sides" class="ruled">Pointers and sides</h2>
      <svg class="desk-sides" viewBox={`0 0 ${WIDTH} 128`} role="img" aria-label={`Left pointer ${deg(picture.leftPointerDeg)}, side ${deg(leftDeg)}; right pointer ${deg(picture.rightPointerDeg)}, side ${deg(rightDeg)}`}>
        {rows.map(({ name, y, pointer, side, solid }) => (
          <g key={name}>
            <text x="0" y={y + 5}>{name}</text>
            <path class="desk-line" d={`M${LEFT} ${y}H${WIDTH - 8}`} />
            {panel.settings.map(({ deg: at }) => <path key={at} class="desk-stroke" d={`M${x(at)} ${y - 4}V${y + 4}`} />)}
            <path class={solid ? 'desk-pointer desk-solid' : 'desk-pointer'} d={`M${x(pointer)} ${y - 3}l-6 -13h12Z`} />
            <path class="desk-true" d={`M${x(side)} ${y + 3}V${y + 17}`} />
          </g>
        ))}
        {panel.settings.map(({ deg: at, name }) => <text key={at} class="desk-setting" x={x(at)} y="126">{name}</text>)}
      </svg>
      <dl class="desk-figures">
        <div><dt>Left pointer, side</dt><dd>{deg(picture.leftPointerDeg)}</dd><dd class="desk-truth">{deg(leftDeg)}</dd></div>
        <div><dt>Right pointer, side</dt><dd>{deg(picture.rightPointerDeg)}</dd><dd class="desk-truth">{deg(rightDeg)}</dd></div>
        <div><dt>Split shown, true</dt><dd>{deg(shown)}</dd><dd class="desk-truth">{deg(split)}</dd></div>
        <div><dt>Roll authority used</dt><dd>{Math.round(rollAuthorityPct)} %</dd></div>
        <div><dt>Height, speed</dt><dd>{Math.round(picture.altitudeFt)} ft</dd><dd>{Math.round(picture.speedKt)} kt</dd></div>
        <div><dt>Held in all</dt><dd>{heldS.toFixed(1)} s</dd></div>
      </dl>
    </section>
  );
}
