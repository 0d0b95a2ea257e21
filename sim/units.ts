/**
 * Units and the grid of time. Inside the model: SI for flight, degrees for flaps, whole ticks for time.
 * Sources: knot and foot are exact by definition (international nautical mile 1852 m, international foot 0.3048 m);
 * standard gravity 9.80665 m/s2 (ISO 80000-3).
 */
/** Metres a second in a knot, exact. */
export const KT = 1852 / 3600;
/** Metres in a foot, exact. */
export const FT = 0.3048;
export const G0 = 9.80665;
export const PI = 3.141592653589793;
export const RAD = PI / 180;

/** Ticks a second, and the length of one in seconds. Part of the model: changing it makes another model version. */
export const TICKS_PER_S = 100;
export const DT = 0.01;

/** Distance from the grid that is still a rounding of it, ticks. */
const GRID_SLACK = 1e-9;

/** Whether a time in seconds lies on the grid of ticks, hundredths of a second. */
export function isOnGrid(seconds: number): boolean {
  const exact = seconds * TICKS_PER_S;
  return Math.abs(exact - Math.floor(exact + 0.5)) <= GRID_SLACK;
}

/**
 * Whole ticks of a time in seconds, rounded to the nearest: 0.29 * 100 is 28.999..., so floor would be wrong.
 * @throws RangeError when the time is off the grid of hundredths by more than 1e-9 of a tick
 */
export function ticksOf(seconds: number): number {
  if (!isOnGrid(seconds)) throw new RangeError(`${seconds} s is not a whole number of hundredths of a second`);
  return Math.floor(seconds * TICKS_PER_S + 0.5);
}

/** Seconds of a tick count. Divided, never accumulated. */
export const secondsOf = (ticks: number): number => ticks / TICKS_PER_S;

/** `x` held inside [low, high]. */
export const clamp = (x: number, low: number, high: number): number => (x < low ? low : x > high ? high : x);
