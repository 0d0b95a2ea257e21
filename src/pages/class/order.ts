/** In which order a class is told: by name, or by what is due. There is no other: a class is no ranking. */
import type { ClassRow } from './house.js';

export type Order = 'name' | 'due';

/** The step that is due; beyond every step where the course is done. */
export const dueAt = ({ progress: { proposal } }: Pick<ClassRow, 'progress'>): number => ('step' in proposal ? proposal.step : Infinity);

export const ordered = (rows: readonly ClassRow[], order: Order): ClassRow[] => {
  const names = new Intl.Collator(undefined, { numeric: true });
  return [...rows].sort((a, b) => (order === 'due' && dueAt(a) !== dueAt(b) ? (dueAt(a) < dueAt(b) ? -1 : 1) : names.compare(a.name, b.name)));
};
