/** A class: files of several people looked at together, where each stands and what is due. Three numbers stay three, and nobody is ranked. */
import { useSignal, type Signal } from '@preact/signals';
import { useEffect, useId } from 'preact/hooks';
import type { ClassBook } from '../../records/class.js';
import { upper } from '../../view/words.js';
import { useDropped } from '../dropped.js';
import { Page } from '../frame.js';
import type { House } from '../house.js';
import type { CourseCard } from '../course/house.js';
import { ClassTables } from './tables.js';
import type { ClassRow } from './house.js';
import { ordered, type Order } from './order.js';
import { classTable } from './table.js';
import '../look/course.css';
import '../look/class.css';

interface Work { readonly done: number; readonly all: number }

export function ClassPage({ house }: { house: House }) {
  const book = useSignal<ClassBook>(house.class.none);
  const work = useSignal<Work | null>(null);
  const stop = useSignal(false);
  const named = useSignal('');
  const courses = useSignal<readonly CourseCard[] | null>(null);
  const course = useSignal(1);
  const order = useSignal<Order>('name');
  const rows = useSignal<readonly ClassRow[] | null>(null);
  useEffect(() => { void house.course.courses().then((all) => { courses.value = all; }, () => { courses.value = []; }); }, [house]);
  useEffect(() => {
    let over = false;
    rows.value = null;
    if (book.value.runs > 0) void house.class.rows(book.value, course.value).then((all) => { if (!over) rows.value = all; });
    return () => { over = true; };
  }, [house, book.value, course.value]);
  const take = async (files: readonly File[]): Promise<void> => {
    if (files.length === 0 || work.value !== null) return;
    work.value = { done: 0, all: files.length };
    stop.value = false;
    try {
      book.value = await house.class.read(book.value, files, { named: named.value.trim(), progress: (done, all) => { work.value = { done, all }; }, stop: () => stop.value });
    } finally {
      work.value = null;
    }
  };
  const card = courses.value?.[course.value - 1];
  const shown = rows.value === null ? null : ordered(rows.value, order.value);
  const save = (): void => {
    if (shown !== null && card !== undefined) void house.saveFile(new Blob([classTable(shown, card.steps)], { type: 'text/csv' }), 'evenhand-class.csv');
  };
  const tools = shown === null ? undefined : <><button class="plain" type="button" onClick={save}>Table, CSV</button><button class="plain" type="button" onClick={() => print()}>Print</button></>;
  return (
    <Page title="Class" kind="class" tools={tools}>
      <h1>Class</h1>
      <p class="large course-brief">
        {book.value.runs === 0 ? 'Open the exported logbooks and records of several people, to see where each stands and what is due. Every run is played again first; nothing is kept, and nothing leaves this machine.'
          : `${upper(counted(book.value.people.size, 'person', 'people'))}, ${counted(book.value.runs, 'run', 'runs')}, each played again. Nothing of it is kept: it is gone with this page.`}
      </p>
      <Opening named={named} work={work.value} take={(files) => void take(files)} stop={() => { stop.value = true; }} empty={book.value.runs === 0} />
      <Aside book={book.value} />
      {book.value.runs === 0 && work.value === null && <HowTo />}
      {book.value.runs > 0 && (
        <form class="filters class-filters" aria-label="What is shown" onSubmit={(event) => event.preventDefault()}>
          <label>Course
            <select value={course.value} onChange={({ currentTarget: { value } }) => { course.value = Number(value); }}>{(courses.value ?? []).map(({ number, title }) => <option key={number} value={number}>{title}</option>)}</select>
          </label>
          <label>In order of
            <select value={order.value} onChange={({ currentTarget: { value } }) => { order.value = value as Order; }}><option value="name">names</option><option value="due">what is due</option></select>
          </label>
          <button class="plain" type="button" onClick={() => { book.value = house.class.none; }}>Close all files</button>
        </form>
      )}
      {book.value.runs > 0 && shown === null && <p class="waiting">Working out where each stands …</p>}
      {shown !== null && card !== undefined && <ClassTables rows={shown} course={card} />}
    </Page>
  );
}

/** What stands here while nothing is open: where the files come from, and what they will show. */
const HowTo = () => (
  <div class="columns class-how">
    <section aria-labelledby="class-from">
      <h2 id="class-from" class="ruled">Where the files come from</h2>
      <ol class="how-to">
        <li>Each pilot flies on a machine of their own, under a short name chosen in the logbook.</li>
        <li>There, Export in the logbook puts all runs in one file.</li>
        <li>Open all the files here, together or one after another; a run that stands in two of them counts once.</li>
      </ol>
    </section>
    <section aria-labelledby="class-shows">
      <h2 id="class-shows" class="ruled">What they show</h2>
      <ul class="how-to">
        <li>Which steps of a course each pilot has done, and which one is due.</li>
        <li>What each gate has seen so far, with its interval.</li>
        <li>Of every set: splits caught, growth at release, false releases. Three numbers, by name and never ranked.</li>
      </ul>
    </section>
  </div>
);

const counted = (count: number, one: string, many: string): string => (count === 1 ? `one ${one}` : `${count} ${many}`);

interface OpeningProps {
  readonly named: Signal<string>;
  readonly work: Work | null;
  readonly take: (files: readonly File[]) => void;
  readonly stop: () => void;
  readonly empty: boolean;
}

function Opening({ named, work, take, stop, empty }: OpeningProps) {
  const over = useDropped(take);
  const id = useId();
  return (
    <section class={`opening class-opening${over.value ? ' over' : ''}`} aria-label="Open files">
      <label class="button quiet" for={id} aria-disabled={work !== null}>
        {empty ? 'Open files' : 'Open more files'}
        <input id={id} class="unseen" type="file" multiple accept=".gz,.json,application/gzip,application/json" disabled={work !== null} onChange={({ currentTarget }) => { take([...currentTarget.files ?? []]); currentTarget.value = ''; }} />
      </label>
      <p>or drop them anywhere on this page: logbooks (.jsonl.gz) tell who flew, records (.json) do not.</p>
      <label class="class-named">Who flew single records <input type="text" maxLength={20} value={named.value} placeholder="short name" onInput={({ currentTarget: { value } }) => { named.value = value; }} /></label>
      <div role="status" class="class-work">
        {work !== null && <><progress aria-label="Playing runs again" value={work.done} max={Math.max(1, work.all)} /><span>{work.done} of {work.all}</span><button class="plain" type="button" onClick={stop}>Stop</button></>}
      </div>
    </section>
  );
}

/** What was not taken, and why. */
function Aside({ book: { refused, more, twice, unproved, stopped } }: { book: ClassBook }) {
  const lines = [
    stopped && 'Stopped: what was read so far is shown.',
    twice > 0 && `${counted(twice, 'run stands', 'runs stand')} in more than one file, and ${twice === 1 ? 'is' : 'are'} counted once.`,
    unproved > 0 && `${counted(unproved, 'run is', 'runs are')} of another version of the model: shown with what ${unproved === 1 ? 'it says' : 'they say'}, not proved.`,
  ].filter((line) => line !== false);
  return (
    <>
      {lines.length > 0 && <ul class="small class-aside">{lines.map((line) => <li key={line}>{line}</li>)}</ul>}
      {refused.length > 0 && (
        <div class="refused" role="alert">
          <h2>Not taken</h2>
          <ul>{refused.map(({ file, line, why }) => <li key={`${file}:${line ?? ''}:${why}`}><span class="place">{file}{line !== null && `, line ${line}`}</span> <span>{why}</span></li>)}</ul>
          {more > 0 && <p>{more} more.</p>}
        </div>
      )}
    </>
  );
}
