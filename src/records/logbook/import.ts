/** Takes the runs of a logbook's file in. Each is checked and played again before it is kept; nothing else is believed. */
import { MOST_BYTES } from '../../text/index.js';
import type { Book } from './book.js';
import { attemptOf, BOOK_FORMAT, headOf } from './lines.js';
import { proofOf, runIn } from './run-in.js';

export interface Imported {
  readonly kept: number;
  /** Runs that are in the book already. */
  readonly known: number;
  /** Kept, but of another model version: shown with what they say, not proved. */
  readonly unproved: number;
  readonly refused: readonly { readonly line: number; readonly why: string }[];
  /** Refused runs beyond those listed. */
  readonly more: number;
  readonly stopped: boolean;
}

/** The file as a whole is not taken. */
export type Refused = { readonly ok: false; readonly why: string };

/** No line is longer than a record may be, with what stands beside it; and no file opens to more than this. */
const MOST_LINE = MOST_BYTES + 1000;
const MOST_INFLATED = 1e9;
const MOST_TOLD = 50;

export interface Importing {
  /** Makes an id. */
  readonly id: () => string;
  /** Called with runs read and the runs that the head promises. */
  readonly progress: (done: number, all: number) => void;
  /** Asked between two runs; what was kept by then stays. */
  readonly stop: () => boolean;
}

/**
 * Imports a file. Duplicates, by digest, are passed over; a damaged end keeps what came before it.
 * @throws LogbookTrouble where the store takes no more
 */
export async function importBook(book: Book, file: Blob, { id, progress, stop }: Importing): Promise<({ readonly ok: true } & Imported) | Refused> {
  const lines = linesOf(file);
  const first = await lines.next();
  if (first.done === true || typeof first.value !== 'string') return { ok: false, why: 'This is no file of a logbook: it is not compressed as one.' };
  const head = headOf(first.value);
  if (head === null) return { ok: false, why: 'This is no file of a logbook: its first line does not say so.' };
  if (head.evenhandLogbook > BOOK_FORMAT) return { ok: false, why: `This file is of format ${head.evenhandLogbook}, for a later Evenhand; this one reads format ${BOOK_FORMAT}.` };
  const count = { kept: 0, known: 0, unproved: 0, more: 0 };
  const refused: { line: number; why: string }[] = [];
  const refuse = (line: number, why: string): void => { if (refused.length < MOST_TOLD) refused.push({ line, why }); else count.more += 1; };
  /** Where a run of the file stands in the book, by its id in the file. */
  const places = new Map<string, string>();
  const mine = new Set((await book.attempts()).map((attempt) => attempt.id));
  let line = 1;
  let stopped = false;
  for await (const text of lines) {
    line += 1;
    if (typeof text !== 'string') {
      refuse(line, text.why);
      break;
    }
    const attempt = attemptOf(text);
    if (attempt !== null) {
      const done = attempt.done.map(({ entry, outcome }) => ({ entry: places.get(entry) ?? entry, outcome }));
      if (!mine.has(attempt.id)) await book.keepAttempt({ ...attempt, done });
      continue;
    }
    const taken = await take(book, text, id, places);
    if (typeof taken === 'string') count[taken] += 1;
    else refuse(line, taken.why);
    if (taken === 'unproved') count.kept += 1;
    progress(Math.min(line - 1, head.runs), head.runs);
    if (stop()) { stopped = true; break; }
  }
  return { ok: true, ...count, refused, stopped };
}

async function take(book: Book, text: string, newId: () => string, places: Map<string, string>): Promise<'kept' | 'known' | 'unproved' | { why: string }> {
  const found = runIn(text);
  if ('why' in found) return found;
  const there = await book.idOf(found.record.digest);
  if (found.id !== null && there !== null) places.set(found.id, there);
  if (there !== null) return 'known';
  const proof = proofOf(found.record);
  if ('why' in proof) return proof;
  // Under its own id, so that the flight of its set finds it; under a new one where that is taken.
  const id = found.id === null || await book.record(found.id) !== null ? newId() : found.id;
  if (found.id !== null) places.set(found.id, id);
  await book.keep(found.record, { id, ...found.told, imported: true });
  return proof.proved ? 'kept' : 'unproved';
}

/** The lines of a gzipped file one after another; what cannot be read on ends them with why. */
export async function* linesOf(file: Blob): AsyncGenerator<string | { why: string }> {
  const reader = file.stream().pipeThrough(new DecompressionStream('gzip')).pipeThrough(new TextDecoderStream()).getReader();
  let rest = '';
  let inflated = 0;
  try {
    for (;;) {
      const { done, value } = await reader.read();
      if (done) break;
      inflated += value.length;
      rest += value;
      const parts = rest.split('\n');
      rest = parts.pop() ?? '';
      yield* parts;
      if (rest.length > MOST_LINE) return yield { why: `a line is longer than ${MOST_LINE} characters` };
      if (inflated > MOST_INFLATED) return yield { why: `the file opens to more than ${MOST_INFLATED} characters` };
    }
    if (rest !== '') yield rest;
  } catch {
    yield { why: 'the file is damaged from here on' };
  } finally {
    await reader.cancel().catch(() => undefined);
  }
}
