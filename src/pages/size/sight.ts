/** How the eye meets the gauge: what is wished of a layout, and what the record says of the one that is flown. Pure. */
import type { Airframe, RunRecord } from '../../../sim/files/index.js';
import { mmOf, visualDeg } from '../../../sim/stats/visual.js';
import { pxPerDeg } from '../../view/dial.js';
import { apartPx, type Layout, type Wish } from '../../view/place.js';
import { distanceMm, type SizeChoices } from './choices.js';

type Gauge = Airframe['gauge'];
export type Sight = RunRecord['gauge'];

/** On a screen that nobody has measured nothing true can be wished. */
export function wishOf(choices: SizeChoices, pxPerMm: number | null, { radiusMm }: Pick<Gauge, 'radiusMm'>): Wish {
  return {
    radius: choices.isTrue && pxPerMm !== null ? radiusMm * pxPerMm : null,
    apart: choices.apartDeg === null || pxPerMm === null ? null : mmOf(choices.apartDeg, distanceMm(choices)) * pxPerMm,
  };
}

/** The layout's gauge as a record keeps it. */
export function sightOf(at: Layout, { dial }: Pick<Gauge, 'dial'>, choices: SizeChoices, pxPerMm: number | null, pixelRatio: number): Sight {
  const apart = apartPx(at);
  const plain = { pxPerDeg: pxPerDeg(dial, at.gauge.radius), pixelRatio, apartPx: apart, widthPx: at.width, heightPx: at.height };
  if (pxPerMm === null) return { ...plain, mmPerPx: null };
  const eye = distanceMm(choices);
  return { ...plain, mmPerPx: 1 / pxPerMm, radiusMm: at.gauge.radius / pxPerMm, distanceMm: eye, apartDeg: visualDeg(apart / pxPerMm, eye) };
}

/** The layout that shows a gauge as it was: what a later run of a set wishes. */
export const sameAgain = (first: Sight, { dial }: Pick<Gauge, 'dial'>): Wish => ({ radius: first.pxPerDeg / pxPerDeg(dial, 1), apart: first.apartPx ?? null });

/** What two sights differ in, as far as an eye could tell: the pixels, the pointer, the way between speed and gauge, the measured screen, the distance. */
export function differences(first: Sight, now: Sight): ('zoom' | 'pointer' | 'apart' | 'card' | 'distance')[] {
  const near = (a: number | null | undefined, b: number | null | undefined, part: number): boolean =>
    (a == null || b == null ? (a ?? null) === (b ?? null) : Math.abs(a - b) <= part * Math.max(a, b));
  return [
    ...(near(first.pixelRatio, now.pixelRatio, 1e-3) ? [] : ['zoom' as const]),
    ...(near(first.pxPerDeg, now.pxPerDeg, 1e-3) ? [] : ['pointer' as const]),
    // A record of before apartness was kept says nothing of it.
    ...(first.apartPx === undefined || near(first.apartPx, now.apartPx, 5e-3) ? [] : ['apart' as const]),
    ...(near(first.mmPerPx, now.mmPerPx, 1e-3) ? [] : ['card' as const]),
    ...(first.mmPerPx === null || near(first.distanceMm, now.distanceMm, 1e-6) ? [] : ['distance' as const]),
  ];
}
