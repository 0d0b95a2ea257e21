/** The approach as a picture over the distance to the runway: height, speed, flaps, and when motor and gear run. Gear first, as flown. */
import { useRef } from 'preact/hooks';
import { at, ends, pieces, ticks, type Point, type Scale } from '../../charts/plot.js';
import { pathNm, type CoursePoint, type Plan } from '../../../sim/index.js';
import { useWidth } from './width.js';

const LEFT = 44;
const RIGHT = 14;
const HEAD = 34;

export function Profile({ plan }: { plan: Plan }) {
  const place = useRef<HTMLElement>(null);
  const W = useWidth(place, 320);
  const { course, startByNm, readyS, request, steps, touch, approachKt } = plan;
  const whole = startByNm ?? course[course.length - 1]?.groundNm ?? 1;
  const miles: Scale = { from: whole, to: 0, start: LEFT, end: W - RIGHT };
  // The way down is a straight line over the ground, whatever the wind: the height says where on it one is.
  const left = ({ atS, groundNm, altitudeFt }: CoursePoint): number =>
    (readyS !== null && atS > readyS ? pathNm(altitudeFt, request.groundFt) : Math.max(0, whole - groundNm));
  const x = (point: CoursePoint): number => at(miles, left(point));
  const charts = [
    { title: 'Height, ft', height: 96, range: ends(course.map(({ altitudeFt }) => altitudeFt), 1000, 1000), count: 3, of: (p: CoursePoint) => p.altitudeFt },
    { title: 'Speed, knots', height: 110, range: ends(course.map(({ speedKt }) => speedKt), 10, 30), count: 4, of: (p: CoursePoint) => p.speedKt },
    { title: 'Flaps, degrees', height: 72, range: { from: 0, to: Math.max(4, ...request.settings) }, count: 3, of: (p: CoursePoint) => p.flapDeg },
  ];
  let y = 4;
  const placed = charts.map((chart) => {
    const scale: Scale = { ...chart.range, start: y + HEAD + chart.height, end: y + HEAD };
    y = scale.start;
    return { ...chart, scale };
  });
  const bars = y + 22;
  const foot = bars + 62;
  const atS = (s: number): number => x(course.reduce((found, point) => (point.atS <= s ? point : found), course[0] as CoursePoint));
  const motor = spansOf(course, ({ motorOn }) => motorOn);
  const moving = spansOf(course, ({ gear }) => gear > 0 && gear < 1);
  const down = course.find(({ gear }) => gear >= 1);
  return (
    <figure ref={place} class="figure plan-figure">
      <svg viewBox={`0 0 ${W} ${foot + 34}`} role="img" aria-label={`The approach over ${whole.toFixed(1)} nautical miles: height, speed, flaps, motor and gear. The same figures stand in the tables below.`}>
        {placed.map(({ title, scale, count, of }) => (
          <g key={title}>
            <text class="axis-title" x="0" y={scale.end - 12}>{title}</text>
            {ticks(scale, count).map((value) => (
              <g key={value}><line class="grid" x1={LEFT} x2={W - RIGHT} y1={at(scale, value)} y2={at(scale, value)} /><text x={LEFT - 8} y={at(scale, value) + 4} text-anchor="end">{value}</text></g>
            ))}
            <path class="trace-solid" d={pieces(course.map((point): Point => [x(point), at(scale, of(point))]))} />
          </g>
        ))}
        <text x={at(miles, 0)} y={at((placed[1] as { scale: Scale }).scale, approachKt) - 8} text-anchor="end" class="over">approach {approachKt}</text>
        {steps.map(({ settingDeg, leverS, toS }) => (
          <g key={settingDeg}>
            <line class="lead-line" x1={atS(leverS)} x2={atS(leverS)} y1={HEAD} y2={bars + 12} />
            <text class="over" x={atS(toS) + 3} y={at((placed[2] as { scale: Scale }).scale, settingDeg) - 5}>{settingDeg}</text>
          </g>
        ))}
        {touch !== null && <line class="lead-line faint" x1={atS(touch.atS)} x2={atS(touch.atS)} y1={HEAD} y2={bars + 12} />}
        <text x="0" y={bars + 11}>Motor</text>
        <line class="grid" x1={LEFT} x2={W - RIGHT} y1={bars + 7} y2={bars + 7} />
        {motor.map(([from, to]) => <rect key={from.atS} class="plan-bar" x={x(from)} y={bars} width={Math.max(2, x(to) - x(from))} height="14" />)}
        <text x="0" y={bars + 43}>Gear</text>
        <line class="grid" x1={LEFT} x2={W - RIGHT} y1={bars + 39} y2={bars + 39} />
        {moving.map(([from, to]) => <rect key={from.atS} class="plan-bar open" x={x(from)} y={bars + 32} width={Math.max(2, x(to) - x(from))} height="14" />)}
        {down !== undefined && <rect class="plan-bar" x={x(down)} y={bars + 32} width={W - RIGHT - x(down)} height="14" />}
        {ticks({ from: 0, to: whole }, W / 110).map((nm) => <text key={nm} x={at(miles, nm)} y={foot + 10} text-anchor={nm === 0 ? 'end' : 'middle'}>{nm === 0 ? 'runway' : `${nm} NM`}</text>)}
      </svg>
      <figcaption>Flown on the model with the gear first. Dotted: the lever. Gear open while it moves, solid once it is locked.</figcaption>
    </figure>
  );
}

/** From when to when something holds, as pairs of points. */
function spansOf(course: readonly CoursePoint[], holds: (point: CoursePoint) => boolean): [CoursePoint, CoursePoint][] {
  const spans: [CoursePoint, CoursePoint][] = [];
  for (const [index, point] of course.entries()) {
    if (!holds(point)) continue;
    const before = course[index - 1];
    const last = spans[spans.length - 1];
    if (before !== undefined && holds(before) && last !== undefined) last[1] = point;
    else spans.push([point, point]);
  }
  return spans;
}
