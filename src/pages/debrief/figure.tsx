/** The charts of the debrief on one time axis, with a cursor that mouse, finger and keys move alike. */
import { useSignal, type Signal } from '@preact/signals';
import type { RefObject } from 'preact';
import { useLayoutEffect, useRef } from 'preact/hooks';
import type { RunRecord } from '../../../sim/files/index.js';
import type { DebriefRow } from '../../../sim/index.js';
import { laneOf, Marks } from '../../charts/marks.js';
import { Panel, type Line } from '../../charts/panel.js';
import { at, ends, ticks, valueAt, type Scale } from '../../charts/plot.js';
import { overlaid, type Other } from './beside.js';
import { holds, rowAt, type Facts } from './facts.js';
import { momentsOf, SIGNS, type Moment } from './moments.js';
import { spokenRow } from '../replay/readings.js';
import { Rows } from './rows.js';

const LEFT = 40;
const RIGHT = 78;
/** Above each chart, for its title, px. */
const HEAD = 40;

interface Props {
  readonly facts: Facts;
  readonly run: Pick<RunRecord, 'scenario' | 'airframe'>;
  /** Where the cursor stands, s. */
  readonly cursor: Signal<number>;
  /** True travel instead of the pointers. */
  readonly truth: Signal<boolean>;
  /** Another run, dashed. */
  readonly other: Other | null;
  /** Further moments to mark. */
  readonly also?: readonly Moment[];
  /** Without the table: for a drawing that follows every edit. */
  readonly bare?: boolean;
}

export function Figure({ facts, run, cursor, truth, other, also = [], bare = false }: Props) {
  const place = useRef<HTMLElement>(null);
  const W = useWidth(place);
  const { rows } = facts;
  const near = useSignal(false);
  const about = aboutSplit(facts);
  const [fromS, toS] = near.value && about !== null ? about : [0, Math.max(rows[rows.length - 1]?.atS ?? 1, other?.facts.rows[other.facts.rows.length - 1]?.atS ?? 0)];
  const time: Scale = { from: fromS, to: toS, start: LEFT, end: W - RIGHT };
  const inside = (atS: number): boolean => atS >= fromS && atS <= toS;
  const moments = [...momentsOf(facts, run), ...also, ...(other === null || other.releaseS === null ? [] : [{ atS: other.releaseS, word: 'other release', sign: 'release' as const, rank: 1 }])];
  const marks = moments.filter(({ atS }) => inside(atS)).map(({ atS, word, sign, rank }) => ({ atS, word, outline: SIGNS[sign], rank }));
  const lane = laneOf(marks, time);
  const top = lane.height + 6;
  const own = chartsOf(within(facts, fromS, toS), run, truth.value);
  const charts = other === null ? own : overlaid(own, within(other.facts, fromS, toS), truth.value);
  let y = top;
  const placed = charts.map((chart) => {
    const scale: Scale = { ...chart.range, start: y + HEAD + chart.height, end: y + HEAD };
    y = scale.start;
    return { ...chart, scale };
  });
  const foot = y;
  const move = (event: PointerEvent & { readonly currentTarget: SVGSVGElement }): void => {
    if (event.buttons === 0) return;
    const box = event.currentTarget.getBoundingClientRect();
    cursor.value = Math.round(valueAt(time, ((event.clientX - box.left) / box.width) * W) * 10) / 10;
  };
  return (
    <figure ref={place} class="figure" aria-label="Charts">
      <svg viewBox={`0 0 ${W} ${foot + 30}`} preserveAspectRatio="xMinYMin meet" role="img" aria-label="Charts of the run on one time axis. The slider below reads them at any time; the same figures stand in the table." onPointerMove={move} onPointerDown={move}>
        <defs>
          <pattern id="hatch" width="7" height="7" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><line class="hatch" x1="0" x2="0" y1="0" y2="7" /></pattern>
        </defs>
        {holds(facts).map(([from, to]) => <Span key={from} look="held" from={from} to={to} time={time} top={top + HEAD} bottom={placed[1]?.scale.start ?? foot} />)}
        {placed.map(({ title, scale, count, lines, standard, spans = [], over }) => (
          <Panel key={title} time={time} scale={scale} title={title} count={count} lines={lines}>
            {spans.map(([from, to]) => <Span key={from} look="hatched" from={from} to={to} time={time} top={scale.end} bottom={scale.start} />)}
            {standard !== undefined && <line class="limit" x1={time.start} x2={time.end} y1={at(scale, standard.value)} y2={at(scale, standard.value)} />}
            {standard !== undefined && <text class="axis" x={time.end + 8} y={at(scale, standard.value) + 4}>{standard.word}</text>}
            {over !== undefined && W > 520 && <text class="axis over" x={time.end} y={scale.end - 14} text-anchor="end">{over}</text>}
          </Panel>
        ))}
        {ticks(time, W / 110).map((s) => <text key={s} class="axis" x={at(time, s)} y={foot + 22} text-anchor="middle">{s} s</text>)}
        <Marks marks={marks} lane={lane} time={time} top={top} bottom={foot} onPick={(atS) => { cursor.value = Math.ceil(atS * 100 - 1e-6) / 100; }} />
        <CursorLine cursor={cursor} time={time} top={top + 6} bottom={foot} />
      </svg>
      <Scrub facts={facts} cursor={cursor} time={time} width={W} />
      <figcaption>
        <span class="legend">Left solid, right open. Shaded: switch held.{other !== null && ' Dashed: the other run.'}</span>
        {about !== null && <label class="check"><input type="checkbox" checked={near.value} onChange={({ currentTarget }) => { near.value = currentTarget.checked; }} /> Only about the split</label>}
        <label class="check"><input type="checkbox" checked={truth.value} onChange={({ currentTarget }) => { truth.value = currentTarget.checked; }} /> True sides</label>
      </figcaption>
      {!bare && <Rows facts={facts} />}
    </figure>
  );
}

