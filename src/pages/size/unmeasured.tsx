/** True size is chosen, and this screen or zoom has not been measured: told wherever a run is about to begin. */
import { size } from './choices.js';
import { pxPerMm } from './screen.js';

export const Unmeasured = () => (size.value.isTrue && pxPerMm.value === null
  ? <p class="note" role="status"><span><strong>The gauge fills the window.</strong> You chose true size, but nobody has laid a card on this screen at this zoom. <a href="#/size">Measure it</a></span></p>
  : null);
