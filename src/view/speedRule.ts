/** The rule of the speed strip: where it stands, and what of it never changes. */
import { Graphics, type Container } from 'pixi.js';
import { label } from './label.js';
import { hatch, type Frame } from './part.js';
import { onStrip, rulings, STRIP_INSET, type Strip } from './strip.js';

export interface Rule {
  /** Not in a wide window: smaller in all, and without reasons. */
  readonly narrow: boolean;
  /** Its left edge, its width, its right edge, px. */
  readonly x: number;
  readonly w: number;
  readonly edge: number;
  /** Marks have a lane of their own between the rule and the tag, so wide: nothing that moves hides them. */
  readonly lane: number;
  /** Height of the tag, px. */
  readonly tagH: number;
  readonly strip: Strip;
}

export function ruleOf({ at, panel }: Frame): Rule {
  const narrow = at.kind !== 'wide';
  const [x, w] = [at.speed.x + (narrow ? 27 : 44 * at.scale), narrow ? 9 : 20 * at.scale];
  const { y, h } = at.selectSpeed;
  const strip = { lowestKt: panel.stripKt[0], highestKt: panel.stripKt[1], top: y + STRIP_INSET, bottom: y + h - STRIP_INSET };
  return { narrow, x, w, edge: x + w, lane: narrow ? 8 : 15 * at.scale, tagH: at.type.value * 1.5, strip };
}

/** What must not be passed, for the whole of the rule: what may be flown is laid open over it. */
export function hatched({ x, w, strip }: Rule, { ink }: Frame): Graphics {
  const lines = new Graphics();
  // Inside its frame, so that no end of a stroke shows beside what lies open.
  hatch(lines, { x: x + 1, y: strip.top, w: w - 2, h: strip.bottom - strip.top }, 6, ink.soft);
  return lines;
}

/** Strokes and figures. */
export function ruled({ narrow, x, w, strip }: Rule, { at, ink }: Frame): Container[] {
  const { small } = at.type;
  const strokes = new Graphics();
  const figures: Container[] = [];
  // A figure wants a line of its own; where strokes stand closer, every other one gets one.
  const everyFigure = onStrip(strip, 100) - onStrip(strip, 120) < small * 1.5 ? 40 : 20;
  strokes.rect(x, strip.top, w, strip.bottom - strip.top).stroke({ width: 1, color: ink.hair });
  for (const { kt, long } of rulings(strip, 20)) {
    const y = onStrip(strip, kt);
    strokes.moveTo(x - (long ? (narrow ? 5 : 8) : narrow ? 3 : 4), y).lineTo(x, y);
    if (!long || kt % everyFigure !== 0) continue;
    const figure = label(`${kt}`, { size: narrow ? 10.5 : small, colour: ink.soft, anchor: [1, 0.5] });
    figure.place(x - (narrow ? 8 : 13), y);
    figures.push(figure.node);
  }
  strokes.stroke({ width: 1, color: ink.mark });
  return [...figures, strokes];
}
