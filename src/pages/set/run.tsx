/** A run of a set, the two questions behind it, and the way into the next: little ceremony, and no figures. */
import { useSignal } from '@preact/signals';
import { useEffect, useRef } from 'preact/hooks';
import type { RunRecord } from '../../../sim/files/index.js';
import { isPause, nextPlace } from '../../records/logbook/attempt.js';
import { attempt, lookUp } from './attempts.js';
import { Drill } from '../drill/drill.js';
import { Page } from '../frame.js';
import type { House } from '../house.js';
import { goInstead, record, started } from '../session.js';
import { Dots, fly } from './page.js';
import { lock, unlike } from '../size/lock.js';
import { Locked } from '../size/locked.js';

export function SetRun({ house, number }: { house: House; number: number }) {
  const one = attempt.value;
  const place = one ? nextPlace(one) : null;
  // A run begins by a press and by nothing else: an address, a reload or Forward leads to the set.
  const begins = one !== null && one !== undefined && place !== null && started.value && unlike.value === null;
  useEffect(() => { if (!begins) goInstead({ page: 'set', number }); }, []);
  const flight = useRef(begins ? { set: number, attempt: one, place } : null);
  const seen = useRef(lock.peek());
  if (flight.current === null) return null;
  const { attempt: of } = flight.current;
  return (
    <Drill
      house={house} of={flight.current} name={`Run ${flight.current.place + 1} of ${of.runs}`}
      lock={seen.current?.first ?? null}
      over={() => goInstead({ page: 'set-say', number })} left={() => undefined}
    />
  );
}

type Said = NonNullable<RunRecord['assessment']>;
const ANSWERS = [['yes', 'Yes'], ['no', 'No'], ['unsure', 'Not sure']] as const satisfies readonly (readonly [NonNullable<Said['split']>, string])[];

export function SetSay({ house, number }: { house: House; number: number }) {
  const run = record.value;
  const said = useSignal(false);
  const first = useRef<HTMLButtonElement>(null);
  useEffect(() => {
    if (run === null) return goInstead({ page: 'set', number });
    first.current?.focus();
    void lookUp(house, number);
  }, []);
  useEffect(() => { first.current?.focus(); }, [said.value]);
  if (run === null) return null;
  const answer = (split: NonNullable<Said['split']>): void => {
    said.value = true;
    void house.assess(run, { split, growthDeg: null }).then((whole) => { record.value = whole; });
  };
  const one = attempt.value;
  const next = one ? nextPlace(one) : null;
  return (
    <Page title="Between runs" kind="set">
      {!said.value && (
        <>
          <h1>Was there a split?</h1>
          <div class="set-answers">
            {ANSWERS.map(([value, words], at) => <button key={value} ref={at === 0 ? first : null} class="button quiet" type="button" onClick={() => answer(value)}>{words}</button>)}
          </div>
        </>
      )}
      {said.value && one && next !== null && (
        <>
          <h1>{isPause(one) ? 'A pause' : 'Next'}</h1>
          {isPause(one) && <p class="large">Look out of the window for a minute. The next block begins when you start it.</p>}
          <Dots one={one} />
          <Locked />
          <div class="start">
            <button ref={first} class="button" type="button" disabled={unlike.value !== null} onClick={() => fly(house, number)}>Run {next + 1}</button>
            <p>{run.outcome === 'void' ? 'The last run is void: it was paused, its window was lost, or the page was too slow. ' : ''}<a href={`#/set/${number}`}>Stop here for now</a></p>
          </div>
        </>
      )}
      {said.value && one && next === null && (
        <>
          <h1>That was the last</h1>
          <div class="start"><a class="button" href={`#/set/${number}`}>What it came to</a></div>
        </>
      )}
    </Page>
  );
}
