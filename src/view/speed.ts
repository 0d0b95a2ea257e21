/** The ruled speed strip: what must not be passed is hatched at either end, what is meant is marked, what is said tells it. */
import { Container } from 'pixi.js';
import { caption, seen, type Frame, type Part } from './part.js';
import type { Picture } from './picture.js';
import { labelsOf } from './speedLabels.js';
import { marksOf, tagOf } from './speedMarks.js';
import { hatched, ruled, ruleOf } from './speedRule.js';
import { onStrip } from './strip.js';

/** What is ruled anew when it moves goes by quarters of a pixel: the stall warning creeps with the flaps in every frame. */
const quarter = (y: number): number => Math.round(y * 4) / 4;

export function speed(frame: Frame): Part {
  const rule = ruleOf(frame);
  const { narrow, strip } = rule;
  const marks = marksOf(rule, frame);
  const tag = tagOf(rule, frame);
  const labels = labelsOf(rule, frame);
  const ends = hatched(rule, frame);
  const node = new Container();
  node.addChild(ends, ...caption(narrow ? 'Speed' : 'Speed, kt', frame.at.speed, frame), ...ruled(rule, frame), ...labels.nodes);
  const moving = new Container();
  moving.addChild(...marks.nodes, ...tag.nodes);

  return {
    node, moving,
    show(now: Picture) {
      moving.visible = !now.blank;
      const turned = seen(ends, !now.blank);
      const hid = labels.hide(now.blank) || turned;
      if (now.blank) return hid;
      const y = onStrip(strip, now.speedKt);
      const at = {
        limit: quarter(onStrip(strip, now.limitKt)), manoeuvre: quarter(onStrip(strip, now.manoeuvreKt)), lowest: quarter(onStrip(strip, now.lowestKt)),
        selected: onStrip(strip, now.selectedKt),
      };
      tag.show(now.speedKt, y);
      marks.show(now, at);
      return labels.show(now, at, y) || hid;
    },
  };
}
