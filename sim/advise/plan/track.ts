/** What is kept of an approach while it is flown: the way over the ground, the feeding of the motor, and its course. */
import type { Airframe } from '../../files/airframe.js';
import type { Fixed } from '../../fixed.js';
import { limitKtNow } from '../../marks.js';
import type { State } from '../../state.js';
import { FT } from '../../units.js';

/** One moment of the approach. */
export interface CoursePoint {
  readonly atS: number;
  /** Flown over the ground since the beginning, NM. */
  readonly groundNm: number;
  readonly altitudeFt: number;
  readonly speedKt: number;
  readonly flapDeg: number;
  readonly tlaDeg: number;
  /** 0 silent, 1 sounds and may be silenced, 2 sounds and may not. */
  readonly horn: 0 | 1 | 2;
  readonly motorOn: boolean;
  /** 0 up, 1 down and locked. */
  readonly gear: number;
  /** 1 is the cut-out. */
  readonly motorHeat: number;
  /** Burnt since the beginning. */
  readonly fuelKg: number;
}

export interface Track {
  /** As it is now. */
  state: State;
  /** Flown over the ground, and through the air, m. */
  groundM: number;
  airM: number;
  /** Ticks for which the motor was fed. */
  fedTicks: number;
  /** Lowest limit while the switch was away from off, since this was last put to Infinity, kt. */
  limitKt: number;
  readonly course: CoursePoint[];
}

/** A point is kept at this distance, ticks: half a second. */
const KEEP_EVERY = 50;

export const trackFrom = (state: State): Track => ({ state, groundM: 0, airM: 0, fedTicks: 0, limitKt: Infinity, course: [] });

/** @param windKt head wind, kt */
export function follow(track: Track, s: State, airframe: Airframe, fixed: Fixed, windKt: number): void {
  track.state = s;
  track.groundM += (s.distanceM - track.airM) - windKt * (1852 / 3600) * (s.tick > 0 ? 0.01 : 0);
  track.airM = s.distanceM;
  if (s.latched.contactor !== 0) track.fedTicks += 1;
  if (s.latched.drive !== 0) track.limitKt = Math.min(track.limitKt, limitKtNow(s, airframe));
  const last = track.course[track.course.length - 1];
  if (last !== undefined && s.tick % KEEP_EVERY !== 0 && last.horn === s.latched.horn) return;
  track.course.push({
    atS: s.tick / 100, groundNm: track.groundM / 1852, altitudeFt: s.heightM / FT, speedKt: s.casKt, flapDeg: s.driveDeg,
    tlaDeg: s.latched.leftLive === 1 ? s.leftTlaDeg : s.rightTlaDeg, horn: s.latched.horn as 0 | 1 | 2, motorOn: s.latched.contactor !== 0, gear: s.gear,
    motorHeat: s.motorHeat / fixed.drive.cutOut, fuelKg: s.fuelKg,
  });
}
