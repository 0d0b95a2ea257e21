/** Practice that adapts: one run after another at a rate that follows the hand, told at once, its level called difficulty. */
import { useSignal } from '@preact/signals';
import { useEffect, useRef } from 'preact/hooks';
import type { Airframe, RunRecord } from '../../../sim/files/index.js';
import { Drill } from '../drill/drill.js';
import { Page } from '../frame.js';
import type { House } from '../house.js';
import { KeyCard } from '../drill/keycard.js';
import type { Ongoing, Practised } from './ongoing.js';
import { keepPractice, ongoing, practiceRun, readPractice } from './practised.js';
import { Parts } from '../drill/parts.js';
import { fragmentOf } from '../route.js';
import { fromFile, go, goInstead, record, started } from '../session.js';
import { Stairs } from './stairs.js';
import { Unmeasured } from '../size/unmeasured.js';
import { person } from '../settings.js';
import { degrees, OUTCOME_WORDS, seconds } from '../words.js';
import { upper } from '../../view/words.js';

export function Practice({ house }: { house: House }) {
  const told = useSignal<{ readonly run: RunRecord; readonly flown: Practised } | null>(null);
  const first = useRef<HTMLButtonElement>(null);
  const airframe = useSignal<Airframe | null>(null);
  useEffect(() => {
    // Practice is flown on what the first set is flown on.
    void house.sets().then(([set]) => { airframe.value = set?.airframe ?? null; }, () => undefined);
  }, [house]);
  useEffect(() => {
    house.warm();
    readPractice();
    const run = record.value;
    const flown = practiceRun.value;
    if (run === null || flown === null || ongoing.value === null) return;
    // A run that has just come back: it moves the level once, and is told at once.
    practiceRun.value = null;
    const done = { ...flown, outcome: run.outcome };
    told.value = { run, flown: done };
    void house.practised(ongoing.value.practice, flown, run.outcome).then((practice) => {
      const now = ongoing.value;
      if (now !== null) keepPractice({ ...now, practice, runs: [...now.runs, done] });
      first.current?.focus();
    });
  }, [house, person.value]);
  const begin = (): void => {
    house.unlock();
    void house.nextPractice(ongoing.value).then(({ run, at }) => {
      keepPractice(at);
      practiceRun.value = run;
      record.value = null;
      started.value = true;
      go({ page: 'practice-run' });
    });
  };
  const now = ongoing.value;
  return (
    <Page title="Practice" kind="practice">
      <p class="above"><a href="#/">All drills</a></p>
      {told.value === null ? <h1>Practice</h1> : <Told run={told.value.run} flown={told.value.flown} />}
      {told.value === null && (
        <p class="large">One run after another, each told at once. A split caught makes the next one open faster, one missed makes it slower, until you catch three in four. Some runs stay quiet, and one in ten is easy.</p>
      )}
      <div class="start">
        <button ref={first} class="button" type="button" onClick={begin}>{now === null || now.runs.length === 0 ? 'First run' : 'Next run'}</button>
        <p>{told.value !== null && <><a href={fragmentOf({ page: 'debrief' })}>Debrief of this run</a>. </>}The level is called difficulty. It is no measure of you: for that, <a href={fragmentOf({ page: 'set', number: 1 })}>fly a set</a>.</p>
      </div>
      <Unmeasured />
      {told.value === null && airframe.value !== null && <div class="columns practice-first"><Parts airframe={airframe.value} /><KeyCard house={house} asked={false} /></div>}
      {now !== null && now.runs.length > 0 && <Level now={now} />}
    </Page>
  );
}

const Level = ({ now }: { now: Ongoing }) => (
  <section class="level">
    <h2 class="ruled">Difficulty</h2>
    <p class="large">The next split opens by about {now.practice.degPerS.toFixed(2)}° a second.</p>
    <Stairs runs={now.runs} degPerS={now.practice.degPerS} />
    <button class="plain" type="button" onClick={() => keepPractice(null)}>Start over</button>
  </section>
);

/** What came of the run, in one line, and what it does to the next. */
function Told({ run, flown }: { run: RunRecord; flown: Practised }) {
  const { score, outcome } = run;
  const what = score.growthAtReleaseDeg !== null && score.afterOnsetS !== null && (outcome === 'caught' || outcome === 'late')
    ? `${outcome === 'caught' ? 'Caught' : 'Late'}: ${degrees(score.growthAtReleaseDeg)} further apart, ${seconds(score.afterOnsetS)} after onset.`
    : outcome === 'void' ? 'Void: the clock stopped in it, by a pause, a lost window or a slow page.'
    : `${upper(OUTCOME_WORDS[outcome])}.`;
  return (
    <>
      <p class="above" role="status">{flown.easy ? 'An easy one, to keep the hand in' : `${run.score.onsetS === null ? 'It would have opened' : 'It opened'} by about ${flown.degPerS.toFixed(2)}° a second`}</p>
      <h1 class="sentence">{what} <span>{NEXT[outcome] ?? 'The level stays.'}</span></h1>
    </>
  );
}

const NEXT: Readonly<Partial<Record<RunRecord['outcome'], string>>> = {
  caught: 'The next may open a little faster.', late: 'The next will open slower.', missed: 'The next will open slower.',
  falseRelease: 'Nothing had parted; the level stays.', held: 'Nothing parted, and you held; the level stays.',
};

/** A run of the practice, and back. */
export function PracticeFlight({ house }: { house: House }) {
  const run = useRef(started.value ? practiceRun.value : null);
  useEffect(() => { if (run.current === null) goInstead({ page: 'practice' }); }, []);
  if (run.current === null) return null;
  const back = (): void => {
    fromFile.value = false;
    goInstead({ page: 'practice' });
  };
  return <Drill house={house} of={{ practice: run.current }} name="Practice" over={back} left={() => { practiceRun.value = null; }} />;
}
