/** The hold of the timing check. */
import { bindingsOf } from '../input/keys.js';
import { watchHold } from '../input/reaction.js';
import type { TimingHouse } from '../pages/timing/house.js';
import { padsOf } from './switches.js';

export const timing: TimingHouse = {
  watch: (root, { bindings, pads }, told) => watchHold(root, { bindings: bindingsOf(bindings), pads: padsOf(pads) }, told),
};
