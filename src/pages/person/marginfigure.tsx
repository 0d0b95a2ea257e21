/**
 * The picture of the margin: a wedge a fault, as high as the roll authority that is left while the drive is held on, and in
 * it where this person lets go. What is drawn to the right of the mark is the room.
 */
import type { MarginRow, Released } from '../../../sim/index.js';
import { at, line, thin, ticks, type Point, type Scale } from '../../charts/plot.js';
import { BASIS_WORDS, FAULT_NAMES } from './margintable.js';

const W = 1104;
const LEFT = 176;
const RIGHT = W - 132;
const TOP = 46;
const ROW = 118;
/** Height of the whole roll authority, px. */
const HIGH = 66;
/** Room for the words of a level, px. */
const WORD = 84;

/** @param where the fault comes, in words */
export function MarginFigure({ rows, where }: { rows: readonly MarginRow[]; where: string }) {
  const longest = Math.max(10, ...rows.map(({ room: { course } }) => course.at(-1)?.afterS ?? 0));
  const x: Scale = { from: 0, to: Math.min(120, Math.ceil(longest / 10) * 10), start: LEFT, end: RIGHT };
  const foot = TOP + rows.length * ROW;
  return (
    <figure class="margin-figure" aria-label="Your margin">
      <div class="wide" tabIndex={0} role="region" aria-label="Picture of the margin">
        <svg viewBox={`0 0 ${W} ${foot + 44}`} role="img" aria-label={`Roll authority left over time for each fault, and where you let go: ${rows.map(told).join('; ')}.`}>
          <defs>
            <pattern id="room-thin" width="8" height="8" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><line class="room-hatch" x1="0" x2="0" y1="0" y2="8" /></pattern>
            <pattern id="room-dense" width="4" height="4" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><line class="room-hatch" x1="0" x2="0" y1="0" y2="4" /></pattern>
          </defs>
          <text class="margin-head" x={LEFT} y="16">Roll authority left while you hold on</text>
          <text class="margin-head" x={W} y="16" text-anchor="end">left when you let go</text>
          {ticks(x, 6).map((s) => (
            <g key={s}><line class="grid" x1={at(x, s)} x2={at(x, s)} y1={TOP - 16} y2={foot + 4} /><text x={at(x, s)} y={foot + 22} text-anchor="middle">{s} s</text></g>
          ))}
          <text x={RIGHT} y={foot + 40} text-anchor="end">from the fault on</text>
          {rows.map((row, index) => <Row key={row.fault} row={row} x={x} base={TOP + index * ROW + HIGH} />)}
        </svg>
      </div>
      <figcaption>
        {where} A wedge is the roll authority left while the drive is held on: plain to 20 % used, hatched to 50 %, closely hatched to none. The upright is your median release, the bar holds eight in ten of your releases, one in ten before it and one behind; the thin line is what so few runs cannot yet tell. A dot is a release that was flown. At the right, what is left when all has settled.
      </figcaption>
    </figure>
  );
}

const left = (one: Released): string => `${Math.round(100 - one.usedPct)} %`;
const told = ({ fault, at: { median, q90 } }: MarginRow): string =>
  `${FAULT_NAMES[fault]}: ${median === null ? 'not reached' : `${left(median)} left when you let go after ${median.afterS.toFixed(1)} s${q90 === null ? '' : `, nine in ten ${left(q90)} or more`}`}`;