interface CursorProps {
  readonly cursor: Signal<number>;
  readonly time: Scale;
}

/** The cursor alone follows itself: the charts are not drawn anew while it moves. */
function CursorLine({ cursor, time, top, bottom }: CursorProps & { readonly top: number; readonly bottom: number }) {
  if (cursor.value < time.from || cursor.value > time.to) return null;
  const x = at(time, cursor.value);
  return <line class="cursor" x1={x} x2={x} y1={top} y2={bottom} />;
}

/** A slider as long as the time axis; its thumb stands under the cursor. */
function Scrub({ facts, cursor, time, width }: CursorProps & { readonly facts: Facts; readonly width: number }) {
  const row = rowAt(facts, cursor.value);
  return (
    <input
      class="scrub" type="range" min={time.from} max={time.to} step={0.1} value={cursor.value} aria-label="Time of the run"
      aria-valuetext={row === undefined ? '' : spokenRow(row)}
      style={{ left: `calc(${(time.start / width) * 100}% - 11px)`, width: `calc(${((time.end - time.start) / width) * 100}% + 22px)` }}
      onInput={({ currentTarget }) => { cursor.value = Number(currentTarget.value); }}
    />
  );
}

interface SpanProps {
  readonly look: string;
  readonly from: number;
  readonly to: number;
  readonly time: Scale;
  readonly top: number;
  readonly bottom: number;
}

/** A shaded time, cut to what is shown. */
function Span({ look, from, to, time, top, bottom }: SpanProps) {
  const [left, right] = [Math.max(from, time.from), Math.min(to, time.to)];
  if (right < left) return null;
  return <rect class={look} x={at(time, left)} y={top} width={Math.max(2, at(time, right) - at(time, left))} height={bottom - top} />;
}

/** Air about the split when a long run shows only that, s. */
const AIR_S = 15;
const LONG_S = 60;

/** From when to when a long run is about its split; null where the whole run is short enough, or has none. */
function aboutSplit({ rows, flight: { score: { onsetS, releaseS } }, oneDegreeS }: Facts): [number, number] | null {
  const endS = rows[rows.length - 1]?.atS ?? 0;
  if (onsetS === null || endS < LONG_S) return null;
  const last = Math.max(onsetS, releaseS ?? 0, oneDegreeS ?? 0);
  const span: [number, number] = [Math.max(0, Math.floor(onsetS - AIR_S)), Math.min(endS, Math.ceil(last + AIR_S))];
  return span[1] - span[0] < endS * 0.75 ? span : null;
}

const within = (facts: Facts, fromS: number, toS: number): Facts => ({ ...facts, rows: facts.rows.filter(({ atS }) => atS >= fromS - 1e-6 && atS <= toS + 1e-6) });

export interface Chart {
  readonly title: string;
  readonly height: number;
  readonly range: Pick<Scale, 'from' | 'to'>;
  readonly count: number;
  readonly lines: readonly Line[];
  readonly standard?: { readonly value: number; readonly word: string };
  readonly spans?: readonly (readonly [fromS: number, toS: number])[];
  /** At the right end of the title's line. */
  readonly over?: string;
}

