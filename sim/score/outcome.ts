/** What a run comes to, by the facts and the rule it was flown under. */
import type { Outcome } from '../files/record.js';
import type { EndWhy, TaskRule } from '../task/rule.js';
import { ONE_DEGREE } from './events.js';
import { calledBehind, type Facts } from './facts.js';

/** A release sooner after onset than this cannot be a reaction, ticks: the shortest simple reaction, 0.15 s. */
const SOONEST_TICKS = 15;
/** Whether a split was called at or within 5 s of the release. */
const calledInTime = (facts: Facts): boolean =>
  facts.releaseTick >= 0 && calledBehind(facts.splitCallTick, facts.releaseTick);

/** An arrival counts as one unless a split was called with it. */
const isArrival = (facts: Facts): boolean => facts.arrived && !calledInTime(facts);

/** Whether the release came late and large enough behind onset to be a reaction to it. */
export function isReaction(facts: Facts, rule: TaskRule): boolean {
  if (facts.onsetTick < 0 || facts.releaseTick < 0) return false;
  const ticks = facts.releaseTick + facts.releaseFraction - facts.onsetTick;
  return ticks >= SOONEST_TICKS && facts.growthAtReleaseDeg >= rule.seenDeg;
}

/**
 * The outcome.
 * @param voided something other than the hand ended or disturbed a scored run
 */
export function outcomeOf(facts: Facts, rule: TaskRule, why: EndWhy, voided: boolean): Outcome {
  if (why === 'stopped') return 'void';
  return rule.recognition ? (voided ? 'void' : scored(facts, rule)) : drilled(facts, rule, why);
}

function scored(facts: Facts, rule: TaskRule): Outcome {
  const { onsetTick, growthAtEndDeg, growthAtReleaseDeg } = facts;
  if (facts.releaseTick < 0) return onsetTick < 0 ? 'held' : growthAtEndDeg >= rule.limitDeg ? 'missed' : 'undecided';
  if (isArrival(facts)) {
    if (onsetTick < 0) return 'held';
    return facts.splitAtReleaseDeg >= ONE_DEGREE || growthAtReleaseDeg >= rule.limitDeg ? 'missed' : 'undecided';
  }
  if (!isReaction(facts, rule)) return 'falseRelease';
  return growthAtReleaseDeg < rule.limitDeg ? 'caught' : 'late';
}

/** A split was called though none had been shown. Diagnosing asks nothing more: a call on a lying pointer is right. */
export const falselyCalled = (facts: Facts, rule: TaskRule): boolean =>
  (facts.splitCallTick >= 0 && facts.growthAtCallDeg < rule.seenDeg) || (facts.failedCallTick >= 0 && !facts.failure.rightlyCalled);

/** Outside sets a release is free and the call decides: a right one completes the run, a false one is a release for nothing. */
function drilled(facts: Facts, rule: TaskRule, why: EndWhy): Outcome {
  if (why === 'lost') return 'lost';
  if (facts.missedArrivalTick >= 0) return 'missed';
  if (falselyCalled(facts, rule)) return 'falseRelease';
  const done = facts.settingsReached >= rule.settings.length || facts.splitCallTick >= 0 || facts.failedCallTick >= 0;
  return done ? 'completed' : 'timeUp';
}
