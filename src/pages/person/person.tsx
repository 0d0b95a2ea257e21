/** One person over time: what to practise next, and all flights of sets side by side. */
import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import type { Airframe } from '../../../sim/files/index.js';
import type { PersonHistory } from '../../records/history.js';
import { Page } from '../frame.js';
import type { House } from '../house.js';
import { trouble, TROUBLES, withBook } from '../logbook/logged.js';
import { PersonMargin } from './margin.js';
import { PersonGroup } from './group.js';
import { adviceWords, apartWords } from './words.js';
import { fragmentOf } from '../route.js';
import type { SetCard } from '../set/card.js';
import { person } from '../settings.js';

interface Found {
  readonly history: PersonHistory;
  readonly sets: readonly SetCard[];
  readonly people: readonly string[];
  readonly airframes: readonly Airframe[];
}

export function PersonPage({ house }: { house: House }) {
  const found = useSignal<Found | null>(null);
  const name = person.value;
  useEffect(() => {
    found.value = null;
    void withBook(house, async (book) => {
      const [people, sets, airframes] = await Promise.all([book.people(), house.sets(), house.airframes()]);
      const history = await house.history(name);
      if (person.value === name) found.value = { history, sets, people, airframes };
    });
  }, [house, name]);
  const all = found.value;
  return (
    <Page title="Progress" kind="person">
      <h1>{name === '' ? 'Progress' : `Progress of ${name}`}</h1>
      {trouble.value !== null && <p class="note" role="alert">{TROUBLES[trouble.value]}</p>}
      {trouble.value === null && all === null && <p class="waiting">Reading the flights …</p>}
      {all !== null && <Shown house={house} all={all} />}
    </Page>
  );
}

function Shown({ house, all: { history, sets, people, airframes } }: { house: House; all: Found }) {
  const { groups, advice } = history;
  return (
    <>
      <Who people={people} />
      <section class="advice" aria-labelledby="next-title">
        <h2 id="next-title" class="ruled">What to practise next</h2>
        <p class="large">{adviceWords(advice)} <a href={fragmentOf({ page: 'set', number: advice.fly })}>Fly set {advice.fly}</a></p>
      </section>
      <PersonMargin house={house} basis={history.margin} airframes={airframes} />
      {groups.length === 0 && (
        <section class="no-flights">
          <h2 class="ruled">Flights of sets, side by side</h2>
          <p>No set is flown to its end{person.value === '' ? ' without a name' : ` by ${person.value}`}, so there is nothing to lay side by side.</p>
        </section>
      )}
      {groups.map((group) => {
        const set = sets[group.set - 1];
        return set === undefined ? null : (
          <PersonGroup key={group.flights[0]?.id} group={group} set={set} airframe={airframes.find(({ name }) => name === group.condition?.airframe)?.title ?? 'another airframe'} apart={apartWords(group, groups)} />
        );
      })}
      {groups.length > 0 && <p class="small about">The three numbers belong together and are never made one. Learning within a set cannot be seen. A split that nobody expects is met later than in a set.</p>}
      <Aside history={history} />
    </>
  );
}

/** Whose flights are shown; who flies the next run as well. */
export function Who({ people }: { people: readonly string[] }) {
  const names = [...new Set([...people, ...(person.value === '' ? [] : [person.value])])];
  return (
    <form class="filters" aria-label="Whose flights" onSubmit={(event) => event.preventDefault()}>
      <label>Flown by
        <select value={person.value} onChange={({ currentTarget: { value } }) => { person.value = value; }}>
          <option value="">no name</option>
          {names.map((one) => <option key={one} value={one}>{one}</option>)}
        </select>
      </label>
    </form>
  );
}

/** What is not shown, and why. */
function Aside({ history: { underway, notByHand, gone, unknown } }: { history: PersonHistory }) {
  const lines = [
    underway > 0 && `${underway === 1 ? 'One flight is' : `${underway} flights are`} not over: nothing is told of it until it is.`,
    notByHand > 0 && `${notByHand} runs were flown by a script or under a desk. They are no one’s figures and are left out.`,
    gone > 0 && `Of ${gone === 1 ? 'one flight' : `${gone} flights`} no run is in the logbook any more.`,
    unknown > 0 && `${unknown === 1 ? 'One flight is' : `${unknown} flights are`} of a set that this Evenhand does not have.`,
  ].filter((line) => line !== false);
  return lines.length === 0 ? null : <ul class="small aside">{lines.map((line) => <li key={line}>{line}</li>)}</ul>;
}
