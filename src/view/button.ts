/** A plain drawn button: an outline, one or two lines of words, and a bar along its foot while it is on. */
import { Container, Graphics } from 'pixi.js';
import { label } from './label.js';
import type { Frame } from './part.js';
import type { Rect } from './place.js';

export interface Button {
  readonly node: Container;
  /** @returns whether it looks different now */
  set(on: boolean): boolean;
}

/** @param size of the words, px; set smaller where they are too long for the place */
export function button(words: string, { x, y, w, h }: Rect, { at, ink }: Frame, size = at.type.small): Button {
  const node = new Container();
  const box = new Graphics();
  const lines = words.split('\n').map((line, index, all) => {
    const one = label(line, { size, colour: ink.ink, weight: '500', anchor: [0.5, 0.5] });
    one.place(x + w / 2, y + h / 2 + (index - (all.length - 1) / 2) * size * 1.2);
    return one.node;
  });
  // Words that are too long for their place are set smaller, never cut.
  const room = (w - 8) / Math.max(...lines.map(({ width }) => width), 1);
  if (room < 1) for (const line of lines) line.scale.set(room);
  node.addChild(box, ...lines);
  let drawn: boolean | null = null;
  return {
    node,
    set(on) {
      if (on === drawn) return false;
      drawn = on;
      box.clear().roundRect(x + 0.75, y + 0.75, w - 1.5, h - 1.5, 7).fill({ color: ink.sheet }).stroke({ width: on ? 1.75 : 1.25, color: on ? ink.accent : ink.mark });
      if (on) box.roundRect(x + w * 0.22, y + h - 8, w * 0.56, 3, 1.5).fill({ color: ink.accent });
      return true;
    },
  };
}
