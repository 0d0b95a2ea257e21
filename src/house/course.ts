/** Courses for the pages: those that are shipped and those opened here, how far a person is, and what a step flies. */
import type { CourseHouse } from '../pages/course/house.js';
import { person } from '../pages/settings.js';
import type { Book } from '../records/logbook/index.js';
import { newId } from '../records/logbook/id.js';
import type { OwnFile } from '../records/own/index.js';
import type { ShelvedCourse } from '../records/courses.js';
import type { ShelvedSet } from '../records/sets.js';
import type { Shelved } from '../records/shelf.js';
import type { Problem } from '../text/index.js';
import { own } from './own.js';

interface Shelf {
  readonly courses: readonly ShelvedCourse[];
  readonly broken: readonly { readonly id: string; readonly name: string; readonly problems: readonly Problem[] }[];
}

let shelved: Promise<Shelf> | null = null;
/** Fetched once, and anew when a course is opened or taken off. */
const shelf = (): Promise<Shelf> => (shelved ??= fetchShelf().catch((problem: unknown) => {
  shelved = null;
  throw problem;
}));

async function fetchShelf(): Promise<Shelf> {
  const { ownCourse, shippedCourses } = await import('../records/courses.js');
  const courses = [...shippedCourses()];
  const broken: Shelf['broken'][number][] = [];
  for (const { id, name, text } of await ownFiles()) {
    const read = ownCourse({ id, name, text });
    if (read.ok) courses.push(read.value);
    else broken.push({ id, name, problems: read.problems });
  }
  return { courses, broken };
}

/** Oldest first, so that a course keeps its number. None where the browser keeps nothing. */
async function ownFiles(): Promise<OwnFile[]> {
  try {
    const made = await own.shelf();
    const entries = (await made.list()).filter(({ kind }) => kind === 'course').reverse();
    return (await Promise.all(entries.map(({ id }) => made.file(id)))).filter((file) => file !== null);
  } catch {
    return [];
  }
}

/** The sets that stand in courses in full. */
export const setsOfCourses = async (): Promise<ShelvedSet[]> => {
  const [{ courses }, { inlineSets }] = await Promise.all([shelf(), import('../records/courses.js')]);
  return inlineSets(courses);
};

export async function courseAt(number: number): Promise<ShelvedCourse> {
  const course = (await shelf()).courses[number - 1];
  if (course === undefined) throw new RangeError(`there is no course ${number}`);
  return course;
}

/** The drill of a step as this person flies it now. Where the logbook is closed it is flown as it stands. */
export async function stepFlown(number: number, step: number, book: () => Promise<Book>): Promise<Shelved> {
  const [course, { flownFor }, { runsIn }] = await Promise.all([courseAt(number), import('../records/progress.js'), import('../records/runs.js')]);
  const flies = course.of.steps[step - 1]?.flies;
  if (flies?.kind !== 'drill') throw new RangeError(`there is no such step`);
  const name = person.value;
  try {
    const open = await book();
    const fresh = crypto.getRandomValues(new Uint32Array(1))[0] as number;
    return await flownFor(course, step - 1, await open.courseSeed(course.name, name, fresh), await runsIn(open, name));
  } catch {
    return { scenario: flies.scenario, airframe: flies.airframe };
  }
}

export function courseHouse(book: () => Promise<Book>, sets: () => Promise<readonly ShelvedSet[]>): CourseHouse {
  const renew = async (work: Promise<void>): Promise<void> => {
    await work;
    shelved = null;
  };
  return {
    async courses() {
      const [{ courses }, all, { courseCard }, { setNameOf }, { drillNames }] = await Promise.all([
        shelf(), sets(), import('../pages/course/card.js'), import('../records/courses.js'), import('../records/shelf.js'),
      ]);
      const names = drillNames();
      const found = (at: number): number | null => (at < 0 ? null : at + 1);
      return courses.map(({ of, own: isOwn, name: id }, index) => courseCard(of, index + 1, isOwn ? id : null, {
        drill: (name) => found(names.indexOf(name)), set: (step) => found(all.findIndex(({ name }) => name === setNameOf(step))),
      }));
    },
    broken: async () => (await shelf()).broken,
    async progress(number, name) {
      const [course, all, open, { progressOf }, { runsIn }] = await Promise.all([courseAt(number), sets(), book(), import('../records/progress.js'), import('../records/runs.js')]);
      return progressOf(course, all, await runsIn(open, name));
    },
    async brief(number, step) {
      const [{ courses }, { cardOf }] = await Promise.all([shelf(), import('../pages/drill/card.js')]);
      const flies = courses[number - 1]?.of.steps[step - 1]?.flies;
      return flies?.kind === 'drill' ? cardOf(flies, step) : null;
    },
    async open(file) {
      const [{ ownCourse }, { MOST_BYTES }] = await Promise.all([import('../records/courses.js'), import('../text/index.js')]);
      const refuse = (found: string, allowed: string) => ({ ok: false as const, name: file.name, problems: [{ file: file.name, line: 1, column: 1, path: '', found, allowed }], more: 0 });
      if (file.size > MOST_BYTES) return refuse(`${file.size} bytes`, `at most ${MOST_BYTES} bytes`);
      const text = await file.text();
      const id = newId();
      const read = ownCourse({ id, name: file.name, text });
      if (!read.ok) return { ok: false, name: file.name, problems: read.problems, more: read.more };
      await renew((await own.shelf()).keep({ id, kind: 'course', name: read.value.of.course.title, text, changedMs: Date.now() }));
      return { ok: true, number: (await shelf()).courses.findIndex(({ name }) => name === id) + 1 };
    },
    remove: async (id) => renew((await own.shelf()).remove(id, Date.now())),
    putBack: async (id) => renew((await own.shelf()).putBack(id)),
    async isFirstLook(run) {
      const [{ courses }, { isFirstLook }] = await Promise.all([shelf(), import('../records/progress.js')]);
      return isFirstLook(courses, run);
    },
  };
}
