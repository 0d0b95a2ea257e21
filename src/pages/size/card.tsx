/**
 * The outline that a bank card is held against: first its long side is matched, then its short side by itself, as the
 * check on the first. By dragging, by buttons, by arrow keys.
 */
import { useSignal } from '@preact/signals';
import type { RefObject } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import { CARD, CARD_OFF, CARD_ROUND_MM, matchOf, PX_PER_MM, type Match } from '../../view/size.js';

interface Props {
  /** What this screen measured last, px a millimetre; null: never. */
  readonly before: number | null;
  readonly measured: (pxPerMm: number) => void;
  readonly leave: (() => void) | null;
}

/** Of a screen that nobody has measured, px a millimetre: 96 px an inch. Only where the outline starts. */
const USUAL = 96 / 25.4;
/** The short side starts this much too long, so that a card alone can tell where it ends. */
const ASIDE = 1.09;
/** Steps of a button or a key, px. */
const [FINE, COARSE] = [0.5, 10];
/** Room before the outline for its corner, and behind it for the edge that moves, px. */
const [AHEAD, BEHIND] = [14, 24];
const AROUND = AHEAD + BEHIND;

const [LEAST, MOST] = [PX_PER_MM.least * CARD.longMm, PX_PER_MM.most * CARD.longMm];
const between = (value: number, least: number, most: number): number => Math.min(Math.max(value, least), most);

export function Card({ before, measured, leave }: Props) {
  const box = useRef<HTMLDivElement>(null);
  const outline = useRef<HTMLButtonElement>(null);
  const long = useSignal((before ?? USUAL) * CARD.longMm);
  const short = useSignal<number | null>(null);
  const bad = useSignal<Match | null>(null);
  const room = useWidth(box);
  /** The card lies on its side where the page is wide enough for it, and else stands. */
  const stands = long.value + AROUND > room;
  const measuringLong = short.value === null;
  const shortPx = short.value ?? (long.value / CARD.longMm) * CARD.shortMm;
  const w = stands ? shortPx : long.value;
  const h = stands ? long.value : shortPx;
  /** Whether the side that is being matched lies across. */
  const across = measuringLong !== stands;
  const value = measuringLong ? long.value : shortPx;
  const put = (px: number): void => {
    bad.value = null;
    if (measuringLong) long.value = between(px, LEAST, MOST);
    else short.value = between(px, LEAST / 2, MOST);
  };

  const next = (): void => {
    short.value = (long.value / CARD.longMm) * CARD.shortMm * ASIDE;
    outline.current?.focus();
  };
  const finish = (): void => {
    const match = matchOf(long.value, shortPx);
    if (match.fits) measured(match.pxPerMm);
    else bad.value = match;
  };
  const again = (): void => {
    short.value = null;
    bad.value = null;
    outline.current?.focus();
  };

  const name = measuringLong ? 'long side' : 'short side';
  return (
    <div class="card">
      <p class="large" role="status">{measuringLong
        ? <><strong>1 of 2.</strong> Hold a bank card against the screen, its corner in the drawn corner. Move the {across ? 'right' : 'lower'} edge until it lies under the end of the card.</>
        : <><strong>2 of 2.</strong> Leave the card where it is. Move the {across ? 'right' : 'lower'} edge the same way. It started too far out on purpose: this is the check.</>}</p>
      <div ref={box} class="card-room">
        <Drawn across={across} w={w} h={h} round={(CARD_ROUND_MM * w) / (stands ? CARD.shortMm : CARD.longMm)} />
        <Edge at={outline} name={name} value={value} across={across} w={w} h={h} put={put} />
      </div>
      <div class="card-steps" role="group" aria-label={`Edge of the ${name}`}>
        {([[-COARSE, '− 10'], [-FINE, '− ½'], [FINE, '+ ½'], [COARSE, '+ 10']] as const).map(([step, words]) => (
          <button key={step} class="button quiet" type="button" aria-label={`${words} px, the ${step < 0 ? 'edge goes in' : 'edge goes out'}`} onClick={() => put(value + step)}>{words}</button>
        ))}
        <span class="small">px; or drag the edge, or arrow keys on it</span>
      </div>
      {bad.value !== null && <p class="note" role="alert">{wrong(bad.value)}</p>}
      <div class="card-go">
        {measuringLong
          ? <button class="button" type="button" onClick={next}>The long side fits</button>
          : <button class="button" type="button" onClick={finish}>The short side fits</button>}
        {!measuringLong && <button class="button quiet" type="button" onClick={again}>Back to the long side</button>}
        {leave !== null && <button class="plain" type="button" onClick={leave}>Leave it as it was</button>}
      </div>
    </div>
  );
}

