/** A part of a device that waits to be pressed, or moved to both its ends: what the readings since have told. */
import type { PadLine, PadSeen } from './house.js';

export interface Waiting {
  readonly does: string;
  /** The reading as waiting began: what is on already, and where the axes stood. */
  readonly from: PadSeen;
  /** Least and greatest of each axis since. */
  readonly ends: readonly (readonly [least: number, greatest: number])[];
}

export const waitFor = ({ does }: PadLine, pad: PadSeen): Waiting => ({ does, from: pad, ends: pad.axes.map((value) => [value, value]) });

/** Number of the switch that has been pressed since; null for none. */
export function pressedIn({ from }: Waiting, { buttons }: PadSeen): number | null {
  const pressed = buttons.findIndex((on, at) => on && from.buttons[at] !== true);
  return pressed < 0 ? null : pressed;
}

/** With one more reading; the same where that tells nothing new. */
export function goneOn(waiting: Waiting, is: PadLine['is'], { buttons, axes }: PadSeen): Waiting {
  const { from, ends: before } = waiting;
  if (is === 'switch') {
    // What was on from before must be let go first.
    const still = buttons.map((on, at) => on && from.buttons[at] === true);
    return still.some((on, at) => on !== from.buttons[at]) ? { ...waiting, from: { ...from, buttons: still } } : waiting;
  }
  const ends = axes.map((value, at) => [Math.min(value, before[at]?.[0] ?? value), Math.max(value, before[at]?.[1] ?? value)] as const);
  return JSON.stringify(ends) === JSON.stringify(before) ? waiting : { ...waiting, ends };
}

/** The axis that was moved farthest, and its ends. */
export function widestOf({ ends }: Waiting): { readonly axis: number; readonly least: number; readonly most: number } {
  const axis = ends.reduce((best, [least, most], at) => (most - least > (ends[best]?.[1] ?? 0) - (ends[best]?.[0] ?? 0) ? at : best), 0);
  const [least, most] = ends[axis] ?? [0, 0];
  return { axis, least, most };
}
