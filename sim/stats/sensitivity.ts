/** Signal detection: how well two cases are told apart, and how readily one of them is claimed. */
import { normalQuantile } from '../portable.js';
import { normalDensity } from './normal.js';

export interface Sensitivity {
  /** d': distance of the two cases in standard deviations. */
  readonly d: number;
  /** c: above 0 lets go late or seldom, below 0 early. */
  readonly criterion: number;
  /** ln beta, c times d'. */
  readonly lnBeta: number;
}

/** @param hitRate @param falseRate each between 0 and 1, both excluded. Source: Stanislaw and Todorov 1999, Behavior Research Methods 31:137. */
export function sensitivity(hitRate: number, falseRate: number): Sensitivity {
  const [h, f] = [normalQuantile(hitRate), normalQuantile(falseRate)];
  return { d: h - f, criterion: -(h + f) / 2, lnBeta: (f * f - h * h) / 2 };
}

export interface CountedSensitivity extends Sensitivity {
  readonly hitRate: number;
  readonly falseRate: number;
  /** Standard error of d' in large samples (Gourevitch and Galanter 1967, from memory). */
  readonly se: number;
}

/**
 * From counts, with the log-linear correction (half a hit and half a false one, one trial more), applied always.
 * @param hits of `signals` @param falses of `noises`; whole, counts above 0
 * Source: Hautus 1995, Behavior Research Methods 27:46.
 */
export function logLinear(hits: number, falses: number, signals: number, noises: number): CountedSensitivity {
  if (!(hits >= 0 && hits <= signals && falses >= 0 && falses <= noises)) throw new RangeError(`${hits} of ${signals}, ${falses} of ${noises}`);
  const hitRate = (hits + 0.5) / (signals + 1);
  const falseRate = (falses + 0.5) / (noises + 1);
  const share = (rate: number, n: number): number => rate * (1 - rate) / (n * normalDensity(normalQuantile(rate)) ** 2);
  return { hitRate, falseRate, ...sensitivity(hitRate, falseRate), se: Math.sqrt(share(hitRate, signals) + share(falseRate, noises)) };
}
