/** The normal distribution to full accuracy, tails included. The quantile is `normalQuantile` of sim/portable.ts (AS 241). */

/** 1 / sqrt(2 pi) and half its logarithm's inverse. */
export const INV_SQRT_2PI = 0.3989422804014327;
/** ln sqrt(2 pi). */
export const LN_SQRT_2PI = 0.9189385332046728;
/** Quantiles that stand in every report: .975 and .9. */
export const Z975 = 1.959963984540054;
export const Z90 = 1.2815515655446004;

/** Density of the standard normal. */
export const normalDensity = (z: number): number => INV_SQRT_2PI * Math.exp(-z * z / 2);

/** Where the series of the middle gives way to the continued fraction of the tail. */
const TAIL = 3;

/** Chance above `z`, any z; relative error below 1e-13 also far out. */
export function normalTail(z: number): number {
  if (z < 0) return 1 - normalTail(-z);
  return z < TAIL ? 0.5 - normalDensity(z) * series(z) : normalDensity(z) / fraction(z);
}

/** Chance at or below `z`. */
export const normalCdf = (z: number): number => normalTail(-z);

/** ln of the chance above `z`: finite where the chance itself is too small for a number. */
export const lnNormalTail = (z: number): number =>
  (z < TAIL ? Math.log(normalTail(z)) : -z * z / 2 - LN_SQRT_2PI - Math.log(fraction(z)));

/** Hazard of the standard normal: density over tail. */
export const normalHazard = (z: number): number => (z < TAIL ? normalDensity(z) / normalTail(z) : fraction(z));

/** (cdf - 1/2) / density as z + z^3/3 + z^5/15 + ... (Marsaglia, Journal of Statistical Software 11(4), 2004). */
function series(z: number): number {
  let term = z;
  let sum = z;
  for (let k = 3; term > 1e-18 * sum; k += 2) sum += term *= z * z / k;
  return sum;
}

/** Density over tail as z + 1/(z + 2/(z + 3/(z + ...))) (Laplace). */
function fraction(z: number): number {
  let down = z;
  for (let k = 90; k > 0; k -= 1) down = z + k / down;
  return down;
}
