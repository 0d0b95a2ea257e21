/** The ruled speed strip: what must not be passed is hatched at either end, what is meant is marked, what is said tells it. */
import { Container, Graphics } from 'pixi.js';
import { caption, hatch, label, type Frame, type Part } from './part.js';
import type { Picture } from './picture.js';
import { onStrip, rulings, spread, type Strip } from './strip.js';

export function speed(frame: Frame): Part {
  const { at, ink, panel } = frame;
  const { small, label: size, value } = at.type;
  const narrow = at.kind !== 'wide';
  const rule = { x: at.speed.x + (narrow ? 38 : 44 * at.scale), w: (narrow ? 12 : 20) * at.scale };
  const edge = rule.x + rule.w;
  const strip: Strip = { lowestKt: panel.stripKt[0], highestKt: panel.stripKt[1], top: at.speed.y + (narrow ? 30 : 40), bottom: at.speed.y + at.speed.h - 8 };
  const node = new Container();
  node.addChild(...caption('Speed, kt', at.speed, frame));

  const bands = new Graphics();
  const strokes = new Graphics();
  // A figure wants a line of its own; where strokes stand closer, every other one gets one.
  const everyFigure = onStrip(strip, 100) - onStrip(strip, 120) < small * 1.5 ? 40 : 20;
  strokes.rect(rule.x, strip.top, rule.w, strip.bottom - strip.top).stroke({ width: 1, color: ink.hair });
  for (const { kt, long } of rulings(strip, 20)) {
    const y = onStrip(strip, kt);
    strokes.moveTo(rule.x - (long ? 8 : 4), y).lineTo(rule.x, y);
    if (!long || kt % everyFigure !== 0) continue;
    const figure = label(`${kt}`, { size: small, colour: ink.soft, anchor: [1, 0.5] });
    figure.place(rule.x - 12, y);
    node.addChild(figure.node);
  }
  strokes.stroke({ width: 1, color: ink.mark });

  const marks = new Graphics();
  const tag = new Graphics();
  const tagH = value * 1.5;
  const tagW = value * 2.5;
  tag.moveTo(0, 0).lineTo(tagH * 0.42, -tagH / 2).lineTo(tagH * 0.42 + tagW, -tagH / 2).lineTo(tagH * 0.42 + tagW, tagH / 2).lineTo(tagH * 0.42, tagH / 2).closePath().fill({ color: ink.ink });
  const spoken = label('', { size: value, colour: ink.paper, weight: '600', anchor: [0.5, 0.5] });
  const said = [ink.ink, ink.accent, ink.ink].map((colour) => label('', { size: narrow ? small : size * 0.9, colour, weight: '500' }));
  const why = [0, 1, 2].map(() => label('', { size: small * 0.95, colour: ink.soft }));
  const held = label('', { size: small, colour: ink.accent, weight: '500', anchor: [1, 0] });
  held.place(at.speed.x + at.speed.w, at.speed.y + 8);
  node.addChild(bands, strokes, marks, ...said.map((one) => one.node), ...(narrow ? [] : why.map((one) => one.node)), held.node, tag, spoken.node);
  const moving = [bands, marks, tag, spoken.node, held.node, ...said.map((one) => one.node), ...why.map((one) => one.node)];
  let drawn = '';

  return {
    node,
    show(now: Picture) {
      for (const one of moving) one.visible = !now.blank;
      if (now.blank) return;
      const y = onStrip(strip, now.speedKt);
      tag.position.set(edge + 3, y);
      spoken.say(`${Math.round(now.speedKt)}`);
      spoken.place(edge + 3 + tagH * 0.42 + tagW / 2, y);
      held.say(narrow ? '' : now.speedHold ? `hold ${Math.round(now.selectedKt)}` : `selected ${Math.round(now.selectedKt)}`);

      const wishes = [now.limitKt, now.manoeuvreKt, now.lowestKt].map((kt) => onStrip(strip, kt));
      const state = [...wishes, onStrip(strip, now.selectedKt), now.manoeuvreHollow, now.limitOf].join();
      placeLabels(now, wishes, y);
      if (state === drawn) return;
      drawn = state;
      drawBands(wishes[0]!, wishes[2]!);
      drawMarks(now, wishes[1]!, onStrip(strip, now.selectedKt));
    },
  };

  function placeLabels(now: Picture, wishes: number[], tagY: number): void {
    const words = [now.limitKt, now.manoeuvreKt, now.lowestKt].map((kt) => (Number.isFinite(kt) ? `${Math.round(kt)}` : ''));
    const reasons = [now.limitOf, now.manoeuvreHollow ? 'manoeuvre, not yet' : 'manoeuvre', 'stall warning'];
    // The tag takes the room of its own; labels give way to it as to each other.
    const gap = narrow ? tagH * 0.8 : tagH * 1.02;
    const places = spread([...wishes, tagY], gap, strip.top, strip.bottom);
    const shift = tagY - places[3]!;
    said.forEach((one, index) => {
      const beyond = (places[index]! - places[3]!) * shift > 0 ? shift : 0;
      const y = places[index]! + beyond;
      one.say(words[index]!);
      one.place(edge + (narrow ? 14 : 20), narrow ? y : y - small * 0.55);
      why[index]!.say(reasons[index]!);
      why[index]!.place(edge + 20, y + small * 0.7);
    });
  }

  function drawBands(limitY: number, lowestY: number): void {
    bands.clear();
    hatch(bands, { x: rule.x, y: strip.top, w: rule.w, h: limitY - strip.top }, 6, ink.soft);
    hatch(bands, { x: rule.x, y: lowestY, w: rule.w, h: strip.bottom - lowestY }, 6, ink.soft);
    for (const y of [limitY, lowestY]) bands.moveTo(rule.x - 4, y).lineTo(edge + 8, y);
    bands.stroke({ width: 2, color: ink.ink });
  }

  function drawMarks(now: Picture, manoeuvreY: number, selectedY: number): void {
    marks.clear();
    marks.moveTo(edge + 3, manoeuvreY).lineTo(edge + 13, manoeuvreY - 6).lineTo(edge + 13, manoeuvreY + 6).closePath();
    if (!now.manoeuvreHollow) marks.fill({ color: ink.accent });
    marks.stroke({ width: 1.5, color: ink.accent });
    // A clasp about the rule: what the speed is meant to be.
    marks.moveTo(rule.x + 5, selectedY - 7).lineTo(rule.x, selectedY - 7).lineTo(rule.x, selectedY + 7).lineTo(rule.x + 5, selectedY + 7);
    marks.moveTo(edge - 5, selectedY - 7).lineTo(edge, selectedY - 7).lineTo(edge, selectedY + 7).lineTo(edge - 5, selectedY + 7);
    marks.stroke({ width: 2, color: ink.accent });
  }
}
