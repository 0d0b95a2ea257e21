/** Out in one file and back: the same runs; duplicates passed over; damaged, foreign, later and forged files told plainly. */
import { describe, expect, it } from 'vitest';
import { digestOf, type RunRecord } from '../../sim/files/index.js';
import { EVERY_RUN, exportBook, importBook, type Attempt, type Book } from '../../src/records/logbook/index.js';
import { BOOK_FORMAT, headLine, runLine } from '../../src/records/logbook/lines.js';
import { about, emptyBook, flown } from './made.js';

const runs = [flown(1), flown(2), flown(3)];
let ids = 0;
const quiet = { id: () => `new ${ids += 1}`, progress: () => undefined, stop: () => false };
const told = { id: '0'.repeat(32), person: 'ada', atMs: 5, attempt: null, drill: 2, abandoned: false };

async function filled(): Promise<Book> {
  const book = await emptyBook();
  for (const [at, run] of runs.entries()) await book.keep(run, about(`${at}`, { atMs: at, person: at === 0 ? 'bo' : 'ada' }));
  return book;
}
const fileOf = async (book: Book): Promise<Blob> => await exportBook(book, 'test', () => undefined, () => false) as Blob;
const zipped = (text: string): Promise<Blob> => new Response(new Blob([text]).stream().pipeThrough(new CompressionStream('gzip'))).blob();
const head = headLine({ evenhandLogbook: BOOK_FORMAT, app: 'test', runs: 1 });

describe('out and back', () => {
  it('the same runs, by the same people, at the same time', async () => {
    const file = await fileOf(await filled());
    const other = await emptyBook();
    const progress: number[][] = [];
    expect(await importBook(other, file, { ...quiet, progress: (done, all) => progress.push([done, all]) }))
      .toEqual({ ok: true, kept: 3, known: 0, unproved: 0, refused: [], more: 0, stopped: false });
    expect(progress).toEqual([[1, 3], [2, 3], [3, 3]]);
    const { entries } = await other.list(EVERY_RUN, null);
    expect(entries.map(({ person, atMs, imported, digest }) => [person, atMs, imported, digest])).toEqual(
      [2, 1, 0].map((at) => [at === 0 ? 'bo' : 'ada', at, true, runs[at]?.digest]));
    expect(await other.record(entries[0]?.id ?? '')).toEqual(runs[2]);
  });
  it('what is there already is passed over, what was taken off is not carried', async () => {
    const book = await filled();
    await book.remove(['1'], 1);
    const file = await fileOf(book);
    expect(await importBook(book, file, quiet)).toMatchObject({ kept: 0, known: 2 });
    expect(await importBook(await emptyBook(), file, quiet)).toMatchObject({ kept: 2 });
  });
  it('both can be stopped', async () => {
    const book = await filled();
    expect(await exportBook(book, 'test', () => undefined, () => true)).toBe(null);
    expect(await importBook(await emptyBook(), await fileOf(book), { ...quiet, stop: () => true })).toMatchObject({ kept: 1, stopped: true });
  });
});

