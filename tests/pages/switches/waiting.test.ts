// A part of a device that waits: readings by hand, as a switch box and a lever would give them.
import { describe, expect, it } from 'vitest';
import type { PadLine, PadSeen } from '../../../src/pages/switches/house.js';
import { goneOn, pressedIn, waitFor, widestOf } from '../../../src/pages/switches/waiting.js';

const line: PadLine = { does: 'arm', words: 'arm', held: false, is: 'switch', source: null, stays: null, dead: null, begins: '' };
const pad = (buttons: readonly boolean[], axes: readonly number[] = []): PadSeen => ({ index: 0, id: 'box', buttons, axes, ownTime: null });

describe('a switch', () => {
  it('is the one that was off as waiting began', () => {
    const waiting = waitFor(line, pad([true, false, false]));
    expect(pressedIn(waiting, pad([true, false, false]))).toBeNull();
    expect(pressedIn(waiting, pad([true, false, true]))).toBe(2);
  });
  it('that was on from before counts once it has been let go', () => {
    const waiting = waitFor(line, pad([true]));
    expect(goneOn(waiting, 'switch', pad([true]))).toBe(waiting);
    const off = goneOn(waiting, 'switch', pad([false]));
    expect(pressedIn(off, pad([false]))).toBeNull();
    expect(pressedIn(off, pad([true]))).toBe(0);
  });
  it('of a device that grew a button is seen too', () => {
    expect(pressedIn(waitFor(line, pad([])), pad([false, true]))).toBe(1);
  });
});

describe('a lever', () => {
  const moved = (...readings: (readonly number[])[]) =>
    readings.reduce((waiting, axes) => goneOn(waiting, 'lever', pad([], axes)), waitFor(line, pad([], readings[0])));
  it('is the axis that was moved farthest, with both its ends, wherever it stands now', () => {
    expect(widestOf(moved([0.1, 0], [0.2, -0.9], [0.1, 0.8], [0.1, 0.3]))).toEqual({ axis: 1, least: -0.9, most: 0.8 });
  });
  it('that stands still tells nothing new', () => {
    const waiting = moved([0.1, 0]);
    expect(goneOn(waiting, 'lever', pad([], [0.1, 0]))).toBe(waiting);
    expect(widestOf(waiting)).toEqual({ axis: 0, least: 0.1, most: 0.1 });
  });
});
