/** The brief: the task, the aeroplane, what is asked of the hand, what may go wrong at all, and Start. */
import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { Page } from './frame.js';
import type { DrillCard, House, KeyLine } from './house.js';
import { fromFile, go, left, record, started } from './session.js';
import { bindings, letters } from './settings.js';

/** Everything that may happen to the drive of any airframe here. The same list on every brief: it gives nothing away. */
const CATALOGUE = [
  'a side stops while the other goes on', 'a side lags', 'a side jams, then its link shears', 'a side slips', 'a side is blown back',
  'a pointer lies', 'the drive is dead, slow, quits or runs on', 'the leading edge stops short', 'nothing at all',
];

const COARSE = (
  <p class="note"><span><strong>Coarse clock.</strong> From this address the browser measures time less finely, to about a tenth of a millisecond or a millisecond. Runs work; their records say so.</span></p>
);

export function Brief({ house, number, seed }: { house: House; number: number; seed: number | null }) {
  const drill = useSignal<DrillCard | null | undefined>(undefined);
  useEffect(() => {
    house.warm();
    void house.drills().then((all) => { drill.value = all.find((one) => one.number === number) ?? null; });
  }, [house, number]);
  if (drill.value === undefined) return <Page title={`Drill ${number}`} kind="brief"><p class="waiting">Fetching the brief …</p></Page>;
  if (drill.value === null) return <NoSuchDrill number={number} />;
  const { brief, facts, limitDeg, measuring } = drill.value;
  return (
    <Page title={`Drill ${number}`} kind="brief">
      <Left />
      <p class="above"><a href="#/">All drills</a></p>
      <h1>Drill {number}</h1>
      <div class="columns">
        <div>
          <p class="large">{brief}</p>
          <div class="start">
            <button class="button" type="button" onClick={() => { house.unlock(); started.value = true; go({ page: 'run', number, seed }); }}>Start</button>
            <p>{limitDeg === null
              ? 'A release is a pause here; a split needs the call.'
              : `The first release is scored, and is late from ${limitDeg}° of growth.`}
            {' '}{measuring ? 'Measuring: in the aeroplane let go in doubt.' : 'In doubt let go: in the aeroplane that is free.'}</p>
          </div>
          <Keys card={house.keyCard(bindings.value)} />
          {!house.isolated && COARSE}
        </div>
        <div>
          <h2 class="ruled">As you start</h2>
          <dl class="facts">{facts.map(([what, value]) => <div key={what}><dt>{what}</dt><dd>{value}</dd></div>)}</dl>
          <h2 class="ruled">What may happen</h2>
          <ul class="catalogue">{CATALOGUE.map((one) => <li key={one}>{one}</li>)}</ul>
        </div>
      </div>
    </Page>
  );
}

function Keys({ card }: { card: readonly KeyLine[] }) {
  return (
    <section aria-label="Keys">
      <h2 class="ruled">Keys</h2>
      <dl class="keys">
        {card.map(({ keys, does, held }) => (
          <div key={does}>
            <dt>{keys.map((key) => <kbd key={key}>{key}</kbd>)}</dt>
            <dd>{does}{held && <em> hold</em>}</dd>
          </div>
        ))}
      </dl>
      <p class="small">Mouse and touch: press what is drawn, and keep pressing the switch. Everything is also reached by Tab; on the switch, hold the space bar.</p>
      <label class="check"><input type="checkbox" checked={letters.value} onChange={({ currentTarget }) => { letters.value = currentTarget.checked; }} /> Letter keys act</label>
    </section>
  );
}

/** A run that was left by going back is not lost silently. */
function Left() {
  const run = left.value;
  if (run === null) return null;
  return (
    <div class="note" role="status">
      <p>You left the run. The switch was let go and the run stopped.</p>
      <button
        class="button quiet" type="button"
        onClick={() => {
          record.value = run;
          fromFile.value = false;
          left.value = null;
          go({ page: 'debrief' });
        }}
      >Its debrief</button>
    </div>
  );
}

const NoSuchDrill = ({ number }: { number: number }) => (
  <Page title="No such drill" kind="brief">
    <h1>There is no drill {number}</h1>
    <p class="large"><a href="#/">All drills</a></p>
  </Page>
);
