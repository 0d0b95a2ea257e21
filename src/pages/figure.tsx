/** The picture of the debrief: both sides over time, and how far apart; what mattered is marked by shape and by word. */
import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import type { Debrief } from '../../sim/index.js';
import { at, line, thin, ticks, type Scale } from '../charts/plot.js';
import { spread } from '../view/strip.js';
import { degrees, seconds } from './words.js';

const LEFT = 44;
const RIGHT = 52;
const TRAVEL = { top: 62, bottom: 252 };
const SPLIT = { top: 296, bottom: 396 };

export function Figure({ facts }: { facts: Debrief }) {
  const W = useWidth();
  const truth = useSignal(false);
  const { rows } = facts;
  const side = (which: 'left' | 'right') => (row: (typeof rows)[number]): number =>
    which === 'left' ? (truth.value ? row.leftDeg : row.leftPointerDeg) : (truth.value ? row.rightDeg : row.rightPointerDeg);
  const apart = (row: (typeof rows)[number]): number => Math.abs(side('left')(row) - side('right')(row));
  const all = rows.flatMap((row) => [side('left')(row), side('right')(row)]);
  const time: Scale = { from: 0, to: rows[rows.length - 1]?.atS ?? 1, start: LEFT, end: W - RIGHT };
  const travel: Scale = { from: Math.floor(Math.min(...all)), to: Math.ceil(Math.max(...all)), start: TRAVEL.bottom, end: TRAVEL.top };
  const split: Scale = { from: 0, to: Math.ceil(Math.max(facts.limitDeg, ...rows.map(apart)) * 2) / 2, start: SPLIT.bottom, end: SPLIT.top };
  const path = (scale: Scale, value: (row: (typeof rows)[number]) => number): string => line(thin(rows.map((row) => [at(time, row.atS), at(scale, value(row))] as const)));
  const last = rows[rows.length - 1];
  const ends = last === undefined ? [0, 0] : spread([at(travel, side('left')(last)), at(travel, side('right')(last))], 18, TRAVEL.top, TRAVEL.bottom);
  return (
    <figure class="figure">
      <svg viewBox={`0 0 ${W} 430`} role="img" aria-label="Travel of both sides and the split between them over time; the same figures stand in the table below.">
        {heldOf(facts).map(([from, to]) => <rect key={from} class="held" x={at(time, from)} y={TRAVEL.top} width={at(time, to) - at(time, from)} height={SPLIT.bottom - TRAVEL.top} />)}
        <Axis scale={travel} x={[LEFT, W - RIGHT]} title={truth.value ? 'True travel, degrees' : 'Pointers, degrees'} top={TRAVEL.top} count={4} />
        <Axis scale={split} x={[LEFT, W - RIGHT]} title="Split, degrees" top={SPLIT.top} count={3} />
        {ticks(time, W / 120).map((s) => <text key={s} class="axis" x={at(time, s)} y={SPLIT.bottom + 24} text-anchor="middle">{s} s</text>)}
        <line class="limit" x1={LEFT} x2={W - RIGHT} y1={at(split, facts.limitDeg)} y2={at(split, facts.limitDeg)} />
        <text class="axis" x={W - RIGHT + 8} y={at(split, facts.limitDeg) + 4}>limit</text>
        <path class="trace-open" d={path(travel, side('right'))} /><path class="trace-gap" d={path(travel, side('right'))} />
        <path class="trace-solid" d={path(travel, side('left'))} />
        <path class="trace-apart" d={path(split, apart)} />
        <text class="end" x={W - RIGHT + 8} y={(ends[0] ?? 0) + 4}>left</text><text class="end" x={W - RIGHT + 8} y={(ends[1] ?? 0) + 4}>right</text>
        <Marks facts={facts} time={time} />
      </svg>
      <figcaption>
        <span class="legend">Left is the solid line, right the open one; shaded: the switch is held.</span>
        <label class="check"><input type="checkbox" checked={truth.value} onChange={({ currentTarget }) => { truth.value = currentTarget.checked; }} /> True travel instead of what the pointers showed</label>
      </figcaption>
      <Rows facts={facts} />
    </figure>
  );
}

