/** A scripted trainee in a go-around: thrust when told, gear once it climbs, and whether the flaps may be thought of yet. */
import type { Act } from '../files/act.js';
import type { Fixed } from '../fixed.js';
import { hasActed } from '../latches.js';
import type { State } from '../state.js';
import { FT } from '../units.js';

const HEAR_TICKS = 200;
/** It climbs: this sine of the path. */
const CLIMBS = 0.02;

export interface Around {
  /** Does what is due. @returns whether the flaps may be thought of */
  step(s: State, file: (what: Act) => void): boolean;
}

/** @param safeFt height above the ground below which the flap switch is left alone; who hurries uses it at once */
export function aroundOf(fixed: Fixed, safeFt: number, hurries: boolean): Around {
  const entry = fixed.agenda.entries.find(({ event }) => event?.do === 'tellGoAround');
  let heardTick = -1;
  let begun = false;
  let raised = false;
  return {
    step(s, file) {
      if (entry === undefined) return true;
      if (heardTick < 0 && hasActed(s, fixed, entry)) heardTick = s.tick;
      if (heardTick < 0 || s.tick < heardTick + HEAR_TICKS) return false;
      if (!begun) {
        begun = true;
        file({ do: 'goAround' });
        return hurries;
      }
      if (!raised && s.pathSin > CLIMBS) {
        raised = true;
        if (s.latched.gearLever === 1) file({ do: 'setGear', to: 'up' });
      }
      return hurries || (s.heightM - fixed.groundM) / FT >= safeFt;
    },
  };
}
