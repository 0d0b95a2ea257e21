/**
 * Keeps what is flown in the logbook: noted while it goes on, kept as soon as it is over, before anything is asked or told
 * about it; and, when a page went away in mid-run, kept by the next page as abandoned.
 */
import type { RunRecord } from '../../sim/files/index.js';
import type { House } from '../pages/house.js';
import { troubleIn } from '../pages/logbook/logged.js';
import { unkept } from '../pages/session.js';
import { person } from '../pages/settings.js';
import type { About, Book } from '../records/logbook/index.js';
import { newId } from '../records/logbook/id.js';
import type { RunningDrill } from '../run/drill.js';
import { PUT_BACK_MS } from './put-back.js';

/** How often a run is noted: a page that dies loses no more of it, ms. */
const NOTE_EVERY_MS = 2000;
/** Without locks, a run that was not noted for so long counts as left; a hidden page notes once a minute, ms. */
const LEFT_MS = 180_000;

export interface Keeper {
  readonly book: House['logbook'];
  readonly exportAll: House['exportLogbook'];
  readonly importFrom: House['importLogbook'];
  /** Notes a run of a drill or of a set from now on, and keeps its record at the end. @returns the id of its entry */
  follow(of: { readonly drill: number | null } | { readonly attempt: string }, running: RunningDrill): string;
  /** The record of a kept run has become another: it takes its place. */
  again(before: RunRecord, now: RunRecord): void;
}

export function keeper(app: string): Keeper {
  let opening: Promise<Book> | null = null;
  /** What the book knows of the runs of this page, by the digest of their record. */
  const known = new Map<string, About>();

  const logbook = () => import('../records/logbook/index.js');
  const book = (): Promise<Book> => (opening ??= open().catch((problem: unknown) => {
    opening = null; // asked again, it is tried again
    throw problem;
  }));
  async function open(): Promise<Book> {
    const { bookOn, openStore } = await logbook();
    const made = bookOn(await openStore());
    await made.sweepAway(Date.now() - PUT_BACK_MS);
    await takeIn(made);
    return made;
  }
  async function keep(record: RunRecord, about: About): Promise<void> {
    known.set(record.digest, about);
    try {
      await (await book()).keep(record, about);
      unkept.value = null;
    } catch (problem) {
      unkept.value = troubleIn(problem);
    }
  }
  return {
    book,
    async exportAll(progress, stop) {
      const [{ exportBook }, { download }, made] = await Promise.all([logbook(), import('../records/file.js'), book()]);
      const file = await exportBook(made, app, progress, stop);
      if (file === null) return false;
      const nowMs = Date.now();
      download(file, `evenhand-logbook-${new Date(nowMs).toISOString().slice(0, 10)}.jsonl.gz`);
      await made.noteExport(nowMs);
      return true;
    },
    async importFrom(file, progress, stop) {
      const { importBook } = await logbook();
      return importBook(await book(), file, { id: newId, progress, stop });
    },
    follow(of, running) {
      const about: About = {
        id: newId(), person: person.value, atMs: Date.now(), imported: false, abandoned: false,
        drill: 'drill' in of ? of.drill : null, attempt: 'attempt' in of ? of.attempt : null,
      };
      const letGo = hold(about.id);
      // Opened now, so that the record at the end is one write away from being kept.
      void book().catch(() => undefined);
      const endNotes = noting(running, about, book);
      running.onEnd((record) => {
        endNotes();
        void keep(record, about).finally(letGo);
      });
      return about.id;
    },
    again(before, now) {
      const about = known.get(before.digest);
      if (about !== undefined) void keep(now, about);
    },
  };
}

/** Notes how far a run has come, again and again. @returns its end */
function noting(running: RunningDrill, about: About, book: () => Promise<Book>): () => void {
  const note = (): void => {
    const draft = running.draft();
    if (draft === null) return;
    // A note that cannot be written is no trouble yet: the record at the end will tell.
    void Promise.all([book(), import('../../sim/index.js')])
      .then(([made, { MODEL_VERSION }]) => made.note({ about, model: MODEL_VERSION, setting: running.setting, draft, notedMs: Date.now() }))
      .catch(() => undefined);
  };
  const timer = setInterval(note, NOTE_EVERY_MS);
  return () => clearInterval(timer);
}

const lockOf = (id: string): string => `evenhand run ${id}`;

/** Holds a lock for as long as this page flies the run; the browser lets it go when the page dies. @returns lets it go */
function hold(id: string): () => void {
  let letGo: () => void = () => undefined;
  const held = new Promise<void>((done) => { letGo = done; });
  // Absent over plain http on a network.
  void (navigator.locks as LockManager | undefined)?.request(lockOf(id), () => held);
  return letGo;
}

/** Takes in the runs whose pages went away. */
async function takeIn(book: Book): Promise<void> {
  const unfinished = await book.unfinished();
  if (unfinished.length === 0) return;
  const locks = await (navigator.locks as LockManager | undefined)?.query();
  const held = new Set(locks?.held?.map(({ name }) => name));
  const [{ abandonedRecord }, { MODEL_VERSION }] = await Promise.all([import('../../sim/files/index.js'), import('../../sim/index.js')]);
  for (const { about, model, setting, draft, notedMs } of unfinished) {
    if (locks === undefined ? Date.now() - notedMs < LEFT_MS : held.has(lockOf(about.id))) continue;
    const record = model === MODEL_VERSION ? abandonedRecord(setting, draft) : null;
    if (record === null) await book.forget(about.id);
    else await book.keep(record, { ...about, abandoned: true });
  }
}
