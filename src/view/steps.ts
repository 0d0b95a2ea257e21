/** The selected speed in steps: smaller ones inside, larger ones outside, slower at the left. */
import { Container } from 'pixi.js';
import { button } from './button.js';
import type { Frame, Part } from './part.js';

export function steps(frame: Frame): Part {
  const { at } = frame;
  const node = new Container();
  const size = at.type.label;
  const all = [['−5', at.speedDown5], ['−1', at.speedDown], ['+1', at.speedUp], ['+5', at.speedUp5]] as const;
  for (const [words, place] of all) {
    if (place.w === 0) continue;
    const one = button(at.tabbed ? `${words} kt` : words, place, frame, size);
    one.set(false);
    node.addChild(one.node);
  }
  return { node, show: () => false };
}
