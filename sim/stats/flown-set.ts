/** A set as a person flew it: its records as trials, its three numbers, its curves, and what does not count in it. */
import type { RunRecord } from '../files/record.js';
import { countsOf, type SetCounts } from '../set/fly.js';
import { realisedRates } from '../set/held.js';
import type { ReadySet } from '../set/ready.js';
import { conditionOf, gaugeKeyOf } from './condition.js';
import { personOf, type Person } from './person.js';
import { isFit } from './timing-check.js';
import { TRIAL_OUTCOMES, type JudgedTrial, type TrialOutcome } from './trial.js';

/** Made by `flownSet` of all the runs of one flight, or of as many as were flown. */
export interface FlownSet {
  readonly person: Person;
  /** Counts and points of all runs, void ones among them. */
  readonly counts: SetCounts;
  /** Runs that something other than the hand disturbed or ended. */
  readonly void: number;
  /** Runs flown with a help that marks them. */
  readonly assisted: number;
  /** The gauge was not of one size throughout: its runs are not one condition. */
  readonly gaugeChanged: boolean;
  /** Runs on a device that a timing check found not fit. */
  readonly unfit: number;
  readonly limitDeg: number;
}

const isTrialOutcome = (outcome: string): outcome is TrialOutcome => (TRIAL_OUTCOMES as readonly string[]).includes(outcome);

/**
 * A record as a trial, its time counted from the first press: only holding can be quiet.
 * @param ratesDegPerS realised rate of growth by lag ratio
 */
export function trialOfRun({ scenario, score, outcome, end, commands }: RunRecord, ratesDegPerS: ReadonlyMap<number, number>): JudgedTrial {
  const press = commands.find(({ do: what }) => what === 'holdDrive' || what === 'setDrive');
  const from = (press?.tick ?? 0) / 100;
  const [fault] = scenario.faults;
  const rate = fault?.kind === 'lag' ? ratesDegPerS.get(fault.ratio) ?? null : null;
  const judged = isTrialOutcome(outcome) ? outcome : 'void';
  const onsetS = score.onsetS === null ? null : score.onsetS - from;
  const endS = end.tick / 100 - from;
  const held = rate === null || onsetS === null ? null : rate * (endS - onsetS);
  const growth = judged === 'caught' || judged === 'late' ? score.growthAtReleaseDeg : judged === 'missed' || judged === 'undecided' ? held : null;
  return {
    rateDegPerS: onsetS === null ? null : rate, onsetS, endS,
    // An arrival is no release of a trial: it was held.
    releaseS: score.releaseS === null || judged === 'held' || judged === 'missed' || judged === 'undecided' ? null : score.releaseS - from,
    limitDeg: scenario.recognition?.limitDeg ?? 0,
    outcome: judged, growthDeg: growth,
  };
}

/** Realised rates of growth by lag ratio, deg/s. */
export const ratesOf = (of: ReadySet): Map<number, number> => new Map(realisedRates(of).map(({ ratio, degPerS }) => [ratio, degPerS] as const));

/**
 * What a person's runs of a set come to.
 * @param records at least one, all runs of this set @param rates of this set, for whoever has them already
 * @throws RangeError for records of different limits
 */
export function flownSet(of: ReadySet, records: readonly RunRecord[], rates = ratesOf(of)): FlownSet {
  const trials = records.map((record) => trialOfRun(record, rates));
  const sizes = new Set(records.map((record) => gaugeKeyOf(conditionOf(0, record))));
  return {
    person: personOf(trials, of.set.seenDeg),
    counts: countsOf(of, records.map(({ outcome, score }) => ({ outcome, growthAtReleaseDeg: score.growthAtReleaseDeg }))),
    void: trials.filter(({ outcome }) => outcome === 'void').length,
    assisted: records.filter(({ device }) => (device.assisted ?? []).length > 0).length,
    gaugeChanged: sizes.size > 1 || records.some(({ gauge }) => gauge.changed === true),
    unfit: records.filter(({ device: { timing } }) => timing !== undefined && !isFit(timing)).length,
    limitDeg: of.set.limitDeg,
  };
}
