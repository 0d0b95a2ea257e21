/** The standby drive: a guard that covers, an arm that is set, a switch that stays or springs. */
import { Container, Graphics } from 'pixi.js';
import { label } from './label.js';
import { caption, hatch, type Frame, type Part } from './part.js';
import { CAPTION, type Rect } from './place.js';
import type { Picture } from './picture.js';
import { driveShown } from './instruments.js';
import { knobSpring } from './spring.js';

export function drive(frame: Frame): Part {
  const { at } = frame;
  const node = new Container();
  const column = { x: at.guard.x, y: at.guard.y - (at.kind === 'wide' ? CAPTION * at.scale : at.kind === 'low' ? 22 : 20), w: at.guard.w, h: 0 };
  node.addChild(...caption('Standby drive', column, frame));
  const parts = [theSwitch(frame), guard(frame), arm(frame)];
  node.addChild(...parts.map((part) => part.node));
  // The cover of a shut guard lies over the knob.
  const moving = new Container();
  moving.addChild(...parts.flatMap((part) => (part.moving === undefined ? [] : [part.moving])));
  return { node, moving, show: (now) => parts.filter((part) => part.show(now)).length > 0 };
}

/** The pit of the switch: its three places under one another. */
const pitOf = ({ retract, extend }: Frame['at']): Rect => ({ x: retract.x, y: retract.y, w: retract.w, h: extend.y + extend.h - retract.y });
const middle = ({ y, h }: Rect): number => y + h / 2;

/** Words beside a drawing: one line where there is room, else its name above its state. */
function state(what: string, place: Rect, { at, ink }: Frame) {
  const wide = at.kind === 'wide';
  // Beside its drawing; nearer in a narrow column, so that the longest word, guard closed, stays in it.
  const x = place.x + (wide ? Math.min(50 * at.scale, place.w * 0.36) : 46 * at.scale);
  const name = label(wide ? '' : what, { size: at.type.small, colour: ink.soft });
  const word = label('', { size: Math.min(at.type.label, place.w * (wide ? 0.1 : 0.112)), colour: ink.ink, weight: '500' });
  name.place(x, middle(place) - at.type.small * 0.65);
  word.place(x, middle(place) + (wide || what === '' ? 0 : at.type.small * 0.65));
  return { nodes: [name.node, word.node], say: (words: string) => word.say(wide ? `${what} ${words}`.trim() : words) };
}

function guard(frame: Frame): Part {
  const { at, ink } = frame;
  const node = new Container();
  const lid = new Graphics();
  const cover = new Graphics();
  const words = state('guard', at.guard, frame);
  node.addChild(lid, ...words.nodes);
  lid.position.set(at.guard.x + 10 * at.scale, middle(at.guard) + 9 * at.scale);
  lid.scale.set(at.scale);
  const pit = pitOf(at);
  cover.roundRect(pit.x, pit.y, pit.w, pit.h, 10).fill({ color: ink.paper, alpha: 0.6 }).stroke({ width: 2, color: ink.ink });
  hatch(cover, { x: pit.x + 8, y: pit.y + 8, w: pit.w - 16, h: pit.h - 16 }, 14, ink.hair, 1.5);
  let drawn: boolean | null = null;
  return {
    node, moving: cover,
    show({ guardOpen }: Picture) {
      if (guardOpen === drawn) return false;
      drawn = guardOpen;
      words.say(guardOpen ? 'open' : 'closed');
      // The lid on its hinge from the side; while it is shut it also lies over the switch.
      cover.visible = !guardOpen;
      lid.clear().moveTo(0, 0).lineTo(30, 0).stroke({ width: 1.25, color: ink.mark });
      if (guardOpen) lid.moveTo(0, 0).lineTo(7, -26);
      else lid.moveTo(0, 0).lineTo(0, -11).lineTo(27, -11).lineTo(27, -1);
      lid.stroke({ width: 2.5, color: ink.ink, cap: 'round', join: 'round' });
      lid.circle(0, 0, 3).fill({ color: ink.paper }).stroke({ width: 1.5, color: ink.ink });
      return true;
    },
  };
}

