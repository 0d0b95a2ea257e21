/** When the ring fills: a least wait and then a flat hazard, so that no moment is better to guess than another. */

const LEAST_S = 1;
const MEAN_S = 0.9;
const MOST_S = 4;
/** A ring that has been full for so long was not seen, s. */
export const LATEST_S = 3;

/** @param part 0 to 1, drawn; a fair one unless a test brings another */
export function changesAfterS(part = (crypto.getRandomValues(new Uint32Array(1))[0] as number) / 2 ** 32): number {
  return Math.min(LEAST_S - MEAN_S * Math.log(1 - part), MOST_S);
}
