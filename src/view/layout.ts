/**
 * Where everything of the drill stands, from the size of the window and what is wished of the gauge. The canvas draws into
 * these places and the twins of the controls lie over them, so that what is seen is what is touched.
 */
import { low } from './layoutLow.js';
import { tall } from './layoutTall.js';
import { wide } from './layoutWide.js';
import { apartPx, LEAST_RADIUS, NO_WISH, SMALLEST, type Drawn, type Layout, type Wish } from './place.js';

/** Halvings until speed and flaps stand apart as wished: 2 to the -40 of a screen is no px. */
const ROUNDS = 40;

/** What the window cannot give is given as far as it goes: the caller reads it off the layout. */
export function layout(width: number, height: number, wish: Wish = NO_WISH): Layout {
  const radius = wish.radius === null ? null : Math.max(wish.radius, LEAST_RADIUS);
  const { apart } = wish;
  const at = (spread: number | null): Layout => drawn(width, height, { radius, spread });
  if (apart === null) return at(null);
  let [near, far] = [0, 1];
  if (apartPx(at(near)) >= apart) return at(near);
  if (apartPx(at(far)) <= apart) return at(far);
  for (let round = 0; round < ROUNDS; round += 1) {
    const middle = (near + far) / 2;
    if (apartPx(at(middle)) < apart) near = middle;
    else far = middle;
  }
  return at(far);
}

function drawn(width: number, height: number, how: Drawn): Layout {
  if (width >= 1000 && height >= 600) return wide(width, height, how);
  return width > height
    ? low(Math.max(width, SMALLEST.low.width), Math.max(height, SMALLEST.low.height), how)
    : tall(Math.max(width, SMALLEST.tall.width), Math.max(height, SMALLEST.tall.height), how);
}
