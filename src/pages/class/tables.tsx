/** The tables of a class: the steps of each, what is asked of each, their flights of sets, and first looks apart from all of it. */
import type { StepStand } from '../../../sim/index.js';
import { StandShape, STATES } from '../course/shape.js';
import type { CourseCard } from '../course/house.js';
import { answerWords, askedWords, askName, firstLookWords, ownWords } from '../course/words.js';
import { caught, falseReleases, median, share, whole } from '../person/flightnumbers.js';
import { degrees } from '../words.js';
import type { ClassRow } from './house.js';
import { dueAt } from './order.js';

const DAY = new Intl.DateTimeFormat(undefined, { day: 'numeric', month: 'short', year: 'numeric' });
const called = (name: string): string => (name === '' ? 'no name' : name);

interface Props {
  readonly rows: readonly ClassRow[];
  readonly course: CourseCard;
}

export const ClassTables = ({ rows, course }: Props) => (
  <>
    <Steps rows={rows} course={course} />
    <Asked rows={rows} course={course} />
    <Flights rows={rows} />
    <Looks rows={rows} />
    <p class="small about">The three numbers belong together and are never made one. People flew on other days and other devices: nothing here is an order of merit, and one flight says little of a person.</p>
  </>
);

function Steps({ rows, course: { steps, title } }: Props) {
  return (
    <section class="class-part" aria-labelledby="class-steps">
      <h2 id="class-steps" class="ruled">{title}</h2>
      <div class="wide" tabIndex={0} role="region" aria-label="Steps of each person">
        <table class="class-steps">
          <thead><tr><th class="text" scope="col">name</th>{steps.map(({ number, teaches }) => <th key={number} scope="col" title={teaches}>{number}</th>)}<th class="text" scope="col">due</th></tr></thead>
          <tbody>{rows.map((row) => (
            <tr key={row.name}>
              <th class="text" scope="row">{called(row.name)}</th>
              {row.progress.stands.map((stand, at) => <td key={at}><Sign stand={stand} /></td>)}
              <td class="text">{dueWords(row)}</td>
            </tr>
          ))}</tbody>
        </table>
      </div>
      <p class="small class-key">{(['done', 'open', 'closed'] as const).map((state) => <span key={state}><svg viewBox="-10 -10 20 20" width="20" height="20" aria-hidden="true"><StandShape state={state} /></svg> {state}</span>)}</p>
    </section>
  );
}

const Sign = ({ stand: { state } }: { stand: StepStand }) => <svg viewBox="-10 -10 20 20" width="20" height="20" role="img" aria-label={STATES[state]}><StandShape state={state} /></svg>;

function dueWords(row: ClassRow): string {
  const at = dueAt(row);
  const { proposal } = row.progress;
  if (at === Infinity) return 'all steps done';
  return proposal.fly === 'practice' ? `practice, then step ${at + 1}` : proposal.fly === 'set' && proposal.why === 'underway' ? `step ${at + 1}, under way` : `step ${at + 1}`;
}

function Asked({ rows, course: { steps } }: Props) {
  const asks = rows.flatMap(({ name, progress: { stands } }) => stands.flatMap((stand, at) => (stand.gate?.block?.asks ?? []).map((ask) => ({ name, step: steps[at]?.number ?? at + 1, ask, tries: stand.gate?.tries ?? 0 }))));
  if (asks.length === 0) return null;
  return (
    <section class="class-part" aria-labelledby="class-asked">
      <h2 id="class-asked" class="ruled">What the steps ask, and what each shows</h2>
      <div class="wide" tabIndex={0} role="region" aria-label="What is asked and shown">
        <table class="class-table">
          <thead><tr>{['name', 'step', 'figure', 'asked', 'shown, with its exact 95 % interval', 'answer', 'tries'].map((head) => <th key={head} class="text" scope="col">{head}</th>)}</tr></thead>
          <tbody>{asks.map(({ name, step, ask, tries }) => (
            <tr key={`${name} ${step} ${ask.ask}`}><th class="text" scope="row">{called(name)}</th><td class="text">{step}</td><td class="text">{askName(ask.ask)}</td><td class="text">{askedWords(ask.ask, ask.asked)}</td><td class="text">{ownWords(ask)}</td><td class="text say">{answerWords(ask)}</td><td class="text">{tries}</td></tr>
          ))}</tbody>
        </table>
      </div>
    </section>
  );
}

function Flights({ rows }: Pick<Props, 'rows'>) {
  const flights = rows.flatMap(({ name, progress: { history: { groups } } }) => groups.flatMap(({ set, flights: own }) => own.map((flight) => ({ name, set, flight })))
    .sort((a, b) => a.set - b.set || a.flight.startedMs - b.flight.startedMs));
  if (flights.length === 0) return null;
  return (
    <section class="class-part" aria-labelledby="class-flights">
      <h2 id="class-flights" class="ruled">Flights of sets</h2>
      <div class="wide" tabIndex={0} role="region" aria-label="Table of flights">
        <table class="class-table">
          <thead><tr>{['name', 'set', 'flown', 'runs', 'caught', 'false releases a minute', 'median split', 'void'].map((head) => <th key={head} class="text" scope="col">{head}</th>)}</tr></thead>
          <tbody>{flights.map(({ name, set, flight }) => (
            <tr key={flight.id}>
              <th class="text" scope="row">{called(name)}</th><td class="text">{set}</td><td class="text">{DAY.format(flight.startedMs)}{flight.name !== '' && `, ${flight.name}`}</td><td class="text">{flight.done} of {flight.runs}{flight.leftOff && ', left off'}</td>
              <td class="text">{whole(caught(flight), share)}</td><td class="text">{whole(falseReleases(flight), (value) => value.toFixed(2))}</td><td class="text">{whole(median(flight), degrees)}</td><td class="text">{flight.result.void}</td>
            </tr>
          ))}</tbody>
        </table>
      </div>
      <p class="small">Behind each number its 95 % interval, of caught Wilson’s. A dash: fewer than 8 decided runs, too few to say anything of a person.</p>
    </section>
  );
}

function Looks({ rows }: Pick<Props, 'rows'>) {
  const looks = rows.flatMap(({ name, progress: { firstLook } }) => (firstLook === null ? [] : [{ name, look: firstLook }]));
  if (looks.length === 0) return null;
  return (
    <section class="class-part" aria-labelledby="class-looks">
      <h2 id="class-looks" class="ruled">First looks</h2>
      <ul class="class-looks">{looks.map(({ name, look }) => <li key={name}><strong>{called(name)}</strong>, step {look.step + 1}, {DAY.format(look.atMs)}. {firstLookWords(look)}</li>)}</ul>
    </section>
  );
}
