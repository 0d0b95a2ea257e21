// What stands beside the sentence: moments, proofs, figures, readings and the honest words, each held against the run.
import { describe, expect, test } from 'vitest';
import { PROCEDURE_ITEMS, type ProcedureItem } from '../../../sim/index.js';
import { holds, indexAt, isArrival, rowAfter, sideAhead, stillMoving } from '../../../src/pages/debrief/facts.js';
import { hornSpans } from '../../../src/pages/debrief/figure.js';
import { figuresOf, timesOf } from '../../../src/pages/debrief/figures.js';
import { momentsOf } from '../../../src/pages/debrief/moments.js';
import { figureOf, ITEM_WORDS, momentOf, notesOf, proofOf } from '../../../src/pages/debrief/proofs.js';
import { readingsOf, spokenRow } from '../../../src/pages/replay/readings.js';
import { tight } from '../../../src/pages/words.js';
import { byPerson, FAULTS_OF_THE_JOB, flown } from '../flown.js';

const { disconnect, blowback, runsOn, dead, leadingEdge } = FAULTS_OF_THE_JOB;
const caught = flown({ fault: disconnect }, 'prompt');
const quiet = flown({ start: { flapDeg: 13 }, limitS: 60 }, 'prompt');
const words = (run: typeof caught): string[] => momentsOf(run.facts, run.record).map(({ word }) => word);
const at = (run: typeof caught, word: string): number | undefined => momentsOf(run.facts, run.record).find((one) => one.word === word)?.atS;

describe('moments', () => {
  test('onset, one degree, release and call stand at their times, in their order', () => {
    const { score } = caught.record;
    expect(words(caught)).toEqual(['onset', '1° apart', 'release', 'split called']);
    expect(at(caught, 'onset')).toBe(score.onsetS);
    expect(at(caught, 'release')).toBe(score.releaseS);
    expect(at(caught, '1° apart')).toBe(caught.facts.oneDegreeS);
    expect(at(caught, 'split called')! - score.releaseS!).toBeCloseTo(1, 6);
  });

  test('an arrival is marked once, as one; levers by the name of their setting', () => {
    expect(words(quiet)).toEqual(['at 16']);
    expect(words(flown({ settings: [16], start: { flapDeg: 13, flapLeverDeg: 9 }, limitS: 60 }, 'prompt'))).toEqual(['lever 16', 'at 16']);
  });

  test('callouts with their answers, gear, and a drive that fails', () => {
    const callout = { do: 'callout', text: 'x?', answers: ['a', 'b'], right: 'a', withinS: 10, when: { atS: 5 } };
    const run = flown({ events: [callout, { do: 'setGear', to: 'down', when: { atS: 10 } }], scored: false, limitS: 30 }, [{ atS: 7, do: 'answer', text: 'a' }]);
    expect(words(run)).toEqual(['callout', 'answer', 'gear moves', 'gear down']);
    expect(at(run, 'answer')).toBeCloseTo(7, 1);
    expect(words(flown({ fault: dead, scored: false, limitS: 40 }, 'prompt'))).toContain('drive dead');
    expect(words(flown({ fault: runsOn, scored: false, start: { flapDeg: 13 } }, 'prompt'))).toContain('runs on');
  });
});

