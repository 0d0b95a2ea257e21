/** The ruled speed strip: what must not be passed is hatched at either end, what is meant is marked, what is said tells it. */
import { Container, Graphics } from 'pixi.js';
import { label } from './label.js';
import { caption, hatch, seen, type Frame, type Part } from './part.js';
import type { Picture } from './picture.js';
import { onStrip, rulings, spread, STRIP_INSET, type Strip } from './strip.js';

/** What is ruled anew when it moves goes by quarters of a pixel: the stall warning creeps with the flaps in every frame. */
const quarter = (y: number): number => Math.round(y * 4) / 4;

export function speed(frame: Frame): Part {
  const { at, ink, panel } = frame;
  const { small, label: size, value } = at.type;
  const narrow = at.kind !== 'wide';
  const rule = { x: at.speed.x + (narrow ? 27 : 44 * at.scale), w: narrow ? 9 : 20 * at.scale };
  const edge = rule.x + rule.w;
  // Marks have a lane of their own between the rule and the tag: nothing that moves hides them.
  const lane = narrow ? 8 : 15 * at.scale;
  const strip: Strip = { lowestKt: panel.stripKt[0], highestKt: panel.stripKt[1], top: at.selectSpeed.y + STRIP_INSET, bottom: at.selectSpeed.y + at.selectSpeed.h - STRIP_INSET };
  const node = new Container();
  node.addChild(...caption(narrow ? 'Speed' : 'Speed, kt', at.speed, frame));

  const bands = new Graphics();
  const strokes = new Graphics();
  // A figure wants a line of its own; where strokes stand closer, every other one gets one.
  const everyFigure = onStrip(strip, 100) - onStrip(strip, 120) < small * 1.5 ? 40 : 20;
  strokes.rect(rule.x, strip.top, rule.w, strip.bottom - strip.top).stroke({ width: 1, color: ink.hair });
  for (const { kt, long } of rulings(strip, 20)) {
    const y = onStrip(strip, kt);
    strokes.moveTo(rule.x - (long ? (narrow ? 5 : 8) : narrow ? 3 : 4), y).lineTo(rule.x, y);
    if (!long || kt % everyFigure !== 0) continue;
    const figure = label(`${kt}`, { size: narrow ? 10.5 : small, colour: ink.soft, anchor: [1, 0.5] });
    figure.place(rule.x - (narrow ? 8 : 13), y);
    node.addChild(figure.node);
  }
  strokes.stroke({ width: 1, color: ink.mark });

  const marks = new Graphics();
  const tag = new Graphics();
  const tagH = value * 1.5;
  const tagW = value * (narrow ? 2 : 2.5);
  const tip = narrow ? tagH * 0.25 : tagH * 0.42;
  tag.moveTo(-lane, 0).lineTo(0, 0).stroke({ width: 1.5, color: ink.ink });
  tag.moveTo(0, 0).lineTo(tip, -tagH / 2).lineTo(tip + tagW, -tagH / 2).lineTo(tip + tagW, tagH / 2).lineTo(tip, tagH / 2).closePath().fill({ color: ink.ink });
  const spoken = label('', { size: value, colour: ink.paper, weight: '600', anchor: [0.5, 0.5] });
  const said = [ink.ink, ink.accent, ink.ink].map((colour) => label('', { size: narrow ? small : size * 0.9, colour, weight: '500' }));
  const why = [0, 1, 2].map(() => label('', { size: small * 0.95, colour: ink.soft }));
  const held = label('', { size: small, colour: ink.accent, weight: '500', anchor: [1, 0] });
  held.place(at.speed.x + at.speed.w, at.speed.y + 8);
  const texts = [held, ...said, ...(narrow ? [] : why)];
  node.addChild(strokes, ...texts.map((one) => one.node));
  const moving = new Container();
  moving.addChild(bands, marks, tag, spoken.node);
  let drawn = '';

  return {
    node, moving,
    show(now: Picture) {
      moving.visible = !now.blank;
      const hid = texts.filter((one) => seen(one.node, !now.blank)).length > 0;
      if (now.blank) return hid;
      const y = onStrip(strip, now.speedKt);
      tag.position.set(edge + lane, y);
      spoken.say(`${Math.round(now.speedKt)}`);
      spoken.place(edge + lane + tip + tagW / 2, y);
      const told = held.say(narrow ? `${Math.round(now.selectedKt)}` : `selected ${Math.round(now.selectedKt)}`);

      const wishes = [now.limitKt, now.manoeuvreKt, now.lowestKt].map((kt) => quarter(onStrip(strip, kt)));
      const state = [...wishes, now.selectedKt, now.manoeuvreHollow, now.limitOf].join();
      const placed = placeLabels(now, wishes, y);
      if (state !== drawn) {
        drawn = state;
        drawBands(wishes[0]!, wishes[2]!);
        drawMarks(now, wishes[1]!, onStrip(strip, now.selectedKt));
      }
      return hid || told || placed;
    },
  };

  /** Figures and what they are of. @returns whether any of them is another, or elsewhere */
  function placeLabels(now: Picture, wishes: number[], tagY: number): boolean {
    const words = [now.limitKt, now.manoeuvreKt, now.lowestKt].map((kt) => (Number.isFinite(kt) ? `${Math.round(kt)}` : ''));
    const reasons = [Number.isFinite(now.limitKt) ? now.limitOf : '', now.manoeuvreHollow ? 'manoeuvre, not yet' : 'manoeuvre', 'stall warning'];
    // The tag takes the room of its own; labels give way to it as to each other.
    const gap = narrow ? tagH * 0.8 : tagH * 1.02;
    const places = spread([...wishes, tagY], gap, strip.top, strip.bottom);
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

  function drawBands(limitY: number, lowestY: number): void {
    bands.clear();
    hatch(bands, { x: rule.x, y: strip.top, w: rule.w, h: limitY - strip.top }, 6, ink.soft);
    hatch(bands, { x: rule.x, y: lowestY, w: rule.w, h: strip.bottom - lowestY }, 6, ink.soft);
    // Where there is no limit there is no mark of one.
    for (const y of limitY > strip.top ? [limitY, lowestY] : [lowestY]) bands.moveTo(rule.x - 4, y).lineTo(edge + lane, y);
    bands.stroke({ width: 2, color: ink.ink });
  }

  function drawMarks(now: Picture, manoeuvreY: number, selectedY: number): void {
    marks.clear();
    const size = lane - 3;
    marks.moveTo(edge + 2, manoeuvreY).lineTo(edge + 2 + size, manoeuvreY - size * 0.6).lineTo(edge + 2 + size, manoeuvreY + size * 0.6).closePath();
    marks.fill({ color: now.manoeuvreHollow ? ink.paper : ink.accent }).stroke({ width: 1.5, color: ink.accent });
    // A clasp about the rule with a grip at its outer side: what the speed is meant to be, and what a hand drags.
    const half = narrow ? 6 : 8;
    marks.rect(rule.x - 2, selectedY - half, rule.w + 4, 2 * half).stroke({ width: 2, color: ink.accent });
    marks.rect(rule.x - (narrow ? 5 : 7), selectedY - half * 0.6, narrow ? 3 : 5, half * 1.2).fill({ color: ink.accent });
  }
}
