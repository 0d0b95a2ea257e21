/** The class for its page: files read and proved, and where everyone stands. */
import type { ClassHouse, ClassRow } from '../pages/class/house.js';
import { NOBODY } from '../records/nobody.js';
import type { ShelvedSet } from '../records/sets.js';
import { courseAt } from './course.js';

export const classHouse = (sets: () => Promise<readonly ShelvedSet[]>): ClassHouse => ({
  none: NOBODY,
  read: async (before, files, reading) => (await import('../records/class.js')).readClass(before, files, reading),
  async rows(book, number) {
    const [course, all, { progressOf }] = await Promise.all([courseAt(number), sets(), import('../records/progress.js')]);
    const rows: ClassRow[] = [];
    for (const name of [...book.people.keys()].sort()) {
      const runs = book.people.get(name);
      if (runs !== undefined) rows.push({ name, runs: runs.entries.length, progress: await progressOf(course, all, runs) });
    }
    return rows;
  },
});
