/**
 * Bank, heading and control deflection, on the side of the speed and away from the gauge: a cue, never a detector. The wing turns
 * about the middle of its horizon; the mark below says which way the control is held, without a figure. Once the
 * autopilot is off the mark is the hand's own.
 */
import { Container, Graphics } from 'pixi.js';
import { radians } from './dial.js';
import { label } from './label.js';
import { caption, seen, type Frame, type Part } from './part.js';
import type { Picture } from './picture.js';
import { headingFigures } from './words.js';

export function bank(frame: Frame): Part {
  const { at, ink } = frame;
  const { bank: place } = at;
  const node = new Container();
  node.addChild(...caption('Bank', place, frame));
  // The heading stands in the same line, at the other end: read now and then, and never drawn to the eye.
  const heading = label('', { size: at.type.small, colour: ink.ink, weight: '600', anchor: [1, 0] });
  heading.place(place.x + place.w, place.y + 8);
  const x = place.x + place.w / 2;
  const reach = place.w / 2 - 10;
  const head = at.type.small + 10;
  const y = place.y + head + (place.h - head) * 0.36;
  const trackY = place.y + place.h - Math.max(8, (place.h - head) * 0.16);
  const still = new Graphics();
  for (const side of [-1, 1]) still.moveTo(x + side * reach, y).lineTo(x + side * (reach - 9), y);
  still.moveTo(x, y - 10).lineTo(x, y - 5);
  still.stroke({ width: 1.25, color: ink.mark });
  still.moveTo(x - reach, trackY).lineTo(x + reach, trackY).stroke({ width: 3, color: ink.hair, cap: 'round' });
  still.moveTo(x, trackY - 6).lineTo(x, trackY + 6).stroke({ width: 1.25, color: ink.mark });
  // So short that a bank of 30 degrees stays between the words above and the mark below.
  const span = Math.min(reach - 14, (place.h - head) * 0.66);
  // Left solid, right open, as everywhere.
  const wing = new Graphics()
    .moveTo(-span, 0).lineTo(span, 0).stroke({ width: 2.25, color: ink.ink, cap: 'round' })
    .circle(-span, 0, 3.5).fill({ color: ink.ink })
    .circle(span, 0, 3.5).fill({ color: ink.paper }).stroke({ width: 1.6, color: ink.ink })
    .circle(0, 0, 2.5).fill({ color: ink.ink });
  wing.position.set(x, y);
  const mark = new Graphics();
  const hand = new Graphics();
  node.addChild(still, heading.node);
  const moving = new Container();
  moving.addChild(wing, hand, mark);
  hand.roundRect(-9, -9, 18, 18, 5).fill({ color: ink.sheet }).stroke({ width: 2, color: ink.accent });
  mark.poly([0, -8, 5, 0, 0, 8, -5, 0]).fill({ color: ink.ink });
  return {
    node, moving,
    show(now: Picture) {
      moving.visible = !now.blank;
      hand.visible = !now.autopilot;
      const told = heading.say(`hdg ${headingFigures(now.headingDeg)}`);
      wing.rotation = radians(now.bankDeg);
      mark.position.set(x + now.control * reach, trackY);
      hand.position.set(x + now.handControl * reach, trackY);
      return seen(heading.node, !now.blank) || told;
    },
  };
}
