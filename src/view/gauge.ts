/**
 * The fan: two pointers on one scale, turning about one hinge and falling as the flaps fall. The left is solid, the
 * right an open outline in which the left lies while both agree; each carries its letter at a distance of its own.
 */
import { Container, Graphics } from 'pixi.js';
import { dialDegOf, onFan, radians } from './dial.js';
import { label } from './label.js';
import { caption, seen, type Frame, type Part } from './part.js';
import { needle } from './needle.js';
import type { Picture } from './picture.js';

/** Room that the caption beside this one needs, px. */
const CAPTION_W = 96;

export function gauge(frame: Frame): Part {
  const node = new Container();
  const { at, ink } = frame;
  // Upright, the caption shares its line with that of the leading edge, above the fan.
  const aside = at.kind === 'wide' ? Math.max(0, CAPTION_W * at.scale - at.leadingEdge.w) : 0;
  const head = at.kind === 'tall' ? { ...at.leadingEdge, x: at.flaps.x, w: at.leadingEdge.x - at.flaps.x - 8 } : { ...at.flaps, x: at.flaps.x + aside, w: at.flaps.w - aside };
  node.addChild(...caption('Flaps', head, frame), scale(frame));
  const figures = frame.panel.settings.map((setting) => figure(setting, frame));
  node.addChild(...figures.flatMap((one) => one.nodes));
  const left = needle('left', frame);
  const right = needle('right', frame);
  const moving = new Container();
  moving.addChild(left.shaft, right.shaft, left.letter, right.letter);
  moving.addChild(new Graphics().circle(at.gauge.hingeX, at.gauge.hingeY, 5).fill({ color: ink.paper }).stroke({ width: 1.5, color: ink.ink }));
  return {
    node, moving,
    show(now: Picture) {
      left.show(dialDegOf(frame.panel.dial, now.leftPointerDeg), now.blank);
      right.show(dialDegOf(frame.panel.dial, now.rightPointerDeg), now.blank);
      return figures.filter((one) => one.show(now)).length > 0;
    },
  };
}

/** Strokes outside the arc: one for each degree, longer at five, longest at a setting; hatched beyond the last setting. */
function scale(frame: Frame): Graphics {
  const { panel, at, ink } = frame;
  const into = new Graphics();
  const { radius } = at.gauge;
  const bow = radius + 4;
  const arc = (fromDeg: number, toDeg: number, r: number): void => {
    const steps = Math.max(2, Math.ceil(Math.abs(toDeg - fromDeg)));
    for (let step = 0; step <= steps; step += 1) {
      const point = onFan(at.gauge, fromDeg + ((toDeg - fromDeg) * step) / steps, r);
      if (step === 0) into.moveTo(point.x, point.y);
      else into.lineTo(point.x, point.y);
    }
  };
  const stroke = (flapDeg: number, from: number, to: number): void => {
    const dialDeg = dialDegOf(panel.dial, flapDeg);
    const inner = onFan(at.gauge, dialDeg, from);
    const outer = onFan(at.gauge, dialDeg, to);
    into.moveTo(inner.x, inner.y).lineTo(outer.x, outer.y);
  };
  const last = panel.settings[panel.settings.length - 1]!.deg;
  const set = new Set(panel.settings.map(({ deg }) => deg));

  arc(dialDegOf(panel.dial, 0), dialDegOf(panel.dial, panel.stopDeg), bow);
  into.stroke({ width: 1.25, color: ink.ink });
  for (let deg = 1; deg <= panel.stopDeg; deg += 1) if (!set.has(deg) && deg <= last) stroke(deg, bow, bow + (deg % 5 === 0 ? 9 : 5));
  into.stroke({ width: 1, color: ink.mark });
  for (const { deg } of panel.settings) stroke(deg, bow - 1, bow + 15);
  into.stroke({ width: 2.25, color: ink.ink });
  overTravel(into, frame, last, bow);
  return into;
}

/** Beyond the last setting: a hatched arc, closed by the stop. */
function overTravel(into: Graphics, { panel, at, ink }: Frame, last: number, bow: number): void {
  if (panel.stopDeg <= last) return;
  const from = dialDegOf(panel.dial, last);
  const to = dialDegOf(panel.dial, panel.stopDeg);
  const strokes = Math.max(3, Math.round((radians(to - from) * bow) / 4));
  for (let step = 1; step <= strokes; step += 1) {
    const inner = onFan(at.gauge, from + ((to - from) * (step - 1)) / strokes, bow);
    const outer = onFan(at.gauge, from + ((to - from) * step) / strokes, bow + 10);
    into.moveTo(inner.x, inner.y).lineTo(outer.x, outer.y);
  }
  into.stroke({ width: 1, color: ink.ink });
  const foot = onFan(at.gauge, to, bow - 5);
  const tip = onFan(at.gauge, to, bow + 12);
  into.moveTo(foot.x, foot.y).lineTo(tip.x, tip.y).stroke({ width: 1.25, color: ink.ink });
}

/** The name of a setting beyond its stroke, on the stroke's own line; heavier where the lever stands. */
function figure({ deg, name }: { deg: number; name: string }, { panel, at, ink }: Frame) {
  const dialDeg = dialDegOf(panel.dial, deg);
  const place = onFan(at.gauge, dialDeg, at.gauge.radius + 27);
  const anchor = [(1 - Math.cos(radians(dialDeg))) / 2, (1 - Math.sin(radians(dialDeg))) / 2] as const;
  const plain = label(name, { size: at.type.label, colour: ink.soft, anchor });
  const chosen = label(name, { size: at.type.label * 1.2, colour: ink.ink, weight: '700', anchor });
  for (const one of [plain, chosen]) one.place(place.x, place.y);
  return {
    nodes: [plain.node, chosen.node],
    show({ flapLeverDeg }: Picture) {
      seen(plain.node, flapLeverDeg !== deg);
      return seen(chosen.node, flapLeverDeg === deg);
    },
  };
}
