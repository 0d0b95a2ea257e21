/** Keeps what is flown in the logbook as soon as it is over, before anything is asked or told about it. */
import type { RunRecord } from '../sim/files/index.js';
import type { House } from './pages/house.js';
import { troubleIn } from './pages/logged.js';
import { unkept } from './pages/session.js';
import { person } from './pages/settings.js';
import type { About, Book } from './records/logbook/index.js';

/** What was taken off the list this long ago can no longer be put back, ms. */
const PUT_BACK_MS = 600_000;

interface Keeper {
  readonly book: House['logbook'];
  readonly exportAll: House['exportLogbook'];
  readonly importFrom: House['importLogbook'];
  /** At the start of a run of a drill. @returns what keeps its record */
  begin(drill: number): (record: RunRecord) => void;
  /** The record of a kept run has become another: it takes its place. */
  again(before: RunRecord, now: RunRecord): void;
}

export function keeper(app: string): Keeper {
  let opening: Promise<Book> | null = null;
  /** What the book knows of the runs of this page, by the digest of their record. */
  const known = new Map<string, About>();

  const logbook = () => import('./records/logbook/index.js');
  const book = (): Promise<Book> => (opening ??= open().catch((problem: unknown) => {
    opening = null; // asked again, it is tried again
    throw problem;
  }));
  async function open(): Promise<Book> {
    const { bookOn, openStore } = await logbook();
    const made = bookOn(await openStore());
    await made.sweepAway(Date.now() - PUT_BACK_MS);
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
      const [{ exportBook }, { download }, made] = await Promise.all([logbook(), import('./records/file.js'), book()]);
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
    begin(drill) {
      const about: About = { id: newId(), person: person.value, atMs: Date.now(), drill, imported: false, abandoned: false };
      return (record) => void keep(record, about);
    },
    again(before, now) {
      const about = known.get(before.digest);
      if (about !== undefined) void keep(now, about);
    },
  };
}

/** 128 random bits as text: randomUUID is absent over plain http on a network. */
const newId = (): string => [...crypto.getRandomValues(new Uint32Array(4))].map((word) => word.toString(16).padStart(8, '0')).join('');
