/**
 * The file of a logbook: gzip of lines. The first says what it is; then a line a run: what the logbook knows of it, and its
 * record; then a line a flight of a set. Lines, so that a book of any length is written and read a run at a time.
 */
import { OUTCOMES, type RunRecord } from '../../../sim/files/index.js';
import { MOST_SPLIT_DEG } from '../../../sim/stats/forecast.js';
import type { Attempt } from './attempt.js';
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
export type Told = Pick<About, 'id' | 'person' | 'atMs' | 'attempt' | 'drill' | 'abandoned'>;

export const headLine = (head: Head): string => `${JSON.stringify(head)}\n`;
export const runLine = (told: Told, record: RunRecord): string => `${JSON.stringify({ ...told, record })}\n`;

export const attemptLine = (attempt: Attempt): string => `${JSON.stringify({ flight: attempt })}\n`;

/** The head of a file; null where the line is none. */
export function headOf(line: string): Head | null {
  const value = parsed(line);
  if (typeof value !== 'object' || value === null || !('evenhandLogbook' in value) || typeof value.evenhandLogbook !== 'number') return null;
  const { evenhandLogbook, app, runs } = value as Partial<Head>;
  return { evenhandLogbook: evenhandLogbook as number, app: typeof app === 'string' ? app : '', runs: typeof runs === 'number' && runs >= 0 ? runs : 0 };
}

const isId = (value: unknown): value is string => typeof value === 'string' && /^[0-9a-f]{32}$/.test(value);
const isWhole = (value: unknown, most: number): value is number => typeof value === 'number' && Number.isInteger(value) && value >= 0 && value <= most;
const isText = (value: unknown, most: number): value is string => typeof value === 'string' && value.length <= most;
const isTime = (value: unknown): value is number => typeof value === 'number' && Number.isFinite(value);

/** The flight of a set that a line tells; null where the line tells none. */
export function attemptOf(line: string): Attempt | null {
  const value = parsed(line);
  if (typeof value !== 'object' || value === null || !('flight' in value) || typeof value.flight !== 'object' || value.flight === null) return null;
  const { id, set, seed, person, name, startedMs, runs, blocks, done, leftMs, forecast } = value.flight as Record<string, unknown>;
  if (!isId(id) || !isText(set, 64) || !isWhole(seed, 0xffffffff) || !isText(person, 40) || !isText(name, 40) || !isTime(startedMs)) return null;
  if (!isWhole(runs, 400) || !isWhole(blocks, 20) || blocks < 1 || !Array.isArray(done) || done.length > runs || !(leftMs === null || isTime(leftMs))) return null;
  const flown = done.flatMap((one: unknown) => {
    const { entry, outcome } = (typeof one === 'object' && one !== null ? one : {}) as Record<string, unknown>;
    return isText(entry, 40) && OUTCOMES.some((known) => known === outcome) ? [{ entry, outcome: outcome as Attempt['done'][number]['outcome'] }] : [];
  });
  return flown.length < done.length ? null : { id, set, seed, person, name, startedMs, runs, blocks, done: flown, leftMs, ...forecastIn(forecast) };
}

/** A forecast that is none is left out: the flight stands without it. */
function forecastIn(value: unknown): Pick<Attempt, 'forecast'> {
  const { caughtOf10, fromDeg, toDeg } = (typeof value === 'object' && value !== null ? value : {}) as Record<string, unknown>;
  const isSplit = (deg: unknown): deg is number => typeof deg === 'number' && deg >= 0 && deg <= MOST_SPLIT_DEG;
  return isWhole(caughtOf10, 10) && isSplit(fromDeg) && isSplit(toDeg) && fromDeg <= toDeg ? { forecast: { caughtOf10, fromDeg, toDeg } } : {};
}

/** What a line tells, its record still as text; null where it is no run. An id that is none of ours is left out. */
export function toldOf(line: string): { readonly told: Omit<Told, 'id'>; readonly id: string | null; readonly recordText: string } | null {
  const value = parsed(line);
  if (typeof value !== 'object' || value === null || !('record' in value)) return null;
  const { id, person, atMs, attempt, drill, abandoned, record } = value as Record<string, unknown>;
  if (!isText(person, 40) || !isTime(atMs)) return null;
  const number = typeof drill === 'number' && Number.isInteger(drill) && drill >= 1 && drill <= 9999 ? drill : null;
  return { told: { person, atMs, attempt: isId(attempt) ? attempt : null, drill: number, abandoned: abandoned === true }, id: isId(id) ? id : null, recordText: JSON.stringify(record) };
}

function parsed(line: string): unknown {
  try {
    return JSON.parse(line);
  } catch {
    return null;
  }
}
