/** The gear: follows its lever in one transit time. */
import type { State } from '../state.js';
import { clamp } from '../units.js';

/** One tick. Writes gear: 0 up, 1 locked down. */
export function stepGear(s: State, { gearPerTick }: { readonly gearPerTick: number }): void {
  s.gear = clamp(s.gear + (s.latched.gearLever === 1 ? gearPerTick : -gearPerTick), 0, 1);
}
