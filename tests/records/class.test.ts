// A class out of files: logbooks and single records read together, each run proved, every refusal told, nothing kept.
import { describe, expect, it } from 'vitest';
import { composeRecord, type RunRecord } from '../../sim/files/index.js';
import { exportBook } from '../../src/records/logbook/index.js';
import { readClass, type ClassBook, type Reading } from '../../src/records/class.js';
import { NOBODY } from '../../src/records/nobody.js';
import { about, emptyBook, flown } from './made.js';

const reading = (more: Partial<Reading> = {}): Reading => ({ named: '', progress: () => undefined, stop: () => false, ...more });
const file = (content: BlobPart, name: string): File => new File([content], name, { lastModified: 77 });
const record = (run: RunRecord, name = 'r.json'): File => file(JSON.stringify(run), name);

/** The exported logbook of a person with these runs, the first of which stand in a flight of a set. */
async function logbook(person: string, seeds: readonly number[], ofSet = 0): Promise<File> {
  const book = await emptyBook();
  const id = (seed: number): string => seed.toString(16).padStart(32, person === 'ada' ? 'a' : 'b');
  const attempt = { id: id(999), set: 'short', seed: 1, person, name: '', startedMs: 5, runs: 12, blocks: 1, done: [], leftMs: null };
  await book.keepAttempt(attempt);
  for (const [at, seed] of seeds.entries()) await book.keep(flown(seed), about(id(seed), { person, atMs: 1000 - at, attempt: at < ofSet ? attempt.id : null }));
  return file((await exportBook(book, 'test', () => undefined, () => false))!, `${person}.jsonl.gz`);
}

const names = ({ people }: ClassBook): [string, number][] => [...people].map(([name, { entries }]) => [name, entries.length]);

describe('read together', () => {
  it('two logbooks and a single record: by person, in order of time; flights of sets find their runs', async () => {
    const told: [number, number][] = [];
    const book = await readClass(NOBODY, [await logbook('ada', [1, 2, 3], 2), await logbook('ben', [4]), record(flown(5))], reading({ named: 'cleo', progress: (...now) => { told.push(now); } }));
    expect(names(book)).toEqual([['ada', 3], ['ben', 1], ['cleo', 1]]);
    expect([book.runs, book.refused, book.files.length, told.at(-1)]).toEqual([5, [], 3, [5, 5]]);
    const ada = book.people.get('ada')!;
    expect(ada.entries.map(({ atMs }) => atMs)).toEqual([998, 999, 1000]);
    expect(ada.attempts[0]!.done).toHaveLength(2);
    for (const { entry } of ada.attempts[0]!.done) expect((await ada.record(entry))?.seed).toSatisfy((seed: number) => seed === 1 || seed === 2);
    for (const { id, digest } of ada.entries) expect((await ada.record(id))?.digest).toBe(digest);
    expect(book.people.get('cleo')!.entries[0]).toMatchObject({ atMs: 77, imported: true });
  });
  it('more files later: what was read before stays, and a run that was read is not counted twice', async () => {
    const first = await readClass(NOBODY, [await logbook('ada', [1, 2], 1)], reading());
    const both = await readClass(first, [await logbook('ada', [2, 3], 1), record(flown(1))], reading());
    expect(names(first)).toEqual([['ada', 2]]);
    expect([names(both), both.runs, both.twice]).toEqual([[['ada', 3]], 3, 2]);
    const ada = both.people.get('ada')!;
    expect(ada.attempts).toHaveLength(1); // the flight of a set stands in both files
    for (const { id, digest } of ada.entries) expect((await ada.record(id))?.digest).toBe(digest);
  });
});

describe('refused, and the rest is taken', () => {
  it('altered runs by file and line, files that are none, and a later format', async () => {
    const altered = { ...flown(1), outcome: 'held' as const };
    const { gzipSync } = await import('node:zlib');
    const later = file(gzipSync('{"evenhandLogbook":9,"app":"x","runs":0}\n'), 'later.gz');
    const lines = file(gzipSync(`{"evenhandLogbook":1,"app":"x","runs":2}\n${JSON.stringify({ person: 'dan', atMs: 1, attempt: null, drill: 1, record: altered })}\n{"no":1}\n${JSON.stringify({ person: 'dan', atMs: 1, attempt: null, drill: 1, record: flown(9) })}\n`), 'dan.gz');
    const book = await readClass(NOBODY, [record(altered, 'altered.json'), file('hello', 'note.json'), later, lines, file(gzipSync('no head\n'), 'odd.gz')], reading());
    expect(names(book)).toEqual([['dan', 1]]);
    expect(book.refused.map(({ file: name, line }) => [name, line])).toEqual([['altered.json', null], ['note.json', null], ['later.gz', null], ['dan.gz', 2], ['dan.gz', 3], ['odd.gz', null]]);
    expect(book.refused[0]!.why).toMatch(/^digest: found /);
    expect(book.refused[3]!.why).toContain('does not follow from its inputs');
  });
  it('a run of another model version is taken, and said to be not proved', async () => {
    const { format: _format, digest: _digest, ...run } = flown(1);
    const book = await readClass(NOBODY, [record(composeRecord({ ...run, model: run.model + 1 }))], reading());
    expect([book.runs, book.unproved, book.refused]).toEqual([1, 1, []]);
  });
  it('stopped: what was read so far is given', async () => {
    let calls = 0;
    const book = await readClass(NOBODY, [await logbook('ada', [1, 2, 3])], reading({ stop: () => (calls += 1) >= 2 }));
    expect([book.runs, book.stopped]).toEqual([2, true]);
  });
});
