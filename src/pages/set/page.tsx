/** A set: what it measures and how long it takes, where one stands in it, and what it came to once it is over. */
import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { isPause, nextPlace, type Attempt } from '../../records/logbook/attempt.js';
import { attempt, begin, first, leaveOff, lookUp } from './attempts.js';
import type { Forecast } from '../../../sim/index.js';
import { ForecastForm } from './forecast.js';
import { Page } from '../frame.js';
import { Missing } from '../missing.js';
import type { House } from '../house.js';
import { KeyCard } from '../drill/keycard.js';
import { trouble, TROUBLES } from '../logbook/logged.js';
import { Parts } from '../drill/parts.js';
import { fragmentOf, type Route } from '../route.js';
import { go, started } from '../session.js';
import type { SetCard } from './card.js';
import { setTask } from './task.js';
import { SetResult } from './result.js';
import { person } from '../settings.js';
import { unlike } from '../size/lock.js';
import { Locked } from '../size/locked.js';
import { Unmeasured } from '../size/unmeasured.js';

export function SetPage({ house, number }: { house: House; number: number }) {
  const card = useSignal<SetCard | null | undefined>(undefined);
  useEffect(() => {
    house.warm();
    attempt.value = undefined;
    void house.sets().then((all) => { card.value = all[number - 1] ?? null; });
    void lookUp(house, number);
  }, [house, number, person.value]);
  const set = card.value;
  if (set === undefined) return <Page title={`Set ${number}`} kind="set"><p class="waiting">Fetching the set …</p></Page>;
  if (set === null) return <Missing title="No such set" kind="set" says={`There is no set ${number}`} />;
  const flown = attempt.value;
  return (
    <Page title={`Set ${number}`} kind="set">
      <p class="above"><a href="#/">All drills</a></p>
      <h1>Set {number}</h1>
      {trouble.value !== null && <p class="note" role="alert">{TROUBLES[trouble.value]} A set needs the logbook: without it nothing could be counted.</p>}
      {flown === undefined && trouble.value === null && <p class="waiting">Looking in the logbook …</p>}
      {flown === null && <Fresh house={house} set={set} />}
      {flown && nextPlace(flown) !== null && <Underway house={house} set={set} one={flown} />}
      {flown && nextPlace(flown) === null && <Over house={house} set={set} one={flown} />}
    </Page>
  );
}

/** Into the next run, with the press that unlocks the sound. */
export function fly(house: House, number: number): void {
  house.unlock();
  started.value = true;
  go({ page: 'set-run', number } satisfies Route);
}

const Facts = ({ set }: { set: SetCard }) => (
  <dl class="facts">
    {([
      ['Runs', `${set.runs}${set.blocks > 1 ? `, in ${set.blocks} blocks with a pause between` : ''}`], ['About', `${set.minutes} minutes`],
      ['Task', setTask(set)], ['Speed', `${set.speedKt} kt, by the speed hold`], ['Load', set.loaded ? 'questions to answer while you hold' : 'none beside the pointers'],
      ['Late from', `${set.limitDeg}° of growth`],
    ] as const).map(([what, value]) => <div key={what}><dt>{what}</dt><dd>{value}</dd></div>)}
  </dl>
);

/** What is said wherever a set is told; the first of it stands in its brief already. */
const Words = ({ set, briefed = false }: { set: SetCard; briefed?: boolean }) => <>{set.words.filter((words) => !briefed || !set.brief.endsWith(words.slice(words.indexOf(':')))).map((words) => <p key={words} class="note"><strong>{words}</strong></p>)}</>;

function Fresh({ house, set }: { house: House; set: SetCard }) {
  const name = useSignal('');
  const forecast = useSignal<Forecast | null>(null);
  return (
    <div class="columns">
      <div>
        <p class="large">{set.brief}</p>
        <form class="set-start" onSubmit={(event) => { event.preventDefault(); void begin(house, set.number, name.value.trim(), set, forecast.value).then(() => { if (attempt.value) fly(house, set.number); }); }}>
          <label>Name this set beforehand, if you mean to compare it
            <input type="text" maxLength={40} value={name.value} placeholder="before the course" onInput={({ currentTarget: { value } }) => { name.value = value; }} />
          </label>
          <ForecastForm said={(to) => { forecast.value = to; }} />
          <button class="button" type="submit">Start the set</button>
          {first.value && <p>Your first set? Fly four runs of <a href={fragmentOf({ page: 'practice' })}>practice</a> before it. They warm the hand and count for nothing.</p>}
        </form>
        <Words set={set} briefed />
        <Unmeasured />
        {first.value && <><Parts airframe={set.airframe} /><KeyCard house={house} asked={set.loaded} /></>}
      </div>
      <div>
        <h2 class="ruled">The set</h2>
        <Facts set={set} />
        <p class="small">No figure is told between the runs. A run that is paused, or loses its window, counts as void. The first run fixes how large the gauge is drawn; the others are drawn so too. Close the page when you like: the set goes on where it stood. Flown by {person.value === '' ? 'no name' : person.value}; <a href="#/logbook">change</a>.</p>
      </div>
    </div>
  );
}

function Underway({ house, set, one }: { house: House; set: SetCard; one: Attempt }) {
  const done = one.done.length;
  const sure = useSignal(false);
  return (
    <>
      <p class="large">{done === 0 ? 'Nothing flown yet.' : `${done} of ${one.runs} runs flown.`}{isPause(one) && ` Block ${done / (one.runs / one.blocks)} of ${one.blocks} is done: rest your eyes a moment before the next.`}</p>
      <Dots one={one} />
      <Locked />
      <div class="start">
        <button class="button" type="button" disabled={unlike.value !== null} onClick={() => fly(house, set.number)}>{done === 0 ? 'First run' : `Run ${done + 1}`}</button>
        {sure.value
          ? <p>It will count as left off, with {done} runs. <button class="plain" type="button" onClick={() => void leaveOff(house, one)}>Leave it off</button><button class="plain" type="button" onClick={() => { sure.value = false; }}>Keep it</button></p>
          : <button class="plain" type="button" onClick={() => { sure.value = true; }}>Leave this set off</button>}
      </div>
      <Words set={set} />
    </>
  );
}

/** How far: a dot a run, blocks apart. */
export function Dots({ one: { done: { length: done }, runs, blocks } }: { one: Attempt }) {
  const perBlock = runs / blocks;
  return (
    <div class="dots" role="img" aria-label={`${done} of ${runs} runs flown`}>
      {Array.from({ length: runs }, (_, at) => <i key={at} class={`${at < done ? 'flown' : ''}${at > 0 && at % perBlock === 0 ? ' apart' : ''}`} />)}
    </div>
  );
}

function Over({ house, set, one }: { house: House; set: SetCard; one: Attempt }) {
  const again = useSignal(false);
  if (again.value) return <Fresh house={house} set={set} />;
  return (
    <>
      <SetResult house={house} set={set} one={one} />
      <div class="start">
        <button class="button quiet" type="button" onClick={() => { again.value = true; }}>Fly the set again</button>
        <p>Another seed, another order. Each flight stands for itself.</p>
      </div>
      <p class="small next"><a href={fragmentOf({ page: 'person' })}>Progress: beside the other flights</a> <a href={fragmentOf({ page: 'logbook' })}>Logbook: its runs one by one</a></p>
    </>
  );
}
