/**
 * Switch boxes, levers and gamepads as the browser sees them: read whole once a frame, and told apart by what has changed.
 * A button that is on when it is first seen says nothing until it has been off.
 */
export interface PadNow {
  readonly index: number;
  /** What the device calls itself; the same for two of one make. */
  readonly id: string;
  /** When the browser had news of it last, ms of the page's clock, where that is kept at all. */
  readonly timestampMs: number;
  readonly buttons: readonly boolean[];
  /** -1 to 1. */
  readonly axes: readonly number[];
}

/** All devices as they stand now; a stand-in in tests. */
export type ReadPads = () => readonly PadNow[];

/**
 * device: stamped with the time the browser had it from the device. frame: stamped with the reading that saw it, once a
 * frame. A frame's own stamp lies before its reading, and could make a release earlier than it was.
 */
type PadClock = 'device' | 'frame';

/** One change on one device. Of an axis `value` and `before` lie between -1 and 1. */
export type PadEvent = { readonly index: number; readonly id: string; readonly stampMs: number; readonly clock: PadClock } & (
  | { readonly what: 'button'; readonly button: number; readonly on: boolean }
  | { readonly what: 'axis'; readonly axis: number; readonly value: number; readonly before: number }
  | { readonly what: 'gone' }
);

/** When a reading was taken, ms of the page's clock. */
export interface Moment {
  readonly readMs: number;
}

/** A button that is pressed by so much is on, where it tells. */
const ON = 0.5;
/** An axis that moves less has not moved. */
const STILL = 1e-3;
/** A device may have told of a change so long before the reading that first missed it, ms. */
const SLACK_MS = 20;

/** Whether the browser has devices to give at all: not over plain http on a network. */
export const hasPads = (): boolean => 'getGamepads' in navigator;

/** The browser's devices that are connected; none where it gives none out. */
export const readPads: ReadPads = () => {
  if (!hasPads()) return [];
  try {
    return navigator.getGamepads().flatMap((pad) => (pad === null || !pad.connected ? [] : [{
      index: pad.index, id: pad.id, timestampMs: pad.timestamp,
      buttons: pad.buttons.map(({ pressed, value }) => pressed || value > ON), axes: [...pad.axes],
    }]));
  } catch {
    // Refused by the page that frames this one.
    return [];
  }
};

/**
 * What has changed between two readings. A device that is new, or was changed for another in its place, brings no change:
 * what is on already is on without anybody's hand.
 */
export function padEvents(before: readonly PadNow[], now: readonly PadNow[], last: Moment, at: Moment): PadEvent[] {
  const events: PadEvent[] = [];
  for (const old of before) {
    const pad = now.find((one) => one.index === old.index && one.id === old.id);
    const about = { index: old.index, id: old.id };
    if (pad === undefined) {
      events.push({ ...about, stampMs: at.readMs, clock: 'frame', what: 'gone' });
      continue;
    }
    const told = pad.timestampMs > old.timestampMs && pad.timestampMs > last.readMs - SLACK_MS && pad.timestampMs <= at.readMs;
    const stamp = told ? { stampMs: pad.timestampMs, clock: 'device' as const } : { stampMs: at.readMs, clock: 'frame' as const };
    pad.buttons.forEach((on, button) => {
      if (button < old.buttons.length && on !== old.buttons[button]) events.push({ ...about, ...stamp, what: 'button', button, on });
    });
    pad.axes.forEach((value, axis) => {
      const was = old.axes[axis];
      if (was !== undefined && Math.abs(value - was) > STILL) events.push({ ...about, ...stamp, what: 'axis', axis, value, before: was });
    });
  }
  return events;
}
