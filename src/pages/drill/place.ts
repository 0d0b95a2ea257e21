/** Where the instruments of a run stand in its window, and how its gauge is seen. */
import { signal, type ReadonlySignal } from '@preact/signals';
import type { Airframe } from '../../../sim/files/index.js';
import { layout } from '../../view/layout.js';
import type { Layout } from '../../view/place.js';
import { size } from '../size/choices.js';
import { look as lookAtScreen, pxPerMm } from '../size/screen.js';
import { differences, sameAgain, sightOf, wishOf, type Sight } from '../size/sight.js';

export interface Place {
  readonly at: ReadonlySignal<Layout>;
  /** The gauge that is flown is known: from now on it is drawn to its wish. @returns how it is seen */
  begin(gauge: Airframe['gauge']): Sight;
  /** Fits the window as it is now. @returns whether the gauge is seen otherwise than at the beginning */
  fit(): boolean;
}

/** @param lock how the gauge was seen before, and is drawn again; null: as the choices have it */
export function placeOf(lock: Sight | null): Place {
  const at = signal(layout(innerWidth, innerHeight));
  let begun: { readonly gauge: Airframe['gauge']; readonly sight: Sight } | null = null;
  const fitted = (gauge: Airframe['gauge']): Sight => {
    lookAtScreen();
    at.value = layout(innerWidth, innerHeight, lock === null ? wishOf(size.peek(), pxPerMm.peek(), gauge) : sameAgain(lock, gauge));
    return sightOf(at.value, gauge, size.peek(), pxPerMm.peek(), devicePixelRatio);
  };
  return {
    at,
    begin(gauge) {
      const sight = fitted(gauge);
      begun = { gauge, sight };
      return sight;
    },
    fit() {
      if (begun !== null) return differences(begun.sight, fitted(begun.gauge)).length > 0;
      lookAtScreen();
      at.value = layout(innerWidth, innerHeight);
      return false;
    },
  };
}
