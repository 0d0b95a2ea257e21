/** A margin where it may be flown: the speed between the least to fly a setting at and what flaps and drive allow. */
import { marginOf, speedsOf, type JudgedTrial, type MarginPlace, type MarginRow } from '../../../sim/index.js';

export interface Margin {
  /** As asked for, its speed brought inside. */
  readonly place: MarginPlace;
  readonly fromKt: number;
  readonly toKt: number;
  /** null: fewer than 20 decided runs. */
  readonly rows: readonly MarginRow[] | null;
}

export function marginAt(trials: readonly JudgedTrial[], seenDeg: number, flownOn: string, wish: MarginPlace): Margin {
  const { airframe, massT, flapDeg } = wish;
  const at = speedsOf(airframe, massT, false).settings.find(({ settingDeg }) => settingDeg === flapDeg);
  const toKt = Math.min(at?.limitKt ?? Infinity, airframe.limits.standbyDriveKt);
  const fromKt = Math.min(toKt, Math.ceil(at?.manoeuvreKt ?? 0));
  const place = { ...wish, speedKt: Math.min(toKt, Math.max(fromKt, wish.speedKt)) };
  return { place, fromKt, toKt, rows: marginOf(trials, seenDeg, flownOn, place) };
}
