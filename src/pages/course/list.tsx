/** The courses: those that come with Evenhand and those that were opened here. One alone needs no list of its own, but its file may be opened. */
import { useSignal } from '@preact/signals';
import { useEffect, useId } from 'preact/hooks';
import type { Problem } from '../../text/index.js';
import { useDropped } from '../dropped.js';
import { Page } from '../frame.js';
import type { House } from '../house.js';
import { trouble, TROUBLES, withBook } from '../logbook/logged.js';
import { Refusal } from '../refusal.js';
import { fragmentOf } from '../route.js';
import { go } from '../session.js';
import { person } from '../settings.js';
import type { CourseCard } from './house.js';
import '../look/course.css';

interface Wrong { readonly name: string; readonly problems: readonly Problem[]; readonly more: number }

export function CourseList({ house }: { house: House }) {
  const courses = useSignal<readonly CourseCard[] | null>(null);
  const broken = useSignal<Awaited<ReturnType<House['course']['broken']>>>([]);
  const done = useSignal<ReadonlyMap<number, number>>(new Map());
  const wrong = useSignal<Wrong | null>(null);
  const removed = useSignal<CourseCard | null>(null);
  const failed = useSignal(false);
  const refresh = async (): Promise<void> => {
    try {
      courses.value = await house.course.courses();
      broken.value = await house.course.broken();
    } catch {
      failed.value = true;
      return;
    }
    await withBook(house, async () => {
      const found = await Promise.all((courses.value ?? []).map(async ({ number }) => [number, (await house.course.progress(number, person.value)).stands.filter(({ state }) => state === 'done').length] as const));
      done.value = new Map(found);
    });
  };
  useEffect(() => { void refresh(); }, [house, person.value]);
  const take = (file: File | undefined): void => {
    if (file === undefined) return;
    wrong.value = null;
    void withBook(house, () => house.course.open(file)).then((opened) => {
      if (opened === undefined) return;
      if (opened.ok) go({ page: 'course', course: opened.number });
      else wrong.value = opened;
    });
  };
  const remove = (course: CourseCard): void => {
    void withBook(house, () => house.course.remove(course.own ?? '')).then(() => {
      removed.value = course;
      return refresh();
    });
  };
  const all = courses.value;
  return (
    <Page title="Courses" kind="course">
      <h1>Courses</h1>
      <p class="large course-brief">A course puts drills and sets in an order, opens each when what it needs is done, and says what the next quarter of an hour is best spent on.</p>
      {trouble.value !== null && <p class="note" role="alert">{TROUBLES[trouble.value]}</p>}
      {failed.value && <p class="note" role="alert">The courses could not be fetched. Load the page again; if that does not help, the server has gone.</p>}
      {all === null && !failed.value && <p class="waiting">Fetching the courses …</p>}
      {all !== null && (
        <ul class="course-list">
          {all.map((course) => (
            <li key={course.number}>
              <a class="course-row" href={fragmentOf({ page: 'course', course: course.number })}>
                <span class="drill-task">{course.title}</span>
                <span class="course-facts">{course.steps.length} steps{course.own !== null && ' · opened here'}</span>
                <span class="course-facts">{done.value.has(course.number) ? `${done.value.get(course.number) ?? 0} done${person.value === '' ? '' : ` by ${person.value}`}` : ''}</span>
              </a>
              {course.own !== null && <button class="plain" type="button" aria-label={`Take off: ${course.title}`} onClick={() => remove(course)}>Take off</button>}
            </li>
          ))}
        </ul>
      )}
      {broken.value.map(({ id, name, problems }) => <Refusal key={id} name={name} problems={problems} more={0} said="is kept here, but cannot be flown any more" />)}
      <Opening take={take} wrong={wrong.value} />
      <div class="put-back" role="status">
        {removed.value !== null && <><span>Taken off: {removed.value.title}.</span><button class="plain" type="button" onClick={() => { void withBook(house, () => house.course.putBack(removed.value?.own ?? '')).then(() => { removed.value = null; return refresh(); }); }}>Put back</button></>}
      </div>
    </Page>
  );
}

function Opening({ take, wrong }: { take: (file: File | undefined) => void; wrong: Wrong | null }) {
  const over = useDropped(([file]) => take(file));
  const id = useId();
  return (
    <section class={over.value ? 'opening over' : 'opening'} aria-label="Open a course">
      <label class="button quiet" for={id}>
        Open a course file
        <input id={id} class="unseen" type="file" accept=".json,application/json" onChange={({ currentTarget }) => { take(currentTarget.files?.[0]); currentTarget.value = ''; }} />
      </label>
      <p>or drop it anywhere on this page. It is checked, and kept on this machine.</p>
      {wrong !== null && <Refusal {...wrong} />}
    </section>
  );
}
