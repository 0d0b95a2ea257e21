/** A first scenario on an airframe that is being written: one hold to its landing setting, in a place it can be flown. */
import type { Airframe } from '../../../../sim/files/index.js';
import { speedsOf } from '../../../../sim/index.js';

/** Between empty and landing mass: what an aeroplane on its way in may weigh. */
const PART_OF_LANDING = 0.9;

/** The text of the scenario, with the airframe in full. */
export function holdOn(airframe: Airframe): string {
  const { mass, settings, landingDeg, limits } = airframe;
  const massT = Math.round(Math.max(mass.emptyT, PART_OF_LANDING * mass.landingT) * 10) / 10;
  const from = settings[1]?.deg === landingDeg ? 0 : settings[1]?.deg ?? 0;
  const wanted = speedsOf(airframe, massT, false).settings.find(({ settingDeg }) => settingDeg === from)?.manoeuvreKt ?? 0;
  const most = Math.min(limits.standbyDriveKt, ...settings.filter(({ deg, limitKt }) => deg <= landingDeg && limitKt !== null).map(({ limitKt }) => limitKt ?? Infinity));
  const scenario = {
    format: 1, title: `A hold on ${airframe.title}`,
    brief: `Level at 5600 ft, flaps at ${from}. Lever to ${landingDeg}, guard open, arm, drive to ${landingDeg}. If the pointers part, let go and call it.`,
    airframe,
    start: { massT, altitudeFt: 5600, groundFt: 700, speedKt: Math.min(Math.ceil(wanted), most), flapDeg: from },
    task: { settings: [landingDeg], limitS: 300 },
    faults: [], events: [],
  };
  return `${JSON.stringify(scenario, null, 2)}\n`;
}
