/** What every drawing of the drill is given, and what it gives back. */
import { Graphics, type Container } from 'pixi.js';
import type { Ink } from './ink.js';
import { label } from './label.js';
import type { Layout, Rect } from './place.js';
import type { Panel, Picture } from './picture.js';

/** What stays the same until everything is drawn anew. */
export interface Frame {
  readonly panel: Panel;
  readonly at: Layout;
  readonly ink: Ink;
  /** Less movement is asked for. */
  readonly still: boolean;
}

/** One drawing, made once a layout and then brought to each picture. */
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

/** A thin rule over a caption: the head of every column. */
export function caption(words: string, place: Rect, { at, ink }: Frame): [Graphics, Container] {
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
