/** A gauge that was flown, laid out once more in another window. Pure. */
import type { RunRecord } from '../../../sim/files/index.js';
import { layout } from '../../view/layout.js';
import type { Layout } from '../../view/place.js';
import { sameAgain } from './sight.js';

/** As flown, or what the window makes of it; a script looked at no window. */
export type Length = 'same' | 'shorter' | 'longer' | 'none';

/** Beyond this part of the length an eye may tell, as between the runs of a set. */
const TOLD = 1e-3;

/**
 * The layout of a run in a window, and how its pointers compare with those that were flown. Lengths are those of the
 * screen where both screens have been measured, else px.
 * @param pxPerMmNow of the screen that shows it; null: not measured
 */
export function laidAgain({ gauge, airframe }: Pick<RunRecord, 'gauge' | 'airframe'>, width: number, height: number, pxPerMmNow: number | null): { at: Layout; length: Length } {
  if (gauge.pxPerDeg === 0) return { at: layout(width, height), length: 'none' };
  const { radius, apart } = sameAgain(gauge, airframe.gauge);
  const scale = gauge.mmPerPx !== null && pxPerMmNow !== null ? gauge.mmPerPx * pxPerMmNow : 1;
  const wished = (radius ?? 0) * scale;
  const at = layout(width, height, { radius: wished, apart: apart === null ? null : apart * scale });
  const part = at.gauge.radius / wished - 1;
  return { at, length: Math.abs(part) <= TOLD ? 'same' : part < 0 ? 'shorter' : 'longer' };
}
