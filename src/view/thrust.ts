/**
 * Two thrust levers that a hand moves together by their middle or one by one at their ends: forward is up. The left
 * handle is solid, the right open, as everywhere.
 */
import { Container, Graphics } from 'pixi.js';
import { button } from './button.js';
import { label } from './label.js';
import { caption, seen, type Frame, type Part } from './part.js';
import type { Picture } from './picture.js';
import { NOWHERE, type Rect } from './place.js';
import { THRUST_INSET } from './inset.js';
import { anglesOf } from './words.js';

export function thrust(frame: Frame): Part {
  const { at, ink, panel } = frame;
  const { leftThrust, rightThrust, bothThrust, thrustState } = at;
  const node = new Container();
  if (!at.tabbed) node.addChild(...caption('Thrust levers', thrustState, frame));
  const top = leftThrust.y + THRUST_INSET;
  const bottom = leftThrust.y + leftThrust.h - THRUST_INSET;
  const yOf = (deg: number): number => bottom - (deg / panel.tlaMaxDeg) * (bottom - top);
  const middle = bothThrust.x + bothThrust.w / 2;
  const rails = new Graphics();
  const railOf = ({ x, w }: Rect, side: -1 | 1): number => x + w / 2 - side * w * 0.12;
  for (const x of [railOf(leftThrust, -1), railOf(rightThrust, 1)]) rails.moveTo(x, top).lineTo(x, bottom);
  rails.stroke({ width: 5 * at.scale, color: ink.hair, cap: 'round' });
  const every = (bottom - top) / panel.tlaMaxDeg * 20 > at.type.small * 1.2 ? 20 : 40;
  for (let deg = 0; deg <= panel.tlaMaxDeg; deg += 10) {
    rails.moveTo(leftThrust.x - 1, yOf(deg)).lineTo(leftThrust.x + 5, yOf(deg));
    if (deg % every !== 0 || at.tabbed) continue;
    const figure = label(`${deg}`, { size: at.type.small * 0.92, colour: ink.soft, anchor: [1, 0.5] });
    figure.place(leftThrust.x - 4, yOf(deg));
    node.addChild(figure.node);
  }
  rails.stroke({ width: 1, color: ink.mark });
  const half = Math.min(9 * at.scale, 12);
  const left = handle(leftThrust.x + 7, middle - 1.5, half, true, frame);
  const right = handle(middle + 1.5, rightThrust.x + rightThrust.w - 7, half, false, frame);
  const angle = label('', { size: at.type.label, colour: ink.ink, weight: '600', anchor: [1, 0] });
  angle.place(thrustState.x + thrustState.w, thrustState.y + (at.tabbed ? 1 : 6));
  const hold = button('speed\nhold', at.speedHold, frame);
  const around = button('go\naround', at.goAround, frame);
  around.set(false);
  const threshold = hornLine(frame, yOf);
  node.addChild(rails, threshold.node, angle.node);
  const moving = new Container();
  moving.addChild(left, right);
  if (at.goAround !== NOWHERE) node.addChild(hold.node, around.node);
  return {
    node, moving,
    show(now: Picture) {
      moving.visible = !now.blank;
      left.y = yOf(now.leftTlaDeg);
      right.y = yOf(now.rightTlaDeg);
      const changes = [seen(angle.node, !now.blank), angle.say(anglesOf(now)), hold.set(now.speedHold && !now.blank), threshold.show(now)];
      return changes.includes(true);
    },
  };
}

/** One handle, from the outer end of its own track to the middle, where both meet; its letter at the outer end. */
function handle(from: number, to: number, half: number, solid: boolean, { at, ink }: Frame): Container {
  const node = new Container();
  const body = new Graphics().roundRect(from, -half, to - from, 2 * half, 4).fill({ color: solid ? ink.ink : ink.sheet }).stroke({ width: 1.75, color: ink.ink });
  const inner = solid ? to - 6 : from + 6;
  for (const step of [0, 1, 2]) body.moveTo(inner + (solid ? -4 : 4) * step, -half * 0.5).lineTo(inner + (solid ? -4 : 4) * step, half * 0.5);
  body.stroke({ width: 1.25, color: solid ? ink.paper : ink.ink });
  const letter = label(solid ? 'L' : 'R', { size: Math.min(at.type.small, half * 1.5), colour: solid ? ink.paper : ink.ink, weight: '700', anchor: [0.5, 0.5] });
  letter.place(solid ? from + 11 : to - 11, 0);
  node.addChild(body, letter.node);
  return node;
}

/** In training alone: below this line the horn sounds at small flap settings. */
function hornLine({ at, ink }: Frame, yOf: (deg: number) => number): Part {
  const node = new Container();
  const line = new Graphics();
  const word = label('', { size: at.type.small * 0.9, colour: ink.accent, weight: '500', anchor: [0.5, 1] });
  node.addChild(line, word.node);
  let drawn: number | null = null;
  return {
    node,
    show({ hornTlaDeg, blank }) {
      const hid = seen(node, hornTlaDeg !== null && !blank);
      if (hornTlaDeg === null || hornTlaDeg === drawn) return hid;
      drawn = hornTlaDeg;
      const { leftThrust, rightThrust } = at;
      const y = yOf(hornTlaDeg);
      line.clear();
      for (let x = leftThrust.x; x < rightThrust.x + rightThrust.w; x += 7) line.moveTo(x, y).lineTo(x + 4, y);
      line.stroke({ width: 1.5, color: ink.accent });
      word.say(`horn below ${hornTlaDeg}°`);
      word.place(leftThrust.x + leftThrust.w * 1.5, y - 2);
      return true;
    },
  };
}
