/** What the class page needs of the rest of the house, as `house.class`. */
import type { ClassBook, Reading } from '../../records/class.js';
import type { CourseProgress } from '../../records/progress.js';

/** One person of the class in one course. */
export interface ClassRow {
  /** Short name; empty for runs without one. */
  readonly name: string;
  readonly runs: number;
  readonly progress: CourseProgress;
}

export interface ClassHouse {
  /** Nothing was read yet. */
  readonly none: ClassBook;
  /** Reads files into what was read before. Keeps nothing. */
  read(before: ClassBook, files: readonly File[], reading: Reading): Promise<ClassBook>;
  /** Where everyone stands, by name. @param course from 1 */
  rows(book: ClassBook, course: number): Promise<readonly ClassRow[]>;
}