describe('flights of sets', () => {
  const flight = (done: readonly string[]): Attempt => ({
    id: '1'.repeat(32), set: 'short', seed: 5, person: 'ada', name: 'before', startedMs: 9, runs: 12, blocks: 1, leftMs: null,
    done: done.map((entry) => ({ entry, outcome: 'caught' as const })),
  });
  const idOf = (at: number): string => `${at}`.repeat(32);
  it('are carried along, and find their runs again, whatever these are called in the other book', async () => {
    const book = await emptyBook();
    for (const [at, run] of runs.entries()) await book.keep(run, about(idOf(at), { atMs: at, attempt: '1'.repeat(32) }));
    await book.keepAttempt(flight([idOf(0), idOf(2)]));
    const file = await fileOf(book);
    const fresh = await emptyBook();
    expect(await importBook(fresh, file, quiet)).toMatchObject({ kept: 3, refused: [] });
    expect(await fresh.attempts()).toEqual([flight([idOf(0), idOf(2)])]);
    expect(await fresh.record(idOf(2))).toEqual(runs[2]);
    // Here the third run is known by another name, and that name is taken by another run.
    const other = await emptyBook();
    await other.keep(runs[2] as RunRecord, about('mine'));
    await other.keep(flown(9), about(idOf(0)));
    expect(await importBook(other, file, quiet)).toMatchObject({ kept: 2, known: 1 });
    const [found] = await other.attempts();
    expect(found?.done[1]?.entry).toBe('mine');
    expect(await other.record(found?.done[0]?.entry ?? '')).toEqual(runs[0]);
  });
  it('with the forecast that was said; one that is none is left out, and the flight stands', async () => {
    const forecast = { caughtOf10: 9, fromDeg: 0.8, toDeg: 1.4 };
    const book = await emptyBook();
    await book.keepAttempt({ ...flight([]), forecast });
    const fresh = await emptyBook();
    await importBook(fresh, await fileOf(book), quiet);
    expect(await fresh.attempts()).toEqual([{ ...flight([]), forecast }]);
    for (const odd of [{ ...forecast, caughtOf10: 11 }, { ...forecast, toDeg: 0.7 }, { ...forecast, toDeg: 41 }, { ...forecast, fromDeg: '0.8' }, 'high']) {
      const other = await emptyBook();
      await importBook(other, await zipped(`${head}${JSON.stringify({ flight: { ...flight([]), forecast: odd } })}\n`), quiet);
      expect(await other.attempts()).toEqual([flight([])]);
    }
  });
  it('a run of a set and its being done are one', async () => {
    const book = await emptyBook();
    await book.keepAttempt(flight([]));
    await book.keep(runs[0] as RunRecord, about('a', { attempt: '1'.repeat(32) }));
    await book.keep(runs[0] as RunRecord, about('a', { attempt: '1'.repeat(32) }));
    expect((await book.attempts())[0]?.done).toEqual([{ entry: 'a', outcome: runs[0]?.outcome }]);
  });
  it.each([
    ['more runs than it has', { ...flight(['a']), runs: 0 }], ['an outcome that is none', { ...flight([]), done: [{ entry: 'a', outcome: 'brave' }] }],
    ['a seed that is none', { ...flight([]), seed: -1 }], ['no blocks', { ...flight([]), blocks: 0 }],
  ])('%s: a line that is refused', async (_, odd) => {
    const came = await importBook(await emptyBook(), await zipped(`${head}${JSON.stringify({ flight: odd })}\n`), quiet);
    expect(came.ok && came.refused.length).toBe(1);
  });
});

describe('files that are not taken', () => {
  it.each([
    ['no gzip', () => Promise.resolve(new Blob(['hello'])), 'not compressed'],
    ['nothing at all', () => Promise.resolve(new Blob([])), 'not compressed'],
    ['gzip of something else', () => zipped('hello\n'), 'first line'],
    ['a later format', () => zipped(headLine({ evenhandLogbook: BOOK_FORMAT + 1, app: 'x', runs: 0 })), 'for a later Evenhand'],
  ])('%s', async (_, file, why) => {
    const came = await importBook(await emptyBook(), await file(), quiet);
    expect(came.ok).toBe(false);
    expect('why' in came && came.why).toContain(why);
  });
});

describe('runs that are not taken', () => {
  const [run] = runs as [ReturnType<typeof flown>];
  const refusedOf = async (lines: string): Promise<string[]> => {
    const came = await importBook(await emptyBook(), await zipped(head + lines), quiet);
    return came.ok ? came.refused.map(({ line, why }) => `${line} ${why}`) : [];
  };
  it('a line that is none, a record that is wrong, one that does not follow from its inputs', async () => {
    const forged = { ...run, outcome: 'held' as const };
    const lines = ['{}\n', 'x\n', runLine(told, { ...run, seed: -1 }), runLine(told, { ...forged, digest: digestOf(forged) })].join('');
    const said = await refusedOf(lines);
    expect(said).toHaveLength(4);
    expect(said[0]).toContain('2 no run');
    expect(said[1]).toContain('3 no run');
    expect(said[2]).toMatch(/^4 its record is wrong at seed/);
    expect(said[3]).toMatch(/^5 its record does not follow from its inputs: outcome/);
  });
  it('a damaged end keeps what came before it', async () => {
    const whole = new Uint8Array(await (await fileOf(await filled())).arrayBuffer());
    const book = await emptyBook();
    const came = await importBook(book, new Blob([whole.slice(0, Math.floor(whole.length * 0.8))]), quiet);
    expect(came).toMatchObject({ ok: true });
    expect('refused' in came && came.refused.at(-1)?.why).toBe('the file is damaged from here on');
    expect(await book.count()).toBe('kept' in came ? came.kept : -1);
  });
  it('a record of another model is kept and not proved', async () => {
    const old = { ...run, model: 999 };
    const book = await emptyBook();
    expect(await importBook(book, await zipped(head + runLine(told, { ...old, digest: digestOf(old) })), quiet)).toMatchObject({ kept: 1, unproved: 1, refused: [] });
  });
  it('a line without an end stops before it fills the memory', async () => {
    expect(await refusedOf('x'.repeat(3_000_000))).toEqual([expect.stringContaining('a line is longer than')]);
  });
});
