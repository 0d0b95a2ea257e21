/**
 * The canvas of the drill. It never ticks by itself: it draws when it is handed a picture, and builds its drawings anew
 * when the window, the colours or the panel change. What stands still is kept as a picture and laid under what moves.
 */
import 'pixi.js/unsafe-eval';
import 'pixi.js/graphics';
import { CanvasRenderer, Container, Ticker } from 'pixi.js';
import { alerts } from './alerts.js';
import { altitude } from './altitude.js';
import { bank } from './bank.js';
import { call } from './call.js';
import { drive } from './drive.js';
import { gauge } from './gauge.js';
import { gear } from './gear.js';
import { readInk } from './ink.js';
import { lever } from './lever.js';
import { FACE } from './label.js';
import { seen, type Frame, type Part } from './part.js';
import { NOWHERE, type Layout, type Tab } from './place.js';
import type { Panel, Picture } from './picture.js';
import { atRest } from './rest.js';
import { section } from './section.js';
import { silence } from './silence.js';
import { speed } from './speed.js';
import { steps } from './steps.js';
import { thrust } from './thrust.js';

/** As the record names what drew the canvas. */
export const RENDERER = 'canvas 2d (pixi)';

const ALL = { children: true, texture: true, textureSource: true, context: true, style: true };

/** The drawn drill; sizes are those of the layout it was given. */
export interface Stage {
  readonly canvas: HTMLCanvasElement;
  /** New size, colours or panel: everything is drawn anew. */
  set(at: Layout, panel: Panel): void;
  /** Where controls take turns: the ones that are up now, or none of them while words stand in their place. */
  turn(tab: Tab | null): void;
  /** Draws one picture, now. */
  draw(now: Picture): void;
  close(): void;
}

/** What of a part moves, in a drawing of its own that can be hidden whatever the part itself hides. */
function over({ moving }: Part): Container {
  const node = new Container();
  if (moving !== undefined) node.addChild(moving);
  return node;
}

/** Ready when the typeface is there: a canvas does not draw itself again when a font arrives late. */
export async function openStage(host: HTMLElement): Promise<Stage> {
  const renderer = new CanvasRenderer();
  await Promise.all([
    ...['400', '500', '600', '700'].map((weight) => document.fonts.load(`${weight} 16px "${FACE}"`, 'R5°')),
    renderer.init({
      width: 16, height: 16, antialias: true, autoDensity: true, resolution: devicePixelRatio,
      backgroundColor: readInk(host).paper, skipExtensionImports: true,
    }),
  ]);
  // The library would ask for every frame on its own account to tidy up its textures; it tidies when a picture is drawn.
  Ticker.system.autoStart = false;
  Ticker.system.stop();
  const canvas = renderer.canvas as HTMLCanvasElement;
  canvas.setAttribute('aria-hidden', 'true');
  host.prepend(canvas);
  const context = canvas.getContext('2d') as CanvasRenderingContext2D;
  /** What stands still, as it was drawn last: most of the picture, and most of its price. */
  const kept = document.createElement('canvas').getContext('2d', { alpha: false }) as CanvasRenderingContext2D;
  let root = new Container();
  let moving = new Container();
  let parts: Part[] = [];
  /** Drawings that take turns, by their tab; in a wide window those that words may stand over. */
  let turning: (readonly [Tab, Container, Container])[] = [];
  let up: Tab | null = 'flaps';
  let tabbed = false;
  let last: Picture | null = null;
  let stale = true;

  const copy = (from: HTMLCanvasElement, to: CanvasRenderingContext2D): void => {
    to.setTransform(1, 0, 0, 1, 0, 0);
    to.drawImage(from, 0, 0);
  };

  const paint = (now: Picture): void => {
    let changed = stale;
    for (const [tab, node, above] of turning) {
      const is = up !== null && (!tabbed || tab === up);
      if (seen(node, is)) changed = true;
      above.visible = is;
    }
    for (const part of parts) if (part.show(now)) changed = true;
    stale = false;
    if (changed) {
      renderer.render({ container: root });
      copy(canvas, kept);
    } else {
      copy(kept.canvas, context);
    }
    renderer.render({ container: moving, clear: false });
    Ticker.system.update();
  };

  return {
    canvas,
    draw(now) {
      last = now;
      paint(now);
    },
    set(at, panel) {
      const frame: Frame = { at, panel, ink: readInk(host), still: matchMedia('(prefers-reduced-motion: reduce)').matches };
      for (const old of [root, moving]) old.destroy(ALL);
      root = new Container();
      moving = new Container();
      renderer.background.color = frame.ink.paper;
      renderer.resize(at.width, at.height, devicePixelRatio);
      [kept.canvas.width, kept.canvas.height] = [canvas.width, canvas.height];
      stale = true;
      tabbed = at.tabbed;
      // What a layout has no place for is not drawn.
      const turns = [['gear', gear, at.gear], ['gear', silence, at.silence], ['thrust', thrust, at.leftThrust], ['flaps', lever, at.lever], ...(tabbed ? [['thrust', steps, at.speedUp] as const] : [])] as const;
      const rest = [[speed, at.speed], [altitude, at.altitude], [bank, at.bank], ...(tabbed ? [] : [[steps, at.speedUp] as const]), [drive, at.guard], [section, at.leadingEdge], [gauge, at.flaps], [call, at.call], [alerts, at.alerts]] as const;
      const taking = turns.filter(([, , place]) => place !== NOWHERE).map(([tab, part]) => [tab, part(frame)] as const);
      turning = taking.map(([tab, part]) => [tab, part.node, over(part)] as const);
      const staying = rest.filter(([, place]) => place !== NOWHERE).map(([part]) => part(frame));
      parts = [...taking.map(([, part]) => part), ...staying];
      root.addChild(...parts.map((part) => part.node));
      moving.addChild(...turning.map(([, , node]) => node), ...staying.map(over));
      paint(last ?? atRest(panel));
    },
    turn(tab) {
      up = tab;
      if (last !== null) paint(last);
    },
    close() {
      for (const old of [root, moving]) old.destroy(ALL);
      renderer.destroy({ removeView: true });
    },
  };
}
