/**
 * Kaplan and Meier: the share not yet let go, over the split (or over any other measure), where some runs ended before a release.
 * A run censored at the value of an event was still at risk there. Source: Kaplan and Meier 1958, J. Am. Stat. Ass. 53:457.
 */
import { Z975 } from './normal.js';
import type { Interval } from './proportion.js';

/** One observation: let go at `value`, or (not an event) still holding when the run ended there. */
export interface Observation {
  readonly value: number;
  readonly event: boolean;
}

/** The curve at one value with `events`: `atRisk` just before it, the rest just behind it. */
export interface Step {
  readonly value: number;
  readonly atRisk: number;
  readonly events: number;
  /** Share not yet let go, 0 to 1. */
  readonly s: number;
  /** Greenwood's sum of d / (n (n - d)); Infinity once the curve is at 0. Variance of s: s^2 times this. */
  readonly greenwood: number;
}

/** Values closer than this, relative to their size, are one value: 2.0 and 0.25 x 8.0 after rounding. */
const SAME = 1e-9;

/** @throws RangeError for a value that is not a finite number from 0 */
export function kaplanMeier(observations: readonly Observation[]): Step[] {
  const sorted = [...observations].sort((a, b) => a.value - b.value);
  for (const { value } of sorted) if (!(value >= 0 && value < Infinity)) throw new RangeError(`an observation at ${value}`);
  const steps: Step[] = [];
  let [s, greenwood] = [1, 0];
  for (let at = 0; at < sorted.length; ) {
    const { value } = sorted[at] as Observation;
    const atRisk = sorted.length - at;
    let events = 0;
    for (; at < sorted.length && (sorted[at] as Observation).value <= value * (1 + SAME); at += 1) events += (sorted[at] as Observation).event ? 1 : 0;
    if (events === 0) continue;
    s *= (atRisk - events) / atRisk;
    greenwood += events / (atRisk * (atRisk - events));
    steps.push({ value, atRisk, events, s, greenwood });
  }
  return steps;
}

/** Standard error of a step by Greenwood; 0 at the end of a curve that came down to 0. */
export const standardError = ({ s, greenwood }: Step): number => (s === 0 ? 0 : s * Math.sqrt(greenwood));

/** 95 % limits of a step on the log-log scale: they stay within 0 and 1. null where the curve is at 0: no variance is known there. */
export function logLogLimits({ s, greenwood }: Step): Interval | null {
  if (s <= 0 || s >= 1) return null;
  const w = Math.exp(Z975 * Math.sqrt(greenwood) / Math.abs(Math.log(s)));
  return { lo: s ** w, hi: s ** (1 / w) };
}

/** Equality of a share with one half, for flat steps that hit it. */
const HALF_TOLERANCE = 1e-9;

/** First value at which the curve is at or below one half; null where it never is. The rule of every report. */
export const medianOf = (steps: readonly Step[]): number | null => steps.find(({ s }) => s <= 0.5 + HALF_TOLERANCE)?.value ?? null;

/** The same, but the middle of a flat step that lies at one half exactly (the rule of other packages). */
export function midpointMedian(steps: readonly Step[]): number | null {
  const at = steps.findIndex(({ s }) => s <= 0.5 + HALF_TOLERANCE);
  const here = steps[at];
  if (here === undefined) return null;
  const next = steps[at + 1];
  return here.s >= 0.5 - HALF_TOLERANCE && next !== undefined ? (here.value + next.value) / 2 : here.value;
}

/** 95 % limits of the median: where the log-log band crosses one half. null: not reached within the data. */
export function medianLimits(steps: readonly Step[]): { readonly lo: number | null; readonly hi: number | null } {
  const first = (below: (step: Step) => boolean): number | null => steps.find(below)?.value ?? null;
  return {
    lo: first((step) => (logLogLimits(step)?.lo ?? step.s) <= 0.5),
    hi: first((step) => (logLogLimits(step)?.hi ?? (step.s === 0 ? 1 : step.s)) <= 0.5),
  };
}

/** Share not yet let go at a value. */
export const survivalAt = (steps: readonly Step[], value: number): number => steps.filter((step) => step.value <= value).at(-1)?.s ?? 1;

export interface RestrictedMean {
  /** Area under the curve up to the limit, in the unit of the values: the mean, each value cut at the limit. */
  readonly mean: number;
  readonly se: number;
}

/**
 * Restricted mean up to `limit`: unbiased where every run went at least so far. Detection points are 100 (1 - mean / limit).
 * The standard error after Greenwood (from memory): A_i^2 d_i / (n_i (n_i - d_i)), A_i the area behind step i.
 */
export function restrictedMean(steps: readonly Step[], limit: number): RestrictedMean {
  const inside = steps.filter(({ value }) => value < limit);
  let [behind, variance, right] = [0, 0, limit];
  for (const { value, atRisk, events, s } of [...inside].reverse()) {
    behind += s * (right - value);
    right = value;
    if (atRisk > events) variance += behind * behind * events / (atRisk * (atRisk - events));
  }
  return { mean: behind + right, se: Math.sqrt(variance) };
}
