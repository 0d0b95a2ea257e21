// What a debrief says is true of the run: every kind of fault under every trainee and rule, read against the trace and the commands.
import { describe, expect, test } from 'vitest';
import type { Fault } from '../../../sim/files/index.js';
import { TRAINEES, type TraceRow } from '../../../sim/index.js';
import { assessed } from '../../../src/pages/debrief/judged.js';
import { timesOf } from '../../../src/pages/debrief/figures.js';
import { callSentence, cost, headline } from '../../../src/pages/debrief/sentences.js';
import { byPerson, FAULTS_OF_THE_JOB, flown, type Change, type FlownRun } from '../flown.js';

const when = { heldS: 10 };
const FAULTS: readonly Fault[] = [
  ...Object.values(FAULTS_OF_THE_JOB),
  { name: 'x', kind: 'disconnect', side: 'right', when: { flapDeg: 15.8 } }, { name: 'x', kind: 'lag', side: 'right', ratio: 0.5, when },
  { name: 'x', kind: 'pointer', side: 'left', mode: 'bias', biasDeg: 2, when }, { name: 'x', kind: 'dead', when }, { name: 'x', kind: 'disconnect', side: 'left', when: { heldS: 500 } },
];
const STARTS: Readonly<Record<string, Change>> = {
  out: { start: { flapDeg: 9 }, limitS: 75 },
  steps: { settings: [9, 16], start: { flapDeg: 7, flapLeverDeg: 9 }, limitS: 90 },
  in: { settings: [9, 4], start: { flapDeg: 12, flapLeverDeg: 16, speedKt: 175 }, limitS: 90 },
  up: { settings: [4], start: { flapDeg: 0, flapLeverDeg: 0, leadingEdge: 'in', speedKt: 200 }, limitS: 75 },
};

const apart = (row: TraceRow): number => row.leftDeg - row.rightDeg;
const shown = (row: TraceRow): number => row.leftPointerDeg - row.rightPointerDeg;
const near = (rows: readonly TraceRow[], atS: number): TraceRow => rows.reduce((best, row) => (Math.abs(row.atS - atS) < Math.abs(best.atS - atS) ? row : best));
const number = (text: string, pattern: RegExp): number => Number(pattern.exec(text)?.[1]);

/** Reads a headline against the rows and commands alone. */
function judge({ facts, record }: FlownRun, fault: Fault | null): string {
  const said = headline(facts, record).join(' ');
  const { rows } = facts;
  const last = rows[rows.length - 1]!;
  const letsGo = record.commands.filter((command) => command.do === 'releaseDrive' || (command.do === 'setDrive' && command.to === 'off')).map(({ tick }) => tick / 100);
  const about = (what: string, ok: boolean): void => { expect(ok, `${what}: ${said}`).toBe(true); };
  about('whole', said.length > 10 && !/undefined|NaN|null|Infinity/.test(said));
  if (/Nothing (had )?parted/.test(said)) {
    about('together', rows.every((row) => Math.abs(apart(row)) < 0.01) && rows.every((row) => Math.abs(shown(row)) < 0.6));
  }
  const named = /The (left|right) (side|pointer) /.exec(said);
  if (named !== null) {
    about('its fault', fault !== null && 'side' in fault && fault.side === named[1] && (fault.kind === 'pointer') === (named[2] === 'pointer'));
    about('did part', rows.some((row) => Math.abs(shown(row)) > 0.03));
  } else about('nothing hidden', rows.every((row) => Math.abs(apart(row)) < 0.01));
  const later = /let go ([\d.]+) s later, ([\d.]+)° further apart/.exec(said);
  if (later !== null) {
    const releaseS = record.score.onsetS! + Number(later[1]);
    about('a release there', letsGo.some((atS) => Math.abs(atS - releaseS) < 0.06));
    // From the last row before onset: a pointer may jump in it.
    const before = rows.findLast(({ atS }) => atS < record.score.onsetS!)!;
    const grown = Math.abs(shown(near(rows, releaseS)) - shown(before));
    about('so far apart', Math.abs(grown - Number(later[2])) < 0.12);
    about('past the limit', said.includes('past the limit') === (Number(later[2]) >= 2.5));
  }
  const stayed = /the (sides|pointers) stood ([\d.]+)° apart at the end/.exec(said);
  if (stayed !== null) about('at the end', Math.abs(Math.abs(stayed[1] === 'sides' ? apart(last) : shown(last)) - Number(stayed[2])) < 0.006);
  if (said.includes('hand stayed on')) about('no release', Math.max(-1, ...letsGo) < (record.score.onsetS ?? 10) + 0.001);
  if (said.includes('stopped at the setting')) {
    const row = near(rows, record.score.releaseS!);
    about('there', record.scenario.task.settings.some((deg) => Math.min(Math.abs(row.leftDeg - deg), Math.abs(row.rightDeg - deg)) < 0.6));
    about('that far apart', Math.abs(Math.abs(shown(row)) - number(said, /pointers ([\d.]+)° apart/)) < 0.06);
  }
  about('lost', said.includes('Control was lost') === (record.end.why === 'lost'));
  if (said.includes('did not run')) about('still', rows.every(({ rateDegPerS }) => rateDegPerS === 0));
  if (said.includes('stopped for good')) about('there', Math.abs(last.leftDeg - number(said, /for good at ([\d.]+)°/)) < 0.1 && last.rateDegPerS === 0);
  if (said.includes('ran on')) about('with the hand off', letsGo.some((atS) => near(rows, atS + 1).rateDegPerS !== 0));
  if (said.includes('leading edge stopped short')) about('short', last.leadingEdge === 'moving');
  for (const text of [cost(facts), timesOf(facts), callSentence(facts, record) ?? 'x']) about('whole', !/undefined|NaN|null|Infinity/.test(text));
  return said;
}

