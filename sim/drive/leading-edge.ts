/** The leading edge: goes fully out on the first run in the extend direction, and no command brings it back. */
import { latch, type State } from '../state.js';
import type { DriveNumbers } from './numbers.js';

/** One tick. Writes leadingEdge and leadingEdgeGoing. Symmetric by assumption. */
export function stepLeadingEdge(s: State, n: DriveNumbers): void {
  if (s.latched.leadingEdgeGoing === 0) {
    if (s.latched.contactor <= 0 || s.latched.driveDead !== 0) return;
    latch(s, 'leadingEdgeGoing', 1);
  }
  if ( s.leadingEdge >= s.latched.leadingEdgeStop) return;
  s.leadingEdge = Math.min(s.latched.leadingEdgeStop, s.leadingEdge + n.leadingEdgePerTick);
}
