/** One mark: pressed, it is looked at; drawn along its ruler or moved by arrows, its figure follows. */
import type { RefObject } from 'preact';
import { useRef } from 'preact/hooks';
import { valueAt, type Scale } from '../../../charts/plot.js';
import type { Draft } from '../draft.js';
import { removeThing } from '../form/add.js';
import { chosen } from '../form/chosen.js';
import { by } from '../looked.js';
import { figureOn, labelOf, snapped, type Mark, type Range } from './marks.js';
import { outline } from './sign.js';

interface Props {
  readonly draft: Draft;
  readonly mark: Mark;
  /** How it is drawn along; null for what cannot be moved. */
  readonly drag?: { readonly box: RefObject<HTMLDivElement | null>; readonly scale: Scale; readonly grid: number; readonly range: Range } | null;
  readonly left?: boolean;
  readonly style?: Record<string, string>;
  /** From the mark down to the ruler, px. */
  readonly stem?: number;
}

/** Less than this is a press and no drawing, px. */
const STILL_PX = 4;
/** Shift makes an arrow's step so many times as large. */
const LARGE = 10;

export function MarkButton({ draft, mark, drag = null, left = false, style = {}, stem = 0 }: Props) {
  const from = useRef<{ readonly x: number; readonly value: number; moved: boolean } | null>(null);
  const { list, index, key, value, words } = mark;
  const moves = key === null ? null : drag;
  const path = [list, index, 'when', key ?? ''];
  const step = `draw ${list} ${index}`;
  const put = (to: number): void => {
    if (to !== value) draft.put(path, to, step);
  };
  const look = (): void => {
    chosen.value = { list, index };
    by.value = 'form';
  };
  const letGo = (): void => {
    from.current = null;
    draft.part();
  };
  const onMove = (event: PointerEvent): void => {
    const begin = from.current;
    if (begin === null || moves === null) return;
    if (!begin.moved && Math.abs(event.clientX - begin.x) < STILL_PX) return;
    begin.moved = true;
    const edge = moves.box.current?.getBoundingClientRect().left ?? 0;
    put(snapped(valueAt(moves.scale, event.clientX - edge), moves.grid, moves.range));
  };
  const onKey = (event: KeyboardEvent): void => {
    if (event.key === 'Delete' || event.key === 'Backspace') {
      event.preventDefault();
      removeThing(draft, list, index);
      return;
    }
    if (event.key === 'Escape' && from.current?.moved === true) {
      from.current = null;
      draft.undo();
      return;
    }
    if (moves === null) return;
    const { grid, range } = moves;
    const forwards = range.to >= range.from ? 1 : -1;
    const way = { ArrowRight: forwards, ArrowLeft: -forwards, ArrowUp: 1, ArrowDown: -1 }[event.key];
    const end = { Home: range.from, End: range.to }[event.key];
    if (way === undefined && end === undefined) return;
    event.preventDefault();
    put(snapped(end ?? value + (way ?? 0) * grid * (event.shiftKey ? LARGE : 1), grid, range));
  };
  const isChosen = chosen.value?.list === list && chosen.value.index === index;
  const slides = moves === null ? {} : {
    role: 'slider' as const, 'aria-valuenow': value, 'aria-valuemin': Math.min(moves.range.from, moves.range.to), 'aria-valuemax': Math.max(moves.range.from, moves.range.to), 'aria-valuetext': figureOn(mark),
  };
  return (
    <button
      type="button" class={`mark-flag ${list}${left ? ' left' : ''}${isChosen ? ' chosen' : ''}${moves === null ? '' : ' moves'}`} style={style} data-mark={mark.name} aria-label={`${labelOf(mark)}: ${words}`} {...slides}
      onPointerDown={(event) => {
        if (event.button !== 0 || moves === null) return;
        event.currentTarget.setPointerCapture(event.pointerId);
        from.current = { x: event.clientX, value, moved: false };
      }}
      onPointerMove={onMove} onPointerUp={letGo} onPointerCancel={letGo} onKeyDown={onKey} onBlur={() => draft.part()} onClick={look}
    >
      <svg viewBox="-10 -10 20 20" width="20" height="20" aria-hidden="true"><path d={outline(mark.kind)} /></svg>
      <span>{labelOf(mark)}</span>
      {style['bottom'] !== undefined && <i class="stem" style={{ height: `${stem + 12}px`, bottom: `${-stem}px` }} />}
    </button>
  );
}
