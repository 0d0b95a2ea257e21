/**
 * The gear lever: its knob is a wheel, up is up. Where the gear itself is stands beside it in a place of its own: up
 * above, moving between, down below, and down only when it is locked (14 CFR 25.729(e)(1)).
 */
import { Container, Graphics } from 'pixi.js';
import { label } from './label.js';
import { caption, hatch, type Frame, type Part } from './part.js';
import type { Picture } from './picture.js';

export function gear(frame: Frame): Part {
  const { at, ink } = frame;
  const { gear: place, gearState } = at;
  const node = new Container();
  // Under tabs its name stands above it already.
  if (!at.tabbed) node.addChild(...caption('Gear', gearState, frame));
  const x = place.x + 20 * Math.max(at.scale, 0.95);
  const rows = { up: place.y + place.h * 0.2, moving: place.y + place.h * 0.47, down: place.y + place.h * 0.74 };
  const slot = new Graphics().moveTo(x, rows.up).lineTo(x, rows.down).stroke({ width: 5 * at.scale, color: ink.hair, cap: 'round' });
  const wheel = new Graphics();
  const r = Math.min(14 * at.scale, place.h * 0.17);
  wheel.circle(0, 0, r).fill({ color: ink.sheet }).stroke({ width: 4 * at.scale, color: ink.ink });
  wheel.circle(0, 0, r * 0.24).fill({ color: ink.ink });
  const left = x + r + 14;
  const size = at.type.label;
  const words = (['up', 'moving', 'down'] as const).map((state) => {
    const plain = label(state === 'moving' ? '' : state, { size, colour: ink.soft });
    const chosen = label(state, { size: state === 'moving' ? size * 0.92 : size, colour: ink.ink, weight: '700' });
    for (const one of [plain, chosen]) one.place(left, rows[state]);
    const room = (place.x + place.w - left) / Math.max(chosen.node.width, 1);
    if (room < 1) chosen.node.scale.set(room);
    return { state, plain, chosen };
  });
  const locked = label('locked', { size: at.type.small, colour: ink.ink, weight: '600' });
  locked.place(left, rows.down + size * 1.05);
  // On the way: the slot is hatched between its ends.
  const way = new Graphics();
  hatch(way, { x: x - 5, y: rows.up, w: 10, h: rows.down - rows.up }, 6, ink.ink, 1.25);
  node.addChild(slot, way, wheel, locked.node, ...words.flatMap(({ plain, chosen }) => [plain.node, chosen.node]));
  let drawn = '';
  return {
    node,
    show(now: Picture) {
      const state = `${now.gearLever} ${now.gear} ${now.blank}`;
      if (state === drawn) return false;
      drawn = state;
      wheel.position.set(x, rows[now.gearLever]);
      locked.node.visible = !now.blank && now.gear === 'down';
      way.visible = !now.blank && now.gear === 'moving';
      for (const { state, plain, chosen } of words) {
        const is = !now.blank && state === now.gear;
        chosen.node.visible = is;
        plain.node.visible = !is;
      }
      return true;
    },
  };
}
