/** The four figures under the sentence, each with the standard it is held against. */
import type { RunRecord } from '../../../sim/files/index.js';
import { eventsOf, holds, rowAt, shownApart, stillMoving, type Facts } from './facts.js';
import { degrees, percent, seconds } from '../words.js';

export interface Figured {
  readonly what: string;
  readonly value: string;
  /** The standard, or what it is made of. */
  readonly beside: string;
}

export function figuresOf(facts: Facts, run: RunRecord): Figured[] {
  return facts.flight.score.onsetS === null ? ofTask(facts, run) : ofSplit(facts, run);
}

function ofSplit(facts: Facts, run: RunRecord): Figured[] {
  const { flight: { score }, limitDeg } = facts;
  return [
    { what: 'Growth at release', value: score.growthAtReleaseDeg === null ? '–' : degrees(score.growthAtReleaseDeg), beside: score.growthAtReleaseDeg === null ? `no release behind onset; late from ${degrees(limitDeg)}` : `since onset; late from ${degrees(limitDeg)}` },
    { what: 'From onset to release', value: score.afterOnsetS === null ? '–' : seconds(Math.max(0, score.afterOnsetS)), beside: timesOf(facts) },
    { what: 'Final split, true', value: degrees(score.finalSplitDeg), beside: stillMoving(facts) ? 'still moving at the end of the run' : 'both sides at rest' },
    { what: 'Roll authority used', value: percent(score.rollAuthorityPct), beside: `the autopilot holds to ${percent(run.airframe.roll.autopilotLimit * 100)}` },
  ];
}

/** Onset, first degree and release by the clock of the run, in the order in which they came. */
export function timesOf({ oneDegreeS, flight: { score: { onsetS, releaseS } } }: Facts): string {
  const came = ([['onset', onsetS], ['1° apart', oneDegreeS], ['release', releaseS]] as const).filter((one): one is readonly [typeof one[0], number] => one[1] !== null);
  const told = came.sort(([, a], [, b]) => a - b).map(([word, atS]) => `${word} ${seconds(atS)}`);
  return [...told, ...(oneDegreeS === null ? ['never 1° apart'] : []), ...(releaseS === null ? ['no release'] : [])].join(', ');
}

/** What the pointers of whole sides stand apart by; and by how much when a hand came off for nothing. */
function wandered(facts: Facts): string {
  const { outcome, score: { releaseS } } = facts.flight;
  const row = outcome === 'falseRelease' && releaseS !== null ? rowAt(facts, releaseS) : undefined;
  return row === undefined ? 'rigging and wander, no split' : `rigging and wander; ${degrees(shownApart(row))} at the release`;
}

function ofTask(facts: Facts, { scenario }: RunRecord): Figured[] {
  const { rows, callouts } = facts;
  const reached = eventsOf(facts, 'setting').length;
  const heldS = holds(facts).reduce((sum, [fromS, toS]) => sum + toS - fromS, 0);
  const margins = rows.flatMap(({ limitKt, speedKt }) => (limitKt === null ? [] : [limitKt - speedKt]));
  const heat = rows.reduce((most, { motorHeat }) => Math.max(most, motorHeat), 0);
  const answered = callouts.filter(({ ok }) => ok === true).length;
  return [
    { what: 'Settings reached', value: `${reached} of ${scenario.task.settings.length}`, beside: `in ${seconds(rows[rows.length - 1]?.atS ?? 0)}` },
    { what: 'Switch held', value: seconds(heldS), beside: `motor heat ${percent(heat * 100)} of the cut-out at most` },
    margins.length === 0 ? { what: 'Closest to the limit speed', value: '–', beside: 'no limit was in force' }
      : { what: 'Closest to the limit speed', value: `${Math.round(margins.reduce((least, one) => Math.min(least, one), Infinity))} kt`, beside: 'below it; standard: never above' },
    callouts.length === 0 ? { what: 'Pointers apart at most', value: degrees(rows.reduce((most, row) => Math.max(most, shownApart(row)), 0)), beside: wandered(facts) }
      : { what: 'Callouts answered', value: `${answered} of ${callouts.length}`, beside: 'right, and in time' },
  ];
}
