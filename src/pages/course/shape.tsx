/** How a step stands, as a shape: full and ticked for done, open for open, crossed for closed. */
import type { StepStand } from '../../../sim/index.js';

export const StandShape = ({ state }: { state: StepStand['state'] }) => (
  <>
    <circle class={`stand-${state}`} r="6.5" />
    {state === 'done' && <path class="stand-tick" d="M-3 0.2L-0.8 2.6L3.2 -2.4" />}
    {state === 'closed' && <path class="stand-bar" d="M-3.5 0H3.5" />}
  </>
);

export const STATES: Readonly<Record<StepStand['state'], string>> = { done: 'done', open: 'open', closed: 'closed' };
