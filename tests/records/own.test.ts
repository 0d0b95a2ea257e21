// A person's own files: they come back as written, in order, and what was taken off can be put back until it is swept away.
import 'fake-indexeddb/auto';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { LogbookTrouble } from '../../src/records/logbook/index.js';
import { copyName, LONGEST_NAME, nameIn, openOwnStore, ownShelfOn, type OwnFile } from '../../src/records/own/index.js';

let stores = 0;
const empty = async (name = `own ${stores += 1}`) => ownShelfOn(await openOwnStore(name));
const file = (id: string, more: Partial<OwnFile> = {}): OwnFile => ({ id, kind: 'scenario', name: `file ${id}`, text: `{ "of": "${id}" }`, changedMs: 1000, ...more });

describe('the shelf of own files', () => {
  it('gives a file back to the letter, over closing and opening', async () => {
    const shelf = await empty('kept');
    const text = '// a comment\r\n{ "format": 1,\t"title": "16° – ünder" }';
    await shelf.keep(file('a', { text, kind: 'trainee' }));
    shelf.close();
    expect(await (await empty('kept')).file('a')).toEqual(file('a', { text, kind: 'trainee' }));
  });
  it('lists without texts, changed last first', async () => {
    const shelf = await empty();
    for (const [id, changedMs] of [['a', 5], ['b', 9], ['c', 7]] as const) await shelf.keep(file(id, { changedMs }));
    expect((await shelf.list()).map(({ id }) => id)).toEqual(['b', 'c', 'a']);
    expect(Object.keys((await shelf.list())[0]!)).not.toContain('text');
    await shelf.keep(file('a', { changedMs: 11, text: 'new' }));
    expect((await shelf.list()).map(({ id }) => id)).toEqual(['a', 'b', 'c']);
    expect((await shelf.file('a'))?.text).toBe('new');
  });
  it('renames without touching the rest, and a name is one line that is never empty', async () => {
    const shelf = await empty();
    await shelf.keep(file('a'));
    await shelf.rename('a', '  two \n words\t');
    expect(await shelf.file('a')).toEqual(file('a', { name: 'two words' }));
    await shelf.rename('nobody', 'x');
    expect(await shelf.list()).toHaveLength(1);
    expect(nameIn(' \n ')).toBe('untitled');
    fc.assert(fc.property(fc.string({ unit: 'binary' }), (typed) => {
      const name = nameIn(typed);
      expect(name.length).toBeGreaterThan(0);
      expect(name.length).toBeLessThanOrEqual(LONGEST_NAME);
      expect(name).toBe(name.trim());
    }));
  });
  it('doubles a file under a name that none has', async () => {
    const shelf = await empty();
    await shelf.keep(file('a', { name: 'x' }));
    expect(await shelf.duplicate('a', 'b', 7)).toEqual({ ...file('a', { name: 'x (copy)', changedMs: 7 }), id: 'b' });
    expect((await shelf.duplicate('a', 'c', 8))?.name).toBe('x (copy 2)');
    expect((await shelf.duplicate('b', 'd', 8))?.name).toBe('x (copy 3)');
    expect(await shelf.duplicate('nobody', 'e', 8)).toBeNull();
    expect(copyName('n'.repeat(LONGEST_NAME), new Set())).toHaveLength(LONGEST_NAME);
  });
  it('takes off, puts back, and sweeps away for good', async () => {
    const shelf = await empty();
    for (const id of ['a', 'b']) await shelf.keep(file(id));
    await shelf.remove('a', 50);
    await shelf.remove('b', 51);
    expect([await shelf.list(), await shelf.file('a'), await shelf.duplicate('a', 'z', 1)]).toEqual([[], null, null]);
    await shelf.sweepAway(51, 0);
    await shelf.putBack('a');
    await shelf.putBack('b');
    expect((await shelf.list()).map(({ id }) => id)).toEqual(['b']);
  });
  it('keeps what is flown until it is swept away', async () => {
    const shelf = await empty();
    const flight = { id: 'f', text: '{}', seed: 7, from: 'bench', atMs: 100 } as const;
    await shelf.keepFlight(flight);
    await shelf.sweepAway(0, 100);
    expect(await shelf.flight('f')).toEqual(flight);
    await shelf.sweepAway(0, 101);
    expect(await shelf.flight('f')).toBeNull();
  });
  it('tells its troubles in the words of the logbook', async () => {
    const shelf = await empty();
    shelf.close();
    await expect(shelf.list()).rejects.toBeInstanceOf(LogbookTrouble);
  });
});
