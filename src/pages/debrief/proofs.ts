/** Procedure items in words: what was asked, and the moment that proves it. */
import type { RunRecord } from '../../../sim/files/index.js';
import type { ProcedureItem } from '../../../sim/index.js';
import { firstOf, type Facts } from './facts.js';
import { assistedBy, seconds } from '../words.js';

type Item = ProcedureItem['item'];

export const ITEM_WORDS: Readonly<Record<Item, string>> = {
  leverFirst: 'Lever before drive', insideLimit: 'Inside the limit speed', leadingEdgeOut: 'Leading edge out before driving on',
  bothThere: 'Both pointers there', splitCalled: 'Split called', secondLook: 'Second look: still moving called',
  leftAlone: 'Switch left alone afterwards', leftAsIs: 'Lever, guard and arm left as they are',
  failureCalled: 'Failed drive called', driveStopped: 'Drive that ran on stopped', noFalseCall: 'Nothing called that was not there',
  lossFound: 'Nothing follows: lever back before arming', speedFirst: 'Speed before the lever, on the way in', speedKept: 'Manoeuvre speed while driving',
  slowAfter: 'Slow only once both are there', motorDuty: 'Motor inside its duty', hornMet: 'Gear horn met',
  aroundBegun: 'Go-around begun when told', aroundGear: 'Thrust, climb, then gear', aroundHeight: 'No flap switch below safe height',
  listRead: 'Asymmetry list read', planRedone: 'Landing plan redone', returnHandled: 'Normal drive back: lever where the flaps are',
  challengeAnswered: 'The other pilot answered',
};

/** Items whose figure must not be less than what it is held against. Of the rest it must not be more. */
const LEAST: readonly Item[] = ['slowAfter', 'speedFirst', 'aroundHeight', 'leadingEdgeOut', 'noFalseCall'];

/** The figure of an item against what it is held to, as a person reads it; null where it has none. */
export function figureOf({ item, ok, value, limit, unit }: ProcedureItem): string | null {
  if (limit === null || unit === null) return null;
  const said = (of: number): string => of.toFixed(unit === 'deg' ? 2 : unit === 's' ? 1 : 0);
  const sign = { deg: '°', kt: ' kt', s: ' s', ft: ' ft', '%': ' %', 1: '' }[unit];
  if (item === 'leverFirst') return `${value ?? '–'}°, asked ${limit}°`;
  if (value === null) return unit === 's' ? `due within ${said(limit)} s` : null;
  // What is counted is so many of so many; of presses that must not be there none is asked.
  if (unit === '1') return limit > 0 ? `${said(value)} of ${said(limit)}` : value > 0 ? `${said(value)} ${value === 1 ? 'press' : 'presses'}` : null;
  // The manoeuvre speed has a bound on either side: the figure stands inside the one that it is held against, or past it.
  const least = item === 'speedKept' ? (value > limit) === (ok === true) : LEAST.includes(item);
  return `${said(value)}, at ${least ? 'least' : 'most'} ${said(limit)}${sign}`;
}

