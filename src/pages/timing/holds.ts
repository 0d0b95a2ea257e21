/** The holds of the timing check: each waits for its change, and only a release behind that counts. */
import { useSignal } from '@preact/signals';
import type { RefObject } from 'preact';
import { useEffect } from 'preact/hooks';
import { TIMING_RELEASES } from '../../../sim/stats/timing-check.js';
import type { House } from '../house.js';
import { bindings, pads } from '../settings.js';
import { changesAfterS, LATEST_S } from './wait.js';

type State = 'idle' | 'waiting' | 'changed';

interface Holds {
  /** Releases that counted. */
  readonly done: number;
  readonly held: boolean;
  /** What the last hold came to. */
  readonly words: string;
}

/**
 * @param pad what is held
 * @param mark fills when it changes
 * @param finish takes all releases, s behind the change, and the hands they were made with
 */
export function useHolds(house: House, pad: RefObject<HTMLElement | null>, mark: RefObject<Element | null>, finish: (times: readonly number[], input: string) => void): Holds {
  const done = useSignal<readonly number[]>([]);
  const words = useSignal('');
  const held = useSignal(false);
  useEffect(() => {
    let state: State = 'idle';
    /** Stamp of the first frame of this hold, and of the frame that drew the change, ms. */
    let [sinceMs, drawnMs, waitS] = [-1, -1, 0];
    let asked = 0;
    const hands = new Set<string>();
    const draw = (filled: boolean): void => { mark.current?.classList.toggle('ring-full', filled); };
    const over = (say: string): void => {
      state = 'idle';
      held.value = false;
      words.value = say;
      cancelAnimationFrame(asked);
    };
    const frame = (frameMs: number): void => {
      if (state === 'idle') return;
      if (sinceMs < 0) sinceMs = frameMs;
      if (state === 'waiting' && frameMs - sinceMs >= waitS * 1000) {
        // Drawn in this very frame: its stamp is when the change was there to be seen.
        draw(true);
        [state, drawnMs] = ['changed', frameMs];
      }
      if (state === 'changed' && frameMs - drawnMs > LATEST_S * 1000) return over('Not seen: the ring had filled. It does not count; hold again.');
      asked = requestAnimationFrame(frame);
    };
    const unwatch = house.timing.watch(pad.current as HTMLElement, { bindings: bindings.peek(), pads: pads.peek() }, {
      press(hand) {
        hands.add(hand);
        draw(false);
        [state, sinceMs, waitS] = ['waiting', -1, changesAfterS()];
        held.value = true;
        words.value = 'Wait for it';
        asked = requestAnimationFrame(frame);
      },
      lift(stampMs) {
        if (state === 'idle') return;
        if (state === 'waiting') return over('Too soon: nothing had changed. It does not count; hold again.');
        done.value = [...done.value, (stampMs - drawnMs) / 1000];
        const left = TIMING_RELEASES - done.value.length;
        over(left > 0 ? `${done.value.length} of ${TIMING_RELEASES}. Hold again` : 'Done');
        if (left > 0) return;
        finish(done.value, [...hands].sort().join(', '));
        done.value = [];
        hands.clear();
      },
      lost() {
        over('The window or the device lost your hand. It does not count; hold again.');
        draw(false);
      },
    });
    return () => {
      cancelAnimationFrame(asked);
      unwatch();
    };
  }, [house]);
  return { done: done.value.length, held: held.value, words: words.value };
}