describe.each(Object.keys(STARTS))('true of every run: %s', (start) => {
  // Every fault under both rules from the first start, by one who lets go and one who does not; the rest in turn.
  test.each(TRAINEES)('flown by %s', (trainee) => {
    const one = TRAINEES.indexOf(trainee);
    for (const [index, fault] of [...FAULTS, null].entries()) {
      const both = start === 'out' && (trainee === 'prompt' || trainee === 'never');
      if (!both && index % (start === 'out' ? 2 : TRAINEES.length) !== (start === 'out' ? one % 2 : one)) continue;
      const rules = both ? [true, false] : [Math.floor(index / 2) % 2 === 0];
      for (const scored of rules) judge(flown({ ...STARTS[start], scored, ...(fault === null ? {} : { fault }) }, trainee), fault);
    }
  });
});

const HOLD = [{ atS: 1, do: 'openGuard' }, { atS: 1.5, do: 'arm' }, { atS: 2, do: 'holdDrive', way: 'extend' }] as const;

test('whole sentences, as a person reads them', () => {
  const says = (change: Change, by: Parameters<typeof flown>[1]): string => judge(byPerson(flown(change, by)), change.fault ?? null);
  const side = FAULTS_OF_THE_JOB.disconnect;
  expect(says({ fault: side }, 'prompt')).toMatch(/^The left side stopped at 5\.\d°\. You let go \d\.\d s later, \d\.\d\d° further apart\.$/);
  expect(says({ fault: side }, 'never')).toMatch(/^The left side stopped at 5\.\d°\. The hand stayed on, and the sides stood 5\.\d\d° apart at the end\.$/);
  expect(says({}, 'prompt')).toBe('Nothing parted, and you drove to the setting.');
  expect(says({ limitS: 20 }, 'prompt')).toBe('Nothing parted. Time was up before the setting was reached.');
  expect(says({ settings: [9, 16], limitS: 70 }, 'prompt')).toBe('Nothing parted. Time was up behind 1 of 2 settings.');
  expect(says({}, [...HOLD, { atS: 9.24, do: 'releaseDrive' }])).toBe('You let go at 9.2 s. Nothing had parted.');
  expect(says({}, [])).toBe('Nothing parted, and the switch was not touched.');
  expect(says({ fault: side }, [...HOLD, { atS: 9, do: 'releaseDrive' }, { atS: 10, do: 'holdDrive', way: 'extend' }])).toMatch(/^The left side stopped at 5\.\d°\. You had let go before that, at 9\.0 s\.$/);
  expect(says({ fault: FAULTS_OF_THE_JOB.dead, scored: false, limitS: 30 }, [...HOLD, { atS: 8, do: 'releaseDrive' }, { atS: 10, do: 'callDriveFailed' }]))
    .toBe('The standby drive did not run. You let go 6.0 s later. You called it at 10.0 s.');
  expect(says({ fault: FAULTS_OF_THE_JOB.runsOn, scored: false, limitS: 60 }, [...HOLD, { atS: 15, do: 'releaseDrive' }, { atS: 18, do: 'closeGuard' }]))
    .toMatch(/^The standby drive ran on with the switch at off\. It stopped 3\.\d s later\. No failure was called\.$/);
});

test('an arrival with a call in time is a release for the split; without one it is an arrival', () => {
  const change: Change = { fault: { name: 'x', kind: 'disconnect', side: 'left', when: { flapDeg: 14.2 } }, start: { flapDeg: 13 }, limitS: 60 };
  const flies = (...more: Exclude<Parameters<typeof flown>[1], string>): string => judge(byPerson(flown(change, [...HOLD, { atS: 22.7, do: 'releaseDrive' }, ...more])), change.fault!);
  expect(flies({ atS: 24, do: 'callSplit' })).toMatch(/^The left side stopped at 14\.2°\. You let go \d+\.\d s later, 1\.\d\d° further apart\.$/);
  expect(flies()).toMatch(/^The left side stopped at 14\.2°\. You stopped at the setting with the pointers 1\.\d\d° apart, and called no split\.$/);
});

