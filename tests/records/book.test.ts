/** The logbook: kept runs come back, in order, by person and outcome, and what is taken off can be put back until it is swept away. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bookOn, EVERY_RUN, LogbookTrouble, openStore, troubleOf } from '../../src/records/logbook/index.js';
import { about, emptyBook, flown } from './made.js';

const run = flown(1);

describe('keeping', () => {
  it('gives back the very record, and a newer one under the same id in its place', async () => {
    const book = await emptyBook();
    const entry = await book.keep(run, about('a'));
    expect(entry).toMatchObject({ id: 'a', digest: run.digest, task: 'Flaps from 4 to 16', outcome: 'caught' });
    expect(await book.record('a')).toEqual(run);
    const said = { ...run, assessment: { split: 'yes' as const, growthDeg: 1 }, digest: 'f'.repeat(64) };
    await book.keep(said, about('a'));
    expect(await book.record('a')).toEqual(said);
    expect(await book.count()).toBe(1);
    expect([await book.idOf(run.digest), await book.idOf('f'.repeat(64))]).toEqual([null, 'a']);
  });
  it('keeps over closing and opening', async () => {
    const book = await emptyBook('kept');
    await book.keep(run, about('a'));
    await book.addPerson('ada', 1);
    await book.noteExport(77);
    book.close();
    const again = bookOn(await openStore('kept'));
    expect(await again.record('a')).toEqual(run);
    expect([await again.people(), await again.lastExportMs()]).toEqual([['ada'], 77]);
  });
});

describe('listing', () => {
  it('newest first, page after page, nothing twice and nothing left out, whatever the filter', async () => {
    const outcomes = ['caught', 'late', 'held'] as const;
    const some = fc.record({ atMs: fc.integer({ min: 0, max: 5 }), person: fc.constantFrom('ada', 'bo'), outcome: fc.constantFrom(...outcomes), of: fc.constantFrom<number | 'sets' | 'other'>(3, 4, 'sets', 'other'), removed: fc.boolean() });
    await fc.assert(fc.asyncProperty(
      fc.array(some, { maxLength: 25 }), fc.constantFrom(null, 'ada', 'bo', 'cy'), fc.constantFrom(null, ...outcomes), fc.constantFrom(null, 3, 5, 'sets' as const, 'other' as const), fc.integer({ min: 1, max: 7 }),
      async (runs, person, outcome, of, most) => {
        const book = await emptyBook();
        for (const [at, one] of runs.entries()) await book.keep({ ...run, outcome: one.outcome }, about(`id ${String.fromCharCode(97 + at)}`, { person: one.person, atMs: one.atMs, drill: typeof one.of === 'number' ? one.of : null, attempt: one.of === 'sets' ? 'a set' : null }));
        await book.remove(runs.flatMap((one, at) => (one.removed ? [`id ${String.fromCharCode(97 + at)}`] : [])), 1);
        const seen: { atMs: number; id: string }[] = [];
        for (let after: { atMs: number; id: string } | null = null, pages = 0; pages < 60; pages += 1) {
          const page = await book.list({ person, outcome, of }, after, most);
          expect(page.entries.length).toBeLessThanOrEqual(most);
          seen.push(...page.entries);
          after = page.next;
          if (after === null) break;
        }
        const wanted = runs.filter((one) => !one.removed && (person === null || one.person === person) && (outcome === null || one.outcome === outcome) && (of === null || one.of === of)).length;
        expect(new Set(seen.map(({ id }) => id)).size).toBe(wanted);
        expect(seen).toHaveLength(wanted);
        expect(seen.map(({ atMs }) => atMs)).toEqual(seen.map(({ atMs }) => atMs).sort((a, b) => b - a));
      },
    ), { numRuns: 40 });
  });
});

describe('a drill flown once in a long book', () => {
  it('is found behind more runs than are read at a time', async () => {
    const book = await emptyBook();
    await book.keep(run, about('first', { atMs: 0, drill: 7 }));
    for (let at = 1; at <= 1100; at += 1) await book.keep(run, about(`run ${at}`, { atMs: at }));
    const page = await book.list({ ...EVERY_RUN, of: 7 }, null);
    expect([page.entries.map(({ id }) => id), page.next]).toEqual([['first'], null]);
    const others = await book.list({ ...EVERY_RUN, of: 7 }, { atMs: 1050, id: 'run 1050' });
    expect(others.entries.map(({ id }) => id)).toEqual(['first']);
  });
});

describe('taking off', () => {
  it('is undone by putting back, and final once swept away', async () => {
    const book = await emptyBook();
    await book.keep(run, about('a'));
    await book.keep(flown(2), about('b', { atMs: 2000 }));
    await book.remove(['a', 'b'], 500);
    expect([await book.count(), (await book.list(EVERY_RUN, null)).entries, await book.idOf(run.digest)]).toEqual([0, [], null]);
    await book.putBack(['a']);
    expect((await book.list(EVERY_RUN, null)).entries.map(({ id, removedMs }) => [id, removedMs])).toEqual([['a', null]]);
    expect(await book.sweepAway(500)).toBe(0);
    expect(await book.sweepAway(501)).toBe(1);
    expect([await book.record('a'), await book.record('b')]).toEqual([run, null]);
    await book.putBack(['b']);
    expect(await book.count()).toBe(1);
  });
});

describe('trouble', () => {
  it.each([['QuotaExceededError', 'full'], ['VersionError', 'newer'], ['InvalidStateError', 'closed'], ['SecurityError', 'denied'], ['UnknownError', 'denied']])('%s is %s', (name, trouble) => {
    expect(troubleOf(Object.assign(new Error('x'), { name })).trouble).toBe(trouble);
  });
  it('is all that a closed book throws', async () => {
    const book = await emptyBook();
    book.close();
    await expect(book.keep(run, about('a'))).rejects.toMatchObject({ trouble: 'closed' });
    await expect(book.list(EVERY_RUN, null)).rejects.toBeInstanceOf(LogbookTrouble);
  });
  it('a store of a later version is not touched', async () => {
    const opening = indexedDB.open('later', 99);
    await new Promise((done) => { opening.onsuccess = done; });
    opening.result.close();
    await expect(openStore('later')).rejects.toMatchObject({ trouble: 'newer' });
  });
});
