/**
 * The canvas of the drill. It never ticks by itself: it draws when it is handed a picture, and builds its drawings anew
 * when the window, the colours or the panel change. What stands still is kept as a picture and laid under what moves.
 */
import 'pixi.js/unsafe-eval';
import 'pixi.js/graphics';
import { CanvasRenderer, Ticker } from 'pixi.js';
import { readInk } from './ink.js';
import { FACE } from './label.js';
import type { Layout, Tab } from './place.js';
import type { Panel, Picture } from './picture.js';
import { atRest } from './rest.js';
import { sceneOf, type Scene } from './scene.js';

export const RENDERER = 'canvas 2d (pixi)';

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

/** Ready when the typeface is there: a canvas does not draw itself again when a font arrives late. */
export async function openStage(host: HTMLElement): Promise<Stage> {
  const renderer = await openRenderer(host);
  const canvas = renderer.canvas as HTMLCanvasElement;
  canvas.setAttribute('aria-hidden', 'true');
  host.prepend(canvas);
  const context = canvas.getContext('2d') as CanvasRenderingContext2D;
  /** What stands still, as it was drawn last: most of the picture, and most of its price. */
  const kept = document.createElement('canvas').getContext('2d', { alpha: false }) as CanvasRenderingContext2D;
  let scene: Scene | null = null;
  let up: Tab | null = 'flaps';
  let last: Picture | null = null;
  let stale = true;

  const paint = (now: Picture): void => {
    if (scene === null) return;
    if (scene.show(now, up) || stale) {
      renderer.render({ container: scene.node });
      copy(canvas, kept);
    } else {
      copy(kept.canvas, context);
    }
    stale = false;
    renderer.render({ container: scene.moving, clear: false });
    Ticker.system.update();
  };

  return {
    canvas,
    draw(now) {
      last = now;
      paint(now);
    },
    set(at, panel) {
      const ink = readInk(host);
      scene?.close();
      scene = sceneOf({ at, panel, ink, still: matchMedia('(prefers-reduced-motion: reduce)').matches });
      renderer.background.color = ink.paper;
      renderer.resize(at.width, at.height, devicePixelRatio);
      [kept.canvas.width, kept.canvas.height] = [canvas.width, canvas.height];
      stale = true;
      paint(last ?? atRest(panel));
    },
    turn(tab) {
      up = tab;
      if (last !== null) paint(last);
    },
    close() {
      scene?.close();
      renderer.destroy({ removeView: true });
    },
  };
}

async function openRenderer(host: HTMLElement): Promise<CanvasRenderer> {
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
  return renderer;
}

function copy(from: HTMLCanvasElement, to: CanvasRenderingContext2D): void {
  to.setTransform(1, 0, 0, 1, 0, 0);
  to.drawImage(from, 0, 0);
}
