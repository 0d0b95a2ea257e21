/** The wing in section ahead of the hinge: the pointers hang from it as flaps do, and its nose shows the leading edge. */
import { Container, Graphics } from 'pixi.js';
import { label } from './label.js';
import { caption, seen, type Frame, type Part } from './part.js';
import type { Picture } from './picture.js';

/** How far the nose piece stands off, as parts of the chord: forward and down. */
const OFF = { in: 0, moving: 0.5, out: 1 } as const;

export function section(frame: Frame): Part {
  const { at, ink } = frame;
  const node = new Container();
  const beside = at.gauge.section > 0;
  const place = at.leadingEdge;
  node.addChild(...caption('Leading edge', place, frame));
  // With the fan beside it the trailing edge is the hinge; alone it is a small figure under its caption.
  const nose = 14;
  const line = at.kind === 'tall';
  const chord = beside ? at.gauge.section - nose - 12 : line ? 40 : Math.min(64, place.w * 0.5);
  const tail = beside ? { x: at.gauge.hingeX - 8, y: at.gauge.hingeY }
    : line ? { x: place.x + place.w - 52, y: place.y + 15 } : { x: place.x + nose + chord, y: place.y + Math.min(40, place.h - 8) };
  const wing = new Graphics();
  const front = tail.x - chord;
  const thick = chord * (beside ? 0.12 : 0.16);
  wing.moveTo(tail.x, tail.y - 0.5)
    .bezierCurveTo(tail.x - chord * 0.35, tail.y - thick * 0.75, front + chord * 0.5, tail.y - thick * 1.35, front + chord * 0.26, tail.y - thick * 1.2)
    .bezierCurveTo(front + chord * 0.06, tail.y - thick * 1.05, front, tail.y - thick * 0.4, front, tail.y)
    .bezierCurveTo(front, tail.y + thick * 0.5, front + chord * 0.1, tail.y + thick * 0.75, front + chord * 0.3, tail.y + thick * 0.7)
    .bezierCurveTo(front + chord * 0.55, tail.y + thick * 0.6, tail.x - chord * 0.3, tail.y + thick * 0.2, tail.x, tail.y + 0.5)
    .closePath()
    .fill({ color: ink.sheet })
    .stroke({ width: 1.25, color: ink.mark, join: 'round' });
  const edge = new Graphics()
    .moveTo(chord * 0.2, -thick * 1.13)
    .bezierCurveTo(chord * 0.05, -thick * 1.05, -1.5, -thick * 0.5, -1.5, 0)
    .bezierCurveTo(-1.5, thick * 0.45, chord * 0.03, thick * 0.6, chord * 0.08, thick * 0.66)
    .stroke({ width: 3, color: ink.ink, cap: 'round' });
  edge.position.set(front, tail.y);
  const word = label('', { size: at.type.label, colour: ink.ink, weight: '600', anchor: [0, 0.5] });
  // Under its caption, unless the wing stands far from that.
  if (beside) word.place(front - place.x > 60 ? front - nose : place.x, tail.y + thick + 34 * at.scale);
  else word.place(tail.x + 12, tail.y);
  node.addChild(wing, edge, word.node);
  return {
    node,
    show({ leadingEdge, blank }: Picture) {
      seen(edge, !blank);
      const hid = seen(word.node, !blank);
      if (!word.say(leadingEdge)) return hid;
      const off = OFF[leadingEdge];
      edge.position.set(front - off * chord * 0.06, tail.y + off * chord * 0.05);
      edge.rotation = -off * 0.22;
      return true;
    },
  };
}
