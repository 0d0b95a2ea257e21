/** The leading edge: goes fully out on the first run in the extend direction, and no command brings it back. */
import type { State } from '../state.js';
import type { DriveNumbers } from './numbers.js';

/** One tick. Writes leadingEdge and leadingEdgeGoing. Symmetric by assumption. */
export function stepLeadingEdge(s: State, n: DriveNumbers): void {
  if (s.contactor > 0 && s.driveDead === 0) s.leadingEdgeGoing = 1;
  if (s.leadingEdgeGoing === 0 || s.leadingEdge >= s.leadingEdgeStop) return;
  s.leadingEdge = Math.min(s.leadingEdgeStop, s.leadingEdge + n.leadingEdgePerTick);
}
