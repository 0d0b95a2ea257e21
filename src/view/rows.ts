/** Rows of the flap lever: where each setting is drawn, and which one a finger means. */
import type { Rect } from './place.js';

/** Rows of one height, from flap 0 at the top. */
export function leverRows(place: Rect, count: number): { top: number; pitch: number } {
  return { top: place.y, pitch: place.h / count };
}

/** Which row lies under a height measured as the place is. */
export function rowAt(place: Rect, count: number, y: number): number {
  const { top, pitch } = leverRows(place, count);
  return Math.min(Math.max(Math.floor((y - top) / pitch), 0), count - 1);
}
