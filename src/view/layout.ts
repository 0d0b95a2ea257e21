/**
 * Where everything of the drill stands, from the size of the window alone. The canvas draws into these places and the
 * twins of the controls lie over them, so that what is seen is what is touched.
 */
import { low } from './layoutLow.js';
import { tall } from './layoutTall.js';
import { wide } from './layoutWide.js';
import { SMALLEST, type Layout } from './place.js';

export function layout(width: number, height: number): Layout {
  if (width >= 1000 && height >= 600) return wide(width, height);
  return width > height
    ? low(Math.max(width, SMALLEST.low.width), Math.max(height, SMALLEST.low.height))
    : tall(Math.max(width, SMALLEST.tall.width), Math.max(height, SMALLEST.tall.height));
}
