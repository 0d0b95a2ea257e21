/**
 * 14 CFR 25.699(a): each surface's position shown from its own side. 25.701(a): a full split is the reference case, so the
 * worst split must stay a finite, legal state.
 */
import { describe, expect, it } from 'vitest';
import { advance, expand, leftPointer, rightPointer, type Command } from '../../sim/index.js';
import { rollAuthorityPct } from '../../sim/flight/roll.js';
import { AIRFRAME, scenario } from '../sim/bench.js';

const held = [{ do: 'arm', tick: 0, rank: 2, seq: 0 }, { do: 'holdDrive', way: 'extend', tick: 0, rank: 2, seq: 1 }] as Command[];

describe('pointers', () => {
  it('follow their own sides, never a mean or the drive', () => {
    const { fixed, state } = advance(expand(scenario({ faults: [{ name: 'f', kind: 'lag', ratio: 0.3, side: 'left', when: { atS: 0 } }] }), AIRFRAME, 1), held, 2000);
    expect(leftPointer(state, fixed.noise)).toBe(state.leftDeg);
    expect(rightPointer(state, fixed.noise)).toBe(state.rightDeg);
    expect(state.rightDeg).toBe(state.driveDeg);
    expect(state.leftDeg).toBeLessThan(state.rightDeg - 1);
  });
  it('a lying pointer parts from its side; the other does not', () => {
    const { fixed, state } = advance(expand(scenario({ faults: [{ name: 'f', kind: 'pointer', mode: 'stuck', side: 'left', when: { atS: 1 } }] }), AIRFRAME, 1), held, 2000);
    expect(leftPointer(state, fixed.noise)).toBeLessThan(state.leftDeg - 1);
    expect(rightPointer(state, fixed.noise)).toBe(state.rightDeg);
  });
});

describe('the worst split', () => {
  it('one side up, one at the stop: finite at any speed of the model, above all control', () => {
    const { flight } = expand(scenario(), AIRFRAME, 1).fixed;
    for (let kt = 100; kt <= 260; kt += 10) {
      const q = 0.5 * 1.225 * (kt * 1852 / 3600) ** 2;
      const used = rollAuthorityPct(flight, q, 38, 0, 1);
      expect(Number.isFinite(used)).toBe(true);
      expect(used).toBeGreaterThan(100);
    }
  });
});
