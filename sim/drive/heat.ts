/** Heat of the motor: a first-order body, exact step, with a cut-out and its reset. Words of duty types: IEC 60034-1. */
import type { State } from '../state.js';
import type { DriveNumbers } from './numbers.js';

/** One tick. Writes motorHeat and cutOutOpen. */
export function stepHeat(s: State, n: DriveNumbers): void {
  if (s.contactor !== 0 && s.driveDead === 0) {
    const current = n.noLoadCurrent + s.motorNm * n.inverseStall;
    const end = n.heatGain * current * current;
    s.motorHeat = end + (s.motorHeat - end) * n.heatKeptOn;
  } else {
    s.motorHeat *= n.heatKeptOff;
  }
  if (s.motorHeat >= n.cutOut) s.cutOutOpen = 1;
  else if (s.motorHeat < n.reset) s.cutOutOpen = 0;
}
