/** Heat of the motor: a first-order body, exact step, with a cut-out and its reset. Words of duty types: IEC 60034-1. */
import { latch, type State } from '../state.js';
import type { DriveNumbers } from './numbers.js';

/** One tick. Writes motorHeat and cutOutOpen. */
export function stepHeat(s: State, n: DriveNumbers): void {
  if (s.latched.contactor !== 0 && s.latched.driveDead === 0) {
    const current = n.noLoadCurrent + s.motorNm * n.inverseStall;
    const end = n.heatGain * current * current;
    s.motorHeat = end + (s.motorHeat - end) * n.heatKeptOn;
  } else {
    s.motorHeat *= n.heatKeptOff;
  }
  if (s.latched.cutOutOpen === 0) {
    if (s.motorHeat >= n.cutOut) latch(s, 'cutOutOpen', 1);
  } else if (s.motorHeat < n.reset) latch(s, 'cutOutOpen', 0);
}
