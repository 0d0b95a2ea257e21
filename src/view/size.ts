/** Millimetres of a screen, from a bank card held against it. Screen px are CSS px. */

/** ISO/IEC 7810, ID-1: the sides of a bank card, mm. Its limits, from memory: 85.47 to 85.72 and 53.92 to 54.03 mm. */
export const CARD = { longMm: 85.6, shortMm: 53.98 } as const;
/** Its rounded corners, nominal, mm. */
export const CARD_ROUND_MM = 3.18;

/** Screens between these are believed: derived, from a wall screen to the densest phone (rules 5.1), px/mm. */
export const PX_PER_MM = { least: 1.5, most: 12 } as const;
/** How far the short side may be off the long one before the match counts as bad: pixels that are not square, or a card that lay askew. */
export const CARD_OFF = 0.01;

/** Eye to panel on a flight deck, mm: from memory (measures 7.3). An assumption until it is stated. */
export const ASSUMED_DISTANCE_MM = 710;
/** Distances from eye to screen that are taken, mm; a record has the same range. */
export const DISTANCE_MM = { least: 250, most: 2500 } as const;

/** `off` is the part by which the short side is longer than the long one says. */
export type Match =
  | { readonly fits: true; readonly pxPerMm: number; readonly off: number }
  /** range: no screen is so coarse or so fine. askew: the sides do not belong to one card. */
  | { readonly fits: false; readonly why: 'range' | 'askew'; readonly pxPerMm: number; readonly off: number };

/**
 * What an outline that covers the card says of the screen.
 * @param longPx the card's long side as matched, px @param shortPx its short side, matched by itself, px
 */
export function matchOf(longPx: number, shortPx: number): Match {
  const pxPerMm = longPx / CARD.longMm;
  // Part by which the short side is longer than the long one says.
  const off = (shortPx / CARD.shortMm) / pxPerMm - 1;
  if (!(longPx >= PX_PER_MM.least * CARD.longMm && longPx <= PX_PER_MM.most * CARD.longMm)) return { fits: false, why: 'range', pxPerMm, off };
  return Math.abs(off) <= CARD_OFF ? { fits: true, pxPerMm, off } : { fits: false, why: 'askew', pxPerMm, off };
}
