/**
 * The gear horn as a pure rule: numbers in, one number out. Structure after 14 CFR 25.729(e)(2)-(4) and 125.187(a):
 * sounds while a landing is attempted and the gear is not locked down; no ready way to silence it in the landing bands.
 */
/** Where the rule of an airframe changes; the lever angles are those below which it sounds, with both engines live and with one. */
export interface HornThresholds {
  /** Up to this flap position the horn depends on height and may be silenced, deg. */
  readonly takeOffBandDeg: number;
  /** Above this flap position it sounds at any lever angle, deg. */
  readonly landingBandDeg: number;
  readonly bothLiveTlaDeg: number;
  readonly oneLiveTlaDeg: number;
  /** Height above ground below which the take-off band counts, ft. */
  readonly heightFt: number;
}

/**
 * The lever angle below which the horn would sound now, deg; null where no lever angle decides: the gear is locked, the
 * flaps are in the landing band (it sounds at any), or the aeroplane is too high for the take-off band.
 * @param liveEngines 0 to 2 @param gearLocked 1 locked down, less while it moves or is up @param heightFt above the ground
 */
export function hornAngle(t: HornThresholds, flapDeg: number, liveEngines: number, gearLocked: number, heightFt: number): number | null {
  if (gearLocked >= 1 || flapDeg > t.landingBandDeg) return null;
  if (flapDeg <= t.takeOffBandDeg && heightFt >= t.heightFt) return null;
  return liveEngines >= 2 ? t.bothLiveTlaDeg : t.oneLiveTlaDeg;
}

/**
 * The horn by itself, before any silencing.
 * @param flapDeg the further-out of the two sides' warning sensors: a stuck-low side must not hide the landing band
 * @param tlaDeg the lower lever of a live engine
 * @param liveEngines 0 to 2 @param gearLocked 1 locked down, less while it moves or is up @param heightFt above the ground
 * @returns 0 silent, 1 sounds and may be silenced, 2 sounds and may not
 */
export function hornRule(
  t: HornThresholds, flapDeg: number, tlaDeg: number, liveEngines: number, gearLocked: number, heightFt: number,
): 0 | 1 | 2 {
  if (gearLocked >= 1) return 0;
  if (flapDeg > t.landingBandDeg) return 2;
  const retarded = tlaDeg < (liveEngines >= 2 ? t.bothLiveTlaDeg : t.oneLiveTlaDeg);
  if (!retarded) return 0;
  if (flapDeg > t.takeOffBandDeg) return 2;
  return heightFt < t.heightFt ? 1 : 0;
}
