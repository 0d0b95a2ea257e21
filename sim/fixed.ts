/** A world: what is fixed before the run, frozen and shared by all its moments, and the one state that changes. */
import type { Agenda } from './entry.js';
import type { Noise } from './noise.js';
import type { Prepared } from './prepare.js';
import type { State } from './state.js';
import type { TaskRule } from './task/rule.js';

/** Made by `expand`: the constants of the airframe, the agenda with its dice thrown, the noise, the rule of the task. */
export interface Fixed extends Prepared {
  readonly agenda: Agenda;
  readonly noise: Noise;
  readonly task: TaskRule;
  /** Seed of the dice of the run. */
  readonly seed: number;
  /** Another pilot flies; the trainee drives. */
  readonly otherFlies: boolean;
  /** Heading at the start, rad. */
  readonly headingRad: number;
  /** Height of the ground above sea level, m. */
  readonly groundM: number;
}

/** A run at a moment: what does not change in it, and what does. `advance` makes a new one and leaves this as it is. */
export interface World {
  readonly fixed: Fixed;
  readonly state: Readonly<State>;
}
