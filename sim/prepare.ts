/** From an airframe file to the constants of the tick, once before a run. */
import { driveNumbers, type DriveNumbers } from './drive/numbers.js';
import type { Airframe } from './files/airframe.js';
import { flightNumbers, type FlightNumbers } from './flight/numbers.js';
import { DT } from './units.js';
import type { HornThresholds } from './warning/horn.js';

export interface Prepared {
  readonly drive: DriveNumbers;
  readonly flight: FlightNumbers;
  readonly horn: HornThresholds;
  readonly gearPerTick: number;
}

/** Prepares an airframe at one mass, t. */
export function prepare(airframe: Airframe, massT: number): Prepared {
  const { wing, engines, drag, settings } = airframe;
  const clMax = [
    ...settings.map((setting) => ({ flapDeg: setting.deg, cl: setting.clMax })),
    { flapDeg: airframe.drive.stopDeg, cl: wing.clMaxAtStop },
  ].filter((knot, index, all) => index === 0 || knot.flapDeg > (all[index - 1]?.flapDeg ?? -1));
  return {
    drive: driveNumbers(airframe.drive, airframe.heat),
    flight: flightNumbers({ ...wing, ...engines, ...drag, clMax }, airframe.roll, massT),
    horn: airframe.horn,
    gearPerTick: DT / airframe.gear.transitS,
  };
}
