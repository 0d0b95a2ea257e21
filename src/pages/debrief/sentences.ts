/** The one line above everything: what happened, and what the hand did about it. Then what it cost. */
import type { RunRecord } from '../../../sim/files/index.js';
import { eventsOf, failures, firstOf, holds, isArrival, lastRow, rowAt, shownApart, stillMoving, trulyApart, type Facts, type Failure } from './facts.js';
import { FAULT_WORDS } from '../faults.js';
import { degrees, percent, seconds, whoFlew } from '../words.js';

/** Nothing sooner behind a split can be a reaction to it, s: the shortest simple reaction. */
const SOONEST_S = 0.15;

type Run = Pick<RunRecord, 'scenario' | 'source'>;

/** What went wrong, as sentences; none when nothing did that could be noticed. */
export function whatHappened(facts: Facts, { scenario }: Run): string[] {
  const split = splitSentence(facts, scenario);
  return [...(split === null ? [] : [split]), ...failures(facts, scenario).flatMap((one) => failureSentence(facts, one))];
}

function splitSentence(facts: Facts, { faults }: Run['scenario']): string | null {
  const { fault, flight: { score: { onsetS } } } = facts;
  if (onsetS === null) return null;
  if (fault === null || fault.side === null) return 'The sides parted.';
  if (fault.kind === 'pointer') return `The ${fault.side} pointer went false; the side itself was whole.`;
  const row = rowAt(facts, onsetS);
  const acted = faults.find(({ name, kind }) => kind === fault.kind && eventsOf(facts, 'fault').some((event) => event.name === name && event.atS <= onsetS));
  const did = acted?.kind === 'lag' && acted.ratio < 0 ? 'was driven back' : acted === undefined ? 'parted' : FAULT_WORDS[acted.kind].did;
  return `The ${fault.side} side ${did}${row === undefined ? '' : ` at ${(fault.side === 'left' ? row.leftDeg : row.rightDeg).toFixed(1)}°`}.`;
}

function failureSentence(facts: Facts, { kind, fault, actedS, showedS }: Failure): string[] {
  if (showedS === null) return [];
  switch (kind) {
    case 'dead': case 'quits': {
      const ran = firstOf(facts, 'driveRuns');
      const place = rowAt(facts, actedS);
      if (ran === undefined || ran.atS > actedS || place === undefined) return ['The standby drive did not run.'];
      return [`The standby drive stopped for good at ${Math.max(place.leftDeg, place.rightDeg).toFixed(1)}°.`];
    }
    case 'slow': return [`The standby drive ran slow, at ${percent('factor' in fault ? fault.factor * 100 : 100)} of its motor's speed.`];
    case 'runsOn': return ['The standby drive ran on with the switch at off.'];
    case 'leadingEdge': return ['The leading edge stopped short.'];
  }
}

/** What happened and what the hand did, one sentence an entry. */
export function headline(facts: Facts, run: Run): string[] {
  const happened = whatHappened(facts, run);
  const { score: { onsetS }, end } = facts.flight;
  const hand = onsetS === null ? whole(facts, run, happened.length > 0) : parted(facts, run);
  return [...happened, ...hand, ...(end.why === 'lost' ? [`Control was lost at ${seconds(end.tick / 100)}.`] : [])];
}

