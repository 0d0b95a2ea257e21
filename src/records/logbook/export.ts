/** Carries the whole logbook away in one file. */
import type { Book, Cursor } from './book.js';
import { EVERY_RUN } from './filter.js';
import { attemptLine, BOOK_FORMAT, headLine, runLine } from './lines.js';

/**
 * The file, gzipped. Runs that were taken off the list are left out.
 * @param app written in the head @param progress called with runs done and runs in all
 * @param stop asked after every page; true gives the work up and null back
 * @throws LogbookTrouble
 */
export async function exportBook(book: Book, app: string, progress: (done: number, all: number) => void, stop: () => boolean): Promise<Blob | null> {
  const runs = await book.count();
  const gzip = new CompressionStream('gzip');
  const writer = gzip.writable.getWriter();
  const file = new Response(gzip.readable).blob();
  const text = new TextEncoder();
  const write = (line: string): Promise<void> => writer.write(text.encode(line));
  await write(headLine({ evenhandLogbook: BOOK_FORMAT, app, runs }));
  let done = 0;
  let after: Cursor | null = null;
  do {
    const page = await book.list(EVERY_RUN, after);
    for (const { id, person, atMs, attempt, drill, abandoned } of page.entries) {
      const record = await book.record(id);
      if (record !== null) await write(runLine({ id, person, atMs, attempt, drill, abandoned }, record));
      done += 1;
    }
    progress(done, runs);
    after = page.next;
    if (stop()) {
      await writer.abort().catch(() => undefined);
      await file.catch(() => undefined);
      return null;
    }
  } while (after !== null);
  for (const attempt of await book.attempts()) await write(attemptLine(attempt));
  await writer.close();
  return file;
}
