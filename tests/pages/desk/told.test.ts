/** What a desk left in a record: marks on the axis of time, and a grade beside what the machine found, neither made from the other. */
import { describe, expect, it } from 'vitest';
import { verify } from '../../../sim/files/index.js';
import { deskMoments, deskTold, gradeRows } from '../../../src/pages/desk/told.js';
import { momentsOf } from '../../../src/pages/debrief/moments.js';
import { byPerson, FAULTS_OF_THE_JOB, flown } from '../flown.js';
import { liveRun } from '../live.js';

const { record, facts } = liveRun();

it('the record of the test is one that is proved', () => expect(verify(record)).toMatchObject({ ok: true, refused: [] }));

describe('what the desk did', () => {
  it('in order of time, remarks as written, the rest in words', () => {
    expect(deskTold(record).map(({ isCallout: _is, ...one }) => one)).toEqual([
      { atS: 4, by: 'desk-1', words: 'good scan', more: 'Both pointers, then the speed, then back.', kind: 'remark' },
      { atS: 6, by: 'desk-1', words: 'question: How many on board?', more: null, kind: 'act' },
      { atS: 11, by: 'desk-1', words: 'prompted', more: null, kind: 'prompted' },
      { atS: 14.5, by: 'desk-1', words: 'late release', more: null, kind: 'remark' },
    ]);
  });
  it('as marks of the replay and the charts, among those of the run; a callout is marked by the run already', () => {
    const desk = momentsOf(facts, record).filter(({ sign }) => sign === 'remark' || sign === 'desk');
    expect(desk.map(({ atS, word, rank }) => [atS, word, rank])).toEqual([[4, 'good scan', 1], [11, 'prompted', 1], [14.5, 'late release', 1]]);
    const times = momentsOf(facts, record).map(({ atS }) => atS);
    expect(times).toEqual([...times].sort((a, b) => a - b));
  });
  it('a long act is cut short as a mark, and whole in the report', () => {
    const run = liveRun(null, [[3, { do: 'message', text: 'a long message that goes on and on and on' }]]).record;
    expect(deskMoments(run)[0]!.word).toBe('desk: message: a long message tha…');
    expect(deskTold(run)[0]!.words).toContain('on and on and on');
  });
  it('a run without a desk has none of it', () => {
    const alone = byPerson(flown({ fault: FAULTS_OF_THE_JOB.disconnect }, 'prompt'));
    expect(deskTold(alone.record)).toEqual([]);
    expect(momentsOf(alone.facts, alone.record)).toEqual(momentsOf(alone.facts, { scenario: alone.record.scenario, airframe: alone.record.airframe }));
  });
});

describe('the grade', () => {
  const rows = gradeRows(record, facts);
  const row = (item: string) => rows.find((one) => one.item === item)!;
  it('on five anchors, a blank is not seen, an item of the instructor’s own stands last', () => {
    expect([row('Letting go').anchor, row('Letting go').name, row('Letting go').note]).toEqual([2, 'Below the standard', 'Waited to be sure.']);
    expect([row('Scan of the gauge').anchor, row('Scan of the gauge').name]).toEqual([null, 'not seen']);
    expect(rows.at(-1)).toEqual({ item: 'Cabin briefing', anchor: 4, name: 'Above the standard', note: null, machine: null });
  });
  it('beside it what the machine found, whatever the grade', () => {
    expect(row('Letting go').machine).toMatch(/^caught, \d+\.\d s after onset, \d\.\d\d° further apart$/);
    expect(row('Workload').machine).toMatch(/^[01] of 1 callouts answered right and in time$/);
    expect(row('Call and second look').machine).toMatch(/items kept|^broken: /);
    const generous = gradeRows({ desk: { grades: rows.map(({ item }) => ({ item, anchor: 5 })) } }, facts);
    expect(generous.map(({ machine }) => machine)).toEqual(rows.map(({ machine }) => machine));
    expect(gradeRows({}, facts).map(({ machine }) => machine)).toEqual(rows.slice(0, -1).map(({ machine }) => machine));
  });
});

it('what a second more or less would have come to: the desk stays where it was, and a moment that came back behind the release is told nothing of', () => {
  const plain = liveRun(null, []).facts;
  const releaseS = plain.flight.score.releaseS as number;
  expect(plain.oneSecondMore).not.toBeNull();
  expect(plain.oneSecondSooner).not.toBeNull();
  // Put in just before the release and mended just behind it: a hand that is quicker by a second does not turn the two round.
  const fault = { name: 'y', kind: 'slow', factor: 0.9 } as const;
  const mended = liveRun(null, [[releaseS - 0.5, { do: 'injectFault', fault }], [releaseS + 0.2, { do: 'clearFault', name: 'y' }]]).facts;
  expect(mended.oneSecondSooner).not.toBeNull();
  const back = liveRun(null, [[releaseS + 2, { do: 'reposition', toTick: Math.round(releaseS * 100) + 80 }]]);
  expect(back.facts.flight.score.releaseS).toBe(releaseS);
  expect(back.facts.oneSecondMore).toBeNull();
  expect(back.facts.oneSecondSooner).toBeNull();
});
