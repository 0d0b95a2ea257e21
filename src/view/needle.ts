/** One pointer of the fan. It is drawn once, pointing at flap 0, and turned about the hinge; nothing is rounded to pixels. */
import { Container, Graphics } from 'pixi.js';
import { onFan, radians } from './dial.js';
import { lettersAt, NEEDLES, OUTLINE } from './needles.js';
import { label } from './label.js';
import type { Frame } from './part.js';

/** Shaft and letter apart, so that every letter lies above every shaft. */
export function needle(side: 'left' | 'right', { at, ink }: Frame) {
  const { radius } = at.gauge;
  const bead = 10.5 * Math.max(at.scale, 1);
  const size = NEEDLES[side];
  const shape = new Graphics();
  const foot = radius * size.foot;
  shape.moveTo(0, -size.shaft).lineTo(foot, -size.shaft).lineTo(foot, -size.head).lineTo(radius, 0)
    .lineTo(foot, size.head).lineTo(foot, size.shaft).lineTo(0, size.shaft).closePath();
  if (side === 'left') shape.fill({ color: ink.ink });
  else shape.stroke({ width: OUTLINE, color: ink.ink, join: 'miter', miterLimit: 20 });
  const shaft = new Container();
  shaft.position.set(at.gauge.hingeX, at.gauge.hingeY);
  shaft.addChild(shape);

  const disc = new Graphics().circle(0, 0, bead).fill({ color: side === 'left' ? ink.ink : ink.paper }).stroke({ width: OUTLINE, color: ink.ink });
  const word = label(side === 'left' ? 'L' : 'R', { size: bead * 1.24, colour: side === 'left' ? ink.paper : ink.ink, weight: '700', anchor: [0.5, 0.5] });
  const letter = new Container();
  letter.addChild(disc, word.node);

  return {
    shaft,
    letter,
    show(dialDeg: number, blank: boolean) {
      shaft.visible = !blank;
      letter.visible = !blank;
      shaft.rotation = radians(dialDeg);
      const place = onFan(at.gauge, dialDeg, lettersAt(radius, bead)[side]);
      letter.position.set(place.x, place.y);
    },
  };
}
