/** Log-normal splits, some of them censored: the plain fit by maximum likelihood. */
import { lnNormalTail, LN_SQRT_2PI, normalCdf, normalDensity, normalHazard, Z90 } from './normal.js';
import { maximise } from './maximise.js';
import type { Observation } from './survival.js';

export interface LogNormal {
  readonly mu: number;
  readonly sigma: number;
}

/** Density of exp(N(mu, sigma)) at x > 0. */
export const logNormalDensity = ({ mu, sigma }: LogNormal, x: number): number => normalDensity((Math.log(x) - mu) / sigma) / (sigma * x);
/** Chance at or below x > 0. */
export const logNormalCdf = ({ mu, sigma }: LogNormal, x: number): number => normalCdf((Math.log(x) - mu) / sigma);

/** ln likelihood of observations with values above 0. */
export function logNormalLikelihood({ mu, sigma }: LogNormal, observations: readonly Observation[]): number {
  return observations.reduce((sum, { value, event }) => sum + lnShare(Math.log(value), mu, sigma, event), 0);
}

/** One observation's part: ln density of an event, ln chance above of a censored one. */
export function lnShare(lnValue: number, mu: number, sigma: number, event: boolean): number {
  const z = (lnValue - mu) / sigma;
  return event ? -lnValue - Math.log(sigma) - LN_SQRT_2PI - z * z / 2 : lnNormalTail(z);
}

/** Slope of `lnShare` in mu and in ln sigma. */
export function lnShareSlope(lnValue: number, mu: number, sigma: number, event: boolean): readonly [number, number] {
  const z = (lnValue - mu) / sigma;
  if (event) return [z / sigma, z * z - 1];
  const hazard = normalHazard(z);
  return [hazard / sigma, hazard * z];
}

export interface LogNormalFit extends LogNormal {
  /** In the unit of the values. */
  readonly median: number;
  readonly q90: number;
  readonly logLik: number;
}

/** @param observations values above 0 @returns null with fewer than two different events: nothing to fit a spread to */
export function fitLogNormal(observations: readonly Observation[]): LogNormalFit | null {
  const logs = observations.map(({ value, event }) => ({ ln: Math.log(value), event }));
  const events = logs.filter(({ event }) => event).map(({ ln }) => ln);
  if (new Set(events).size < 2 || logs.some(({ ln }) => !Number.isFinite(ln))) return null;
  const mean = events.reduce((sum, one) => sum + one, 0) / events.length;
  const spread = Math.sqrt(events.reduce((sum, one) => sum + (one - mean) ** 2, 0) / events.length);
  const { x: [mu = 0, lnSigma = 0], value, flat } = maximise((at, slope) => {
    const [m, k] = at as [number, number];
    const sigma = Math.exp(k);
    slope.fill(0);
    let sum = 0;
    for (const { ln, event } of logs) {
      sum += lnShare(ln, m, sigma, event);
      const [inMu, inSigma] = lnShareSlope(ln, m, sigma, event);
      (slope[0] as number) += inMu;
      (slope[1] as number) += inSigma;
    }
    return sum;
  }, [mean, Math.log(spread)]);
  if (!flat) return null;
  const sigma = Math.exp(lnSigma);
  return { mu, sigma, median: Math.exp(mu), q90: Math.exp(mu + Z90 * sigma), logLik: value };
}
