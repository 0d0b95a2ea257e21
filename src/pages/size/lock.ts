/** A set is flown at one size of its gauge: that of its first run. What keeps a later run from it, and what can be put back. */
import { computed, signal } from '@preact/signals';
import type { Airframe } from '../../../sim/files/index.js';
import { layout } from '../../view/layout.js';
import { change } from '../changing.js';
import { size } from './choices.js';
import { pxPerMm, screenName, windowSize } from './screen.js';
import { differences, sameAgain, sightOf, type Sight } from './sight.js';

export interface SetLock {
  /** How the gauge of the first run was seen. */
  readonly first: Sight;
  readonly gauge: Airframe['gauge'];
}

/** Of the flight that the pages work on; null: nothing of it is flown yet. */
export const lock = signal<SetLock | null>(null);

/** In what a run begun now would differ from the first; null: in nothing. */
export const unlike = computed(() => {
  if (lock.value === null) return null;
  const { first, gauge } = lock.value;
  const { width, height } = windowSize.value;
  // The name of the screen holds its zoom: whenever that changes this is worked out anew.
  const ratio = screenName.value === '' ? 1 : devicePixelRatio;
  const now = sightOf(layout(width, height, sameAgain(first, gauge)), gauge, size.value, pxPerMm.value, ratio);
  const found = differences(first, now);
  return found.length === 0 ? null : { found, first, now };
});

/** What a choice has changed is chosen back: the measure of this screen, and the distance. */
export function putBack({ mmPerPx, distanceMm }: Sight): void {
  change(() => {
    const { [screenName.value]: _other, ...screens } = size.value.screens;
    size.value = {
      ...size.value,
      screens: mmPerPx === null ? screens : { ...screens, [screenName.value]: 1 / mmPerPx },
      ...(distanceMm === undefined ? {} : { distanceMm }),
    };
    return 'Measured as in the first run';
  });
}
