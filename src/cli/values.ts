/** Values of options, each taken or refused with the words of what is allowed. */
import { InvalidArgumentError } from 'commander';
import { TRAINEES, type TraineeName } from '../../sim/index.js';
import { nearest } from '../text/near.js';

export const DEFAULT_SEED = 1;
export const DEFAULT_TRAINEE = 'prompt' satisfies TraineeName;
const LARGEST_SEED = 4294967295;
const LARGEST_PORT = 65535;
/** No run is longer, s. */
const LONGEST_STEP_S = 3600;

const wholeUpTo = (most: number, allowed: string) => (typed: string): number => {
  if (!/^\d{1,10}$/.test(typed) || Number(typed) > most) throw new InvalidArgumentError(`Allowed: ${allowed}.`);
  return Number(typed);
};

export const seed = wholeUpTo(LARGEST_SEED, `a whole number from 0 to ${LARGEST_SEED}`);
export const port = wholeUpTo(LARGEST_PORT, `a whole number from 0 to ${LARGEST_PORT}; 0 takes any free port`);

const MOST_RUNS = 1_000_000;
const MOST_WORKERS = 64;
const wholeFrom1 = (most: number) => (typed: string): number => {
  const value = wholeUpTo(most, `a whole number from 1 to ${most}`)(typed);
  if (value < 1) throw new InvalidArgumentError(`Allowed: a whole number from 1 to ${most}.`);
  return value;
};
export const runs = wholeFrom1(MOST_RUNS);
export const workers = wholeFrom1(MOST_WORKERS);

/** Seconds between two rows of a trace, as whole ticks. */
export function stepTicks(typed: string): number {
  const allowed = `a multiple of 0.01 s from 0.01 to ${LONGEST_STEP_S}`;
  if (!/^\d+(\.\d+)?$/.test(typed)) throw new InvalidArgumentError(`Allowed: ${allowed}.`);
  const ticks = Math.round(Number(typed) * 100);
  if (Math.abs(Number(typed) * 100 - ticks) > 1e-6 || ticks < 1 || ticks > LONGEST_STEP_S * 100) throw new InvalidArgumentError(`Allowed: ${allowed}.`);
  return ticks;
}

/** A scripted trainee by name, or the path of a trainee file; a path has a dot or a slash in it. */
export function trainee(typed: string): string {
  if (TRAINEES.some((one) => one === typed) || /[./]/.test(typed)) return typed;
  const near = nearest(typed, TRAINEES);
  throw new InvalidArgumentError(`Allowed: ${TRAINEES.join(', ')}, or a trainee file by its path.${near === null ? '' : ` Did you mean ${near}?`}`);
}

/** A plain decimal number. */
export function figure(typed: string): number {
  if (!/^-?\d+(\.\d+)?$/.test(typed)) throw new InvalidArgumentError('Allowed: a number.');
  return Number(typed);
}

/** A plain decimal number within a range. */
export const within = (least: number, most: number, unit: string) => (typed: string): number => {
  const value = /^\d+(\.\d+)?$/.test(typed) ? Number(typed) : NaN;
  if (!(value >= least && value <= most)) throw new InvalidArgumentError(`Allowed: a number from ${least} to ${most}${unit}.`);
  return value;
};

/** One number, or two with a comma between. */
export function figures(typed: string): number[] {
  const parts = typed.split(',').map(figure);
  if (parts.length > 2) throw new InvalidArgumentError('Allowed: one number, or left and right with a comma between.');
  return parts;
}

/** Numbers of parameters: `--set lagFrom=9`, once for each. */
export function settings(typed: string, before: Record<string, number> | undefined): Record<string, number> {
  const parts = /^([a-zA-Z][a-zA-Z0-9]{0,31})=(-?\d+(?:\.\d+)?)$/.exec(typed);
  if (parts === null) throw new InvalidArgumentError('Allowed: the name of a parameter and a number, as in lagFrom=9.');
  return { ...before, [parts[1] as string]: Number(parts[2]) };
}

/** An option that may stand more than once. */
export const gathered = (typed: string, before: number[] | undefined): number[] => [...(before ?? []), figure(typed)];

export function liveEngines(typed: string): number {
  if (typed !== '1' && typed !== '2') throw new InvalidArgumentError('Allowed: 1 or 2.');
  return Number(typed);
}
