// The coverage matrix: which place a scenario fills, by hand; and every empty place begins a scenario that can be flown.
import { describe, expect, test } from 'vitest';
import { FAULT_WORDS } from '../../../../src/pages/faults.js';
import { beginCell } from '../../../../src/pages/bench/coverage/begin.js';
import { coverageOf, keyOf, legsOf, type Row } from '../../../../src/pages/bench/coverage/matrix.js';
import { readScenario } from '../../../../src/text/index.js';
import { flyTrainee, readyFor } from '../../../../sim/index.js';
import { airframeA, airframeFor, drill, drillNames, lookup } from '../../../files/shipped.js';

const shipped = drillNames.map((name) => ({ scenario: drill(name), of: name }));
const matrix = coverageOf(shipped, 'airframe-a');
const at = (row: Row, way: 'out' | 'in', toDeg: number): string[] => (matrix.get(keyOf(row, { way, toDeg })) ?? []).map(({ of, sure }) => `${of}${sure ? '' : '?'}`);
const rows = [...Object.keys(FAULT_WORDS), 'none'] as Row[];

test('legs: out to each setting but the first, in to each but the last', () => {
  expect(legsOf(airframeA).map(({ way, fromDeg, toDeg }) => `${way} ${fromDeg} ${toDeg}`)).toEqual([
    'out 0 4', 'out 4 9', 'out 9 16', 'out 16 26', 'out 26 36', 'in 36 26', 'in 26 16', 'in 16 9', 'in 9 4', 'in 4 0',
  ]);
});

describe('shipped drills stand where they are flown', () => {
  test('by position on the leg that holds it, by time on any', () => {
    expect(at('pointer', 'out', 16)).toContain('pointer-lies'); // 11.5 deg, between 9 and 16
    expect(at('pointer', 'out', 9)).not.toContain('pointer-lies');
    expect(at('disconnect', 'out', 16)).toContain('set-16-from-4');
    expect(at('disconnect', 'in', 9)).toContain('back-in');
    expect(at('disconnect', 'out', 9)).not.toContain('back-in');
    expect(at('none', 'out', 16)).toContain('hold-and-nothing');
    const two = { ...drill('pointer-lies'), faults: [{ name: 'f', kind: 'dead' as const, when: { heldS: 3 } }] };
    const timed = coverageOf([{ scenario: two, of: 'x' }], 'airframe-a');
    expect(timed.get('dead out 9')).toEqual([{ of: 'x', role: 'flying', sure: false }]);
    expect(timed.get('dead out 16')).toHaveLength(1);
  });
  test('another airframe has a matrix of its own', () => {
    expect([...coverageOf(shipped, 'airframe-b').values()].flat().map(({ of }) => airframeFor(drill(of)).name)).not.toContain('airframe-a');
    expect([...matrix.values()].flat().map(({ of }) => of)).not.toContain('small-and-quick');
  });
  test('a scenario stands once in a place, whatever number of its faults are of a kind', () => {
    const stop = { kind: 'disconnect' as const, when: { flapDeg: 6 } };
    const both = { ...drill('set-16-from-4'), faults: [{ name: 'a', side: 'left' as const, ...stop }, { name: 'b', side: 'right' as const, ...stop }] };
    expect(coverageOf([{ scenario: both, of: 'x' }], 'airframe-a').get('disconnect out 16')).toHaveLength(1);
  });
});

describe('an empty place begins one', () => {
  test.each(['airframe-a', 'airframe-b'])('%s: every kind on every leg in either part is sound, stands in its place, and its fault comes', (name) => {
    const airframe = lookup(name)!;
    const never: string[] = [];
    for (const row of rows) {
      for (const leg of legsOf(airframe)) {
        for (const role of ['flying', 'driving'] as const) {
          const { name: file, text } = beginCell(row, leg, role, airframe);
          const read = readScenario(text, file, lookup);
          if (!read.ok) throw new Error(`${file} ${role}: ${JSON.stringify(read.problems)}`);
          const cell = coverageOf([{ scenario: read.value, of: file }], name).get(keyOf(row, leg));
          expect(cell, file).toEqual([{ of: file, role, sure: true }]);
          if (role === 'driving' || row === 'none') continue;
          const { flight } = flyTrainee(readyFor(read.value, airframe, 1), airframe, 1, 'never');
          if (!flight.events.some(({ what }) => what === 'fault')) never.push(file);
        }
      }
    }
    expect(never).toEqual([]);
  }, 120_000);
});
