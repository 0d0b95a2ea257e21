/** The brief: the task, the aeroplane, what is asked of the hand, what may go wrong at all, and Start. */
import { useSignal } from '@preact/signals';
import type { ComponentChildren } from 'preact';
import { useEffect } from 'preact/hooks';
import { CATALOGUE } from '../faults.js';
import { Page } from '../frame.js';
import type { DrillCard, House } from '../house.js';
import { Missing } from '../missing.js';
import { KeyCard } from './keycard.js';
import { Parts } from './parts.js';
import type { PlanOf } from '../plan/house.js';
import { PlanNote } from '../plan/note.js';
import { fragmentOf } from '../route.js';
import { fromFile, go, gone, left, record, started } from '../session.js';
import { SpeedTable } from './speeds.js';
import { Unmeasured } from '../size/unmeasured.js';

const COARSE = (
  <p class="note"><span><strong>Coarse clock.</strong> From this address the browser measures time less finely, to about a tenth of a millisecond or a millisecond. Runs work; their records say so.</span></p>
);

export function Brief({ house, number, seed }: { house: House; number: number; seed: number | null }) {
  const drill = useSignal<DrillCard | null | undefined>(undefined);
  const failed = useSignal(false);
  useEffect(() => {
    house.warm();
    house.drills().then((all) => { drill.value = all.find((one) => one.number === number) ?? null; }, () => { failed.value = true; });
  }, [house, number]);
  if (failed.value) return <Page title={`Drill ${number}`} kind="brief"><p class="note" role="alert">The brief could not be fetched. Load the page again; if that does not help, the server has gone.</p></Page>;
  if (drill.value === undefined) return <Page title={`Drill ${number}`} kind="brief"><p class="waiting">Fetching the brief …</p></Page>;
  if (drill.value === null) return <NoSuchDrill number={number} />;
  const { group } = drill.value;
  const above = <><a href="#/">All drills</a><span>{group.name}</span></>;
  return <Briefed house={house} card={drill.value} title={`Drill ${number}`} kind="brief" above={above} start={() => go({ page: 'run', number, seed })} plan={{ of: { drill: number }, href: fragmentOf({ page: 'drill-plan', number, seed }) }} />;
}

interface BriefedProps {
  readonly house: House;
  readonly card: DrillCard;
  /** Never what the run holds. */
  readonly title: string;
  readonly kind: string;
  /** The kind whose place it belongs to, where that is another. */
  readonly within?: string;
  readonly above: ComponentChildren;
  /** The plan of it, and the way there; left out where nothing can be planned for it. */
  readonly plan?: { readonly of: PlanOf; readonly href: string };
  /** Leads into the run. */
  readonly start: () => void;
}

/** The brief of whatever is flown. */
export function Briefed({ house, card, title, kind, within = kind, above, plan, start }: BriefedProps) {
  const { brief, facts, rules, measuring, workload, speeds, startKt, way, airframe } = card;
  return (
    <Page title={title} kind={kind} within={within}>
      <Left />
      <p class="above">{above}</p>
      <h1>{title}</h1>
      <div class="columns">
        <div>
          <p class="large">{brief}</p>
          <div class="start">
            <button class="button" type="button" onClick={() => { house.unlock(); started.value = true; start(); }}>Start</button>
            <p>{measuring ? 'Measuring: in the aeroplane let go in doubt.' : 'Two pointers part: let go, call it, look again, fly.'}</p>
          </div>
          <Unmeasured />
          {plan !== undefined && <PlanNote of={plan.of} href={plan.href} airframe={airframe} />}
          {!house.isolated && COARSE}
          <section class="asked-of">
            <h2 class="ruled">What is asked of the hand</h2>
            <ul>{rules.map((rule) => <li key={rule}>{rule}</li>)}</ul>
          </section>
          <Parts airframe={airframe} />
          <KeyCard house={house} asked={workload} />
        </div>
        <div>
          <h2 class="ruled">As you start</h2>
          <dl class="facts">{facts.map(([what, value]) => <div key={what}><dt>{what}</dt><dd>{value}</dd></div>)}</dl>
          <SpeedTable speeds={speeds} startKt={startKt} way={way} />
          <h2 class="ruled">What may happen on this airframe</h2>
          <dl class="catalogue">{CATALOGUE.map(({ of, may }) => <div key={of}><dt>{of}</dt>{may.map((one) => <dd key={one}>{one}</dd>)}</div>)}</dl>
        </div>
      </div>
    </Page>
  );
}

/** A run that was left by going back is not lost silently. */
function Left() {
  const run = left.value;
  useEffect(() => () => { gone.value = false; }, []);
  if (gone.value) return <p class="note" role="status">The page was loaded anew, and what you were about to say of the run is lost. The run itself is in the <a href="#/logbook">logbook</a>, if this browser lets it be kept.</p>;
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

const NoSuchDrill = ({ number }: { number: number }) => <Missing title="No such drill" kind="brief" says={`There is no drill ${number}`} />;
