/**
 * A split that grows at a steady rate, and a watcher who lets go near theta + v t0: theta is what the eye needs, t0 the time
 * from there to the release. ln split ~ N(ln(theta + v t0), sigma). Here the plain fit by maximum likelihood: no lapse, no
 * prior, no lucky releases. What may be said of a person comes from race.ts.
 */
import { lnShare, lnShareSlope } from './log-normal.js';
import { maximise, type Summit } from './maximise.js';
import { normalCdf, Z90 } from './normal.js';

export interface Watcher {
  /** Split that the eye needs, deg. */
  readonly thetaDeg: number;
  /** Attention, reaction and device, s. */
  readonly t0S: number;
  /** Log-spread of splits. */
  readonly sigma: number;
}

/** Median split at release, deg. @param rateDegPerS growth of the split */
export const medianSplit = ({ thetaDeg, t0S }: Pick<Watcher, 'thetaDeg' | 't0S'>, rateDegPerS: number): number => thetaDeg + rateDegPerS * t0S;

/** Split below which nine in ten releases lie, deg. */
export const q90Split = (watcher: Watcher, rateDegPerS: number): number => medianSplit(watcher, rateDegPerS) * Math.exp(Z90 * watcher.sigma);

/** Chance to let go at or before a split, lapses apart. */
export const chanceBefore = (watcher: Watcher, rateDegPerS: number, limitDeg: number): number =>
  normalCdf(Math.log(limitDeg / medianSplit(watcher, rateDegPerS)) / watcher.sigma);

/** Fastest rate at which nine in ten let go before the limit, deg/s; null where none does or every rate does. */
export function v90({ thetaDeg, t0S, sigma }: Watcher, limitDeg: number): number | null {
  const rate = (limitDeg * Math.exp(-Z90 * sigma) - thetaDeg) / t0S;
  return rate > 0 && Number.isFinite(rate) ? rate : null;
}

/** A run with an onset that was not let go falsely: let go at `splitDeg`, or still held when it ended there. */
export interface RampRun {
  readonly rateDegPerS: number;
  readonly splitDeg: number;
  readonly event: boolean;
}

export interface RampFit extends Watcher {
  readonly logLik: number;
}

/** Below this a time or a threshold is nothing. */
const NOTHING = 1e-6;

/**
 * Maximum likelihood. theta or t0 may come out as 0, where the likelihood falls all the way from there.
 * @param runs rates and splits above 0
 * @returns null with fewer than three different events or fewer than two rates among them: three numbers cannot be told apart
 */
export function fitRamp(runs: readonly RampRun[]): RampFit | null {
  const events = runs.filter(({ event }) => event);
  if (new Set(events.map(({ splitDeg }) => splitDeg)).size < 3 || new Set(events.map(({ rateDegPerS }) => rateDegPerS)).size < 2) return null;
  const logs = runs.map(({ rateDegPerS, splitDeg, event }) => ({ rate: rateDegPerS, ln: Math.log(splitDeg), event }));
  const middle = Math.exp(events.reduce((sum, { splitDeg }) => sum + Math.log(splitDeg), 0) / events.length);
  const rate = Math.exp(events.reduce((sum, { rateDegPerS }) => sum + Math.log(rateDegPerS), 0) / events.length);
  const tops = [0.15, 0.5, 0.85].map((share) => maximise((at, slope) => likelihood(logs, at, slope), [Math.log(middle * share), Math.log(middle * (1 - share) / rate), Math.log(0.4)]));
  const top = tops.reduce((best, one): Summit => (one.value > best.value ? one : best));
  const [thetaDeg, t0S, sigma] = top.x.map(Math.exp) as [number, number, number];
  if (!top.flat || sigma < NOTHING) return null;
  return { thetaDeg: thetaDeg < NOTHING ? 0 : thetaDeg, t0S: t0S < NOTHING ? 0 : t0S, sigma, logLik: top.value };
}

function likelihood(logs: readonly { rate: number; ln: number; event: boolean }[], at: readonly number[], slope: number[]): number {
  const [theta, t0, sigma] = at.map(Math.exp) as [number, number, number];
  slope.fill(0);
  let sum = 0;
  for (const { rate, ln, event } of logs) {
    const middle = theta + rate * t0;
    sum += lnShare(ln, Math.log(middle), sigma, event);
    const [inMu, inSigma] = lnShareSlope(ln, Math.log(middle), sigma, event);
    (slope[0] as number) += inMu * theta / middle;
    (slope[1] as number) += inMu * rate * t0 / middle;
    (slope[2] as number) += inSigma;
  }
  return sum;
}