/** Behind a split, true or only shown. */
function parted(facts: Facts, run: Run): string[] {
  const { flight: { score, outcome }, limitDeg } = facts;
  const { releaseS, onsetS, afterOnsetS, growthAtReleaseDeg, splitAtReleaseDeg } = score;
  const who = whoFlew(run);
  if (releaseS === null || onsetS === null || afterOnsetS === null || growthAtReleaseDeg === null || releaseS < onsetS) {
    const before = releaseS !== null && onsetS !== null && releaseS < onsetS ? [`${who} had let go before that, at ${seconds(releaseS)}.`] : [];
    return before.length > 0 && run.scenario.recognition !== undefined ? before : [handStayed(facts, run)];
  }
  const called = firstOf(facts, 'splitCall');
  const inTime = called !== undefined && called.atS - releaseS <= 5;
  if (isArrival(facts, run.scenario) && !inTime) {
    return [`${who} stopped at the setting with the pointers ${degrees(splitAtReleaseDeg ?? 0)} apart${called === undefined ? ', and called no split' : ''}.`];
  }
  const later = `${who} let go ${seconds(Math.max(0, afterOnsetS))} later`;
  if ((outcome === 'falseRelease' && run.scenario.recognition !== undefined) || afterOnsetS < SOONEST_S) return [`${later}, too soon to have seen it: ${degrees(growthAtReleaseDeg)} of growth.`];
  if (growthAtReleaseDeg < 0.005) return [`${later}, before the pointers had grown apart.`];
  const past = growthAtReleaseDeg >= limitDeg ? `, past the limit of ${degrees(limitDeg)}` : '';
  return [`${later}, ${degrees(growthAtReleaseDeg)} further apart${past}.`];
}

/** No release that counts behind the onset: the hand stayed on, or came off only at a setting on the way. */
function handStayed(facts: Facts, run: Run): string {
  const { fault, flight: { score: { onsetS } } } = facts;
  const from = onsetS ?? 0;
  const end = lastRow(facts);
  const apart = end === undefined ? '' : fault?.kind === 'pointer'
    ? `the pointers stood ${degrees(shownApart(end))} apart at the end` : `the sides stood ${degrees(trulyApart(end))} apart at the end`;
  const off = holds(facts).find(([, toS]) => toS > from)?.[1];
  if (off === undefined) return `The hand was off the switch, and ${apart}.`;
  if (off >= (end?.atS ?? 0) - 1e-6) return `The hand stayed on, and ${apart}.`;
  const setting = eventsOf(facts, 'setting').find(({ atS }) => Math.abs(atS - off) < 0.02);
  const came = setting?.deg === undefined ? `${whoFlew(run)} let go at ${seconds(off)}` : `${whoFlew(run)} stopped at ${nameIn(run.scenario, setting.deg)} on the way`;
  const call = firstOf(facts, 'splitCall', from);
  return call === undefined ? `${came} and called no split; ${apart}.` : `${came} and called a split at ${seconds(call.atS)}; ${apart}.`;
}

/** Name of a setting, where the record holds its airframe in full; else its degrees. */
function nameIn({ airframe }: Run['scenario'], deg: number): string {
  return (typeof airframe === 'string' ? undefined : airframe.settings.find((one) => one.deg === deg)?.name) ?? `${deg}`;
}

/** Nothing parted. */
function whole(facts: Facts, run: Run, failed: boolean): string[] {
  const { flight: { score: { releaseS }, outcome, end, events }, } = facts;
  const who = whoFlew(run);
  const { scenario } = run;
  const spans = holds(facts);
  if (failed) return failedHand(facts, run);
  if (end.why === 'stopped') return [`The run was ended by hand at ${seconds(end.tick / 100)}. Nothing had parted.`];
  if (spans.length === 0) return ['Nothing parted, and the switch was not touched.'];
  const falseCall = firstOf(facts, 'splitCall') ?? firstOf(facts, 'failedCall');
  if (outcome === 'falseRelease' && scenario.recognition === undefined && falseCall !== undefined) {
    return [`${who} called ${falseCall.what === 'splitCall' ? 'a split' : 'the drive failed'} at ${seconds(falseCall.atS)}. Nothing had gone wrong.`];
  }
  const reached = events.filter(({ what }) => what === 'setting').length;
  if (outcome === 'falseRelease') return [`${who} let go at ${seconds(releaseS ?? 0)}. Nothing had parted.`];
  if (reached >= scenario.task.settings.length) return [`Nothing parted, and ${who === 'You' ? 'you' : 'the script'} drove to the ${reached > 1 ? 'last ' : ''}setting.`];
  if (end.why === 'lost') return ['Nothing parted.'];
  const done = reached === 0 ? 'before the setting was reached' : `behind ${reached} of ${scenario.task.settings.length} settings`;
  return [`Nothing parted. Time was up ${done}.`];
}

