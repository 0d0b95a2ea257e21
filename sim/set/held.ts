/** What a set's runs are like when nobody lets go: flown once a rate, without noise, with the earliest and the latest onset. */
import type { Airframe } from '../files/airframe.js';
import { expand } from '../expand.js';
import { growth } from '../pointers.js';
import type { ReadyScenario } from '../ready.js';
import { runBy } from '../replay.js';
import { authorityNow } from '../score/facts.js';
import { ARRIVAL_DEG } from '../task/rule.js';
import { pilotOf } from '../trainee/fly.js';
import { secondsOf } from '../units.js';
import type { ReadySet } from './ready.js';

/** One rate of a set, as flown. */
export interface RealisedRate {
  /** Rate of the lagging side over the rate of the drive, as the set has it; below 0 it is driven back. */
  readonly ratio: number;
  /** Mean growth from onset to the limit with the earliest and with the latest onset, deg/s; their mean. */
  readonly earlyDegPerS: number;
  readonly lateDegPerS: number;
  readonly degPerS: number;
  /** Growth at the end of the leg with the latest onset, deg (at most twice the limit, where a run ends). */
  readonly latestGrowthDeg: number;
  /** Greatest roll authority used when the growth reaches the limit, %; null when it does not. */
  readonly rollAuthorityAtLimitPct: number | null;
}

interface Held {
  readonly degPerS: number;
  readonly endGrowthDeg: number;
  readonly atLimitPct: number | null;
  /** Distance of the drive from the setting at the end, deg. */
  readonly shortDeg: number;
}

/** Flies one run in which nobody lets go. @param onsetHeldS null for a quiet run */
function holdOn(scenario: ReadyScenario, airframe: Airframe, onsetHeldS: number | null): Held {
  const [fault] = scenario.faults;
  const faults = fault === undefined || onsetHeldS === null ? [] : [{ ...fault, when: { heldS: onsetHeldS } }];
  const still = { ...scenario, faults, pointerNoise: false };
  const world = expand(still, airframe, 1);
  const { fixed } = world;
  let limitTick = -1;
  let atLimitPct: number | null = null;
  const { state } = runBy(world, pilotOf(still, airframe, 1, 'never', fixed), [], (s) => {
    if (limitTick >= 0 || growth(s, fixed.noise) < fixed.task.limitDeg) return;
    limitTick = s.tick;
    atLimitPct = authorityNow(s, fixed);
  });
  const endGrowthDeg = growth(state, fixed.noise);
  const grewS = secondsOf((limitTick < 0 ? state.tick : limitTick) - state.latched.onsetTick);
  return {
    degPerS: state.latched.onsetTick < 0 ? 0 : (limitTick < 0 ? endGrowthDeg : fixed.task.limitDeg) / grewS,
    endGrowthDeg, atLimitPct,
    shortDeg: Math.abs(state.driveDeg - (fixed.task.settings[0] as number)),
  };
}

/** The rates of a set as flown. */
export function realisedRates({ set, scenarios, airframe }: ReadySet): RealisedRate[] {
  return set.rates.map(({ ratio }, at) => {
    const scenario = scenarios[at] as ReadyScenario;
    const early = holdOn(scenario, airframe, set.onsetFromS);
    const late = holdOn(scenario, airframe, set.onsetFromS + set.onsetForS);
    const pcts = [early.atLimitPct, late.atLimitPct].filter((pct) => pct !== null);
    return {
      ratio, earlyDegPerS: early.degPerS, lateDegPerS: late.degPerS, degPerS: (early.degPerS + late.degPerS) / 2,
      latestGrowthDeg: late.endGrowthDeg,
      rollAuthorityAtLimitPct: pcts.length === 0 ? null : Math.max(...pcts),
    };
  });
}

/** Whether a run held to its end stops short of the setting, so that nobody can arrive. */
export function endsShort({ set, scenarios, airframe }: ReadySet): boolean {
  return scenarios.every((scenario) => [null, set.onsetFromS].every((onsetS) => holdOn(scenario, airframe, onsetS).shortDeg > ARRIVAL_DEG));
}