test('a hand that came off only at a setting on the way is told so, with its call or without', () => {
  const change: Change = { fault: { name: 'x', kind: 'lag', side: 'right', ratio: 0.5, when: { flapDeg: 8 } }, settings: [9, 16], start: { flapDeg: 7, flapLeverDeg: 9 }, limitS: 40 };
  const flies = (...more: Exclude<Parameters<typeof flown>[1], string>): string => judge(byPerson(flown(change, [...HOLD, { atS: 16, do: 'releaseDrive' }, ...more])), change.fault!);
  expect(flies()).toMatch(/^The right side fell behind at 8\.0°\. You stopped at 9 on the way and called no split; the sides stood 0\.\d\d° apart at the end\.$/);
  expect(flies({ atS: 18, do: 'callSplit' })).toMatch(/ You stopped at 9 on the way and called a split at 18\.0 s; the sides stood 0\.\d\d° apart at the end\.$/);
});

test('a side that goes back while the other goes out was driven back', () => {
  expect(judge(flown({ fault: FAULTS_OF_THE_JOB.lag, start: { flapDeg: 9 }, limitS: 60 }, 'prompt'), FAULTS_OF_THE_JOB.lag)).toMatch(/^The left side was driven back at 10\.\d°\./);
});

test('a release sooner than any reaction is told as one, under both rules', () => {
  const bias: Fault = { name: 'x', kind: 'pointer', side: 'left', mode: 'bias', biasDeg: 2, when };
  for (const scored of [true, false]) {
    const { facts, record } = byPerson(flown({ fault: bias, scored, limitS: 40 }, [...HOLD, { atS: 12.08, do: 'releaseDrive' }]));
    expect(headline(facts, record)[1]).toMatch(/^You let go 0\.[01] s later, too soon to have seen it: [12]\.\d\d° of growth\.$/);
  }
});

test('a call is told by its distance from the release', () => {
  const { facts, record } = byPerson(flown({ fault: FAULTS_OF_THE_JOB.disconnect }, [...HOLD, { atS: 15, do: 'releaseDrive' }, { atS: 16.2, do: 'callSplit' }]));
  expect(callSentence(facts, record)).toBe('You called it 1.2 s behind the release.');
});

test('what it cost: a second more is more, sides that still move do not stand, a pointer costs nothing', () => {
  const caught = flown({ fault: FAULTS_OF_THE_JOB.disconnect }, 'prompt');
  expect(cost(caught.facts)).toMatch(/^The sides came to stand \d\.\d\d° apart, which used \d+ % of the roll authority\. One second more on the switch: \d\.\d\d° and \d+ %\./);
  expect(caught.facts.oneSecondMore!.finalSplitDeg).toBeGreaterThan(caught.facts.flight.score.finalSplitDeg);
  expect(cost(flown({ fault: FAULTS_OF_THE_JOB.pointer }, 'prompt').facts)).toBe('The sides themselves stayed together; no roll authority was used.');
  expect(cost(flown({}, 'prompt').facts)).toBe('Both sides stayed together; no roll authority was used.');
  expect(cost(flown({ fault: FAULTS_OF_THE_JOB.disconnect, scored: false }, 'never').facts)).toMatch(/^(At the end the sides were still moving,|The sides came to stand) /);
});

test('own judgement beside what was', () => {
  const left = flown({ fault: FAULTS_OF_THE_JOB.disconnect }, 'prompt');
  const apartWas = `${left.facts.flight.score.splitAtReleaseDeg!.toFixed(2)}°`;
  expect(assessed({ split: 'yes', growthDeg: 1.2, side: 'left', surePct: 90, driveFailed: 'no' }, left.facts, left.record)).toEqual([
    { what: 'A split', said: 'yes', was: 'yes' }, { what: 'How sure of that', said: '90 %', was: '' }, { what: 'The side ahead', said: 'left', was: 'right' },
    { what: 'Apart when you let go', said: '1.2°', was: apartWas }, { what: 'The drive failed', said: 'no', was: 'no' },
  ]);
  // Retracting, the side that stays out is behind; a record without the later questions has no rows for them.
  const back = flown({ ...STARTS['in'], fault: FAULTS_OF_THE_JOB.disconnect }, 'prompt');
  expect(assessed({ split: 'yes', growthDeg: null, side: 'unsure' }, back.facts, back.record)[1]).toEqual({ what: 'The side ahead', said: 'cannot say', was: 'right' });
  const lie = flown({ fault: FAULTS_OF_THE_JOB.pointer }, 'prompt');
  expect(assessed({ split: 'no', growthDeg: null }, lie.facts, lie.record)[0]).toEqual({ what: 'A split', said: 'no', was: 'on the pointers' });
  const quiet = flown({}, []);
  expect(assessed({ split: 'unsure', growthDeg: null }, quiet.facts, quiet.record)).toEqual([{ what: 'A split', said: 'not sure', was: 'no' }]);
});
