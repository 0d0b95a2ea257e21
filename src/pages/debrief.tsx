/** The debrief: one sentence, its figures, one picture, and what you said yourself. */
import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import type { RunRecord } from '../../sim/files/index.js';
import type { Debrief as Facts, ProcedureItem } from '../../sim/index.js';
import { Figure } from './figure.js';
import { Page } from './frame.js';
import type { House } from './house.js';
import { Opening } from './opening.js';
import { fragmentOf } from './route.js';
import { fromFile, lastDrill, record } from './session.js';
import { assessed } from './judged.js';
import { cost, headline, secondMore } from './sentences.js';
import { degrees, OUTCOME_WORDS, percent, seconds, whyVoid } from './words.js';

export function Debrief({ house }: { house: House }) {
  const facts = useSignal<Facts | null | undefined>(undefined);
  const run = record.value;
  useEffect(() => {
    facts.value = undefined;
    if (run !== null) void house.debrief(run).then((all) => { facts.value = all; });
  }, [house, run]);
  if (run === null) return <Empty house={house} />;
  const tools = (
    <>
      {!fromFile.value && lastDrill.value !== null && <a class="plain" href={fragmentOf({ page: 'brief', number: lastDrill.value, seed: null })}>Fly again</a>}
      <button class="plain" type="button" onClick={() => void house.save(run)}>Save record</button>
      <button class="plain" type="button" onClick={() => print()}>Print</button>
    </>
  );
  return (
    <Page title="Debrief" kind="debrief" tools={tools}>
      {facts.value === undefined && <p class="waiting">Playing the run again …</p>}
      {facts.value === null && <Stored run={run} />}
      {facts.value && <Told run={run} facts={facts.value} />}
      <Opening house={house} />
    </Page>
  );
}

function Told({ run, facts }: { run: RunRecord; facts: Facts }) {
  const { score } = facts.flight;
  const why = whyVoid(run);
  const more = secondMore(facts);
  return (
    <>
      <p class="above"><Outcome outcome={run.outcome} />{fromFile.value && ' from a file'}</p>
      <h1 class="sentence">{headline(facts, run).map((one, index) => <span key={one}>{index > 0 && ' '}{one}</span>)}</h1>
      <p class="large">{cost(facts)}{why !== null && ` ${why}`}</p>
      <dl class="figures">
        <Number what="Growth at release" value={score.growthAtReleaseDeg === null ? '–' : degrees(score.growthAtReleaseDeg)} more={`since onset; late from ${degrees(facts.limitDeg)}`} />
        <Number what="After onset" value={score.afterOnsetS === null ? '–' : seconds(score.afterOnsetS)} more={score.onsetS === null ? 'there was none' : facts.oneDegreeS === null ? 'never shown 1° apart' : `1° apart at ${seconds(facts.oneDegreeS)}`} />
        <Number what="Final split" value={degrees(score.finalSplitDeg)} more="true, both sides at rest" />
        <Number what="Roll authority used" value={percent(score.rollAuthorityPct)} more={more === null ? 'by the final split' : `${percent(more.rollAuthorityPct)} with a second more`} />
      </dl>
      <div class="columns debrief-columns">
        <Figure facts={facts} />
        <div>
          {run.assessment !== null && <Said run={run} facts={facts} />}
          <Procedure facts={facts} />
        </div>
      </div>
    </>
  );
}

const Number = ({ what, value, more }: { what: string; value: string; more: string }) => (
  <div><dt>{what}</dt><dd><strong>{value}</strong><span>{more}</span></dd></div>
);

/** A sign of its own for each word: no outcome is told by colour. */
function Outcome({ outcome }: { outcome: RunRecord['outcome'] }) {
  const good = ['caught', 'held', 'completed'].includes(outcome);
  const open = ['void', 'undecided', 'timeUp'].includes(outcome);
  const shape = good ? 'M3 9.5L7 13.5L15 4.5' : open ? 'M3 9H15' : 'M9 2.5L16 15H2Z';
  return <span class="outcome"><svg class="sign" viewBox="0 0 18 18" width="18" height="18" aria-hidden="true"><path class="sign-line" d={shape} /></svg>{OUTCOME_WORDS[outcome]}</span>;
}

const Said = ({ run, facts }: { run: RunRecord; facts: Facts }) => (
  <table class="said">
    <caption>Your own judgement</caption>
    <thead><tr><td /><th scope="col">you said</th><th scope="col">it was</th></tr></thead>
    <tbody>{assessed(run.assessment as NonNullable<RunRecord['assessment']>, facts, run).map(({ what, said, was }) => <tr key={what}><th scope="row">{what}</th><td>{said}</td><td>{was}</td></tr>)}</tbody>
  </table>
);

const ITEMS: Readonly<Record<ProcedureItem['item'], string>> = {
  leverFirst: 'Lever before drive', insideLimit: 'Inside the limit speed', leadingEdgeOut: 'Leading edge out before driving on',
  bothThere: 'Both pointers there', splitCalled: 'Split called', secondLook: 'Second look, still moving called',
  leftAlone: 'Switch left alone after', leftAsIs: 'Lever, guard and arm left as they are',
  failureCalled: 'Drive called failed', driveStopped: 'Drive that ran on stopped', noFalseCall: 'Nothing called that was not there',
};

const Procedure = ({ facts }: { facts: Facts }) => (
  <section class="procedure">
    <h2 class="ruled">Procedure</h2>
    <ul>
      {facts.flight.procedure.map(({ item, ok, atS }) => (
        <li key={item}>
          <svg class="sign" viewBox="0 0 18 18" width="18" height="18" aria-hidden="true"><path class="sign-line" d={ok === null ? 'M3 9H15' : ok ? 'M3 9.5L7 13.5L15 4.5' : 'M9 2.5L16 15H2Z'} /></svg>
          <span>{ITEMS[item]}</span>
          <span class="proof">{ok === null ? 'not asked for' : ok ? 'yes' : 'no'}{atS !== null && item !== 'insideLimit' && `, at ${seconds(atS)}`}</span>
        </li>
      ))}
    </ul>
  </section>
);

const Stored = ({ run }: { run: RunRecord }) => (
  <>
    <p class="above"><Outcome outcome={run.outcome} /> not replayable here</p>
    <h1 class="sentence">This record was flown on another version of the model.</h1>
    <p class="large">Its stored outcome is “{OUTCOME_WORDS[run.outcome]}”. It cannot be played again here, so nothing more is said of it.</p>
  </>
);

const Empty = ({ house }: { house: House }) => (
  <Page title="Debrief" kind="debrief">
    <h1>Nothing to debrief yet</h1>
    <p class="large">Fly a drill, or open the record of one. <a href="#/">All drills</a></p>
    <Opening house={house} />
  </Page>
);
