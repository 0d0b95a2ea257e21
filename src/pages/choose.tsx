/** The first page: what the job is, and which drill to fly. */
import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { Fan } from './fan.js';
import { Page } from './frame.js';
import type { DrillCard, House } from './house.js';
import { Opening } from './opening.js';
import { fragmentOf } from './route.js';
import { firstVisit } from './settings.js';

/** The scale of the picture on the first page; it stands for no airframe. */
const FIGURE = {
  settings: [0, 10, 20, 30].map((deg) => ({ deg, name: deg === 0 ? 'up' : `${deg}` })),
  stopDeg: 32,
  dial: [{ flapDeg: 0, dialDeg: 0 }, { flapDeg: 32, dialDeg: 80 }],
};

export function Choose({ house }: { house: House }) {
  const drills = useSignal<DrillCard[] | null>(null);
  useEffect(() => {
    void house.drills().then((all) => { drills.value = all; });
  }, [house]);
  return (
    <Page title="Evenhand" kind="choose">
      <div class="lead">
        <div class="lead-words">
          <h1>Two pointers part. The hand comes off.</h1>
          <p class="large">
            With the normal flap drive lost, a slow electric motor moves the flaps for as long as you hold its switch.
            Nothing else watches whether left and right keep together. You do.
          </p>
          {firstVisit && <p class="first">First time here? Take drill 1: it is flown in three minutes and asks for nothing but the keyboard, a mouse or a finger.</p>}
        </div>
        <figure class="lead-figure">
          <Fan gauge={FIGURE} left={13.4} right={11.2} radius={300} wing title="A flap gauge with two pointers: the solid left one has gone on, the open right one has stayed behind." />
          <figcaption>L has gone on. <br />R has stopped. <br />Let go now.</figcaption>
        </figure>
      </div>
      <h2 class="ruled">Drills</h2>
      <ol class="drills">
        {drills.value === null && <li class="waiting">Fetching the drills …</li>}
        {drills.value?.map((drill) => <Entry key={drill.number} drill={drill} />)}
      </ol>
      <Opening house={house} />
    </Page>
  );
}

const Entry = ({ drill }: { drill: DrillCard }) => (
  <li>
    <a class="drill" href={fragmentOf({ page: 'brief', number: drill.number, seed: null })}>
      <span class="drill-number">{drill.number}</span>
      <span class="drill-task">Flaps from {drill.from} to {drill.to.join(', then ')}</span>
      <span class="drill-facts">{drill.facts.slice(0, 3).map(([, value]) => value).join(' · ')}</span>
      <span class="drill-go" aria-hidden="true">brief</span>
    </a>
  </li>
);
