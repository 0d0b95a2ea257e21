/** The flap lever in its slot: forward is up, aft is down and more flap. Its knob is a small wing section. */
import { Container, Graphics } from 'pixi.js';
import { label } from './label.js';
import { caption, type Frame, type Part } from './part.js';
import type { Picture } from './picture.js';
import { CAPTION } from './place.js';
import { leverRows } from './rows.js';

export function lever(frame: Frame): Part {
  const { at, ink, panel } = frame;
  const place = at.lever;
  const node = new Container();
  if (!at.tabbed) node.addChild(...caption('Flap lever', { ...place, y: place.y - CAPTION * at.scale }, frame));
  const { top, pitch } = leverRows(place, panel.settings.length);
  const yOf = (index: number): number => top + pitch * (index + 0.5);
  const x = place.x + (at.kind === 'wide' ? 30 : 26) * at.scale;
  const slot = new Graphics().moveTo(x, yOf(0)).lineTo(x, yOf(panel.settings.length - 1)).stroke({ width: 5 * at.scale, color: ink.hair, cap: 'round' });
  const names = panel.settings.map(({ name }, index) => {
    slot.moveTo(x + 22 * at.scale, yOf(index)).lineTo(x + 29 * at.scale, yOf(index));
    const plain = label(name, { size: at.type.label, colour: ink.soft });
    const chosen = label(name, { size: at.type.label * 1.1, colour: ink.ink, weight: '700' });
    for (const one of [plain, chosen]) one.place(x + 38 * at.scale, yOf(index));
    node.addChild(plain.node, chosen.node);
    return { plain, chosen };
  });
  slot.stroke({ width: 1.25, color: ink.mark });
  const knob = new Graphics()
    .moveTo(18, 0)
    .bezierCurveTo(8, -5, -4, -10, -12, -9)
    .bezierCurveTo(-20, -8, -21, -3, -21, 0)
    .bezierCurveTo(-21, 4, -18, 7, -11, 7)
    .bezierCurveTo(-2, 7, 8, 3, 18, 0)
    .closePath()
    .fill({ color: ink.sheet })
    .stroke({ width: 1.8, color: ink.ink, join: 'round' });
  knob.scale.set(at.scale);
  node.addChild(slot, knob);
  let drawn: number | null = null;
  return {
    node,
    show(now: Picture) {
      if (now.flapLeverDeg === drawn) return false;
      drawn = now.flapLeverDeg;
      const chosen = panel.settings.findIndex(({ deg }) => deg === now.flapLeverDeg);
      knob.visible = chosen >= 0;
      knob.position.set(x, yOf(Math.max(chosen, 0)));
      names.forEach((one, index) => {
        one.plain.node.visible = index !== chosen;
        one.chosen.node.visible = index === chosen;
      });
      return true;
    },
  };
}
