/** Alerts above everything, most urgent first. Levels differ by shape and border as well as by colour; nothing flashes. */
import { Container, Graphics } from 'pixi.js';
import { alertsOf, type Alert, type Level } from './alertList.js';
import { label } from './label.js';
import type { Frame, Part } from './part.js';

/** Between two alerts, px. */
const APART = 10;

export function alerts(frame: Frame): Part {
  const { at } = frame;
  const node = new Container();
  let drawn = '';
  return {
    node,
    show(now) {
      const all = alertsOf(now);
      const state = all.map(({ title, detail }) => title + detail).join();
      if (state === drawn) return false;
      drawn = state;
      for (const old of node.removeChildren()) old.destroy({ children: true });
      for (const one of fitting(all, frame, at.alerts.w)) node.addChild(one);
      return true;
    },
  };
}

/** How small an alert may be drawn before words are left out. */
const SMALLEST = 0.84;
const SMALLEST_HORN = 0.75;

/** All of them in a row; where there is no room for every word, what can be done gives way to what is so, warnings last. */
function fitting(all: readonly Alert[], frame: Frame, room: number): Container[] {
  const { x, y, h } = frame.at.alerts;
  const widthOf = (chips: readonly Chip[]): number => chips.reduce((sum, { width }) => sum + width + APART, -APART);
  // Whether the horn can be silenced goes last of all.
  const tries = [(): boolean => true, ({ level }: Alert) => level === 'warning', ({ title }: Alert) => title === 'Gear horn', (): boolean => false];
  let chips: Chip[] = [];
  for (const [index, whole] of tries.entries()) {
    for (const { node } of chips) node.destroy({ children: true });
    chips = all.map((one) => chip(one, frame, whole(one)));
    if (widthOf(chips) * (index === 2 ? SMALLEST_HORN : SMALLEST) <= room) break;
  }
  const size = Math.min(1, room / Math.max(widthOf(chips), 1));
  let left = x;
  for (const { node, width } of chips) {
    node.scale.set(size);
    node.position.set(left, y + h / 2);
    left += (width + APART) * size;
  }
  return chips.map(({ node }) => node);
}

interface Chip {
  readonly node: Container;
  readonly width: number;
}

function chip({ level, title, detail }: Alert, { at, ink }: Frame, whole: boolean): Chip {
  const colour = { warning: ink.warning, caution: ink.caution, advisory: ink.accent }[level];
  const size = at.type.label;
  const half = Math.min(at.alerts.h / 2 - 2, size * 1.15);
  const sign = level === 'advisory' ? 0 : size * 1.05;
  const name = label(title, { size, colour, weight: level === 'advisory' ? '600' : '700' });
  const words = label(whole ? detail : '', { size: size * 0.93, colour });
  const node = new Container();
  name.place(10 + sign, 0);
  words.place(10 + sign + name.node.width + 7, 0);
  const width = 10 + sign + name.node.width + (whole ? 7 + words.node.width : 0) + 11;
  const box = new Graphics().roundRect(1, -half, width - 2, 2 * half, 6).fill({ color: ink.sheet });
  box.stroke({ width: level === 'warning' ? 2.5 : 1.5, color: colour });
  mark(box, level, 9 + sign * 0.35, size * 0.4, colour);
  node.addChild(box, name.node, words.node);
  return { node, width };
}

/** A solid wedge for a warning, an open one for a caution, none for what is only told. */
function mark(into: Graphics, level: Level, x: number, half: number, colour: number): void {
  if (level === 'advisory') return;
  into.poly([x - half, half * 0.8, x, -half, x + half, half * 0.8]);
  if (level === 'warning') into.fill({ color: colour });
  else into.stroke({ width: 1.75, color: colour, join: 'round' });
}
