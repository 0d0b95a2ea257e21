/** The call: a key of its own, away from the hold, drawn as something said. */
import { Container, Graphics } from 'pixi.js';
import { label, type Frame, type Part } from './part.js';

export function call({ at, ink }: Frame): Part {
  const { x, y, w, h } = at.call;
  const node = new Container();
  const tail = 9;
  const body = new Graphics()
    .roundRect(x + 1, y + 1, w - 2, h - tail - 1, 8).fill({ color: ink.sheet }).stroke({ width: 1.75, color: ink.ink });
  body.poly([x + w * 0.5 - 9, y + h - tail, x + w * 0.5, y + h - 1, x + w * 0.5 + 9, y + h - tail]).fill({ color: ink.ink });
  const word = label('Call split', { size: at.type.label * 1.1, colour: ink.ink, weight: '600', anchor: [0.5, 0.5] });
  word.place(x + w / 2, y + (h - tail) / 2);
  node.addChild(body, word.node);
  return { node, show: () => undefined };
}
