/** Thrust levers, shown and not moved here: forward is up. The left handle is solid, the right open, as everywhere. */
import { Container, Graphics } from 'pixi.js';
import { caption, label, type Frame, type Part } from './part.js';
import type { Picture } from './picture.js';
import { wholeDeg } from './words.js';

export function thrust(frame: Frame): Part {
  return frame.at.kind === 'wide' ? drawn(frame) : written(frame);
}

function drawn(frame: Frame): Part {
  const { at, ink, panel } = frame;
  const { thrust: place } = at;
  const node = new Container();
  node.addChild(...caption('Thrust levers', place, frame));
  const top = place.y + 46;
  const bottom = place.y + place.h - 12;
  const yOf = (deg: number): number => bottom - (deg / panel.tlaMaxDeg) * (bottom - top);
  const rails = new Graphics();
  const x = place.x + 30 * at.scale;
  const apart = 26 * at.scale;
  for (const at2 of [x, x + apart]) rails.moveTo(at2, top - 6).lineTo(at2, bottom + 6);
  rails.stroke({ width: 5 * at.scale, color: ink.hair, cap: 'round' });
  for (let deg = 0; deg <= panel.tlaMaxDeg; deg += 10) {
    rails.moveTo(x - 20 * at.scale, yOf(deg)).lineTo(x - 14 * at.scale, yOf(deg));
    if (deg % 20 !== 0) continue;
    const figure = label(`${deg}`, { size: at.type.small * 0.95, colour: ink.soft, anchor: [1, 0.5] });
    figure.place(x - 23 * at.scale, yOf(deg));
    node.addChild(figure.node);
  }
  rails.stroke({ width: 1, color: ink.mark });
  const handle = (solid: boolean): Graphics =>
    new Graphics().roundRect(-10 * at.scale, -6 * at.scale, 20 * at.scale, 12 * at.scale, 3).fill({ color: solid ? ink.ink : ink.paper }).stroke({ width: 1.6, color: ink.ink });
  const left = handle(true);
  const right = handle(false);
  const angle = label('', { size: at.type.label, colour: ink.ink, weight: '600' });
  const hold = label('', { size: at.type.small, colour: ink.soft });
  node.addChild(rails, left, right, angle.node, hold.node);
  return {
    node,
    show(now: Picture) {
      for (const one of [left, right, angle.node, hold.node]) one.visible = !now.blank;
      left.position.set(x, yOf(now.leftTlaDeg));
      right.position.set(x + apart, yOf(now.rightTlaDeg));
      const middle = (yOf(now.leftTlaDeg) + yOf(now.rightTlaDeg)) / 2;
      angle.say(anglesOf(now));
      angle.place(x + apart + 18 * at.scale, middle - 1);
      hold.say(now.speedHold ? 'speed hold' : 'by hand');
      hold.place(x + apart + 18 * at.scale, middle + at.type.small * 1.35);
    },
  };
}

/** No room for a drawing: the figures alone. */
function written(frame: Frame): Part {
  const { at, ink } = frame;
  const node = new Container();
  node.addChild(...caption('Thrust levers', at.thrust, frame));
  const angle = label('', { size: at.type.label, colour: ink.ink, weight: '600', anchor: [0, 1] });
  angle.place(at.thrust.x, at.thrust.y + at.thrust.h);
  node.addChild(angle.node);
  return {
    node,
    show(now) {
      angle.node.visible = !now.blank;
      angle.say(anglesOf(now));
    },
  };
}

function anglesOf({ leftTlaDeg, rightTlaDeg }: Picture): string {
  const [left, right] = [wholeDeg(leftTlaDeg), wholeDeg(rightTlaDeg)];
  return left === right ? left : `${left} ${right}`;
}
