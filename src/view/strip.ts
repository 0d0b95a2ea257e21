/** The speed strip as sums: a straight rule of speeds, and labels beside it that never lie over each other. */

export interface Strip {
  readonly lowestKt: number;
  readonly highestKt: number;
  /** Ends of the rule on the screen, px: the highest speed is above. */
  readonly top: number;
  readonly bottom: number;
}

/** From the ends of the strip's place to the ends of its rule, px. */
export const STRIP_INSET = 10;

/** Where a speed stands, px from the top; a speed beyond the rule stands at its end. */
export function onStrip(strip: Strip, speedKt: number): number {
  const part = (speedKt - strip.lowestKt) / (strip.highestKt - strip.lowestKt);
  return strip.bottom - Math.min(Math.max(part, 0), 1) * (strip.bottom - strip.top);
}

/** Speeds that get a long stroke and a figure, and those between that get a short one. */
export function rulings(strip: Strip, everyKt: number): { kt: number; long: boolean }[] {
  const strokes: { kt: number; long: boolean }[] = [];
  const half = everyKt / 2;
  for (let kt = Math.ceil(strip.lowestKt / half) * half; kt <= strip.highestKt; kt += half) {
    strokes.push({ kt, long: kt % everyKt === 0 });
  }
  return strokes;
}

/**
 * Moves labels apart. Each keeps its order and stays as near to its wish as the others let it; `gap` is the least
 * distance between two neighbours, and all stay between `top` and `bottom`.
 */
export function spread(wishes: readonly number[], gap: number, top: number, bottom: number): number[] {
  const order = wishes.map((_, index) => index).sort((a, b) => wishes[a]! - wishes[b]! || a - b);
  const places = [...wishes];
  let free = top;
  for (const index of order) {
    places[index] = Math.max(places[index]!, free);
    free = places[index] + gap;
  }
  let room = bottom;
  for (const index of [...order].reverse()) {
    places[index] = Math.min(places[index]!, room);
    room = places[index] - gap;
  }
  return places;
}
