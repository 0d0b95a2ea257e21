/** The first page: what the job is, and which drill to fly. */
import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { groupsOf, taskOf } from './asks.js';
import { Fan } from './fan.js';
import { Page } from './frame.js';
import type { DrillCard, House } from './house.js';
import { Opening } from './opening.js';
import { fragmentOf } from './route.js';
import { lastDrill } from './session.js';
import { SetList } from './setlist.js';
import { firstVisit } from './settings.js';
import { Way } from './way.js';

/** The scale of the picture on the first page; it stands for no airframe. */
const FIGURE = {
  settings: [0, 10, 20, 30].map((deg) => ({ deg, name: deg === 0 ? 'up' : `${deg}` })),
  stopDeg: 32,
  dial: [{ flapDeg: 0, dialDeg: 0 }, { flapDeg: 32, dialDeg: 80 }],
};

export function Choose({ house }: { house: House }) {
  const drills = useSignal<DrillCard[] | null>(null);
  const failed = useSignal(false);
  useEffect(() => {
    house.drills().then((all) => { drills.value = all; }, () => { failed.value = true; });
  }, [house]);
  const first = firstVisit ? 1 : lastDrill.value;
  return (
    <Page title="Evenhand" kind="choose">
      <div class="lead">
        <div class="lead-words">
          <h1>Two pointers part. The hand comes off.</h1>
          <p class="large">
            With the normal flap drive lost, a slow electric motor moves the flaps for as long as you hold its switch.
            Nothing else watches whether left and right keep together. You do.
          </p>
          {first !== null && (
            <p class="first">
              <a class="button" href={fragmentOf({ page: 'brief', number: first, seed: null })}>{firstVisit ? 'Take drill 1' : `Drill ${first} again`}</a>
              <span>{firstVisit ? 'First time here: three minutes, with a mouse, a finger or the keyboard.' : 'Flown last in this tab.'}</span>
            </p>
          )}
        </div>
        <figure class="lead-figure">
          <Fan gauge={FIGURE} left={13.4} right={11.2} radius={250} wing title="A flap gauge with two pointers: the solid left one has gone on, the open right one has stayed behind." />
          <figcaption>L has gone on. <br />R has stopped. <br />Let go now.</figcaption>
        </figure>
      </div>
      <section aria-labelledby="drills-title">
        <h2 id="drills-title" class="ruled">Drills</h2>
        {failed.value && <p class="note" role="alert">The drills could not be fetched. Load the page again; if that does not help, the server has gone.</p>}
        {drills.value === null && !failed.value && <p class="waiting">Fetching the drills …</p>}
        {drills.value !== null && groupsOf(drills.value).map(({ name, line, drills: own }) => (
          <section key={name} class="group" aria-label={name}>
            <div class="group-head"><h3>{name}</h3><p>{line}</p></div>
            <ol class="drills">{own.map((drill) => <Entry key={drill.number} drill={drill} />)}</ol>
          </section>
        ))}
      </section>
      <SetList house={house} />
      <Opening house={house} />
    </Page>
  );
}

const Entry = ({ drill }: { drill: DrillCard }) => (
  <li>
    <a class="drill" href={fragmentOf({ page: 'brief', number: drill.number, seed: null })}>
      <span class="drill-number"><span class="unseen">Drill </span>{drill.number}</span>
      <span class="drill-task">{taskOf(drill)}</span>
      <Way settings={drill.airframe.settings} stops={drill.way} />
      <span class="drill-facts">{drill.facts.slice(0, 3).map(([, value]) => value).join(' · ')}</span>
      <span class="drill-kind">{drill.measuring ? 'measured' : drill.scored ? 'scored' : 'drill'}{lastDrill.value === drill.number && <em>last flown</em>}</span>
    </a>
  </li>
);
