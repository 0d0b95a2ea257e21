/** Which entries of the logbook are listed. */
import type { RunRecord } from '../../../sim/files/index.js';
import type { Entry } from './entry.js';

export interface Filter {
  /** Short name of who flew; null: everyone. */
  readonly person: string | null;
  /** null: every outcome. */
  readonly outcome: RunRecord['outcome'] | null;
  /** A shipped drill by its number, the runs of sets, or what is neither (practice, the bench, files); null: every run. */
  readonly of: number | 'sets' | 'other' | null;
}

export const EVERY_RUN: Filter = { person: null, outcome: null, of: null };

/** Whether an entry is a run of what the filter asks for, whoever flew it and however it came out. */
export function isOf({ drill, attempt }: Pick<Entry, 'drill' | 'attempt'>, of: Filter['of']): boolean {
  if (of === null) return true;
  if (of === 'sets') return attempt !== null;
  return of === 'other' ? attempt === null && drill === null : drill === of;
}
