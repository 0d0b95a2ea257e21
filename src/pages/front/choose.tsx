/** The first page: what the job is, a way in for each of those who come, and every drill. */
import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { chaptersOf, taskOf } from './asks.js';
import { Fan } from '../fan.js';
import { Page } from '../frame.js';
import { Whoever } from './whoever.js';
import type { DrillCard, House } from '../house.js';
import { Opening } from '../debrief/opening.js';
import { fragmentOf } from '../route.js';
import { lastDrill } from '../session.js';
import { SetList } from '../set/list.js';
import { firstVisit } from '../settings.js';
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
  const last = lastDrill.value;
  return (
    <Page title="Evenhand" kind="choose">
      <div class={firstVisit ? 'lead' : 'lead lead-known'}>
        <div class="lead-words">
          <h1>Two pointers part. The hand comes off.</h1>
          {firstVisit && <p class="large">
            With the normal flap drive lost, a slow electric motor moves the flaps for as long as you hold its switch.
            Nothing else watches whether left and right keep together. You do.
          </p>}
        </div>
        {firstVisit && <figure class="lead-figure">
          <Fan gauge={FIGURE} left={13.4} right={11.2} radius={206} wing title="A flap gauge with two pointers: the solid left one has gone on, the open right one has stayed behind." />
          <figcaption>L has gone on. <br />R has stopped. <br />Let go now.</figcaption>
        </figure>}
      </div>
      <Whoever house={house} />
      <section aria-labelledby="drills-title">
        <h2 id="drills-title" class="ruled">Drills</h2>
        {last !== null && <p class="again"><a class="plain" href={fragmentOf({ page: 'brief', number: last, seed: null })}>Drill {last} again</a>flown last in this tab</p>}
        {failed.value && <p class="note" role="alert">The drills could not be fetched. Load the page again; if that does not help, the server has gone.</p>}
        {drills.value === null && !failed.value && <p class="waiting">Fetching the drills …</p>}
        {drills.value !== null && chaptersOf(drills.value).map((chapter) => (
          <section key={chapter.name} class="chapter" aria-label={chapter.name}>
            <h3>{chapter.name}</h3>
            {chapter.groups.map(({ name, line, drills: own }) => (
              <div key={name} class="group">
                <div class="group-head"><p class="group-name">{name}</p><p>{line}</p></div>
                <ol class="drills" aria-label={name}>{own.map((drill) => <Entry key={drill.number} drill={drill} />)}</ol>
              </div>
            ))}
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
      <span class="drill-kind">{drill.measuring ? 'measured' : drill.scored ? 'scored' : 'procedure'}{lastDrill.value === drill.number && <em>last flown</em>}</span>
    </a>
  </li>
);
