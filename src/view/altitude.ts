/** Height above sea level, as figures: nothing in the job is read from its movement. */
import { Container } from 'pixi.js';
import { caption, label, type Frame, type Part } from './part.js';
import { grouped } from './words.js';

export function altitude(frame: Frame): Part {
  const { at, ink } = frame;
  const { altitude: place } = at;
  const node = new Container();
  node.addChild(...caption('Height, ft', place, frame));
  const words = label('', { size: at.type.value, colour: ink.ink, weight: '600', anchor: [0, 1] });
  words.place(place.x, place.y + place.h);
  node.addChild(words.node);
  return {
    node,
    show(now) {
      words.node.visible = !now.blank;
      words.say(grouped(Math.round(now.altitudeFt / 10) * 10));
    },
  };
}
