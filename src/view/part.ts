/** What every drawing of the drill is given, and what it gives back. */
import { Graphics, Text, type Container, type TextStyleFontWeight } from 'pixi.js';
import type { Ink } from './ink.js';
import type { Layout, Rect } from './place.js';
import type { Panel, Picture } from './picture.js';

export interface Frame {
  readonly panel: Panel;
  readonly at: Layout;
  readonly ink: Ink;
  /** Less movement is asked for. */
  readonly still: boolean;
}

export interface Part {
  /** What stands still: kept as it was drawn until `show` says that it has changed. */
  readonly node: Container;
  /** What moves: drawn in every frame, above all that stands still. */
  readonly moving?: Container;
  /** Brings both to the picture, once a frame. @returns whether what stands still looks different now */
  readonly show: (now: Picture) => boolean;
}

/** Shows a drawing or hides it. @returns whether that is another than before */
export function seen(node: Container, is: boolean): boolean {
  if (node.visible === is) return false;
  node.visible = is;
  return true;
}

/** Loaded before the first drawing; figures of one width (pages/look/type.css). */
export const FACE = 'Inter Figures';

interface Look {
  size: number;
  colour: number;
  weight?: TextStyleFontWeight;
  /** Which point of the text stands at its place: 0 to 1 across and down. */
  anchor?: readonly [number, number];
}

export interface Label {
  readonly node: Text;
  /** @returns whether these are other words than before */
  say(text: string): boolean;
  place(x: number, y: number): void;
}

/** A text that is drawn again only when its words change: changing texts are the dearest thing on a frame. */
export function label(text: string, { size, colour, weight = '400', anchor = [0, 0.5] }: Look): Label {
  const node = new Text({
    text,
    style: { fontFamily: FACE, fontSize: size, fontWeight: weight, fill: colour },
    anchor: { x: anchor[0], y: anchor[1] },
    roundPixels: true,
  });
  return {
    node,
    say(words) {
      if (node.text === words) return false;
      node.text = words;
      return true;
    },
    place(x, y) {
      node.position.set(x, y);
    },
  };
}

/** A thin rule over a caption: the head of every column. */
export function caption(words: string, place: Rect, { at, ink }: Frame): [Graphics, Text] {
  const rule = new Graphics().moveTo(place.x, place.y + 0.5).lineTo(place.x + place.w, place.y + 0.5).stroke({ width: 1, color: ink.hair });
  const text = label(words, { size: at.type.small, colour: ink.soft, anchor: [0, 0] });
  text.place(place.x, place.y + 8);
  return [rule, text.node];
}

/** Strokes at 45 degrees across a rectangle, clipped by sums and not by a mask. */
export function hatch(into: Graphics, { x, y, w, h }: Rect, step: number, colour: number, width = 1): void {
  if (w <= 0 || h <= 0) return;
  for (let along = step; along < w + h; along += step) {
    into.moveTo(x + Math.max(0, along - h), y + Math.min(along, h));
    into.lineTo(x + Math.min(along, w), y + Math.max(0, along - w));
  }
  into.stroke({ width, color: colour });
}
