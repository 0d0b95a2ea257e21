/** A ruler with its marks; a press on an empty place adds one there. */
import { useSignal } from '@preact/signals';
import { useRef } from 'preact/hooks';
import { at, ticks, valueAt, type Scale } from '../../../charts/plot.js';
import type { Draft } from '../draft.js';
import { AddHere } from './addhere.js';
import { MarkButton } from './mark.js';
import { gridOf, labelOf, lanes, snapped, type Mark, type Range, type Ruler } from './marks.js';

export type Settings = readonly { readonly deg: number; readonly name: string }[];

interface Props {
  readonly draft: Draft;
  readonly marks: readonly Mark[];
  /** Of the whole picture, px. */
  readonly width: number;
  readonly waits: boolean;
  readonly ruler: Ruler;
  readonly range: Range;
  /** Settings that are named on the ruler. */
  readonly settings: Settings;
}

/** A mark and what may be touched about it, px. */
const TARGET = 44;
const EDGE = 22;
/** Room above a ruler without marks, px. */
const EMPTY = 28;
const NARROW = 620;
const NAME = 104;
/** Figures nearer to a name than this give way to it, px. */
const NEAR = 22;
/** Room of a letter, px; the label is set in 14 px. */
const LETTER = 7.6;

export function Track({ draft, marks, width, waits, ruler, range, settings }: Props) {
  const box = useRef<HTMLDivElement>(null);
  const adding = useSignal<number | null>(null);
  const room = Math.max(160, width - (width < NARROW ? 0 : NAME));
  const scale: Scale = { from: range.from, to: range.to, start: EDGE, end: room - EDGE };
  // In the order of the ruler: Tab goes along them.
  const own = marks.filter(({ on }) => on === ruler).sort((a, b) => at(scale, a.value) - at(scale, b.value));
  const flags = own.map((mark) => ({ x: Math.min(room, Math.max(0, at(scale, mark.value))), width: TARGET + labelOf(mark).length * LETTER }));
  // From the far end on: a stem then stands left of every label below it.
  const places = lanes(flags.toReversed(), room, EDGE).toReversed();
  const deep = own.length === 0 ? EMPTY : Math.max(...places.map(({ lane }) => lane + 1)) * TARGET;
  const grid = gridOf(ruler, range);
  const onPress = (event: MouseEvent): void => {
    if (waits || event.target !== event.currentTarget) return;
    const left = box.current?.getBoundingClientRect().left ?? 0;
    adding.value = snapped(valueAt(scale, event.clientX - left), grid, range);
  };
  const named = settings.filter(({ deg }) => deg >= Math.min(range.from, range.to) && deg <= Math.max(range.from, range.to));
  const round = ruler === 'time' ? ticks(range, Math.max(3, Math.round(room / 110))) : travelTicks(range, room);
  return (
    <div class="ruler">
      <span class="ruler-name">{ruler === 'time' ? 'Time' : 'Flap travel'}</span>
      <div ref={box} class="track" style={{ width: `${room}px` }}>
        <div class="track-room" style={{ height: `${deep}px` }} onClick={onPress} data-ruler={ruler}>
          {own.map((mark, index) => {
            const { lane, left } = places[index] as (typeof places)[number];
            const x = flags[index]?.x ?? 0;
            return (
              <MarkButton
                key={`${mark.list} ${mark.index}`} draft={draft} mark={mark} drag={waits ? null : { box, scale, grid, range }} left={left}
                style={{ bottom: `${lane * TARGET}px`, ...(left ? { right: `${room - x - EDGE}px` } : { left: `${x - EDGE}px` }) }}
                stem={lane * TARGET}
              />
            );
          })}
        </div>
        <svg class="ruler-scale" width={room} height="26" viewBox={`0 0 ${room} 26`} aria-hidden="true">
          <line x1={EDGE} x2={room - EDGE} y1="0.5" y2="0.5" />
          {round.map((value) => (
            <g key={value} transform={`translate(${at(scale, value).toFixed(1)} 0)`}>
              <line y1="0" y2="5" />{!named.some(({ deg }) => Math.abs(at(scale, deg) - at(scale, value)) < NEAR) && <text y="20">{value}</text>}
            </g>
          ))}
          {named.map(({ deg, name }) => (
            <g key={deg} class="ruler-setting" transform={`translate(${at(scale, deg).toFixed(1)} 0)`}>
              <line y1="0" y2="9" /><text y="20">{name}</text>
            </g>
          ))}
        </svg>
        {adding.value !== null && <AddHere draft={draft} ruler={ruler} value={adding.value} x={at(scale, adding.value)} room={room} forwards={range.to >= range.from} close={() => { adding.value = null; }} />}
      </div>
    </div>
  );
}

/** Round degrees; where a setting stands its name says more. */
function travelTicks({ from, to }: Range, room: number): number[] {
  return ticks({ from: Math.min(from, to), to: Math.max(from, to) }, Math.max(3, Math.round(room / 90)));
}
