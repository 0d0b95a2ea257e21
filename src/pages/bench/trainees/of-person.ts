/** A trainee file from what the logbook says of a person: the middle of the fit, and what it cannot carry. */
import { personOf, type ConditionGroup, type Person } from '../../../../sim/index.js';

export type Made =
  | { readonly ok: true; readonly text: string; readonly lost: readonly string[] }
  | { readonly ok: false; readonly why: string };

const round = (value: number, by: number): number => Math.round(value / by) * by;
const clamp = (value: number, low: number, high: number): number => Math.min(high, Math.max(low, value));
const figure = (value: number): string => String(Number(value.toFixed(3)));
const between = ({ median, lo, hi }: { readonly median: number; readonly lo: number; readonly hi: number }, unit: string): string => `${figure(median)} ${unit} (95 %: ${figure(lo)} to ${figure(hi)})`;

/** The person by all trials of one condition: the first whose threshold and time come apart, else the one flown last. */
export function fittedPerson(groups: readonly ConditionGroup[], seenDeg: number): Person | null {
  const persons = groups.filter(({ condition }) => condition !== null).map(({ flights }) => personOf(flights.flatMap(({ trials }) => trials), seenDeg));
  return persons.find(({ fit }) => fit?.thetaDeg != null && fit.t0S != null) ?? persons[0] ?? null;
}

/** @param name of the person; empty for none */
export function traineeOfPerson(person: Person | null, name: string): Made {
  const whose = name === '' ? 'the person without a name' : name;
  if (person === null) return { ok: false, why: `No set is flown to its end by ${whose}, so there is nothing to make a trainee from.` };
  const { fit, needed, falseReleases, caught } = person;
  if (fit === null) return { ok: false, why: `${needed.runsForFit} more decided runs of one condition are needed before anything is fitted.` };
  if (fit.thetaDeg === null || fit.t0S === null) {
    return { ok: false, why: `What the eye needs and how long the hand takes come apart only where four rates were flown; ${needed.ratesForThreshold} more ${needed.ratesForThreshold === 1 ? 'rate is' : 'rates are'} needed. A set of four rates gives it.` };
  }
  // Missed runs that the spread does not explain are lapses; the share not caught is the most they can be.
  const missed = caught === null || caught.n === 0 ? 0 : person.outcomes.missed / caught.n;
  const numbers = {
    thresholdDeg: clamp(round(fit.thetaDeg.median, 0.001), 0.01, 20), thresholdLogSd: 0,
    reactionS: clamp(round(fit.t0S.median, 0.001), 0, 60), reactionLogSd: 0,
    spread: clamp(round(fit.sigma.median, 0.001), 0, 2), lapse: clamp(round(missed, 0.001), 0, 1),
    falsePerMin: clamp(round(falseReleases?.perMin ?? 0, 0.001), 0, 60),
  };
  const keys = Object.entries(numbers).map(([key, value]) => `  "${key}": ${figure(value)}`).join(',\n');
  return {
    ok: true,
    text: `{\n  "format": 1,\n  "trainee": "steady",\n  "title": ${JSON.stringify(`As flown by ${whose}`.slice(0, 120))},\n  "sees": "change",\n${keys}\n}\n`,
    lost: [
      `Uncertainty: what the eye needs is ${between(fit.thetaDeg, 'deg')}, the hand ${between(fit.t0S, 's')}, the spread ${between(fit.sigma, '')}. The file holds the middles alone.`,
      `Lapses are taken as the share missed (${person.outcomes.missed} of ${caught?.n ?? 0}), which few runs tell badly.`,
      'It stands for one condition, expected splits and that workload; it does not learn, tire, or meet a surprise.',
    ],
  };
}
