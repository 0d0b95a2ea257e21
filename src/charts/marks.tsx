/** Moments over a stack of charts: a sign at each, its word where there is room, and a line down through all charts. */
import { lane, SIGN, widthOf, type Placed } from './lane.js';
import { at, type Scale } from './plot.js';

export interface Mark {
  readonly atS: number;
  readonly word: string;
  /** Outline about its middle, about 12 px wide. */
  readonly outline: string;
  readonly rank: number;
}

const ROW = 20;
const MOST_ROWS = 5;
const SIZE = 13;

export interface Lane {
  readonly placed: readonly Placed[];
  /** Height that the words need, px. */
  readonly height: number;
}

export function laneOf(marks: readonly Mark[], time: Scale): Lane {
  const wishes = marks.map(({ atS, word, rank }) => ({ x: at(time, atS), w: widthOf(word, SIZE), rank }));
  const placed = lane(wishes, time.start, time.end + 40, MOST_ROWS);
  return { placed, height: (Math.max(0, ...placed.map(({ row }) => row ?? 0)) + 1) * ROW };
}

interface Props {
  readonly marks: readonly Mark[];
  readonly lane: Lane;
  readonly time: Scale;
  /** Foot of the words, and of the lines, px. */
  readonly top: number;
  readonly bottom: number;
  /** A mark was pressed, and not the charts behind it. */
  readonly onPick: (atS: number) => void;
}

export function Marks({ marks, lane: { placed }, time, top, bottom, onPick }: Props) {
  const stood = marks.map((mark, index) => {
    const { row, flip } = placed[index] ?? { row: null, flip: false };
    return { ...mark, row, flip, x: at(time, mark.atS), y: top - ROW / 2 - (row ?? 0) * ROW };
  });
  const pick = (atS: number) => (event: PointerEvent): void => {
    event.stopPropagation();
    onPick(atS);
  };
  return (
    <g>
      {/* All lines below all words: none runs through a word of another. */}
      {stood.map(({ atS, word, rank, row, x, y }) => (
        <path key={`${word}${atS}`} class={rank <= 1 ? 'lead-line' : 'lead-line faint'} d={row === null ? `M${x} ${top}V${top + 10}` : `M${x} ${y}V${bottom}`} onPointerDown={pick(atS)} />
      ))}
      {stood.map(({ atS, word, outline, rank, row, flip, x, y }) => (
        <g key={`${word}${atS}`} class={rank === 0 ? 'moment strong' : 'moment'} onPointerDown={pick(atS)}>
          {row !== null && <path class="moment-sign" d={outline} transform={`translate(${x} ${y})`} />}
          {row !== null && <text x={flip ? x - SIGN : x + SIGN} y={y + 4.5} text-anchor={flip ? 'end' : 'start'}>{word}</text>}
        </g>
      ))}
    </g>
  );
}