describe('the course of a run', () => {
  test('holds are from press to release, and to the end for a hand that stays', () => {
    expect(holds(caught.facts).map(([, to]) => to)).toEqual([caught.record.score.releaseS]);
    const never = flown({ fault: disconnect, limitS: 40 }, 'never');
    expect(holds(never.facts)[0]![1]).toBe(never.facts.rows.at(-1)!.atS);
  });

  test('a row is found by its time, at the ends too', () => {
    const rows = [0, 0.1, 0.2, 0.25].map((atS) => ({ atS }));
    expect([-1, 0, 0.1, 0.19, 0.2, 0.24, 0.25, 9].map((atS) => indexAt(rows, atS))).toEqual([0, 0, 1, 1, 2, 2, 3, 3]);
    expect(rowAfter(caught.facts, 3)!.atS).toBeCloseTo(3.1, 6);
  });

  test('who was ahead, what still moves, what is an arrival', () => {
    expect(sideAhead(caught.facts, caught.record.score.releaseS!)).toBe('right');
    expect(sideAhead(quiet.facts, 20)).toBeNull();
    expect(isArrival(quiet.facts, quiet.record.scenario)).toBe(true);
    expect(isArrival(caught.facts, caught.record.scenario)).toBe(false);
    expect(stillMoving(caught.facts)).toBe(false);
    expect(stillMoving(flown({ fault: disconnect, scored: false, limitS: 40 }, 'never').facts)).toBe(true);
  });
});

describe('procedure', () => {
  test('every item has words of its own', () => {
    expect(Object.keys(ITEM_WORDS).sort()).toEqual([...PROCEDURE_ITEMS].sort());
    expect(new Set(Object.values(ITEM_WORDS)).size).toBe(PROCEDURE_ITEMS.length);
  });

  const figure = (run: typeof caught, item: ProcedureItem['item']): string | null => figureOf(run.facts.flight.procedure.find((one) => one.item === item)!);
  const proof = (run: typeof caught, item: ProcedureItem['item']): string => proofOf(run.facts.flight.procedure.find((one) => one.item === item)!, run.facts);

  test('kept: the moment or the figure that proves it', () => {
    expect(proof(caught, 'leverFirst')).toMatch(/^lever there, drive pressed at \d\.\d s$/);
    expect(proof(caught, 'insideLimit')).toMatch(/^closest at \d+\.\d s$/);
    expect(figure(caught, 'insideLimit')).toBe('167, at most 210 kt');
    const faster = flown({ events: [{ do: 'selectSpeed', speedKt: 190, when: { atS: 1 } }], limitS: 60 }, []);
    expect(proof(faster, 'insideLimit')).toMatch(/^closest at [2-5]\d\.\d s$/);
    expect(figure(faster, 'insideLimit')).toMatch(/^1(89|9\d), at most 210 kt$/);
    expect(proof(caught, 'splitCalled')).toBe('behind the release');
    expect(figure(caught, 'splitCalled')).toBe('1.0, at most 5.0 s');
    expect(proof(caught, 'leftAlone')).toBe('no press since');
    expect(proof(quiet, 'bothThere')).toMatch(/^the last time at \d+\.\d s$/);
    expect(proof(flown({ fault: blowback, scored: false }, 'prompt'), 'secondLook')).toBe('behind the release');
    expect(proof(flown({ fault: dead, scored: false, limitS: 40 }, 'prompt'), 'failureCalled')).toMatch(/^called at \d+\.\d s$/);
  });

  test('broken: what was done instead, and where the cursor goes for what never came', () => {
    const inputs = [
      { atS: 1, do: 'openGuard' }, { atS: 1.5, do: 'arm' }, { atS: 2, do: 'holdDrive', way: 'extend' }, { atS: 20, do: 'releaseDrive' },
      { atS: 24, do: 'holdDrive', way: 'extend' }, { atS: 25, do: 'releaseDrive' }, { atS: 26, do: 'disarm' },
    ] as const;
    const run = flown({ fault: disconnect, start: { flapLeverDeg: 4 }, limitS: 40 }, [...inputs]);
    expect(proof(run, 'leverFirst')).toBe('drive pressed at 2.0 s, lever not there');
    expect(proof(run, 'splitCalled')).toBe('not called');
    expect(proof(run, 'leftAlone')).toBe('pressed again at 24.0 s');
    expect(proof(run, 'leftAsIs')).toBe('moved at 26.0 s');
    expect(['leverFirst', 'splitCalled', 'leftAlone'].map((item) => figure(run, item as ProcedureItem['item']))).toEqual(['4°, asked 16°', 'due within 5.0 s', '1 press']);
    const missing = run.facts.flight.procedure.find(({ item }) => item === 'splitCalled')!;
    expect(momentOf(missing, run.facts)).toBe(run.record.score.releaseS);
    expect(momentOf(run.facts.flight.procedure.find(({ item }) => item === 'leftAlone')!, run.facts)).toBe(24);
  });
});

