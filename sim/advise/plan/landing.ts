/** Landing with a part setting: how much longer, by the squares of the speeds, and one factor on top, never two. */

/**
 * Factor on an assessed landing distance at the time of arrival: the distance available is at least 115 % of it
 * (AMC1 NCC.OP.225(e)(1); FAA policy of 2006). The dispatch factor, 1 / 0.60 (14 CFR 121.195(b)), is for another time and is not
 * multiplied in.
 */
export const ARRIVAL_FACTOR = 1.15;

/** Landing distances by the squares of the airspeeds alone: wind, slope and state of the runway are not in them. */
export interface Landing {
  /** Speed over the threshold with the setting that is landed with, and with the last setting, kt. */
  readonly speedKt: number;
  readonly lastKt: number;
  /** Square of the one over square of the other: the energy that has to go. */
  readonly ratio: number;
  readonly longerPct: number;
  /** Distance with the last setting from the aeroplane's own papers, with this one, and with the factor; null where none is given. */
  readonly lastM: number | null;
  readonly partM: number | null;
  readonly factoredM: number | null;
  readonly runwayM: number | null;
  /** null: not to be said without both figures. */
  readonly fits: boolean | null;
}

/** @param speedKt above 0 @param lastKt above 0 */
export function landingOf(speedKt: number, lastKt: number, lastM: number | null, runwayM: number | null): Landing {
  const ratio = (speedKt * speedKt) / (lastKt * lastKt);
  const partM = lastM === null ? null : lastM * ratio;
  const factoredM = partM === null ? null : partM * ARRIVAL_FACTOR;
  return {
    speedKt, lastKt, ratio, longerPct: 100 * (ratio - 1), lastM, partM, factoredM, runwayM,
    fits: factoredM === null || runwayM === null ? null : factoredM <= runwayM,
  };
}