/** Width of a box, px; 1000 until it is there. */
function useWidth(box: RefObject<HTMLElement | null>): number {
  const width = useSignal(1000);
  useEffect(() => {
    const fit = (): void => { width.value = box.current?.clientWidth ?? 1000; };
    fit();
    addEventListener('resize', fit);
    return () => removeEventListener('resize', fit);
  }, []);
  return width.value;
}

/** The outline with the corner that is held and the edge that moves. */
const Drawn = ({ across, w, h, round }: { across: boolean; w: number; h: number; round: number }) => (
  <svg class="card-drawn" width={w + AROUND} height={h + AROUND} viewBox={`${-AHEAD} ${-AHEAD} ${w + AROUND} ${h + AROUND}`} aria-hidden="true">
    <rect class="card-line" width={w} height={h} rx={round} />
    <path class="card-corner" d="M-3 40V-3H40" />
    <path class="card-edge" d={across ? `M${w} -12V${h + 12}` : `M-12 ${h}H${w + 12}`} />
    <text class="card-name" x={w / 2} y={h / 2 - 6} text-anchor="middle">bank card</text>
    <text class="card-name" x={w / 2} y={h / 2 + 16} text-anchor="middle">{CARD.longMm.toFixed(2)} × {CARD.shortMm} mm</text>
  </svg>
);

function wrong(match: Match): string {
  const { off, pxPerMm } = match;
  if (match.fits) return '';
  return match.why === 'range'
    ? `That would be ${pxPerMm.toFixed(2)} px a millimetre, and no screen has less than ${PX_PER_MM.least} or more than ${PX_PER_MM.most}. Is it a card of the usual size?`
    : `The sides do not belong to one card: the short one is ${(Math.abs(off) * 100).toFixed(1)} % too ${off > 0 ? 'long' : 'short'}, and ${CARD_OFF * 100} % is let pass. Match both again; a card that lies askew does this.`;
}

interface EdgeProps {
  readonly at: RefObject<HTMLButtonElement | null>;
  readonly name: string;
  readonly value: number;
  readonly across: boolean;
  readonly w: number;
  readonly h: number;
  readonly put: (px: number) => void;
}

/** The edge that moves: a finger's width about the line. */
function Edge({ at, name, value, across, w, h, put }: EdgeProps) {
  const grip = useRef<{ from: number; value: number } | null>(null);
  const along = (event: PointerEvent): number => (across ? event.clientX : event.clientY);
  const style = across
    ? { left: `${AHEAD + w - 22}px`, top: `${AHEAD}px`, width: '44px', height: `${h}px` }
    : { left: `${AHEAD}px`, top: `${AHEAD + h - 22}px`, width: `${w}px`, height: '44px' };
  return (
    <button
      ref={at} style={style} class={across ? 'card-grip' : 'card-grip card-grip-down'} type="button" role="slider" aria-label={`Edge of the ${name}`} aria-orientation={across ? 'horizontal' : 'vertical'}
      aria-valuenow={Math.round(value * 2) / 2} aria-valuemin={Math.round(LEAST / 2)} aria-valuemax={Math.round(MOST)} aria-valuetext={`${(Math.round(value * 2) / 2).toFixed(1)} pixels`}
      onPointerDown={(event) => {
        if (event.button !== 0) return;
        event.currentTarget.setPointerCapture(event.pointerId);
        grip.current = { from: along(event), value };
      }}
      onPointerMove={(event) => { if (grip.current !== null) put(grip.current.value + along(event) - grip.current.from); }}
      onPointerUp={() => { grip.current = null; }}
      onPointerCancel={() => { grip.current = null; }}
      onKeyDown={(event) => {
        const way = { ArrowRight: 1, ArrowUp: across ? 1 : -1, ArrowLeft: -1, ArrowDown: across ? -1 : 1, PageUp: 1, PageDown: -1 }[event.key];
        if (way === undefined) return;
        event.preventDefault();
        put(value + way * (event.shiftKey || event.key.startsWith('Page') ? COARSE : FINE));
      }}
    />
  );
}
