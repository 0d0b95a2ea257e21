/** The debrief: one sentence, its figures, the charts with what proves each item, and what one run does not say. */
import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import type { RunRecord } from '../../../sim/files/index.js';
import type { Other } from './beside.js';
import { Compare } from './compare.js';
import { FirstLookNote, StepNext } from '../course/behind.js';
import { DeskReport } from '../desk/report.js';
import { lastRow, type Facts } from './facts.js';
import { Figure } from './figure.js';
import { figuresOf } from './figures.js';
import { Page } from '../frame.js';
import type { House, Replayed } from '../house.js';
import { Notes, RecordFacts } from './notes.js';
import { Opening } from './opening.js';
import { OutcomeSign } from './outcome.js';
import { PlannedFlown } from '../plan/section.js';
import { Callouts, Procedure, Said } from './procedure.js';
import { Readings } from '../replay/readings.js';
import { Replay } from '../replay/replay.js';
import { fragmentOf } from '../route.js';
import { SaveAs } from './saveas.js';
import { callSentence, cost, headline } from './sentences.js';
import { fromFile, lastDrill, lastOwn, lastStep, record } from '../session.js';
import { assistedBy, OUTCOME_MEANS, OUTCOME_WORDS, tight, whyVoid } from '../words.js';

export function Debrief({ house }: { house: House }) {
  const facts = useSignal<Facts | null | undefined>(undefined);
  const failed = useSignal<string | null>(null);
  const run = record.value;
  useEffect(() => {
    facts.value = undefined;
    failed.value = null;
    if (run === null) return;
    house.debrief(run).then((all) => { facts.value = all; }, (problem: unknown) => { failed.value = problem instanceof Error ? problem.message : String(problem); });
  }, [house, run]);
  if (run === null) return <Empty house={house} />;
  const own = fromFile.value ? null : lastOwn.value;
  const step = fromFile.value ? null : lastStep.value;
  const again = fromFile.value || own !== null || step !== null ? null : lastDrill.value;
  const tools = (
    <>
      {own?.from === 'bench' && <a class="plain" href="#/bench">Back to the bench</a>}
      {own !== null && <a class="plain" href={fragmentOf({ page: 'own', id: own.id })}>Fly again</a>}
      {step !== null && <a class="plain" href={fragmentOf({ page: 'course', course: step.course })}>Back to the course</a>}
      {again !== null && <a class="plain" href={fragmentOf({ page: 'brief', number: again, seed: null })}>Fly again</a>}
      <button class="plain" type="button" onClick={() => void house.save(run)}>Save record</button>
      <button class="plain" type="button" onClick={() => print()}>Print</button>
    </>
  );
  return (
    <Page title="Debrief" kind="debrief">
      <div class="debrief-head">
        {facts.value === undefined ? failed.value === null && <p class="above waiting" role="status">Playing the run again …</p> : <Above run={run} facts={facts.value} />}
        <div class="tools">{tools}</div>
      </div>
      {failed.value !== null && <p class="note" role="alert">The run could not be played again: {failed.value}. Its record can still be saved.</p>}
      {facts.value === null && <Stored run={run} />}
      {facts.value && <Told key={run.digest} house={house} run={run} facts={facts.value} />}
      {again !== null && <p class="small next"><a href={fragmentOf({ page: 'brief', number: again, seed: null })}>Fly drill {again} again</a> <a href="#/">All drills</a> <a href="#/logbook">Logbook</a> <span>The logbook keeps the run on this machine; its saved record can be opened anywhere.</span></p>}
      {own !== null && <OwnNext own={own} />}
      {step !== null && <StepNext step={step} />}
      <Opening house={house} />
    </Page>
  );
}

/** Where a run from a bench leads on to. */
const OwnNext = ({ own }: { own: NonNullable<typeof lastOwn.value> }) => (
  <p class="small next">
    {own.from === 'bench' && <a href="#/bench">Back to the bench</a>} <a href={fragmentOf({ page: 'own', id: own.id })}>Fly it again</a> <a href="#/logbook">Logbook</a>
    <span>The logbook keeps the run on this machine; its saved record can be opened anywhere.</span>
  </p>
);

