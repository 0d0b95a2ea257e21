/**
 * Proper scores of what a trainee says about a run before any feedback: the best score on average is got by saying what
 * one believes. Smaller is better. Source: Gneiting and Raftery, Journal of the American Statistical Association 102 (2007) 359.
 */

/** Brier score of a stated chance: squared distance from what happened. @param said 0 to 1 @returns 0 to 1 */
export const brier = (said: number, happened: boolean): number => (said - (happened ? 1 : 0)) ** 2;

/**
 * Interval score of a stated range: its width, and a fine for a value outside.
 * @param lo @param hi ends of the range, lo <= hi @param value what it was, same unit
 * @param level how often the range is meant to hold it, 0 to 1, both excluded: .8, .9
 * @throws RangeError for a range whose ends are the wrong way round, or another level
 */
export function intervalScore(lo: number, hi: number, value: number, level: number): number {
  if (!(lo <= hi && level > 0 && level < 1)) throw new RangeError(`a range from ${lo} to ${hi} at ${level}`);
  return hi - lo + 2 / (1 - level) * (Math.max(0, lo - value) + Math.max(0, value - hi));
}
