/**
 * The canvas of the drill. It never ticks by itself: it draws when it is handed a picture, and builds its drawings anew
 * when the window, the colours or the panel change.
 */
import 'pixi.js/unsafe-eval';
import 'pixi.js/graphics';
import 'pixi.js/text';
import { CanvasRenderer, Container } from 'pixi.js';
import { altitude } from './altitude.js';
import { call } from './call.js';
import { drive } from './drive.js';
import { gauge } from './gauge.js';
import { readInk } from './ink.js';
import { lever } from './lever.js';
import { FACE, type Frame, type Part } from './part.js';
import type { Layout } from './place.js';
import type { Panel, Picture } from './picture.js';
import { atRest } from './rest.js';
import { section } from './section.js';
import { speed } from './speed.js';
import { thrust } from './thrust.js';

export const RENDERER = 'canvas 2d (pixi)';

export interface Stage {
  readonly canvas: HTMLCanvasElement;
  /** New size, colours or panel: everything is drawn anew. */
  set(at: Layout, panel: Panel): void;
  /** Draws one picture, now. */
  draw(now: Picture): void;
  close(): void;
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
  const canvas = renderer.canvas as HTMLCanvasElement;
  canvas.setAttribute('aria-hidden', 'true');
  host.prepend(canvas);
  let root = new Container();
  let parts: Part[] = [];
  let last: Picture | null = null;

  const paint = (now: Picture): void => {
    for (const part of parts) part.show(now);
    renderer.render({ container: root });
  };

  return {
    canvas,
    draw(now) {
      last = now;
      paint(now);
    },
    set(at, panel) {
      const frame: Frame = { at, panel, ink: readInk(host), still: matchMedia('(prefers-reduced-motion: reduce)').matches };
      root.destroy({ children: true, texture: true, textureSource: true, context: true, style: true });
      root = new Container();
      renderer.background.color = frame.ink.paper;
      renderer.resize(at.width, at.height, devicePixelRatio);
      parts = [speed, altitude, thrust, lever, drive, section, gauge, call].map((part) => part(frame));
      root.addChild(...parts.map((part) => part.node));
      paint(last ?? atRest(panel));
    },
    close() {
      root.destroy({ children: true, texture: true, textureSource: true, context: true, style: true });
      renderer.destroy({ removeView: true });
    },
  };
}
