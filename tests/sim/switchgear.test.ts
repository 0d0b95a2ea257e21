/** The switch table, row by row, for every way the switch can be built; and that no act but guard, arm and hold together moves anything. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { arm, closeGuard, holdDrive, isHeld, releaseDrive, setDrive } from '../../sim/drive/switchgear.js';
import { initialState, latch, withNumbers, type Numbers, type State } from '../../sim/state.js';
import { driveNumbers } from '../../sim/drive/numbers.js';
import { AIRFRAME } from './bench.js';

const kinds = ['sprung', 'latched'] as const;
const built = (extendSwitch: 'sprung' | 'latched', retractSwitch: 'sprung' | 'latched') =>
  driveNumbers({ ...AIRFRAME.drive, extendSwitch, retractSwitch }, AIRFRAME.heat);
const state = (change: Numbers = {}): State => withNumbers(initialState(), change);
const after = (change: Numbers, act: (s: State) => void): State => { const s = state(change); act(s); return s; };

describe('guard and arm', () => {
  it('arming needs the guard open', () => {
    expect(after({ guardOpen: 0 }, arm).latched.armed).toBe(0);
    expect(after({ guardOpen: 1 }, arm).latched.armed).toBe(1);
  });
  it('closing the guard disarms and puts the switch to off, from any place', () => {
    for (const drive of [-1, 0, 1]) expect(after({ guardOpen: 1, armed: 1, drive }, closeGuard)).toMatchObject({ latched: { guardOpen: 0, armed: 0, drive: 0 } });
  });
  it('held is armed and away from off', () => {
    expect([[0, 0], [0, 1], [1, 0], [1, 1], [1, -1]].map(([armed, drive]) => isHeld(state({ armed: armed as number, drive: drive as number })))).toEqual([false, false, false, true, true]);
  });
});

describe.each(kinds.flatMap((out) => kinds.map((back) => [out, back] as const)))('extend %s, retract %s', (out, back) => {
  const n = built(out, back);
  it('a closed guard covers the switch', () => {
    for (const act of [(s: State) => holdDrive(s, 'extend'), (s: State) => setDrive(s, n, 'retract'), (s: State) => setDrive(s, n, 'extend')]) {
      expect(after({ guardOpen: 0 }, act).latched.drive).toBe(0);
    }
  });
  it('let go: a sprung place goes to off, a latched one stays', () => {
    expect(after({ guardOpen: 1, drive: 1 }, (s) => releaseDrive(s, n)).latched.drive).toBe(out === 'sprung' ? 0 : 1);
    expect(after({ guardOpen: 1, drive: -1 }, (s) => releaseDrive(s, n)).latched.drive).toBe(back === 'sprung' ? 0 : -1);
  });
  it('only a latched place can be set; off always', () => {
    expect(after({ guardOpen: 1 }, (s) => setDrive(s, n, 'extend')).latched.drive).toBe(out === 'latched' ? 1 : 0);
    expect(after({ guardOpen: 1 }, (s) => setDrive(s, n, 'retract')).latched.drive).toBe(back === 'latched' ? -1 : 0);
    for (const drive of [-1, 1]) expect(after({ guardOpen: 1, drive }, (s) => setDrive(s, n, 'off')).latched.drive).toBe(0);
  });
  it('after any acts: a closed guard means disarmed and off', () => {
    const acts: ((s: State) => void)[] = [
      (s) => { latch(s, 'guardOpen', 1); }, closeGuard, arm, (s) => holdDrive(s, 'extend'), (s) => holdDrive(s, 'retract'),
      (s) => releaseDrive(s, n), (s) => setDrive(s, n, 'extend'), (s) => setDrive(s, n, 'retract'), (s) => setDrive(s, n, 'off'),
    ];
    fc.assert(fc.property(fc.array(fc.constantFrom(...acts), { maxLength: 30 }), (some) => {
      const s = state();
      for (const act of some) act(s);
      return s.latched.guardOpen === 1 || (s.latched.armed === 0 && s.latched.drive === 0);
    }));
  });
});
