/** How a fault comes into force: it sets its terms in the state, and the drive does the rest. */
import type { DrawnFault } from './entry.js';
import type { Fixed } from './fixed.js';
import { leftPointer, rightPointer } from './pointers.js';
import { latch, type State } from './state.js';
import { ticksOf } from './units.js';

/** Puts a fault in force. `place` is its place in the file. Faults of one kind on one side replace each other. */
export function actFault(s: State, fixed: Fixed, fault: DrawnFault, place: number): void {
  switch (fault.kind) {
    case 'disconnect': latch(s, `${fault.side}Cut`, 1); return;
    case 'lag': latch(s, `${fault.side}Ratio`, fault.ratio); return;
    case 'jam': latch(s, `${fault.side}Jam`, 1); return;
    case 'slip': latch(s, `${fault.side}Slip`, place + 1); s[`${fault.side}SlipTicks`] = 0; return;
    case 'blowback': latch(s, `${fault.side}Cut`, 1); latch(s, `${fault.side}Blown`, 1); return;
    case 'pointer': actPointer(s, fixed, fault); return;
    case 'dead': case 'quits': latch(s, 'driveDead', 1); return;
    case 'slow': latch(s, 'driveFactor', fault.factor); return;
    case 'runsOn': latch(s, 'contactorStuck', 1); return;
    case 'leadingEdge': latch(s, 'leadingEdgeStop', fault.stopsAt); return;
  }
}

function actPointer(s: State, fixed: Fixed, fault: Extract<DrawnFault, { kind: 'pointer' }>): void {
  const { side } = fault;
  if (fault.mode === 'stuck') {
    latch(s, `${side}StuckDeg`, side === 'left' ? leftPointer(s, fixed.noise) : rightPointer(s, fixed.noise));
    latch(s, `${side}Stuck`, 1);
  } else if (fault.mode === 'bias') {
    s[`${side}BiasDeg`] += fault.biasDeg ?? 0;
  } else {
    latch(s, `${side}DriftDegPerS`, fault.driftDegPerS ?? 0);
  }
}

/** Whether any term that parts the pointers is in force. */
export const splitsInForce = (s: State): boolean =>
  s.latched.leftCut + s.latched.rightCut + s.latched.leftJam + s.latched.rightJam + s.latched.leftSlip + s.latched.rightSlip + s.latched.leftStuck + s.latched.rightStuck > 0
  || s.latched.leftRatio !== 1 || s.latched.rightRatio !== 1 || s.leftBiasDeg !== 0 || s.rightBiasDeg !== 0
  || s.latched.leftDriftDegPerS !== 0 || s.latched.rightDriftDegPerS !== 0;

/** Rate of a side over the rate of the drive in this tick: its lag, or its slip while the wave is on. */
export function ratioNow(fixed: Fixed, ratio: number, slip: number, slipTicks: number): number {
  if (slip === 0) return ratio;
  const fault = fixed.agenda.entries[slip - 1]?.fault;
  if (fault?.kind !== 'slip') throw new Error(`entry ${slip - 1} is no slip`);
  return slipTicks % ticksOf(fault.periodS) < ticksOf(fault.onS) ? fault.ratio : ratio;
}
