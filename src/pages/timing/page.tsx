/** The timing check: twenty holds, let go as soon as a plain mark changes. Optional, and never asked for. */
import { useSignal } from '@preact/signals';
import { useEffect, useRef } from 'preact/hooks';
import { isFit, TIMING_RELEASES, timingCheck } from '../../../sim/stats/timing-check.js';
import { change, forget } from '../changing.js';
import { Page } from '../frame.js';
import type { House } from '../house.js';
import { bindings, pads } from '../settings.js';
import { screenName } from '../size/screen.js';
import { Told } from '../told.js';
import { timing } from './kept.js';
import { TimingResult } from './result.js';
import { changesAfterS, LATEST_S } from './wait.js';
import '../look/timing.css';

type State = 'idle' | 'waiting' | 'changed';

export function TimingPage({ house }: { house: House }) {
  const times = useSignal<readonly number[] | null>(null);
  useEffect(() => forget, []);
  const kept = timing.value;
  const finish = (all: readonly number[], input: string): void => {
    const check = timingCheck(all);
    change(() => {
      timing.value = { ...check, input, screen: screenName.value };
      return isFit(check) ? 'Fit for timing' : 'Not fit for timing';
    });
    times.value = all;
  };
  return (
    <Page title="Timing check" kind="setup">
      <p class="above"><a href="#/settings">Set-up</a></p>
      <h1>Timing check</h1>
      <p class="large size-lead">One minute, and only if you like: hold, and let go the moment the ring fills. It tells whether this screen and this switch are quick and even enough for times to mean anything.</p>
      <Check house={house} finish={finish} />
      {kept !== null && <TimingResult kept={kept} times={times.value} here={kept.screen === screenName.value} />}
      <section class="device-rules" aria-labelledby="timing-says">
        <h2 id="timing-says" class="ruled">What it says, and what it does not</h2>
        <ul>
          <li>It takes eye, hand, switch, screen and browser in one, for a change that nobody can miss. Browsers and screens by themselves add 0.01 to 0.07 s (Bridges and others, 2020).</li>
          <li>Above 0.6 s in the median or 0.15 s of spread the records say “not fit for timing”. The limits are this tool’s own choice.</li>
          <li>It says nothing of how soon you see a split, which takes seconds; and no figure anywhere is corrected by it.</li>
        </ul>
      </section>
      <Told />
    </Page>
  );
}

function Check({ house, finish }: { house: House; finish: (times: readonly number[], input: string) => void }) {
  const pad = useRef<HTMLButtonElement>(null);
  const mark = useRef<SVGCircleElement>(null);
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
  return (
    <div class="timing-check">
      <svg class="ring" viewBox="0 0 120 120" width="120" height="120" aria-hidden="true"><circle ref={mark} class="ring-mark" cx="60" cy="60" r="44" /></svg>
      <div>
        <button ref={pad} class="button timing-hold" type="button" aria-pressed={held.value}>Hold</button>
        <p role="status">{words.value === '' ? 'Hold the button, Space on it, or the key or switch that extends.' : words.value}</p>
        <div class="dots" role="img" aria-label={`${done.value.length} of ${TIMING_RELEASES} releases`}>
          {Array.from({ length: TIMING_RELEASES }, (_, at) => <i key={at} class={at < done.value.length ? 'flown' : ''} />)}
        </div>
      </div>
    </div>
  );
}
