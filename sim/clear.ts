/** How a fault ends again: its terms go back to what they are in a whole aeroplane. What was parted by it stays parted. */
import type { DrawnFault, Entry } from './entry.js';
import type { Fault } from './files/fault.js';
import type { Fixed } from './fixed.js';
import { hasBegun } from './latches.js';
import { latch, type State } from './state.js';

/** Kinds that can come right again. What is cut, sheared, blown back or stopped for good stays so. */
export const CLEARABLE = ['lag', 'slip', 'pointer', 'dead', 'slow', 'runsOn', 'leadingEdge'] as const satisfies readonly Fault['kind'][];

/** Whether a fault of this kind can end within a run. */
export const isClearable = (kind: Fault['kind']): boolean => (CLEARABLE as readonly Fault['kind'][]).includes(kind);

/**
 * As a desk mends it, which may end anything: the side is coupled again, the drive runs. Sides stay where they are, and one
 * that follows again keeps its distance.
 */
export function mendFault(s: State, fixed: Fixed, entry: Entry): void {
  const { fault } = entry;
  if (fault === null || !hasBegun(s, fixed, entry)) return;
  switch (fault.kind) {
    case 'disconnect': case 'jam': case 'blowback':
      latch(s, `${fault.side}Cut`, 0);
      latch(s, `${fault.side}Jam`, 0);
      latch(s, `${fault.side}Blown`, 0);
      s[`${fault.side}WindDeg`] = 0;
      return;
    case 'dead': case 'quits': latch(s, 'driveDead', 0); return;
    default: clearFault(s, fixed, fault);
  }
}

/** Ends the fault of an entry, if it has acted; else, or where its kind cannot end, nothing changes and it may still act. */
export function clearEntry(s: State, fixed: Fixed, entry: Entry): void {
  if (entry.fault !== null && hasBegun(s, fixed, entry)) clearFault(s, fixed, entry.fault);
}

/**
 * Ends what faults of this kind do to this side (or to the drive): faults of one kind on one side replace each other, so
 * they end together. A pointer reads its side again, whatever it lied by.
 */
export function clearFault(s: State, fixed: Fixed, fault: DrawnFault): void {
  switch (fault.kind) {
    case 'lag': latch(s, `${fault.side}Ratio`, 1); return;
    case 'slip': latch(s, `${fault.side}Slip`, 0); s[`${fault.side}SlipTicks`] = 0; return;
    case 'pointer':
      latch(s, `${fault.side}Stuck`, 0);
      latch(s, `${fault.side}StuckDeg`, 0);
      s[`${fault.side}BiasDeg`] = 0;
      latch(s, `${fault.side}DriftDegPerS`, 0);
      return;
    case 'dead': latch(s, 'driveDead', hasQuit(s, fixed) ? 1 : 0); return;
    case 'slow': latch(s, 'driveFactor', 1); return;
    case 'runsOn': latch(s, 'contactorStuck', 0); return;
    case 'leadingEdge': latch(s, 'leadingEdgeStop', 1); return;
    case 'disconnect': case 'jam': case 'blowback': case 'quits': return;
  }
}

/** A drive that has stopped for good is not brought back by the end of another fault. */
function hasQuit(s: State, fixed: Fixed): boolean {
  for (const entry of fixed.agenda.entries) if (entry.fault?.kind === 'quits' && hasBegun(s, fixed, entry)) return true;
  return false;
}
