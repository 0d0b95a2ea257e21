/**
 * What is never quite even: rigging mismatch and slow wander of the pointers, a natural roll disturbance, a trim offset.
 * Thrown before the run from streams of their own, so that a fault added or mirrored moves none of it.
 */
import { dice } from './dice.js';
import type { Airframe } from './files/airframe.js';

export interface Noise {
  readonly leftMismatchDeg: number;
  readonly rightMismatchDeg: number;
  /** Wander of each pointer at travel k x stepDeg, deg; straight lines between. */
  readonly leftWander: readonly number[];
  readonly rightWander: readonly number[];
  readonly perDeg: number;
  /** Roll disturbance, part of full control: ticks and values of the knots. */
  readonly gustTicks: readonly number[];
  readonly gusts: readonly number[];
  readonly trim: number;
}

/** No noise at all: check values and mirror symmetry hold with this. */
export const QUIET: Noise = {
  leftMismatchDeg: 0, rightMismatchDeg: 0, leftWander: [0, 0], rightWander: [0, 0], perDeg: 0, gustTicks: [0], gusts: [0], trim: 0,
};

/** Throws the noise of one run. */
export function throwNoise(airframe: Airframe, seed: number, limitTicks: number): Noise {
  const { gauge, roll, drive } = airframe;
  const rigging = dice(seed, 'rigging');
  const onLeft = rigging.uniform() < 0.5;
  const mismatch = rigging.uniform() < 0.5 ? -gauge.mismatchDeg : gauge.mismatchDeg;
  const knots = Math.floor(drive.stopDeg / gauge.wanderStepDeg) + 3;
  const wander = (purpose: string): number[] => {
    const stream = dice(seed, purpose);
    return Array.from({ length: knots }, () => gauge.wanderSdDeg * stream.normal());
  };
  const gust = dice(seed, 'gust');
  const gustTicks = [0];
  const gusts = [0];
  for (let tick = 0; tick <= limitTicks;) {
    tick += 200 + Math.floor(gust.uniform() * 200);
    gustTicks.push(tick);
    gusts.push(roll.disturbanceSd * gust.normal());
  }
  return {
    leftMismatchDeg: onLeft ? mismatch : 0,
    rightMismatchDeg: onLeft ? 0 : mismatch,
    leftWander: wander('left pointer'),
    rightWander: wander('right pointer'),
    perDeg: 1 / gauge.wanderStepDeg,
    gustTicks, gusts,
    trim: roll.trim * (2 * dice(seed, 'trim').uniform() - 1),
  };
}

/** Value of a wander table at a travel, deg. */
export function wanderAt(table: readonly number[], perDeg: number, deg: number): number {
  const x = deg * perDeg;
  const k = Math.min(table.length - 2, Math.max(0, Math.floor(x)));
  const low = table[k] as number;
  return low + ((table[k + 1] as number) - low) * (x - k);
}
