/** The fan as a figure on a page: the same geometry as the instrument, drawn in lines that scale and print. */
import type { Airframe } from '../../sim/files/index.js';
import { dialDegOf, onFan } from '../view/dial.js';
import { NEEDLES } from '../view/needles.js';

type Gauge = { settings: readonly { deg: number; name: string }[]; stopDeg: number; dial: readonly { flapDeg: number; dialDeg: number }[] };

interface Props {
  readonly gauge: Gauge;
  /** Positions of the pointers, deg; null for an empty scale. */
  readonly left: number | null;
  readonly right: number | null;
  readonly radius: number;
  /** What the picture shows, for whoever cannot see it. */
  readonly title: string;
  readonly wing?: boolean;
}

export const gaugeOf = (airframe: Airframe): Gauge => ({
  settings: airframe.settings, stopDeg: airframe.drive.stopDeg, dial: airframe.gauge.dial,
});

export function Fan({ gauge, left, right, radius, title, wing = false }: Props) {
  const ahead = wing ? radius * 0.62 : 12;
  const hinge = { hingeX: ahead, hingeY: 34 };
  const size = { w: ahead + radius + 62, h: 34 + radius + 46 };
  const place = (deg: number, r: number) => onFan(hinge, dialDegOf(gauge.dial, deg), r);
  const bow = radius + 4;
  const first = place(0, bow);
  const last = place(gauge.stopDeg, bow);
  return (
    <svg class="fan" viewBox={`0 0 ${size.w} ${size.h}`} width={size.w} height={size.h} role="img" aria-label={title}>
      {wing && <Wing hinge={hinge} chord={radius * 0.54} />}
      <path class="fan-bow" d={`M${first.x} ${first.y}A${bow} ${bow} 0 0 1 ${last.x} ${last.y}`} />
      {Array.from({ length: Math.floor(gauge.stopDeg) }, (_, index) => index + 1).map((deg) => <Stroke key={deg} from={place(deg, bow)} to={place(deg, bow + (deg % 5 === 0 ? 9 : 5))} />)}
      {gauge.settings.map(({ deg, name }) => (
        <g key={name}>
          <Stroke from={place(deg, bow - 1)} to={place(deg, bow + 15)} strong />
          <text x={place(deg, bow + 30).x} y={place(deg, bow + 30).y + 5} text-anchor="middle">{name}</text>
        </g>
      ))}
      {left !== null && <Needle side="left" angle={dialDegOf(gauge.dial, left)} hinge={hinge} radius={radius} />}
      {right !== null && <Needle side="right" angle={dialDegOf(gauge.dial, right)} hinge={hinge} radius={radius} />}
      {left !== null && <Bead word="L" at={place(left, radius * NEEDLES.left.letter)} solid />}
      {right !== null && <Bead word="R" at={place(right, radius * NEEDLES.right.letter)} />}
      <circle class="fan-hinge" cx={hinge.hingeX} cy={hinge.hingeY} r="5" />
    </svg>
  );
}

type Point = { x: number; y: number };

const Stroke = ({ from, to, strong = false }: { from: Point; to: Point; strong?: boolean }) => (
  <line class={strong ? 'fan-setting' : 'fan-stroke'} x1={from.x} y1={from.y} x2={to.x} y2={to.y} />
);

function Needle({ side, angle, hinge, radius }: { side: 'left' | 'right'; angle: number; hinge: { hingeX: number; hingeY: number }; radius: number }) {
  const { shaft, head } = NEEDLES[side];
  const foot = radius * NEEDLES[side].foot;
  const outline = `M0 ${-shaft}L${foot} ${-shaft}L${foot} ${-head}L${radius} 0L${foot} ${head}L${foot} ${shaft}L0 ${shaft}Z`;
  return <path class={`fan-${side}`} d={outline} transform={`translate(${hinge.hingeX} ${hinge.hingeY}) rotate(${angle})`} />;
}

const Bead = ({ word, at, solid = false }: { word: string; at: Point; solid?: boolean }) => (
  <g class={solid ? 'fan-bead fan-solid' : 'fan-bead'} aria-hidden="true">
    <circle cx={at.x} cy={at.y} r="10.5" />
    <text x={at.x} y={at.y + 4.6} text-anchor="middle">{word}</text>
  </g>
);

function Wing({ hinge: { hingeX, hingeY }, chord }: { hinge: { hingeX: number; hingeY: number }; chord: number }) {
  const tail = hingeX - 8;
  const nose = tail - chord;
  const thick = chord * 0.12;
  const outline = `M${tail} ${hingeY}C${tail - chord * 0.35} ${hingeY - thick * 0.75} ${nose + chord * 0.5} ${hingeY - thick * 1.35} ${nose + chord * 0.26} ${hingeY - thick * 1.2}`
    + `C${nose + chord * 0.06} ${hingeY - thick * 1.05} ${nose} ${hingeY - thick * 0.4} ${nose} ${hingeY}`
    + `C${nose} ${hingeY + thick * 0.5} ${nose + chord * 0.1} ${hingeY + thick * 0.75} ${nose + chord * 0.3} ${hingeY + thick * 0.7}`
    + `C${nose + chord * 0.55} ${hingeY + thick * 0.6} ${tail - chord * 0.3} ${hingeY + thick * 0.2} ${tail} ${hingeY}Z`;
  return <path class="fan-wing" d={outline} />;
}