/** Width of the drawing, px: on a narrow window it is drawn narrower, so that its words stay as large. */
function useWidth(): number {
  const wide = matchMedia('(min-width: 700px)');
  const width = useSignal(wide.matches ? 760 : 400);
  useEffect(() => {
    const turn = (): void => { width.value = wide.matches ? 760 : 400; };
    wide.addEventListener('change', turn);
    return () => wide.removeEventListener('change', turn);
  }, []);
  return width.value;
}

function Axis({ scale, x, title, top, count }: { scale: Scale; x: readonly [number, number]; title: string; top: number; count: number }) {
  return (
    <g>
      <text class="axis-title" x={0} y={top - 14}>{title}</text>
      {ticks(scale, count).map((value) => (
        <g key={value}>
          <line class="grid" x1={x[0]} x2={x[1]} y1={at(scale, value)} y2={at(scale, value)} />
          <text class="axis" x={x[0] - 10} y={at(scale, value) + 4} text-anchor="end">{value}</text>
        </g>
      ))}
    </g>
  );
}

/** Onset, first degree and release: a diamond, a ring, a wedge, each with its word. */
function Marks({ facts, time }: { facts: Debrief; time: Scale }) {
  const { onsetS, releaseS } = facts.flight.score;
  const marks = [
    { word: 'onset', atS: onsetS, shape: 'M0 -6L6 0L0 6L-6 0Z' },
    { word: '1° apart', atS: facts.oneDegreeS, shape: 'M-5 0A5 5 0 1 1 5 0A5 5 0 1 1 -5 0Z' },
    { word: 'release', atS: releaseS, shape: 'M-6 -5H6L0 6Z' },
  ].filter((mark): mark is { word: string; atS: number; shape: string } => mark.atS !== null);
  const places = spread(marks.map(({ atS }) => at(time, atS)), 62, LEFT + 20, time.end);
  return (
    <g>
      {marks.map(({ word, atS, shape }, index) => (
        <g key={word} class={word === 'release' ? 'moment strong' : 'moment'}>
          <path class="lead-line" d={`M${at(time, atS)} ${SPLIT.bottom}V${TRAVEL.top - 10}L${places[index]} ${TRAVEL.top - 26}`} />
          <path class="moment-sign" d={shape} transform={`translate(${places[index]} ${TRAVEL.top - 32})`} />
          <text x={places[index]} y={TRAVEL.top - 44} text-anchor="middle">{word}</text>
        </g>
      ))}
    </g>
  );
}

/** From when to when the switch was away from off, s. */
function heldOf({ flight, rows }: Debrief): [number, number][] {
  const held: [number, number][] = [];
  let since: number | null = null;
  for (const { what, atS } of flight.events) {
    if ((what === 'extend' || what === 'retract') && since === null) since = atS;
    else if (what === 'release' && since !== null) {
      held.push([since, atS]);
      since = null;
    }
  }
  if (since !== null) held.push([since, rows[rows.length - 1]?.atS ?? since]);
  return held;
}

const Rows = ({ facts }: { facts: Debrief }) => (
  <details class="rows">
    <summary>The figures as a table</summary>
    <table>
      <thead><tr>{['time', 'left pointer', 'right pointer', 'left side', 'right side', 'roll authority'].map((head) => <th key={head} scope="col">{head}</th>)}</tr></thead>
      <tbody>
        {facts.rows.filter(({ atS }, index) => index === facts.rows.length - 1 || Math.abs(atS - Math.round(atS)) < 1e-6).map((row) => (
          <tr key={row.atS}><th scope="row">{seconds(row.atS)}</th>{[row.leftPointerDeg, row.rightPointerDeg, row.leftDeg, row.rightDeg].map((deg, index) => <td key={index}>{degrees(deg)}</td>)}<td>{Math.round(row.rollAuthorityPct)} %</td></tr>
        ))}
      </tbody>
    </table>
  </details>
);