/** What proves an item that was asked for. */
export function proofOf({ item, ok, atS, limit }: ProcedureItem, facts: Facts): string {
  const at = atS === null ? '' : `at ${seconds(atS)}`;
  const { releaseS } = facts.flight.score;
  switch (item) {
    case 'leverFirst': return ok ? `lever there, drive pressed ${at}` : `drive pressed ${at}, lever not there`;
    case 'insideLimit': return limit === null ? 'no limit was in force' : `${ok ? 'closest' : 'over it'} ${at}`;
    case 'leadingEdgeOut': return ok ? `out when driven on ${at}` : `driven on ${at}, not out yet`;
    case 'bothThere': return ok ? `the last time ${at}` : `not there, ${at}`;
    case 'splitCalled': case 'secondLook':
      if (atS === null) return 'not called';
      return releaseS === null ? at : atS >= releaseS ? 'behind the release' : `${seconds(releaseS - atS)} before the release`;
    case 'leftAlone': return ok ? 'no press since' : `pressed again ${at}`;
    case 'leftAsIs': return ok ? 'nothing moved since' : `moved ${at}`;
    case 'failureCalled': return atS === null ? 'not called' : `called ${at}`;
    case 'driveStopped': return atS === null ? 'not stopped' : `stopped ${at}`;
    case 'lossFound': return ok ? `lever back ${at}, then the standby drive` : atS === null ? 'lever not put back' : `${at} the lever still stood ahead, or had stood so for long`;
    case 'speedFirst': return ok ? `lever up ${at}, fast enough` : `lever up ${at}, too slow for the setting`;
    case 'speedKept': return ok ? `furthest off ${at}` : `off the manoeuvre speed of what was out, ${at}`;
    case 'slowAfter': return ok ? `slowest ${at}, not below what was out` : `too slow ${at} for what was out on both sides`;
    case 'motorDuty': return ok ? `hottest ${at}, below the cut-out` : `the cut-out opened; hottest ${at}`;
    case 'hornMet': return ok ? `sounded longest from ${seconds(atS ?? 0)}` : `sounded on from ${seconds(atS ?? 0)} with the gear lever up`;
    case 'aroundBegun': return atS === null ? 'not begun' : `thrust up ${at}`;
    case 'aroundGear': return atS === null ? 'gear not raised' : ok ? `gear up ${at}, in the climb` : `gear up ${at}, not in time or before the climb`;
    case 'aroundHeight': return `flap switch first used ${at}`;
    case 'listRead': return ok ? `to its end ${at}` : 'not read to its end';
    case 'planRedone': return ok ? 'slow speeds by the side less out, limit by the side further out' : 'one speed was taken from the wrong side';
    case 'returnHandled': return ok ? `handed over ${at} with the lever there` : `handed over ${at} with the lever off the flaps`;
    case 'challengeAnswered': return ok ? 'right and in time' : `wrong or late, asked ${at}`;
    case 'noFalseCall': return ok ? `called ${at}, and it was there` : `called ${at}: nothing had shown`;
  }
}

/** Where the cursor goes for an item: its moment, or the one nearest to what it is about. */
export function momentOf({ item, atS }: ProcedureItem, facts: Facts): number | null {
  if (atS !== null) return atS;
  const { releaseS } = facts.flight.score;
  if (item === 'splitCalled' || item === 'secondLook' || item === 'leftAlone' || item === 'leftAsIs') return releaseS;
  if (item === 'failureCalled' || item === 'driveStopped') return firstOf(facts, 'fault')?.atS ?? null;
  return null;
}

/** The honest words beside a run: what it does not say, and how it was measured. */
export function notesOf(facts: Facts, { scenario, source, device, marks, airframe }: RunRecord): string[] {
  const { recognition } = scenario;
  const { onsetS, releaseS } = facts.flight.score;
  const helps = assistedBy({ device });
  const notes = ['One run says nothing about a person: no rate, no threshold, no trend. That takes many runs, and then it comes with an interval.'];
  if (source === 'scripted') notes.push('A script flew this run. The tick’s own time stands for frame and stamp, and it enters nobody’s figures.');
  else notes.push('Who sits down to a drill expects a split. This is the expected case; a surprise takes longer.');
  if (helps !== null) notes.push(`Assisted, with ${helps}: not to be laid beside runs without.`);
  if (recognition?.measuring) notes.push('Measuring: in the aeroplane let go in doubt.');
  if (onsetS !== null && releaseS !== null && source !== 'scripted') notes.push(`Time runs from the first frame drawn behind onset to the stamp of the release${device.isolated ? '' : ', by a coarse clock'}. The lag of screen and input was not measured.`);
  if (recognition !== undefined) notes.push(`A release counts as a reaction from 0.15 s and ${recognition.seenDeg}° of growth on; growth is counted on the pointers since onset, so that rigging neither helps nor hurts.`);
  if (marks.some(({ what }) => what === 'stall')) notes.push('The picture stood still for a moment in this run; the clock was stopped for as long.');
  notes.push(`${airframe.title}: every figure of wing, engine and drive is made up. Not in the model: coupling of bank and lift, sideslip, yaw, wind, gusts and stall; the leading edge is even, the hinge moment linear, the autopilot a loop of three gains.`);
  return notes;
}
