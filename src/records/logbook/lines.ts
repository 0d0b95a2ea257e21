/**
 * The file of a logbook: gzip of lines. The first says what it is, each other one is a run: what the logbook knows of it,
 * and its record. Lines, so that a book of any length is written and read a run at a time.
 */
import type { RunRecord } from '../../../sim/files/index.js';
import type { About } from './entry.js';

/** Version of the file; higher ones are refused. */
export const BOOK_FORMAT = 1;

export interface Head {
  readonly evenhandLogbook: number;
  /** What wrote it. */
  readonly app: string;
  /** Number of runs in it. */
  readonly runs: number;
}

/** What a line keeps beside the record. */
export type Told = Pick<About, 'person' | 'atMs' | 'attempt' | 'drill' | 'abandoned'>;

export const headLine = (head: Head): string => `${JSON.stringify(head)}\n`;
export const runLine = (told: Told, record: RunRecord): string => `${JSON.stringify({ ...told, record })}\n`;

/** The head of a file; null where the line is none. */
export function headOf(line: string): Head | null {
  const value = parsed(line);
  if (typeof value !== 'object' || value === null || !('evenhandLogbook' in value) || typeof value.evenhandLogbook !== 'number') return null;
  const { evenhandLogbook, app, runs } = value as Partial<Head>;
  return { evenhandLogbook: evenhandLogbook as number, app: typeof app === 'string' ? app : '', runs: typeof runs === 'number' && runs >= 0 ? runs : 0 };
}

/** What a line tells, its record still as text; null where it is no run. */
export function toldOf(line: string): { readonly told: Told; readonly recordText: string } | null {
  const value = parsed(line);
  if (typeof value !== 'object' || value === null || !('record' in value)) return null;
  const { person, atMs, attempt, drill, abandoned, record } = value as Record<string, unknown>;
  if (typeof person !== 'string' || person.length > 40 || typeof atMs !== 'number' || !Number.isFinite(atMs)) return null;
  const number = typeof drill === 'number' && Number.isInteger(drill) && drill >= 1 && drill <= 9999 ? drill : null;
  return { told: { person, atMs, attempt: typeof attempt === 'string' && /^[0-9a-f]{32}$/.test(attempt) ? attempt : null, drill: number, abandoned: abandoned === true }, recordText: JSON.stringify(record) };
}

function parsed(line: string): unknown {
  try {
    return JSON.parse(line);
  } catch {
    return null;
  }
}