test('a figure stands at its limit or on the side of it that was kept, and past it where it was broken', () => {
  const told = (item: ProcedureItem['item'], ok: boolean, value: number | null, limit: number, unit: ProcedureItem['unit']): string | null => figureOf({ item, ok, atS: 1, value, limit, unit });
  expect([told('insideLimit', true, 210, 210, 'kt'), told('insideLimit', false, 211, 210, 'kt')]).toEqual(['210, at most 210 kt', '211, at most 210 kt']);
  // Manoeuvre speed 166 kt: kept from 161 to 176 kt, each bound told where it is the nearer one.
  expect([[true, 167, 161], [true, 175, 176], [false, 160, 161], [false, 177, 176]].map(([ok, value, limit]) => told('speedKept', ok as boolean, value as number, limit as number, 'kt')))
    .toEqual(['167, at least 161 kt', '175, at most 176 kt', '160, at least 161 kt', '177, at most 176 kt']);
  expect([told('aroundHeight', true, 1200, 1000, 'ft'), told('noFalseCall', false, 0, 0.1, 'deg')]).toEqual(['1200, at least 1000 ft', '0.00, at least 0.10°']);
  expect([told('listRead', true, 6, 6, '1'), told('leftAlone', true, 0, 0, '1'), told('leftAlone', false, 2, 0, '1')]).toEqual(['6 of 6', null, '2 presses']);
  expect(told('aroundGear', false, null, 15, 's')).toBe('due within 15.0 s');
});

describe('figures', () => {
  test('a split: growth, time, final split and roll authority, each with its standard', () => {
    const figures = figuresOf(caught.facts, caught.record);
    const { score } = caught.record;
    expect(figures.map(({ value }) => value)).toEqual([`${score.growthAtReleaseDeg!.toFixed(2)}°`, `${score.afterOnsetS!.toFixed(1)} s`, `${score.finalSplitDeg.toFixed(2)}°`, `${Math.round(score.rollAuthorityPct)} %`]);
    expect(figures[0]!.beside).toBe('since onset; late from 2.50°');
    expect(figures[3]!.beside).toBe('the autopilot holds to 45 %');
    const [onset, degree, release] = [score.onsetS!, caught.facts.oneDegreeS!, score.releaseS!].map((atS) => atS.toFixed(1));
    expect(figures[1]!.beside).toBe(`onset ${onset} s, 1° apart ${degree} s, release ${release} s`);
  });

  test('what never came is told so, and what came is told in its order', () => {
    const soon = flown({ fault: disconnect, limitS: 40 }, [{ atS: 1, do: 'openGuard' }, { atS: 1.5, do: 'arm' }, { atS: 2, do: 'holdDrive', way: 'extend' }, { atS: 5, do: 'releaseDrive' }, { atS: 6, do: 'holdDrive', way: 'extend' }, { atS: 18, do: 'releaseDrive' }]);
    const [first] = timesOf(soon.facts).split(', ');
    expect(first).toBe('release 5.0 s');
    const still = flown({ fault: disconnect, limitS: 14 }, 'never');
    expect(timesOf(still.facts)).toMatch(/^onset \d+\.\d s, never 1° apart, no release$/);
  });

  test('nothing parted: the task, the hold, the margin to the limit', () => {
    const figures = figuresOf(quiet.facts, quiet.record);
    expect(figures[0]).toMatchObject({ what: 'Settings reached', value: '1 of 1' });
    expect(figures[2]).toMatchObject({ what: 'Closest to the limit speed', value: '43 kt' });
    const apart = Math.max(...quiet.facts.rows.map(({ leftPointerDeg, rightPointerDeg }) => Math.abs(leftPointerDeg - rightPointerDeg)));
    expect(figures[3]).toEqual({ what: 'Pointers apart at most', value: `${apart.toFixed(2)}°`, beside: 'rigging and wander, no split' });
    const nothing = flown({}, [{ atS: 1, do: 'openGuard' }, { atS: 1.5, do: 'arm' }, { atS: 2, do: 'holdDrive', way: 'extend' }, { atS: 12, do: 'releaseDrive' }]);
    expect(nothing.record.outcome).toBe('falseRelease');
    expect(figuresOf(nothing.facts, nothing.record)[3]!.beside).toBe(`rigging and wander; ${nothing.facts.flight.score.splitAtReleaseDeg!.toFixed(2)}° at the release`);
    const held = holds(quiet.facts).reduce((sum, [from, to]) => sum + to - from, 0);
    expect(figures[1]!.value).toBe(`${held.toFixed(1)} s`);
  });

  test('a hand that never came off has no growth at release', () => {
    const never = flown({ fault: disconnect, limitS: 60 }, 'never');
    expect(figuresOf(never.facts, never.record).slice(0, 2).map(({ value }) => value)).toEqual(['–', '–']);
  });
});

