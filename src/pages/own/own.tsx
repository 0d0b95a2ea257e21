/** A run that was written on a bench, from its brief to the trainee's own judgement. Nothing here tells what it holds. */
import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { Briefed } from '../drill/brief.js';
import { Drill } from '../drill/drill.js';
import { Page } from '../frame.js';
import { ALL_DRILLS, Missing, type Way } from '../missing.js';
import type { House } from '../house.js';
import { fragmentOf } from '../route.js';
import { Say } from '../debrief/say.js';
import { go, goInstead, lastOwn, left, started } from '../session.js';
import type { HandedOn, OwnCard } from './house.js';

const TITLE = 'Run from the bench';

interface Props {
  readonly house: House;
  /** Opaque. */
  readonly id: string;
}

export function OwnBrief({ house, id }: Props) {
  const found = useSignal<OwnCard | null | undefined>(undefined);
  const failed = useSignal(false);
  useEffect(() => {
    house.warm();
    house.own.flight(id).then((one) => { found.value = one; }, () => { failed.value = true; });
  }, [house, id]);
  if (failed.value) return <Page title={TITLE} kind="brief"><p class="note" role="alert">The brief could not be fetched. Load the page again; if that does not help, the server has gone.</p></Page>;
  if (found.value === undefined) return <Page title={TITLE} kind="brief"><p class="waiting">Fetching the brief …</p></Page>;
  if (found.value === null) return <NoSuchRun />;
  const { card, from } = found.value;
  const above = <>{from === 'bench' ? <a href="#/bench">Back to the bench</a> : <a href="#/">All drills</a>}<span>{card.group.name}</span></>;
  return <Briefed house={house} card={card} title={TITLE} kind="brief" above={above} plan={{ of: { own: id }, href: fragmentOf({ page: 'own-plan', id }) }} start={() => go({ page: 'own-run', id })} />;
}

/** A run begins by Start and by nothing else: an address, a reload or Forward leads to the brief. */
export function OwnRun({ house, id }: Props) {
  const begins = useSignal(started.peek()).value;
  useEffect(() => { if (!begins) goInstead({ page: 'own', id }); }, []);
  if (!begins) return null;
  const flew = async (): Promise<void> => { lastOwn.value = { id, from: (await house.own.flight(id))?.from ?? 'link' }; };
  return (
    <Drill
      house={house} of={{ own: id }} name={TITLE}
      over={() => void flew().then(() => goInstead({ page: 'own-say', id }))}
      left={(run) => void flew().then(() => { left.value = run; })}
    />
  );
}

export const OwnSay = ({ house, id }: Props) => <Say house={house} back={{ page: 'own', id }} flewIt={() => lastOwn.value?.id === id} />;

/** A run that came in the address: it is taken out of it, and flown under an id. */
export function OwnLink({ house, code }: { house: House; code: string }) {
  const refused = useSignal<Extract<HandedOn, { ok: false }> | null>(null);
  useEffect(() => {
    let gone = false;
    void house.own.handOnLink(code).then((handed) => {
      if (gone) return;
      if (handed.ok) goInstead({ page: 'own', id: handed.id });
      else refused.value = handed;
    });
    return () => { gone = true; };
  }, [house, code]);
  if (refused.value === null) return <Page title={TITLE} kind="brief"><p class="waiting">Opening the link …</p></Page>;
  const { why, problems, more } = refused.value;
  return (
    <Missing title={TITLE} kind="brief" says="This link cannot be flown" ways={WAYS}>
      <p class="large" role="alert">{why} Ask whoever sent it to copy it again, whole, or to send the scenario as a file.</p>
      {problems.length > 0 && (
        <div class="refused">
          <ul>{problems.map(({ line, column, path }) => <li key={`${line}:${column}:${path}`}><span class="place">line {line}, column {column}</span>{path !== '' && <code>{path}</code>}</li>)}</ul>
          {more > 0 && <p>{more} more.</p>}
        </div>
      )}
    </Missing>
  );
}

/** Where to go from here. */
const WAYS: readonly Way[] = [ALL_DRILLS, ['Bench', { page: 'bench', link: null }]];

const NoSuchRun = () => (
  <Missing title="No such run" kind="brief" says="This run is not here any more" ways={WAYS}>
    <p class="large">It was handed on in another browser, or more than four weeks ago. Open its link again, or hand it on anew from the bench.</p>
  </Missing>
);
