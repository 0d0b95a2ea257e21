/** A course: the next useful quarter of an hour, its steps and where one stands in each. Prints as a syllabus. */
import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import type { StepStand } from '../../../sim/index.js';
import type { CourseProgress } from '../../records/progress.js';
import { Page } from '../frame.js';
import { Missing } from '../missing.js';
import type { House } from '../house.js';
import { trouble, TROUBLES, withBook } from '../logbook/logged.js';
import { Who } from '../person/person.js';
import { fragmentOf } from '../route.js';
import { fromFile, go, record } from '../session.js';
import { person } from '../settings.js';
import { Gate } from './gate.js';
import type { CourseCard, StepCard } from './house.js';
import { StandShape, STATES } from './shape.js';
import { doneRule, firstLookWords, olderWords, proposalWords, standWords, stepsNamed } from './words.js';
import '../look/course.css';

const WHEN = new Intl.DateTimeFormat(undefined, { dateStyle: 'long', timeStyle: 'short' });

export function Syllabus({ house, number }: { house: House; number: number }) {
  const card = useSignal<CourseCard | null | undefined>(undefined);
  const progress = useSignal<CourseProgress | null>(null);
  const people = useSignal<readonly string[]>([]);
  const name = person.value;
  useEffect(() => { void house.course.courses().then((all) => { card.value = all[number - 1] ?? null; }, () => { card.value = null; }); }, [house, number]);
  useEffect(() => {
    progress.value = null;
    void withBook(house, async (book) => {
      people.value = await book.people();
      const found = await house.course.progress(number, name);
      if (person.value === name) progress.value = found;
    });
  }, [house, number, name]);
  const course = card.value;
  if (course === undefined) return <Page title="Course" kind="course"><h1>Course</h1><p class="waiting">Fetching the course …</p></Page>;
  if (course === null) return <Missing title="No such course" kind="course" says={`There is no course ${number}`} ways={[['All courses', { page: 'courses' }]]} />;
  const stands = progress.value?.stands ?? null;
  const older = progress.value === null ? null : olderWords(progress.value);
  return (
    <Page title="Course" kind="course" tools={<button class="plain" type="button" onClick={() => print()}>Print</button>}>
      <p class="above"><a href="#/course">All courses</a></p>
      <h1>{course.title}</h1>
      <p class="large course-brief">{course.brief}</p>
      {trouble.value !== null && <p class="note" role="alert">{TROUBLES[trouble.value]} Without the logbook nobody’s standing can be told.</p>}
      <Who people={people.value} />
      <p class="on-paper">Standing of {name === '' ? 'runs without a name' : name}.</p>
      {progress.value === null && trouble.value === null && <p class="waiting">Reading the runs …</p>}
      {progress.value !== null && <Next progress={progress.value} course={course} />}
      <section class="course-steps" aria-labelledby="steps-title">
        <h2 id="steps-title" class="ruled">{stands === null ? `${course.steps.length} steps` : `${stands.filter(({ state }) => state === 'done').length} of ${course.steps.length} steps done`}</h2>
        {stands !== null && <Way stands={stands} />}
        <ol>
          {course.steps.map((step, at) => (
            <Step key={step.number} course={course} step={step} stand={stands?.[at] ?? null} isNext={progress.value !== null && 'step' in progress.value.proposal && progress.value.proposal.step === at} />
          ))}
        </ol>
      </section>
      {progress.value?.firstLook && <Look house={house} look={progress.value.firstLook} />}
      {older !== null && <p class="small">{older}</p>}
    </Page>
  );
}