test('readings: pointers first, sides for the truth, a limit that is none said so', () => {
  const row = caught.facts.rows.at(-1)!;
  const reading = (truth: boolean, what: string) => readingsOf(row, truth).find(([name]) => name === what)?.[1];
  expect(reading(false, 'Left pointer')).toBe(`${row.leftPointerDeg.toFixed(2)}°`);
  expect(reading(false, 'Left side')).toBeUndefined();
  expect(reading(true, 'Left side')).toBe(`${row.leftDeg.toFixed(2)}°`);
  expect(readingsOf({ ...row, limitKt: null, hornTlaDeg: null }, false).filter(([what]) => what === 'Limit' || what === 'Horn below').map(([, value]) => value)).toEqual(['none', 'no angle']);
  expect(spokenRow(row)).toMatch(/^\d+\.\d seconds: left \d\.\d, right \d\.\d degrees, 167 knots, lever \d+ degrees, horn silent, roll authority \d+ percent$/);
});

test('spans of the horn: from the first row that sounds to the last of its kind', () => {
  const rows = [false, true, true, false, true].map((horn, index) => ({ atS: index / 10, horn }));
  expect(hornSpans(rows)).toEqual([[0.1, 0.2], [0.4, 0.4]]);
});

test('the honest words: nothing about the person, who flew, how it was timed, what is made up', () => {
  const by = byPerson(caught);
  const person = notesOf(by.facts, { ...by.record, device: { ...by.record.device, isolated: false } }).join(' ');
  expect(person).toMatch(/One run says nothing about a person.*expected case; a surprise takes longer.*by a coarse clock.*not measured.*0\.15 s and 0\.1°.*made up/);
  const script = notesOf(caught.facts, caught.record).join(' ');
  expect(script).toContain('A script flew this run.');
  expect(script).not.toContain('expected case');
  const measuring = { ...by.record, scenario: { ...by.record.scenario, recognition: { seenDeg: 0, measuring: true } } };
  expect(notesOf(by.facts, measuring)).toContain('Measuring: in the aeroplane let go in doubt.');
  const helped = notesOf(by.facts, { ...by.record, device: { ...by.record.device, assisted: ['latchedHold', 'spokenPointers'] } });
  expect(helped).toContain('Assisted, with a switch that stays pressed and spoken pointers: not to be laid beside runs without.');
  expect(person).not.toContain('Assisted');
  const drill = flown({ fault: leadingEdge, scored: false, limitS: 20 }, []);
  expect(notesOf(drill.facts, drill.record).join(' ')).not.toContain('counts as a reaction');
});

test('a figure keeps its unit on its line', () => {
  expect(tight('8.4 s later, 167 kt and 10 % of 5 settings')).toBe('8.4\u00a0s later, 167\u00a0kt and 10\u00a0% of 5 settings');
});