/** What the hand did about a failure of the drive. */
function failedHand(facts: Facts, run: Run): string[] {
  const shown = failures(facts, run.scenario).find(({ showedS }) => showedS !== null);
  if (shown === undefined || shown.showedS === null) return [];
  const { kind, showedS } = shown;
  const who = whoFlew(run);
  const said: string[] = [];
  const hold = holds(facts).find(([fromS, toS]) => fromS <= showedS + 1e-6 && toS > showedS + 1e-6);
  const endS = lastRow(facts)?.atS ?? 0;
  if (kind === 'runsOn') {
    const stops = firstOf(facts, 'driveStops', showedS);
    said.push(stops === undefined ? 'It was not stopped.' : `It stopped ${seconds(stops.atS - showedS)} later.`);
  } else if ((kind === 'dead' || kind === 'quits') && hold !== undefined) {
    said.push(hold[1] >= endS - 1e-6 ? 'The hand stayed on to the end.' : `${who} let go ${seconds(hold[1] - showedS)} later.`);
  } else if (kind === 'slow') {
    const reached = facts.flight.events.filter(({ what }) => what === 'setting').length;
    said.push(reached >= run.scenario.task.settings.length ? `${who} drove to the setting all the same.` : 'The setting was not reached.');
  }
  const call = firstOf(facts, 'failedCall', showedS);
  said.push(call === undefined ? 'No failure was called.' : `${who} called it at ${seconds(call.atS)}.`);
  return said;
}

/** What a second sooner or later would have cost; not known of a run that was stopped before it could cost it. */
const secondMore = ({ flight, oneSecondMore }: Facts): Facts['oneSecondMore'] => (flight.end.why === 'stopped' ? null : oneSecondMore);
const secondSooner = ({ flight, oneSecondSooner }: Facts): Facts['oneSecondMore'] => (flight.end.why === 'stopped' ? null : oneSecondSooner);

/** What it cost, and what a second more or less would have. */
export function cost(facts: Facts): string {
  const { score } = facts.flight;
  if (score.finalSplitDeg < 0.005) {
    return score.onsetS !== null && facts.fault?.kind === 'pointer'
      ? 'The sides themselves stayed together; no roll authority was used.' : 'Both sides stayed together; no roll authority was used.';
  }
  const came = stillMoving(facts) ? 'At the end the sides were still moving,' : 'The sides came to stand';
  const used = `${came} ${degrees(score.finalSplitDeg)} apart, which used ${percent(score.rollAuthorityPct)} of the roll authority.`;
  const said = [used];
  const more = secondMore(facts);
  const sooner = secondSooner(facts);
  if (more !== null) said.push(`One second more on the switch: ${degrees(more.finalSplitDeg)} and ${percent(more.rollAuthorityPct)}.`);
  if (sooner !== null) said.push(`One second less: ${degrees(sooner.finalSplitDeg)} and ${percent(sooner.rollAuthorityPct)}.`);
  return said.join(' ');
}

/** Whether and when a split was called behind the release. */
export function callSentence(facts: Facts, run: Run): string | null {
  const { onsetS, releaseS } = facts.flight.score;
  if (onsetS === null || releaseS === null || releaseS < onsetS) return null;
  const call = firstOf(facts, 'splitCall', onsetS);
  if (call === undefined) return null;
  const behind = call.atS - releaseS;
  return behind >= 0 ? `${whoFlew(run)} called it ${seconds(behind)} behind the release.` : `${whoFlew(run)} called it ${seconds(-behind)} before letting go.`;
}
