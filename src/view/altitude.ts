/** Height above sea level, as figures, and which way the path goes: nothing in the job is read from its movement. */
import { Container, Graphics } from 'pixi.js';
import { caption, label, type Frame, type Part } from './part.js';
import { feet } from './words.js';

export function altitude(frame: Frame): Part {
  const { at, ink } = frame;
  const { altitude: place } = at;
  const node = new Container();
  node.addChild(...caption('Height, ft', place, frame));
  const words = label('', { size: at.type.value, colour: ink.ink, weight: '600', anchor: [0, 1] });
  words.place(place.x, place.y + place.h);
  // A wedge beside the figures, up or down; none while level.
  const way = new Graphics().poly([-5, 4, 0, -5, 5, 4]).fill({ color: ink.ink });
  const moving = new Container();
  moving.addChild(words.node, way);
  return {
    node, moving,
    show(now) {
      moving.visible = !now.blank;
      words.say(feet(Math.round(now.altitudeFt / 10) * 10));
      way.visible = now.path !== 'level';
      if (way.visible) {
        way.scale.y = now.path === 'down' ? -1 : 1;
        way.position.set(place.x + words.node.width + 12, place.y + place.h - at.type.value * 0.6);
      }
      return false;
    },
  };
}
