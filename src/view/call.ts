/** What the trainee calls, drawn as things said: the split large, the others beside it and never taken for it. */
import { Container, Graphics } from 'pixi.js';
import { label } from './label.js';
import type { Frame, Part } from './part.js';
import type { Rect } from './place.js';

export function call(frame: Frame): Part {
  const { at, ink } = frame;
  const node = new Container();
  node.addChild(
    ...bubble('Call split', at.call, { size: at.type.label * 1.12, weight: '700', width: 2, colour: ink.ink, tail: 9 }, frame),
    ...([['Clear,\ngoing on', at.callClear], ['Drive\nfailed', at.callFailed], ['Still\nmoving', at.callMoving]] as const)
      .flatMap(([words, place]) => bubble(at.kind === 'low' && place === at.callMoving ? words.replace('\n', ' ') : words, place, { size: at.type.small, weight: '500', width: 1.25, colour: ink.mark, tail: 0 }, frame)),
  );
  return { node, show: () => false };
}

interface Look {
  readonly size: number;
  readonly weight: '500' | '700';
  readonly width: number;
  readonly colour: number;
  readonly tail: number;
}

function bubble(words: string, { x, y, w, h }: Rect, { size, weight, width, colour, tail }: Look, { ink }: Frame): Container[] {
  const body = new Graphics().roundRect(x + 1, y + 1, w - 2, h - tail - 2, 8).fill({ color: ink.sheet }).stroke({ width, color: colour });
  if (tail > 0) body.poly([x + w * 0.5 - 9, y + h - tail - 1, x + w * 0.5, y + h - 1, x + w * 0.5 + 9, y + h - tail - 1]).fill({ color: colour });
  const lines = words.split('\n').map((line, index, all) => {
    const one = label(line, { size, colour: ink.ink, weight, anchor: [0.5, 0.5] });
    one.place(x + w / 2, y + (h - tail) / 2 + (index - (all.length - 1) / 2) * size * 1.2);
    return one.node;
  });
  const room = (w - 6) / Math.max(...lines.map((line) => line.width), 1);
  if (room < 1) for (const line of lines) line.scale.set(room);
  return [body, ...lines];
}