function chartsOf({ rows, limitDeg, flight }: Facts, { airframe, scenario }: Pick<RunRecord, 'scenario' | 'airframe'>, truth: boolean): Chart[] {
  const of = (value: (row: DebriefRow) => number | null): Line['points'] => rows.map((row) => [row.atS, value(row)]);
  const left = (row: DebriefRow): number => (truth ? row.leftDeg : row.leftPointerDeg);
  const right = (row: DebriefRow): number => (truth ? row.rightDeg : row.rightPointerDeg);
  const apart = (row: DebriefRow): number => Math.abs(left(row) - right(row));
  const scored = scenario.recognition !== undefined || flight.score.onsetS !== null;
  const speeds = rows.flatMap(({ speedKt, lowestKt, manoeuvreKt, selectedKt, limitKt }) => [speedKt, lowestKt, manoeuvreKt, selectedKt, ...(limitKt === null ? [] : [limitKt])]);
  const angles = rows.flatMap(({ tlaDeg, hornTlaDeg }) => [tlaDeg, hornTlaDeg ?? tlaDeg]);
  const limitPct = airframe.roll.autopilotLimit * 100;
  const used = rows.reduce((most, { rollAuthorityPct }) => Math.max(most, rollAuthorityPct), 0);
  const spans = hornSpans(rows);
  return [
    {
      title: truth ? 'True travel, degrees' : 'Pointers, degrees', height: 190, range: ends(rows.flatMap((row) => [left(row), right(row)]), 1, 2), count: 4,
      lines: [{ name: 'right', look: 'trace-gap', under: 'trace-open', points: of(right) }, { name: 'left', look: 'trace-solid', points: of(left) }],
    },
    {
      title: 'Split, degrees', height: 92, range: ends([0, ...(scored ? [limitDeg] : []), ...rows.map(apart)], 0.5, 1), count: 3,
      lines: [{ name: '', look: 'trace-apart', points: of(apart) }], ...(scored ? { standard: { value: limitDeg, word: 'limit' } } : {}),
    },
    {
      title: 'Speed, knots', height: 150, range: ends(speeds, 10, 30), count: 5,
      lines: [
        { name: 'limit', look: 'trace-limit', steps: true, points: of((row) => row.limitKt) },
        { name: 'manoeuvre', look: 'trace-dots', steps: true, points: of((row) => row.manoeuvreKt) },
        { name: 'selected', look: 'trace-dashes', steps: true, points: of((row) => row.selectedKt) },
        { name: 'lowest', look: 'trace-limit', points: of((row) => row.lowestKt) },
        { name: 'speed', look: 'trace-solid', points: of((row) => row.speedKt) },
      ],
    },
    {
      title: 'Thrust-lever angle, degrees', height: 84, range: ends([0, ...angles], 10, 20), count: 3, spans,
      over: spans.length > 0 ? 'hatched: the horn sounds' : 'the horn was silent',
      lines: [{ name: 'horn below', look: 'trace-dashes', steps: true, points: of((row) => row.hornTlaDeg) }, { name: 'lever', look: 'trace-solid', points: of((row) => row.tlaDeg) }],
    },
    {
      title: 'Roll authority used, %', height: 66, range: ends([0, used], 10, 20), count: 2,
      lines: [{ name: '', look: 'trace-apart', points: of((row) => row.rollAuthorityPct) }],
      ...(used > limitPct * 0.6 ? { standard: { value: limitPct, word: 'autopilot' } } : {}),
    },
  ];
}

/** From when to when the horn sounded, s. */
export function hornSpans(rows: readonly { readonly atS: number; readonly horn: boolean }[]): [number, number][] {
  const spans: [number, number][] = [];
  for (const [index, { atS, horn }] of rows.entries()) {
    if (!horn) continue;
    const last = spans[spans.length - 1];
    if (last !== undefined && rows[index - 1]?.horn === true) last[1] = atS;
    else spans.push([atS, atS]);
  }
  return spans;
}

/** Width of the drawing, px: that of its place, so that its words are as large in a narrow window as in a wide one. */
function useWidth(place: RefObject<HTMLElement | null>): number {
  const width = useSignal(760);
  useLayoutEffect(() => {
    const figure = place.current;
    if (figure === null) return;
    // On paper the drawing keeps the width it had, and is scaled.
    const fit = (): void => { if (!matchMedia('print').matches) width.value = Math.max(320, Math.round(figure.clientWidth)); };
    fit();
    const watch = new ResizeObserver(fit);
    watch.observe(figure);
    return () => watch.disconnect();
  }, []);
  return width.value;
}
