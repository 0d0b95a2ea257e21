/** A run at a glance: what it came to, and the shown split over its time. */
import type { Preview } from '../../../../sim/index.js';
import { flyOrder } from './fly-order.js';
import type { FlightOrder } from './order.js';

export interface Glance {
  readonly seed: number;
  readonly outcome: Preview['flight']['outcome'];
  /** The side that was drawn; null where nothing parted. */
  readonly side: 'left' | 'right' | null;
  readonly onsetS: number | null;
  readonly releaseS: number | null;
  /** At the release, deg. */
  readonly growthDeg: number | null;
  readonly finalSplitDeg: number;
  readonly limitDeg: number;
  readonly endS: number;
  /** Shown split, deg, at even distances from the start to the end. */
  readonly apart: readonly number[];
}

const POINTS = 60;

export function glanceOf(order: FlightOrder): Glance {
  const { flight: { outcome, score }, fault, limitDeg, rows } = flyOrder(order);
  const at = (part: number): number => {
    const row = rows[Math.round(part * (rows.length - 1))];
    return row === undefined ? 0 : Math.abs(row.leftPointerDeg - row.rightPointerDeg);
  };
  return {
    seed: order.seed, outcome, limitDeg, side: fault?.side ?? null, onsetS: score.onsetS, releaseS: score.releaseS, growthDeg: score.growthAtReleaseDeg,
    finalSplitDeg: score.finalSplitDeg, endS: rows.at(-1)?.atS ?? 0,
    apart: Array.from({ length: POINTS + 1 }, (_, index) => at(index / POINTS)),
  };
}
