/**
 * Units and the grid of time. Inside the model: SI for flight, degrees for flaps, whole ticks for time.
 * Sources: knot and foot are exact by definition (international nautical mile 1852 m, international foot 0.3048 m);
 * standard gravity 9.80665 m/s2 (ISO 80000-3).
 */
export const KT = 1852 / 3600;
export const FT = 0.3048;
export const G0 = 9.80665;
export const PI = 3.141592653589793;
export const RAD = PI / 180;

/** Ticks a second, and the length of one in seconds. Part of the model: changing it makes another model version. */
export const TICKS_PER_S = 100;
export const DT = 0.01;

/**
 * Whole ticks of a time in seconds, rounded to the nearest: 0.29 * 100 is 28.999..., so floor would be wrong.
 * @throws RangeError when the time is off the grid of hundredths by more than 1e-9 of a tick.
 */
export function ticksOf(seconds: number): number {
  const exact = seconds * TICKS_PER_S;
  const ticks = Math.floor(exact + 0.5);
  if (!(Math.abs(exact - ticks) <= 1e-9)) {
    throw new RangeError(`${seconds} s is not a whole number of hundredths of a second`);
  }
  return ticks;
}

/** Seconds of a tick count. Divided, never accumulated. */
export const secondsOf = (ticks: number): number => ticks / TICKS_PER_S;

/** `x` held inside [low, high]. */
export const clamp = (x: number, low: number, high: number): number => (x < low ? low : x > high ? high : x);
