// Two runs of one task on one time: aligned, named, and refused where they are not of one task.
import { describe, expect, test } from 'vitest';
import { besideOf, overlaid, sideBySide, taskOf, whyNot } from '../../../src/pages/debrief/beside.js';
import type { Chart } from '../../../src/pages/debrief/figure.js';
import { FAULTS_OF_THE_JOB, flown } from '../flown.js';

const early = flown({ fault: { ...FAULTS_OF_THE_JOB.disconnect, when: { heldS: 6 } } }, 'prompt');
const late = flown({ fault: { ...FAULTS_OF_THE_JOB.disconnect, when: { heldS: 11 } } }, 'slow');
const quiet = flown({}, 'prompt');

describe('alignment', () => {
  test('onset over onset: every row moved by the same time, its values untouched', () => {
    const other = besideOf(early.facts, late.facts, early.record);
    const byS = early.facts.flight.score.onsetS! - late.facts.flight.score.onsetS!;
    expect(byS).toBeCloseTo(-5, 6);
    expect(other.aligned).toBe('onset');
    expect(other.facts.rows.length).toBe(late.facts.rows.length);
    for (const [index, row] of late.facts.rows.entries()) {
      expect(other.facts.rows[index]!.atS).toBeCloseTo(row.atS + byS, 9);
      expect({ ...other.facts.rows[index]!, atS: 0 }).toEqual({ ...row, atS: 0 });
    }
    expect(other.releaseS).toBeCloseTo(late.facts.flight.score.releaseS! + byS, 2);
  });
  test('start over start where either has none', () => {
    for (const [one, two] of [[early, quiet], [quiet, early]] as const) {
      const other = besideOf(one.facts, two.facts, two.record);
      expect(other.aligned).toBe('start');
      expect(other.facts.rows.map(({ atS }) => atS)).toEqual(two.facts.rows.map(({ atS }) => atS));
    }
  });
});

test('one task: the same airframe, start and settings, whatever went wrong in it', () => {
  expect(whyNot(early.record, late.record)).toBeNull();
  expect(whyNot(early.record, quiet.record)).toBeNull();
  expect(whyNot(early.record, early.record)).toBe('That is this very run.');
  expect(whyNot(early.record, flown({ settings: [9, 16] }, 'prompt').record)).toBe('That run had another task: flaps from 4 to 9, then 16.');
  expect(whyNot(early.record, { ...late.record, airframe: { ...late.record.airframe, name: 'Airframe X' } })).toBe('That run was flown on another airframe.');
  expect(taskOf(early.record)).toBe('Flaps from 4 to 16');
});

test('figures side by side: each run’s own, and a dash where only one has it', () => {
  const both = sideBySide(early.facts, early.record, besideOf(early.facts, late.facts, late.record));
  expect(both.find(([what]) => what === 'From onset to release')).toEqual(['From onset to release', `${early.facts.flight.score.afterOnsetS!.toFixed(1)} s`, `${late.facts.flight.score.afterOnsetS!.toFixed(1)} s`]);
  const mixed = sideBySide(early.facts, early.record, besideOf(early.facts, quiet.facts, quiet.record));
  expect(mixed[0]).toEqual(['Outcome', 'caught', 'held']);
  expect(mixed.find(([what]) => what === 'Growth at release')?.[2]).toBe('–');
  expect(mixed.find(([what]) => what === 'Settings reached')?.slice(1)).toEqual(['–', '1 of 1']);
});

test('the charts keep their own lines, gain the other’s by name, and have room for both', () => {
  const chart = (title: string, from: number, to: number): Chart => ({ title, height: 10, range: { from, to }, count: 3, lines: [{ name: '', look: 'own', points: [[0, from]] }] });
  const other = besideOf(early.facts, late.facts, late.record);
  const charts = overlaid(['pointers', 'split', 'speed', 'lever', 'roll'].map((title) => chart(title, 4, 6)), other.facts, false);
  const last = other.facts.rows.at(-1)!;
  expect(charts.map(({ lines }) => lines.map(({ name }) => name))).toEqual([['other right', 'other left', 'this run'], ['other', 'this run'], ['other', 'this run'], ['other', 'this run'], ['other', 'this run']]);
  expect(charts.map(({ lines }) => lines[0]!.points.at(-1))).toEqual([last.rightPointerDeg, Math.abs(last.leftPointerDeg - last.rightPointerDeg), last.speedKt, last.tlaDeg, last.rollAuthorityPct].map((value) => [last.atS, value]));
  for (const { range, lines } of charts) for (const { points } of lines) for (const [, value] of points) {
    expect(value).toBeGreaterThanOrEqual(range.from);
    expect(value).toBeLessThanOrEqual(range.to);
  }
  expect(overlaid([chart('pointers', 4, 6)], other.facts, true)[0]!.lines[0]!.points.at(-1)).toEqual([last.atS, last.rightDeg]);
});
