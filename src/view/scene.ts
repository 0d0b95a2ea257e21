/** All drawings of one layout, in one size and colours: what stands still of them, and what moves above it. */
import { Container } from 'pixi.js';
import { alerts } from './alerts.js';
import { altitude } from './altitude.js';
import { bank } from './bank.js';
import { call } from './call.js';
import { drive } from './drive.js';
import { gauge } from './gauge.js';
import { gear } from './gear.js';
import { lever } from './lever.js';
import { seen, type Frame, type Part } from './part.js';
import type { Picture } from './picture.js';
import { NOWHERE, type Rect, type Tab } from './place.js';
import { section } from './section.js';
import { silence } from './silence.js';
import { speed } from './speed.js';
import { steps } from './steps.js';
import { thrust } from './thrust.js';

const ALL = { children: true, texture: true, textureSource: true, context: true, style: true };

export interface Scene {
  /** What stands still, and what moves, as of a part. */
  readonly node: Container;
  readonly moving: Container;
  /** Brings both to the picture; `up` as in `Stage.turn`. @returns whether what stands still looks different now */
  show(now: Picture, up: Tab | null): boolean;
  close(): void;
}

type Draw = (frame: Frame) => Part;

/** Controls that take turns, by their tab; in a wide window those that words may stand over. */
const turnsOf = (at: Frame['at']): readonly (readonly [Tab, Draw, Rect])[] => [
  ['gear', gear, at.gear], ['gear', silence, at.silence], ['thrust', thrust, at.leftThrust], ['flaps', lever, at.lever],
  ...(at.tabbed ? [['thrust', steps, at.speedUp] as const] : []),
];

/** All others, in the order in which they are laid over each other. */
const restOf = (at: Frame['at']): readonly (readonly [Draw, Rect])[] => [
  [speed, at.speed], [altitude, at.altitude], [bank, at.bank], ...(at.tabbed ? [] : [[steps, at.speedUp] as const]), [drive, at.guard],
  [section, at.leadingEdge], [gauge, at.flaps], [call, at.call], [alerts, at.alerts],
];

/** What of a part moves, in a drawing of its own that can be hidden whatever the part itself hides. */
function over({ moving }: Part): Container {
  const node = new Container();
  if (moving !== undefined) node.addChild(moving);
  return node;
}

export function sceneOf(frame: Frame): Scene {
  const { tabbed } = frame.at;
  // What a layout has no place for is not drawn.
  const taking = turnsOf(frame.at).filter(([, , place]) => place !== NOWHERE).map(([tab, draw]) => [tab, draw(frame)] as const);
  const turning = taking.map(([tab, part]) => [tab, part.node, over(part)] as const);
  const staying = restOf(frame.at).filter(([, place]) => place !== NOWHERE).map(([draw]) => draw(frame));
  const parts = [...taking.map(([, part]) => part), ...staying];
  const node = new Container();
  const moving = new Container();
  node.addChild(...parts.map((part) => part.node));
  moving.addChild(...turning.map(([, , above]) => above), ...staying.map(over));
  return {
    node, moving,
    show(now, up) {
      let changed = false;
      for (const [tab, node, above] of turning) {
        const is = up !== null && (!tabbed || tab === up);
        if (seen(node, is)) changed = true;
        above.visible = is;
      }
      for (const part of parts) if (part.show(now)) changed = true;
      return changed;
    },
    close() {
      for (const one of [node, moving]) one.destroy(ALL);
    },
  };
}
