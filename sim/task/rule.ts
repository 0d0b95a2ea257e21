/** What a run is flown for, in ticks and degrees. */

/**
 * How a run ends. `scored`: the first release scores (a scenario with recognition). `drill`: a release is a pause, the
 * call decides. `whole`: always the whole time, for scripted inputs; the outcome is judged as for `rule`.
 */
export type EndMode = 'scored' | 'drill' | 'whole';

/** Reasons a run ends; the state keeps the index. 0 is none. */
export const END_WHYS = [null, 'scored', 'twiceLimit', 'called', 'done', 'lost', 'timeUp', 'stopped'] as const;
/**
 * scored: the time behind the scored release is over. twiceLimit: not let go, growth twice the limit. called: the time behind a call is
 * over. done: all settings reached, all still. lost: control. timeUp: the time or the leg is over. stopped: broken off before any of these.
 */
export type EndWhy = NonNullable<(typeof END_WHYS)[number]>;

/** From a tick of the run on, so many of its ticks are no ticks of the flight: what was flown in them was taken back. */
export interface TakenBack {
  readonly from: number;
  readonly by: number;
}

/** Ticks of the run that are no ticks of the flight at a tick. */
function lostBy(turns: readonly TakenBack[], tick: number): number {
  let by = 0;
  for (let i = 0; i < turns.length; i += 1) if ((turns[i] as TakenBack).from <= tick) by = (turns[i] as TakenBack).by;
  return by;
}

/** Tick of the flight at a tick of the run. */
export const flightTick = (turns: readonly TakenBack[], tick: number): number => (turns.length === 0 ? tick : tick - lostBy(turns, tick));

export interface TaskRule {
  /** Settings to reach in order, deg. */
  readonly settings: readonly number[];
  readonly limitTicks: number;
  /** The leg ends once the drive has been held so long in all; Infinity: it does not. */
  readonly legTicks: number;
  /** The first release is scored. */
  readonly recognition: boolean;
  /** Growth at which a release is late, deg. */
  readonly limitDeg: number;
  /** Growth below which a release cannot be a reaction, deg. */
  readonly seenDeg: number;
  readonly mode: EndMode;
  /** How long a run goes on behind the scored release or the call, ticks. */
  readonly afterTicks: number;
  /** Repositions, in order; none but in a live run. Times of the rule are times of the flight. */
  readonly turns: readonly TakenBack[];
}

/** A release this close to a setting of the task is an arrival, deg. */
export const ARRIVAL_DEG = 0.5;
/** How long a run goes on behind the scored release or the call; a drill in which a side is blown back, longer. */
export const AFTER_TICKS = 2000;
export const AFTER_BLOW_BACK_TICKS = 9000;
/** How long all must be still for a task to be done. */
export const STILL_TICKS = 500;
/** Control is lost when roll authority has been used up for this long, or past this bank. */
export const LOST_TICKS = 300;
export const LOST_BANK_RAD = 0.7853981633974483;
