/** The silence of the gear horn: a button under a cover that must be lifted first and falls shut by itself. */
import { Container, Graphics } from 'pixi.js';
import { label } from './label.js';
import { caption, hatch, seen, type Frame, type Part } from './part.js';
import { CAPTION } from './place.js';
import type { Picture } from './picture.js';

export function silence(frame: Frame): Part {
  const { at, ink } = frame;
  const { silenceCover: cover, silence: place } = at;
  const node = new Container();
  const both = { x: cover.x, y: cover.y, w: cover.w + place.w, h: cover.h };
  node.addChild(...caption('Silence horn', { ...both, y: cover.y - (at.tabbed ? 22 : CAPTION * at.scale) }, frame));
  const h = Math.min(both.h, 56 * Math.max(1, at.scale));
  const y = both.y + (both.h - h) / 2;
  const bed = new Graphics().roundRect(both.x + 1, y + 1, both.w - 2, h - 2, 8).fill({ color: ink.sheet }).stroke({ width: 1, color: ink.hair });
  const x = place.x + place.w / 2;
  const r = Math.min(14 * at.scale, h * 0.3);
  bed.circle(x, y + h / 2, r).fill({ color: ink.paper }).stroke({ width: 1.75, color: ink.ink });
  const dot = new Graphics().circle(x, y + h / 2, r * 0.45).fill({ color: ink.accent });
  const lid = new Graphics();
  const word = label('', { size: at.type.small, colour: ink.ink, weight: '600', anchor: [0.5, 0.5] });
  word.place(cover.x + cover.w * 0.55, y + h / 2);
  node.addChild(bed, dot, lid, word.node);
  let drawn: boolean | null = null;
  return {
    node,
    show({ coverOpen, hornSilenced, blank }: Picture) {
      const changed = seen(dot, hornSilenced && !blank);
      if (coverOpen === drawn) return changed;
      drawn = coverOpen;
      word.say(coverOpen ? '' : 'lift');
      lid.clear();
      if (coverOpen) {
        // Stood up on its hinge at the left.
        lid.poly([both.x + 4, y + h - 4, both.x + 16, y + 6, both.x + 22, y + 6, both.x + 12, y + h - 4]).fill({ color: ink.paper }).stroke({ width: 2, color: ink.ink, join: 'round' });
      } else {
        lid.roundRect(both.x + 1, y + 1, both.w - 2, h - 2, 8).fill({ color: ink.paper, alpha: 0.88 }).stroke({ width: 2, color: ink.ink });
        hatch(lid, { x: place.x + 2, y: y + 7, w: place.w - 10, h: h - 14 }, 8, ink.mark, 1.25);
        lid.moveTo(place.x, y + 4).lineTo(place.x, y + h - 4).stroke({ width: 1.25, color: ink.mark });
      }
      lid.circle(both.x + 5, y + h - 5, 2.5).fill({ color: ink.ink });
      return true;
    },
  };
}
