/** Height above sea level, as figures, and which way the path goes: nothing in the job is read from its movement. */
import { Container, Graphics } from 'pixi.js';
import { label } from './label.js';
import { caption, seen, type Frame, type Part } from './part.js';
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
  node.addChild(words.node, way);
  return {
    node,
    show(now) {
      const hid = seen(words.node, !now.blank);
      const told = words.say(feet(Math.round(now.altitudeFt / 10) * 10));
      const turned = seen(way, !now.blank && now.path !== 'level');
      if (way.visible && (told || turned)) {
        way.scale.y = now.path === 'down' ? -1 : 1;
        way.position.set(place.x + words.node.width + 12, place.y + place.h - at.type.value * 0.6);
      }
      return hid || told || turned;
    },
  };
}
