/**
 * The marks of the speed strip, each by its own source: limit, lowest, manoeuvre. Speeds are calibrated, kt; stall
 * speeds take CAS for EAS (less than 2 kt apart in the range of the model).
 */
import type { Airframe } from './files/airframe.js';
import type { Fixed } from './fixed.js';
import { clMax, stallKt } from './flight/roll.js';
import { sin } from './portable.js';
import type { State } from './state.js';
import { PI } from './units.js';

/** What a limit speed is the limit of. A side counts where it truly stands; the drive while its contactor is closed. */
export type LimitSource = 'lever' | 'leftSide' | 'rightSide' | 'leadingEdge' | 'drive' | 'gear' | 'none';

/** A limit speed that holds now, calibrated; Infinity where none does. */
export interface Limit {
  readonly kt: number;
  readonly source: LimitSource;
  /** Setting it is the limit of, deg; null for other sources. */
  readonly settingDeg: number | null;
}

/** A side counts for the next setting once it is this far past one, deg: pointers of a rigged gauge stand that far off. */
const PAST_DEG = 0.5;

/** The setting whose limit holds with a side at `deg`: the lowest at or above it. */
function settingOver(airframe: Airframe, deg: number): Airframe['settings'][number] | undefined {
  if (deg <= PAST_DEG) return airframe.settings[0];
  for (const setting of airframe.settings) if (setting.deg >= deg - PAST_DEG) return setting;
  return airframe.settings[airframe.settings.length - 1];
}

function settingOfLever(airframe: Airframe, leverDeg: number): Airframe['settings'][number] | undefined {
  for (const setting of airframe.settings) if (setting.deg === leverDeg) return setting;
  return undefined;
}

const gearKt = (s: State, { gear }: Airframe): number => (s.gear <= 0 ? Infinity : s.gear < 1 ? gear.operateKt : gear.extendedKt);

/** The lowest of the limits that hold now, kt; Infinity where there is none. Makes nothing: it may be asked every tick. */
export function limitKtNow(s: State, airframe: Airframe): number {
  return Math.min(
    settingOfLever(airframe, s.latched.flapLeverDeg)?.limitKt ?? Infinity,
    settingOver(airframe, s.leftDeg)?.limitKt ?? Infinity,
    settingOver(airframe, s.rightDeg)?.limitKt ?? Infinity,
    s.leadingEdge > 0 ? airframe.limits.leadingEdgeKt : Infinity,
    s.latched.contactor !== 0 ? airframe.limits.standbyDriveKt : Infinity,
    gearKt(s, airframe),
  );
}

/** The lowest limit that can hold at any time, kt: below it nobody need ask which one does. */
export const lowestLimitKt = ({ settings, limits, gear }: Airframe): number => Math.min(
  limits.leadingEdgeKt, limits.standbyDriveKt, gear.operateKt, gear.extendedKt, ...settings.map(({ limitKt }) => limitKt ?? Infinity),
);

/** The lowest of the limits that hold now, and what it is the limit of: lever, sides, leading edge, drive, gear; the first of equals. */
export function limitNow(s: State, airframe: Airframe): Limit {
  const kt = limitKtNow(s, airframe);
  if (kt === Infinity) return { kt, source: 'none', settingDeg: null };
  const lever = settingOfLever(airframe, s.latched.flapLeverDeg);
  if (lever?.limitKt === kt) return { kt, source: 'lever', settingDeg: lever.deg };
  const left = settingOver(airframe, s.leftDeg);
  if (left?.limitKt === kt) return { kt, source: 'leftSide', settingDeg: left.deg };
  const right = settingOver(airframe, s.rightDeg);
  if (right?.limitKt === kt) return { kt, source: 'rightSide', settingDeg: right.deg };
  if (s.leadingEdge > 0 && airframe.limits.leadingEdgeKt === kt) return { kt, source: 'leadingEdge', settingDeg: null };
  return { kt, source: s.latched.contactor !== 0 && airframe.limits.standbyDriveKt === kt ? 'drive' : 'gear', settingDeg: null };
}

/** Stall warning above a stall speed: 3 kt or 3 %, whichever is more (14 CFR 25.207(d)). */
export const warningKt = (stall: number): number => stall + Math.max(3, 0.03 * stall);

/** Stall warning of the side least out with the real leading edge, raised by the load factor of the bank, kt. */
export function lowestNow(s: State, fixed: Fixed): number {
  const stall = stallKt(fixed.flight, clMax(fixed.flight, Math.min(s.leftDeg, s.rightDeg), s.leadingEdge));
  const cosine = Math.max(0.1, sin(PI / 2 - s.bankRad));
  return warningKt(stall) / Math.sqrt(cosine);
}

/** Manoeuvre speed of a setting without ice, kt, by the airframe's rule. @throws RangeError for a setting it does not have */
export function manoeuvreOf(airframe: Airframe, flight: Fixed['flight'], settingDeg: number): number {
  const setting = airframe.settings.find((one) => one.deg === settingDeg);
  if (setting === undefined) throw new RangeError(`${settingDeg} is no setting of ${airframe.name}`);
  if (airframe.speedRule === 'factor') return (setting.manoeuvreFactor ?? 1) * stallKt(flight, setting.clMax);
  const last = airframe.settings[airframe.settings.length - 1] ?? setting;
  return airframe.referenceFactor * stallKt(flight, last.clMax) + (setting.manoeuvreIncrementKt ?? 0);
}

/** Manoeuvre speed of a setting, kt. */
export const manoeuvreKt = (airframe: Airframe, fixed: Fixed, settingDeg: number, icing: boolean): number =>
  manoeuvreOf(airframe, fixed.flight, settingDeg) + (icing ? airframe.limits.iceKt : 0);
