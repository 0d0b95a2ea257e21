/** Fuel in steady level flight, from drag and the engines' own rule: for a hold, and a mile of diverting. */
import { tasOfCas } from '../../flight/atmosphere.js';
import { drag, dynamicPressure } from '../../flight/motion.js';
import type { FlightNumbers } from '../../flight/numbers.js';
import { FT, KT } from '../../units.js';

export interface Steady {
  readonly speedKt: number;
  readonly altitudeFt: number;
  readonly flapDeg: number;
  /** 0 in, 1 out. */
  readonly leadingEdge: number;
  /** 0 up, 1 down. */
  readonly gear: number;
  readonly liveEngines: number;
}

/** Fuel flow of all live engines, kg/h. */
export function flowKgPerH(n: FlightNumbers, { speedKt, altitudeFt, flapDeg, leadingEdge, gear, liveEngines }: Steady): number {
  const heightM = altitudeFt * FT;
  const q = dynamicPressure(tasOfCas(speedKt, heightM), heightM);
  const thrustN = drag(n, { leadingEdge, gear, latched: { leftLive: 1, rightLive: liveEngines === 2 ? 1 : 0 } }, flapDeg, flapDeg, q, n.weightN);
  return 3600 * (thrustN * n.fuelKgPerNs + n.fuelBaseKgPerS * liveEngines);
}

/** Speed over the ground, kt: true airspeed less the head wind, and never less than one. */
export const groundKt = (speedKt: number, altitudeFt: number, windKt: number): number =>
  Math.max(1, tasOfCas(speedKt, altitudeFt * FT) / KT - windKt);

/** Fuel for a mile over the ground, kg/NM. */
export const fuelKgPerNm = (n: FlightNumbers, at: Steady, windKt: number): number =>
  flowKgPerH(n, at) / groundKt(at.speedKt, at.altitudeFt, windKt);