function Row({ row, x, base }: { row: MarginRow; x: Scale; base: number }) {
  const { fault, basis, room: { course, levels, splitRateDegPerS }, at: own } = row;
  const y: Scale = { from: 0, to: 100, start: base, end: base - HIGH };
  const bounds = [0, ...levels.map(({ at: point }) => point?.afterS ?? Infinity)];
  const zone = (from: number, to: number): string => wedge(course.filter(({ afterS }) => afterS >= from - 0.1 && afterS <= to + 0.1).map(({ afterS, usedPct }) => [at(x, afterS), at(y, Math.max(0, 100 - usedPct))] as const), base);
  const end = course.at(-1);
  return (
    <g>
      <text class="margin-name" x="0" y={base - HIGH + 14}>{FAULT_NAMES[fault]}</text>
      <text x="0" y={base - HIGH + 33}>{splitRateDegPerS === null ? 'never a degree apart' : `opens ${splitRateDegPerS.toFixed(2)}° a second`}</text>
      {basis === 'beyond' ? <><text x="0" y={base - HIGH + 51}>expected, beyond</text><text x="0" y={base - HIGH + 67}>what was flown</text></> : <text x="0" y={base - HIGH + 51}>{BASIS_WORDS[basis]}</text>}
      {['room-plain', 'room-some', 'room-much'].map((look, index) => <path key={look} class={look} d={zone(bounds[index] ?? 0, bounds[index + 1] ?? Infinity)} />)}
      <path class="room-edge" d={line(thin(course.map(({ afterS, usedPct }): Point => [at(x, afterS), at(y, Math.max(0, 100 - usedPct))])))} />
      <line class="room-base" x1={x.start} x2={at(x, end?.afterS ?? 0)} y1={base} y2={base} />
      <Levels levels={levels} x={x} base={base} />
      <Own own={own} basis={basis} releases={row.releases} x={x} base={base} />
      {own.median !== null && <><text class="margin-left" x={W} y={base - HIGH + 28} text-anchor="end">{left(own.median)}</text>{own.q90 !== null && <text x={W} y={base - HIGH + 48} text-anchor="end">nine in ten {left(own.q90)}</text>}</>}
    </g>
  );
}

/** A piece of a wedge: down to the base at both ends. */
const wedge = (points: readonly Point[], base: number): string => {
  const [first, last] = [points[0], points.at(-1)];
  return first === undefined || last === undefined ? '' : `${line(thin(points))}L${last[0].toFixed(2)} ${base}L${first[0].toFixed(2)} ${base}Z`;
};

/** When each part is used up; the words stand where they have room, the last before the others. */
function Levels({ levels, x, base }: { levels: MarginRow['room']['levels']; x: Scale; base: number }) {
  const placed = levels.flatMap(({ usedPct, at: point }) => (point === null ? [] : [{ usedPct, point, px: at(x, point.afterS) }]));
  return (
    <>
      {placed.map(({ usedPct, point, px }, index) => (
        <g key={usedPct}>
          <line class="room-level" x1={px} x2={px} y1={base - HIGH * (1 - usedPct / 100)} y2={base + 6} />
          {(placed[index + 1]?.px ?? Infinity) - px > WORD && <text class="room-word" x={px + (px > RIGHT - WORD ? 4 : -4)} y={base + 20} text-anchor={px > RIGHT - WORD ? 'end' : 'start'}>{usedPct === 100 ? 'none left' : `${usedPct} % used`} {point.afterS.toFixed(0)} s</text>}
        </g>
      ))}
    </>
  );
}

function Own({ own: { q10, median, q90, q90Hi }, basis, releases, x, base }: { own: MarginRow['at']; basis: MarginRow['basis']; releases: readonly Released[]; x: Scale; base: number }) {
  if (median === null) return null;
  const middle = base - HIGH * 0.42;
  const px = (one: Released | null, otherwise: number): number => (one === null ? otherwise : Math.min(x.end, at(x, one.afterS)));
  const here = px(median, x.start);
  const [from, to] = [px(q10, x.start), px(q90, x.end)];
  return (
    <g class={`own ${basis}`}>
      <rect class="own-bar" x={from} width={Math.max(2, to - from)} y={middle - 12} height="24" rx="12" />
      <path class="own-edge" d={`M${to} ${middle}H${px(q90Hi, x.end)}m0 -5v10`} />
      {releases.map(({ afterS, splitDeg }, index) => <circle key={`${splitDeg} ${index}`} class="own-dot" cx={at(x, afterS)} cy={middle + ((index * 5) % 3 - 1) * 5} r="2.8" />)}
      <line class="own-median" x1={here} x2={here} y1={base - HIGH - 6} y2={base} />
      <text class="own-word" x={here} y={base - HIGH - 12} text-anchor="middle">you, {median.afterS.toFixed(1)} s</text>
    </g>
  );
}
