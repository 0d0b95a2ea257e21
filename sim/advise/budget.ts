/**
 * The release budget: how long from a fault to one degree, to parts of the roll authority, and what each second of
 * holding on costs. Not a formula: the drive itself is run at the given speed, so growth of load, shear and blow-back
 * are in it. For a side that is cut the closed form stands beside it as a check.
 */
import type { Command } from '../command.js';
import type { Airframe } from '../files/airframe.js';
import type { World } from '../fixed.js';
import { authorityNow } from '../score/facts.js';
import { ONE_DEGREE } from '../score/events.js';
import { advance } from '../world.js';
import { HELD, splitOf, start } from './driving.js';

/** Faults a budget can be made for, on the right side; mirrored faults cost the same. */
export const BUDGET_FAULTS = ['disconnect', 'lag', 'jam', 'slip', 'blowback'] as const;
/** What becomes of the side; only lag and slip read a `ratio`. */
export type BudgetFault = (typeof BUDGET_FAULTS)[number];

/** Level flight under speed hold, gear up, leading edge out, and the drive on its way out through `flapDeg`. */
export interface BudgetRequest {
  readonly airframe: Airframe;
  readonly massT: number;
  readonly speedKt: number;
  /** Position of the drive at the fault, deg. */
  readonly flapDeg: number;
  readonly fault: BudgetFault;
  /** Rate of a lagging or slipping side over the rate of the drive. */
  readonly ratio: number;
  readonly altitudeFt: number;
}

/** Made by `budgetOf`. Splits are true ones and not those of the pointers; times count from onset, the first tick in which the fault parts the sides. */
export interface Budget {
  /** Mean split rate over the first degree, deg/s; null if a degree is never reached. */
  readonly splitRateDegPerS: number | null;
  readonly oneDegreeS: number | null;
  /** Held on: time from the fault and true split at each part of the roll authority; null where it is not reached. */
  readonly levels: readonly { readonly rollAuthorityPct: number; readonly afterS: number | null; readonly splitDeg: number | null }[];
  /** Let go so many seconds behind one degree: final true split and roll authority, `settleS` behind the release. */
  readonly releases: readonly { readonly latencyS: number; readonly splitDeg: number; readonly rollAuthorityPct: number }[];
  readonly settleS: number;
}

const LEVELS = [25, 45, 50, 100] as const;
const LATENCIES = [0, 1, 2, 3, 5, 10, 20] as const;
const LONGEST_TICKS = 30000;

/** Works the budget out. The aeroplane is in level flight under speed hold. */
export function budgetOf(request: BudgetRequest): Budget {
  const settleS = request.fault === 'blowback' ? 15 : 1;
  const levels = LEVELS.map((rollAuthorityPct) => ({ rollAuthorityPct, afterS: null as number | null, splitDeg: null as number | null }));
  let world = start(request);
  let atOneDegree: World | null = null;
  while (world.state.tick < LONGEST_TICKS && world.state.latched.limiterTripped === 0 && levels.some(({ afterS }) => afterS === null)) {
    world = advance(world, HELD, 1);
    const { tick, latched: { onsetTick } } = world.state;
    if (onsetTick < 0) continue;
    if (atOneDegree === null && splitOf(world) >= ONE_DEGREE) atOneDegree = world;
    const used = authorityNow(world.state, world.fixed);
    for (const level of levels) {
      if (level.afterS !== null || used < level.rollAuthorityPct) continue;
      level.afterS = (tick - onsetTick) / 100;
      level.splitDeg = splitOf(world);
    }
  }
  const oneDegreeS = atOneDegree === null ? null : (atOneDegree.state.tick - atOneDegree.state.latched.onsetTick) / 100;
  const releases = atOneDegree === null ? [] : LATENCIES.map((latencyS) => released(atOneDegree, latencyS, settleS));
  return { splitRateDegPerS: oneDegreeS === null ? null : ONE_DEGREE / oneDegreeS, oneDegreeS, levels, releases, settleS };
}

function released(from: World, latencyS: number, settleS: number): Budget['releases'][number] {
  const tick = from.state.tick + latencyS * 100;
  const log: Command[] = [...HELD, { do: 'releaseDrive', tick, rank: 2, seq: 2 }, { do: 'setDrive', to: 'off', tick, rank: 2, seq: 3 }];
  const world = advance(from, log, latencyS * 100 + settleS * 100);
  return { latencyS, splitDeg: splitOf(world), rollAuthorityPct: authorityNow(world.state, world.fixed) };
}
