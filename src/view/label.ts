/**
 * A text, drawn by the canvas itself where it stands. The library's own text first draws each one on a canvas of its own,
 * and sixty of those were half the price of the first picture.
 */
import { RenderContainer, type Bounds, type CanvasRenderer } from 'pixi.js';

/** Loaded before the first drawing; figures of one width (pages/look/type.css). */
export const FACE = 'Inter Figures';

type Weight = '400' | '500' | '600' | '700';

interface Look {
  size: number;
  colour: number;
  weight?: Weight;
  /** Which point of the text stands at its place: 0 to 1 across and down. */
  anchor?: readonly [number, number];
}

export interface Label {
  readonly node: RenderContainer;
  /** @returns whether these are other words than before */
  say(text: string): boolean;
  /** To the nearest half pixel. @returns whether that is another place than before */
  place(x: number, y: number): boolean;
}

interface Font {
  readonly css: string;
  /** From the top of a line to its foot on which letters stand, and to its end, px. */
  readonly ascent: number;
  readonly height: number;
}

const ruler = document.createElement('canvas').getContext('2d') as CanvasRenderingContext2D;
const fonts = new Map<string, Font>();

/** A face at a size. The line is as high as its highest and lowest letters, so that figures stand in the middle of it. */
function fontOf(size: number, weight: Weight): Font {
  const css = `${weight} ${size}px "${FACE}"`;
  const known = fonts.get(css);
  if (known !== undefined) return known;
  ruler.font = css;
  const { actualBoundingBoxAscent: ascent, actualBoundingBoxDescent: descent } = ruler.measureText('|ÉqÅM');
  const font = { css, ascent, height: ascent + descent };
  fonts.set(css, font);
  return font;
}

/** A drawing that calls for its words, and knows how wide they are. */
class Words extends RenderContainer {
  changed(): void {
    this.onViewUpdate();
  }
}

export function label(text: string, { size, colour, weight = '400', anchor = [0, 0.5] }: Look): Label {
  const font = fontOf(size, weight);
  const ink = `#${colour.toString(16).padStart(6, '0')}`;
  let words = '';
  let width = 0;
  const node = new Words({
    render(renderer) {
      if (words === '') return;
      const { canvasContext } = renderer as CanvasRenderer;
      const { activeContext: pen, activeResolution: ratio } = canvasContext;
      const { a, b, c, d, tx, ty } = node.groupTransform;
      const [left, top] = [-anchor[0] * width, font.ascent - anchor[1] * font.height];
      pen.globalAlpha = 1;
      // On whole pixels, or its strokes would be softer in one place than in another.
      pen.setTransform(a * ratio, b * ratio, c * ratio, d * ratio, Math.floor((tx + a * left + c * top) * ratio), Math.floor((ty + b * left + d * top) * ratio));
      pen.font = font.css;
      pen.fillStyle = ink;
      pen.fillText(words, 0, 0);
    },
    addBounds(bounds) {
      (bounds as Bounds).addFrame(-anchor[0] * width, -anchor[1] * font.height, (1 - anchor[0]) * width, (1 - anchor[1]) * font.height);
    },
  });
  const say = (now: string): boolean => {
    if (words === now) return false;
    words = now;
    ruler.font = font.css;
    width = ruler.measureText(now).width;
    node.changed();
    return true;
  };
  say(text);
  return {
    node, say,
    place(x, y) {
      const [toX, toY] = [Math.round(2 * x) / 2, Math.round(2 * y) / 2];
      if (node.x === toX && node.y === toY) return false;
      node.position.set(toX, toY);
      return true;
    },
  };
}
