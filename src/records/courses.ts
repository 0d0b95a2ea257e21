/** The courses: those that come with Evenhand, checked as any file is, and those that a person opened here. */
import { canonical, readyCourse, sha256Hex, type CourseFile, type SetFile, type Shelves } from '../../sim/files/index.js';
import type { ReadyCourse, ReadyStep } from '../../sim/index.js';
import { readCourse, type Read } from '../text/index.js';
import type { OwnFile } from './own/index.js';
import { sets, type ShelvedSet } from './sets.js';
import { airframesOnShelf, drillsOnShelf, sound } from './shelf.js';

export interface ShelvedCourse {
  /** How it is found again: name of its file, or the id under which it is kept. */
  readonly name: string;
  readonly of: ReadyCourse;
  /** Opened on this machine; it can be taken off. */
  readonly own: boolean;
}

const texts = import.meta.glob<string>('../../scenarios/courses/*.json', { query: '?raw', import: 'default', eager: true });

let shelved: Shelves | null = null;

/** What a course may name. */
function shelves(): Shelves {
  if (shelved !== null) return shelved;
  const [airframes, drills] = [airframesOnShelf(), drillsOnShelf()];
  const named = new Map(sets().map(({ name, of }) => [name, of.set] as const));
  return shelved = { airframes: (name) => airframes.get(name), drills: (name) => drills.get(name), sets: (name): SetFile | undefined => named.get(name) };
}

/** The shipped courses in the order of their numbers. */
export const shippedCourses = (): ShelvedCourse[] => Object.entries(texts)
  .map(([file, text]) => ({ name: /([^/]+)\.json$/.exec(file)?.[1] ?? file, of: readyCourse(sound(readCourse(text, file, shelves())), shelves()), own: false }))
  .sort((a, b) => (a.of.course.order ?? Infinity) - (b.of.course.order ?? Infinity));

/** A course of one's own, or what is wrong with it by now. */
export function ownCourse({ id, name, text }: Pick<OwnFile, 'id' | 'name' | 'text'>): Read<ShelvedCourse> {
  const read: Read<CourseFile> = readCourse(text, name, shelves());
  return read.ok ? { ok: true, value: { name: id, of: readyCourse(read.value, shelves()), own: true } } : read;
}

/** Name under which the logbook keeps flights of a set: of its file, or of what stands in it, so that another text is another set. */
export const setNameOf = ({ flies }: Pick<ReadyStep, 'flies'>): string | null =>
  (flies.kind !== 'set' ? null : flies.shipped ?? `inline-${sha256Hex(canonical(flies.of.set)).slice(0, 16)}`);

/** The sets that stand in courses in full, each once. */
export function inlineSets(courses: readonly ShelvedCourse[]): ShelvedSet[] {
  const found = new Map<string, ShelvedSet>();
  for (const step of courses.flatMap(({ of }) => of.steps)) {
    const name = setNameOf(step);
    if (step.flies.kind === 'set' && step.flies.shipped === null && name !== null) found.set(name, { name, of: step.flies.of });
  }
  return [...found.values()];
}
