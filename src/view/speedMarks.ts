/** What moves along the speed strip: the speed itself on a tag, the ends that must not be passed, and what is meant. */
import { Graphics, type Container } from 'pixi.js';
import { label } from './label.js';
import type { Frame } from './part.js';
import type { Picture } from './picture.js';
import type { Rule } from './speedRule.js';

/** Places on the strip, px from the top. */
export interface Places {
  readonly limit: number;
  readonly manoeuvre: number;
  readonly lowest: number;
  readonly selected: number;
}

interface Marks {
  readonly nodes: readonly Container[];
  show(now: Picture, at: Places): void;
}

/** What lies between the hatched ends, the manoeuvre speed and the selected one: drawn anew only where one of them has moved. */
export function marksOf({ narrow, x, w, edge, lane, strip }: Rule, { ink }: Frame): Marks {
  const free = new Graphics();
  const marks = new Graphics();
  let drawn = '';

  // The rule stands hatched from end to end; one plain rectangle lays open what may be flown, where forty strokes would hatch the rest.
  function drawFree({ limit, lowest }: Places): void {
    free.clear();
    free.rect(x + 0.5, limit, w - 1, Math.max(0, lowest - limit)).fill({ color: ink.paper });
    // Where there is no limit there is no mark of one.
    for (const y of limit > strip.top ? [limit, lowest] : [lowest]) free.moveTo(x - 4, y).lineTo(edge + lane, y);
    free.stroke({ width: 2, color: ink.ink });
  }
  function drawMarks({ manoeuvreHollow }: Picture, { manoeuvre, selected }: Places): void {
    marks.clear();
    const size = lane - 3;
    marks.moveTo(edge + 2, manoeuvre).lineTo(edge + 2 + size, manoeuvre - size * 0.6).lineTo(edge + 2 + size, manoeuvre + size * 0.6).closePath();
    marks.fill({ color: manoeuvreHollow ? ink.paper : ink.accent }).stroke({ width: 1.5, color: ink.accent });
    // A clasp about the rule with a grip at its outer side: what the speed is meant to be, and what a hand drags.
    const half = narrow ? 6 : 8;
    marks.rect(x - 2, selected - half, w + 4, 2 * half).stroke({ width: 2, color: ink.accent });
    marks.rect(x - (narrow ? 5 : 7), selected - half * 0.6, narrow ? 3 : 5, half * 1.2).fill({ color: ink.accent });
  }
  return {
    nodes: [free, marks],
    show(now, at) {
      const state = [at.limit, at.manoeuvre, at.lowest, now.selectedKt, now.manoeuvreHollow, now.limitOf].join();
      if (state === drawn) return;
      drawn = state;
      drawFree(at);
      drawMarks(now, at);
    },
  };
}

interface Tag {
  readonly nodes: readonly Container[];
  show(speedKt: number, y: number): void;
}

/** The speed in figures, pointing at its place. */
export function tagOf({ narrow, edge, lane, tagH }: Rule, { at, ink }: Frame): Tag {
  const { value } = at.type;
  const w = value * (narrow ? 2 : 2.5);
  const tip = narrow ? tagH * 0.25 : tagH * 0.42;
  const tag = new Graphics();
  tag.moveTo(-lane, 0).lineTo(0, 0).stroke({ width: 1.5, color: ink.ink });
  tag.moveTo(0, 0).lineTo(tip, -tagH / 2).lineTo(tip + w, -tagH / 2).lineTo(tip + w, tagH / 2).lineTo(tip, tagH / 2).closePath().fill({ color: ink.ink });
  const figures = label('', { size: value, colour: ink.paper, weight: '600', anchor: [0.5, 0.5] });
  return {
    nodes: [tag, figures.node],
    show(speedKt, y) {
      tag.position.set(edge + lane, y);
      figures.say(`${Math.round(speedKt)}`);
      figures.place(edge + lane + tip + w / 2, y);
    },
  };
}