function Next({ progress: { proposal }, course }: { progress: CourseProgress; course: CourseCard }) {
  const { what, why, go: label } = proposalWords(proposal, course.steps);
  const step = 'step' in proposal ? course.steps[proposal.step] : undefined;
  const href = proposal.fly === 'practice' ? '#/practice' : proposal.fly === 'advised' ? fragmentOf({ page: 'set', number: proposal.advice.fly }) : step === undefined ? '#/course' : hrefOf(course, step);
  return (
    <section class="next-quarter" aria-labelledby="next-title">
      <h2 id="next-title" class="ruled">The next useful quarter of an hour</h2>
      <p class="sentence">{what}</p>
      <div class="start">
        <a class="button" href={href}>{label}</a>
        <p>About {proposal.minutes} {proposal.minutes === 1 ? 'minute' : 'minutes'}. {why}</p>
      </div>
    </section>
  );
}

const hrefOf = (course: CourseCard, step: StepCard): string =>
  (step.kind === 'set' ? fragmentOf({ page: 'set', number: step.set ?? 0 }) : fragmentOf({ page: 'step', course: course.number, step: step.number }));

/** All steps at a glance: full for done, open for open, crossed for closed. */
const Way = ({ stands }: { stands: readonly StepStand[] }) => (
  <svg class="course-way" viewBox={`0 0 ${stands.length * 28} 20`} height="20" width={stands.length * 28} aria-hidden="true">
    <line class="way-rule" x1="8" x2={stands.length * 28 - 20} y1="10" y2="10" />
    {stands.map(({ state }, at) => <g key={at} transform={`translate(${at * 28 + 8} 10)`}><StandShape state={state} /></g>)}
  </svg>
);

interface StepProps {
  readonly course: CourseCard;
  readonly step: StepCard;
  /** null: not worked out yet. */
  readonly stand: StepStand | null;
  readonly isNext: boolean;
}

function Step({ course, step, stand, isNext }: StepProps) {
  const { number, teaches, task, minutes, kind, needs, gate, loaded, limitDeg } = step;
  const state = stand?.state ?? null;
  return (
    <li class={`course-step${state === null ? '' : ` step-${state}`}`} {...(isNext ? { 'aria-current': 'step' as const } : {})}>
      <span class="step-number">{number}</span>
      <span class="step-sign">
        {state !== null && <svg viewBox="-10 -10 20 20" width="20" height="20" role="img" aria-label={STATES[state]}><StandShape state={state} /></svg>}
      </span>
      <div class="step-words">
        <p class="step-teaches">{teaches}{isNext && <em> next</em>}</p>
        <p class="step-task">{task}{loaded ? ', with questions' : ''} · {kind === 'set' ? 'a set, ' : ''}about {minutes} min</p>
        <p class="step-rule">{doneRule(step)}{needs.length > 0 && ` Needs ${stepsNamed(needs)}.`}</p>
      </div>
      <p class="step-stand">{stand !== null && standWords(step, stand)}</p>
      <p class="step-go">{state !== 'closed' && <a class="plain" href={hrefOf(course, step)} aria-label={`${label(step, stand)}, step ${number}`}>{label(step, stand)}</a>}</p>
      {gate !== null && <Gate gate={gate} shown={stand?.gate ?? null} limitDeg={limitDeg ?? 0} />}
    </li>
  );
}

const label = ({ kind, set }: StepCard, stand: StepStand | null): string =>
  (kind === 'set' ? `Set ${set ?? ''}` : (stand?.flown ?? 0) > 0 ? 'Fly again' : 'Fly');

function Look({ house, look }: { house: House; look: NonNullable<CourseProgress['firstLook']> }) {
  const open = (): void => {
    void withBook(house, async (book) => {
      const run = await book.record(look.id);
      if (run === null) return;
      record.value = run;
      fromFile.value = false;
      go({ page: 'debrief' });
    });
  };
  return (
    <section class="first-look" aria-labelledby="look-title">
      <h2 id="look-title" class="ruled">First look</h2>
      <p class="large">Step {look.step + 1}, {WHEN.format(look.atMs)}. {firstLookWords(look)}</p>
      <button class="plain" type="button" onClick={open}>Its debrief</button>
    </section>
  );
}
