/** What an airframe comes to on the drive, for whoever writes one: rates, times, split rates, the horn's angles. */
import type { Airframe } from '../../files/airframe.js';
import { tasOfCas } from '../../flight/atmosphere.js';
import { dynamicPressure } from '../../flight/motion.js';
import { prepare } from '../../prepare.js';
import { FT } from '../../units.js';
import { hornAngle } from '../../warning/horn.js';
import { speedsOf, type Speeds } from '../speeds.js';
import { relationsOf, type Relation } from './relations.js';
import { oneSideRate, steadyRate, travelS } from './rates.js';

/** The standby drive at one airspeed, both sides on it and steadily running: starting and stopping take a fraction of a second more. */
export interface DriveAtSpeed {
  /** Calibrated, kt. */
  readonly speedKt: number;
  /** Steady rate at each setting while extending, deg/s, in the order of the settings; 0: the limiter has tripped. */
  readonly ratesDegPerS: readonly number[];
  /** From flap 0 to the landing setting of the standby drive, s; null where the limiter trips on the way. */
  readonly toLandingS: number | null;
}

/** How the sides part at the manoeuvre speed of a setting while the drive runs on from it, deg/s. */
export interface SplitRates {
  readonly settingDeg: number;
  readonly speedKt: number;
  /** One side stopped: the other carries the drive alone and is a little quicker than two. */
  readonly stopsDegPerS: number;
  /** One side at half the rate. */
  readonly halfDegPerS: number;
  /** One side driven back at the rate of the other. */
  readonly backDegPerS: number;
}

/** One band of flap positions and the rule of the gear horn in it, gear not locked down. */
export interface HornRow {
  readonly fromDeg: number;
  readonly toDeg: number;
  /** Below this lever angle it sounds, deg; null: at any. */
  readonly bothLiveDeg: number | null;
  readonly oneLiveDeg: number | null;
  /** Only below this height above ground, ft; null: at any. */
  readonly belowFt: number | null;
  readonly silenceable: boolean;
}

/** Speeds are those of `massT` without ice; drive and splits lie at `altitudeFt` above sea level. Relations are worked at the masses that their rules name. */
export interface AirframeFigures {
  readonly massT: number;
  readonly altitudeFt: number;
  readonly speeds: Speeds;
  readonly drive: readonly DriveAtSpeed[];
  readonly splits: readonly SplitRates[];
  readonly horn: readonly HornRow[];
  readonly relations: readonly Relation[];
}

const STEP_KT = 20;

/**
 * @param massT between empty and take-off mass @param altitudeFt height of the drive tables above sea level
 * @throws RangeError for a mass that is not positive
 */
export function airframeFigures(airframe: Airframe, massT: number, altitudeFt: number): AirframeFigures {
  const { drive: n } = prepare(airframe, massT);
  const { settings, landingDeg, limits } = airframe;
  const speeds = speedsOf(airframe, massT, false);
  const pressure = (kt: number): number => dynamicPressure(tasOfCas(kt, altitudeFt * FT), altitudeFt * FT);
  const lowestKt = Math.floor(Math.min(...speeds.settings.map(({ manoeuvreKt }) => manoeuvreKt)) / STEP_KT) * STEP_KT;
  const steps = Math.max(0, Math.floor((limits.standbyDriveKt - lowestKt) / STEP_KT));
  const atSpeeds = [...Array.from({ length: steps + 1 }, (_, at) => lowestKt + at * STEP_KT), limits.standbyDriveKt];
  return {
    massT, altitudeFt, speeds,
    drive: [...new Set(atSpeeds)].map((speedKt) => ({
      speedKt, ratesDegPerS: settings.map(({ deg }) => steadyRate(n, pressure(speedKt), deg, 'extend')), toLandingS: travelS(n, pressure(speedKt), 0, landingDeg),
    })),
    splits: speeds.settings.slice(0, -1).map(({ settingDeg, manoeuvreKt }) => {
      const qPa = pressure(manoeuvreKt);
      const both = steadyRate(n, qPa, settingDeg, 'extend');
      return { settingDeg, speedKt: manoeuvreKt, stopsDegPerS: oneSideRate(n, qPa, settingDeg), halfDegPerS: both / 2, backDegPerS: 2 * both };
    }),
    horn: hornRows(airframe),
    relations: relationsOf(airframe),
  };
}

/** Bands of the horn from flap 0 to the stop. */
function hornRows({ horn, drive: { stopDeg } }: Airframe): HornRow[] {
  const ends = [0, horn.takeOffBandDeg, horn.landingBandDeg, stopDeg];
  return ends.slice(1).flatMap((toDeg, at): HornRow[] => {
    const fromDeg = ends[at] ?? 0;
    if (fromDeg >= toDeg) return [];
    const inside = (fromDeg + toDeg) / 2;
    const [both, one] = [2, 1].map((live) => hornAngle(horn, inside, live, 0, -Infinity));
    return [{ fromDeg, toDeg, bothLiveDeg: both ?? null, oneLiveDeg: one ?? null, belowFt: at === 0 ? horn.heightFt : null, silenceable: at === 0 }];
  });
}
