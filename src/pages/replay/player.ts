/** Plays a cursor along the time of a run. Whoever moves the cursor by hand meanwhile is followed, not fought. */
import { useSignal, useSignalEffect, type Signal } from '@preact/signals';

export interface Player {
  readonly playing: Signal<boolean>;
  /** Seconds of the run a second. */
  readonly rate: Signal<number>;
}

/** A frame that comes later than this counts as this: a hidden page does not jump ahead, ms. */
const LONGEST_FRAME_MS = 250;

/** The whole tick that a time lies nearest to. */
export const tickAt = (atS: number): number => Math.round(atS * 100);

/** @param endS where the run ends and the playing stops, s */
export function usePlayer(cursor: Signal<number>, endS: number): Player {
  const playing = useSignal(false);
  const rate = useSignal(1);
  useSignalEffect(() => {
    if (!playing.value) return;
    if (cursor.peek() >= endS) cursor.value = 0;
    // Kept between frames: at a quarter of the rate a frame is less than half a tick.
    let atS = cursor.peek();
    let before: number | null = null;
    let next = requestAnimationFrame(function go(stampMs) {
      if (tickAt(cursor.peek()) !== Math.floor(atS * 100 + 1e-6)) atS = cursor.peek();
      if (before !== null) atS = Math.min(endS, atS + (Math.min(stampMs - before, LONGEST_FRAME_MS) / 1000) * rate.peek());
      before = stampMs;
      cursor.value = Math.floor(atS * 100 + 1e-6) / 100;
      if (atS >= endS) playing.value = false;
      else next = requestAnimationFrame(go);
    });
    return () => cancelAnimationFrame(next);
  });
  return { playing, rate };
}
