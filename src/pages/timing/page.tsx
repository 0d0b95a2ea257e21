/** The timing check: twenty holds, let go as soon as a plain mark changes. Optional, and never asked for. */
import { useSignal } from '@preact/signals';
import { useEffect, useRef } from 'preact/hooks';
import { isFit, TIMING_RELEASES, timingCheck } from '../../../sim/stats/timing-check.js';
import { change, forget } from '../changing.js';
import { Page } from '../frame.js';
import type { House } from '../house.js';
import { screenName } from '../size/screen.js';
import { Told } from '../told.js';
import { useHolds } from './holds.js';
import { timing } from './kept.js';
import { TimingResult } from './result.js';
import '../look/timing.css';

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
  const { done, held, words } = useHolds(house, pad, mark, finish);
  return (
    <div class="timing-check">
      <svg class="ring" viewBox="0 0 120 120" width="120" height="120" aria-hidden="true"><circle ref={mark} class="ring-mark" cx="60" cy="60" r="44" /></svg>
      <div>
        <button ref={pad} class="button timing-hold" type="button" aria-pressed={held}>Hold</button>
        <p role="status">{words === '' ? 'Hold the button, Space on it, or the key or switch that extends.' : words}</p>
        <div class="dots" role="img" aria-label={`${done} of ${TIMING_RELEASES} releases`}>
          {Array.from({ length: TIMING_RELEASES }, (_, at) => <i key={at} class={at < done ? 'flown' : ''} />)}
        </div>
      </div>
    </div>
  );
}
