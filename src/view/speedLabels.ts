/** Words beside the speed strip: the speeds that are marked and what they are of, and the selected one at its head. */
import type { Container } from 'pixi.js';
import { label } from './label.js';
import { seen, type Frame } from './part.js';
import type { Picture } from './picture.js';
import type { Places } from './speedMarks.js';
import type { Rule } from './speedRule.js';
import { spread } from './strip.js';

interface Labels {
  readonly nodes: readonly Container[];
  /** @returns whether they were hidden or shown by it */
  hide(is: boolean): boolean;
  /** @param tagY place of the tag, px from the top @returns whether any of them is another, or elsewhere */
  show(now: Picture, at: Places, tagY: number): boolean;
}

export function labelsOf({ narrow, edge, lane, tagH, strip }: Rule, { at: { speed, type }, ink }: Frame): Labels {
  const { small } = type;
  const said = [ink.ink, ink.accent, ink.ink].map((colour) => label('', { size: narrow ? small : type.label * 0.9, colour, weight: '500' }));
  const why = [0, 1, 2].map(() => label('', { size: small * 0.95, colour: ink.soft }));
  const head = label('', { size: small, colour: ink.accent, weight: '500', anchor: [1, 0] });
  head.place(speed.x + speed.w, speed.y + 8);
  const nodes = [head, ...said, ...(narrow ? [] : why)].map((one) => one.node);

  function place(now: Picture, { limit, manoeuvre, lowest }: Places, tagY: number): boolean {
    const words = [now.limitKt, now.manoeuvreKt, now.lowestKt].map((kt) => (Number.isFinite(kt) ? `${Math.round(kt)}` : ''));
    const reasons = [Number.isFinite(now.limitKt) ? now.limitOf : '', now.manoeuvreHollow ? 'manoeuvre, not yet' : 'manoeuvre', 'stall warning'];
    // The tag takes the room of its own; labels give way to it as to each other.
    const gap = narrow ? tagH * 0.8 : tagH * 1.02;
    const places = spread([limit, manoeuvre, lowest, tagY], gap, strip.top, strip.bottom);
    const shift = tagY - places[3]!;
    return said.flatMap((one, index) => {
      const beyond = (places[index]! - places[3]!) * shift > 0 ? shift : 0;
      const y = places[index]! + beyond;
      const reason = why[index]!;
      return [
        one.say(words[index]!), one.place(edge + lane + (narrow ? 5 : 9), narrow ? y : y - small * 0.55),
        ...(narrow ? [] : [reason.say(reasons[index]!), reason.place(edge + lane + 9, y + small * 0.7)]),
      ];
    }).includes(true);
  }
  return {
    nodes,
    hide: (is) => nodes.filter((node) => seen(node, !is)).length > 0,
    show(now, at, tagY) {
      const told = head.say(narrow ? `${Math.round(now.selectedKt)}` : `selected ${Math.round(now.selectedKt)}`);
      return place(now, at, tagY) || told;
    },
  };
}