function arm(frame: Frame): Part {
  const { at, ink } = frame;
  const node = new Container();
  const cam = new Graphics();
  const words = state('', at.arm, frame);
  node.addChild(cam, ...words.nodes);
  // On a low window it stands in a column of its own.
  if (at.kind === 'low') node.addChild(...caption('Arm', { ...at.arm, y: at.arm.y - 22 }, frame));
  cam.position.set(at.arm.x + 25 * at.scale, middle(at.arm));
  cam.scale.set(at.scale);
  let drawn: boolean | null = null;
  return {
    node,
    show({ armed }: Picture) {
      if (armed === drawn) return false;
      drawn = armed;
      words.say(armed ? 'armed' : 'not armed');
      // A cam in a ring: across is safe, in line is armed.
      cam.clear().circle(0, 0, 13).fill({ color: ink.sheet }).stroke({ width: 1.5, color: ink.ink });
      if (armed) cam.moveTo(0, -13).lineTo(0, 13).stroke({ width: 5, color: ink.accent });
      else cam.moveTo(-13, 0).lineTo(13, 0).stroke({ width: 3, color: ink.ink });
      return true;
    },
  };
}

function theSwitch(frame: Frame): Part {
  const { at, ink, panel } = frame;
  const node = new Container();
  const pit = pitOf(at);
  const knobR = Math.min(24 * at.scale, pit.w * 0.17, pit.h * 0.09);
  const x = pit.x + Math.max(pit.w * 0.29, knobR + 9);
  const size = Math.min(at.type.label, pit.w * 0.105);
  const places = { retract: at.retract.y + knobR + 12, off: middle(at.off), extend: at.extend.y + at.extend.h * 0.42 };
  const foot = pit.y + pit.h - 12;
  const body = new Graphics()
    .roundRect(pit.x, pit.y, pit.w, pit.h, 10).fill({ color: ink.sheet }).stroke({ width: 1, color: ink.hair });
  body.moveTo(x, places.retract).lineTo(x, places.extend + 4).stroke({ width: 6, color: ink.hair, cap: 'round' });
  const right = x + knobR + 10;
  for (const y of Object.values(places)) body.moveTo(right - 5, y).lineTo(right, y);
  body.stroke({ width: 1.25, color: ink.mark });
  if (panel.retractSwitch === 'latched') notch(body, x, places.retract + knobR + 7, ink.ink);
  if (panel.extendSwitch === 'latched') notch(body, x, places.extend - knobR - 7, ink.ink);
  const words = (['retract', 'off', 'extend'] as const).map((way) => {
    const word = label(way, { size, colour: ink.ink, weight: '600' });
    const kind = way === 'off' ? null : way === 'extend' ? panel.extendSwitch : panel.retractSwitch;
    const what = label(kind === null ? '' : kind === 'sprung' ? 'hold' : 'stays', { size: at.type.small, colour: ink.soft });
    word.place(right + 5, places[way] - (kind === null ? 0 : at.type.small * 0.55));
    what.place(right + 5, places[way] + at.type.small * 0.75);
    return [word.node, what.node];
  });
  const coil = new Graphics();
  const knob = new Graphics();
  node.addChild(body, ...words.flat());
  const moving = new Container();
  moving.addChild(coil, knob);
  const spring = knobSpring(places, frame.still);
  let drawn = '';
  let drawnY = 0;
  return {
    node, moving,
    show(picture: Picture) {
      const way = driveShown(picture, panel);
      const y = spring(picture.timeS, way);
      if (y === drawnY && way === drawn) return false;
      drawnY = y;
      drawn = way;
      coil.clear();
      if (panel.extendSwitch === 'sprung') zigzag(coil, x, y + knobR, foot, knobR * 0.55, ink.ink);
      knob.clear();
      knob.circle(x, y, knobR).fill({ color: way === 'off' ? ink.sheet : ink.accent }).stroke({ width: 2, color: ink.ink });
      return false;
    },
  };
}

/** Two teeth that hold the knob: the mark of a place that stays. */
function notch(into: Graphics, x: number, y: number, colour: number): void {
  for (const side of [-1, 1]) into.poly([x + side * 12, y - 5, x + side * 4, y, x + side * 12, y + 5]).fill({ color: colour });
}

/** A spring of seven turns between the knob and the foot of its slot. */
function zigzag(into: Graphics, x: number, top: number, foot: number, half: number, colour: number): void {
  const turns = 7;
  const step = (foot - top - 8) / turns;
  into.moveTo(x, top).lineTo(x, top + 4);
  for (let turn = 0; turn < turns; turn += 1) into.lineTo(x + (turn % 2 === 0 ? half : -half), top + 4 + step * (turn + 0.5));
  into.lineTo(x, foot - 4).lineTo(x, foot).stroke({ width: 1.5, color: colour, join: 'round', cap: 'round' });
  into.moveTo(x - half - 4, foot).lineTo(x + half + 4, foot).stroke({ width: 1.5, color: colour });
}