/** How it came out, and what kind of run it was. @param facts null for a record of another model */
const Above = ({ run, facts }: { run: RunRecord; facts: Facts | null }) => (
  <p class="above">
    <OutcomeSign outcome={run.outcome} />
    {facts === null ? <span>not replayable here</span> : <span>{OUTCOME_MEANS[run.outcome]}</span>}
    {facts !== null && facts.flight.passed !== null && <span>{facts.flight.passed ? 'standard met' : 'standard not met'}</span>}
    {assistedBy(run) !== null && <span>assisted</span>}
    {run.source === 'scripted' && <span>flown by a script</span>}
    {run.source === 'live' && <span>live, under a desk</span>}
    {fromFile.value && <span>from a file</span>}
  </p>
);

function Told({ house, run, facts }: { house: House; run: RunRecord; facts: Facts }) {
  const { score } = facts.flight;
  const cursor = useSignal(score.releaseS ?? score.onsetS ?? lastRow(facts)?.atS ?? 0);
  const truth = useSignal(false);
  const other = useSignal<Other | null>(null);
  const replayed = useSignal<Replayed | null>(null);
  useEffect(() => { void house.replay(run).then((one) => { replayed.value = one; }); }, [house, run]);
  const why = whyVoid(run);
  return (
    <>
      <h1 class="sentence">{headline(facts, run).flatMap((one, index) => [index > 0 ? ' ' : '', <span key={one}>{one}</span>])}</h1>
      <p class="large">{tight([cost(facts), callSentence(facts, run), why].filter((one) => one !== null).join(' '))}</p>
      <FirstLookNote house={house} run={run} />
      <dl class="figures">
        {figuresOf(facts, run).map(({ what, value, beside }) => <div key={what}><dt>{what}</dt><dd><strong>{value}</strong><span>{tight(beside)}</span></dd></div>)}
      </dl>
      <Replay house={house} facts={facts} run={run} replayed={replayed} cursor={cursor} truth={truth} />
      <div class="columns debrief-columns">
        <div>
          <Figure facts={facts} run={run} cursor={cursor} truth={truth} other={other.value} />
          <Readings facts={facts} replayed={replayed} cursor={cursor} truth={truth} />
          <Compare house={house} facts={facts} run={run} other={other} />
          <SaveAs house={house} facts={facts} run={run} />
        </div>
        <div class="proofs">
          <Said facts={facts} run={run} />
          <Procedure facts={facts} cursor={cursor} />
          <Callouts facts={facts} cursor={cursor} />
          <PlannedFlown house={house} run={run} />
          <RecordFacts run={run} />
        </div>
      </div>
      <DeskReport facts={facts} run={run} cursor={cursor} />
      <Notes facts={facts} run={run} />
    </>
  );
}

const Stored = ({ run }: { run: RunRecord }) => (
  <>
    <h1 class="sentence">This record was flown on another version of the model.</h1>
    <p class="large">Its stored outcome is “{OUTCOME_WORDS[run.outcome]}”. It cannot be played again here, so nothing more is said of it.</p>
    <RecordFacts run={run} />
  </>
);

/** Nothing here: never flown, or the page was loaded anew. */
const Empty = ({ house }: { house: House }) => (
  <Page title="Debrief" kind="debrief">
    <h1>Nothing to debrief</h1>
    <p class="large">
      {lastDrill.value === null ? 'Fly a drill, or open the record of one.'
        : 'A page that is loaded anew no longer holds its run. The logbook keeps every run, if this browser lets it; a saved record opens here.'}
    </p>
    <p class="next"><a href="#/logbook">Logbook</a>{lastDrill.value !== null && <> <a href={fragmentOf({ page: 'brief', number: lastDrill.value, seed: null })}>Fly drill {lastDrill.value} again</a></>} <a href="#/">All drills</a></p>
    <Opening house={house} />
  </Page>
);
