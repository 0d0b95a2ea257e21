/** What a plan is worked out from by hand: the tables an aeroplane's papers would hold, at the weight and the height of the plan. */
import { pressureRatio, soundSpeed, tasOfCas } from '../../flight/atmosphere.js';
import { drag, dynamicPressure } from '../../flight/motion.js';
import { thrustAvailable } from '../../flight/thrust.js';
import { prepare, type Prepared } from '../../prepare.js';
import { FT, KT } from '../../units.js';
import { speedsOf } from '../speeds.js';
import { flowKgPerH, groundKt, type Steady } from './fuel.js';
import { rateAt } from './motor.js';
import type { PlanRequest } from './request.js';

/** One setting in the tables: calibrated speeds, gear up. */
export interface PaperRow {
  readonly settingDeg: number;
  readonly name: string;
  readonly stallKt: number;
  /** Factor on the stall speed, or increment on the reference of the last setting, by the airframe's rule. */
  readonly manoeuvreBy: number;
  readonly limitKt: number | null;
  /** Rate of the drive at that position and its manoeuvre speed, outward, deg/s. */
  readonly rateDegPerS: number;
  /** Level at its manoeuvre speed, leading edge out with any flap: fuel flow there, and for a mile in still air at the height of the diversion. */
  readonly flowKgPerH: number;
  readonly kgPerNm: number;
  /** Levers at idle, level: kt lost a second. */
  readonly slowsKtPerS: number;
}

/** Made by `papersOf`: rows from flap 0 outward. */
export interface Papers {
  readonly rows: readonly PaperRow[];
  /** Flaps up, leading edge out: what a diversion behind the first touch burns. */
  readonly edgeOut: { readonly flowKgPerH: number; readonly kgPerNm: number };
}

/** What an aeroplane's own papers would tell at this mass and height: speeds in kt, flows in kg/h and kg/NM, worked from the airframe alone. */
export function papersOf({ airframe, massT, icing, altitudeFt, divertFt, liveEngines }: PlanRequest): Papers {
  const prepared = prepare(airframe, massT);
  const { flight, drive } = prepared;
  const { settings } = speedsOf(airframe, massT, icing);
  const burn = (of: Omit<Steady, 'altitudeFt'>): { flowKgPerH: number; kgPerNm: number } => ({
    flowKgPerH: flowKgPerH(flight, { ...of, altitudeFt }),
    kgPerNm: flowKgPerH(flight, { ...of, altitudeFt: divertFt }) / groundKt(of.speedKt, divertFt, 0),
  });
  const rows = settings.map(({ settingDeg, name, stallKt, manoeuvreKt, limitKt }, index): PaperRow => {
    const setting = airframe.settings[index];
    const leadingEdge = settingDeg > 0 ? 1 : 0;
    return {
      settingDeg, name, stallKt, limitKt,
      manoeuvreBy: (airframe.speedRule === 'factor' ? setting?.manoeuvreFactor : setting?.manoeuvreIncrementKt) ?? 0,
      rateDegPerS: rateAt(drive, manoeuvreKt, settingDeg),
      ...burn({ speedKt: manoeuvreKt, flapDeg: settingDeg, leadingEdge, gear: 0, liveEngines }),
      slowsKtPerS: slowsKtPerS(prepared, { speedKt: manoeuvreKt, altitudeFt, flapDeg: settingDeg, leadingEdge, gear: 0, liveEngines }),
    };
  });
  const up = settings[0];
  return { rows, edgeOut: burn({ speedKt: up?.manoeuvreKt ?? 0, flapDeg: 0, leadingEdge: 1, gear: 0, liveEngines }) };
}

/** Kt lost a second in level flight with the levers at idle. */
export function slowsKtPerS({ flight }: Prepared, { speedKt, altitudeFt, flapDeg, leadingEdge, gear, liveEngines }: Steady): number {
  const heightM = altitudeFt * FT;
  const tasMps = tasOfCas(speedKt, heightM);
  const dragN = drag(flight, { leadingEdge, gear, latched: { leftLive: 1, rightLive: liveEngines === 2 ? 1 : 0 } }, flapDeg, flapDeg, dynamicPressure(tasMps, heightM), flight.weightN);
  const idleN = thrustAvailable(flight, pressureRatio(heightM), tasMps / soundSpeed(heightM)) * (flight.leverMap[0]?.fraction ?? 0) * liveEngines;
  // Calibrated falls as true does, in the proportion of the two.
  return (dragN - idleN) / flight.massKg / KT * (speedKt * KT / tasMps);
}
