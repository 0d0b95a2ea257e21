/** A run whose page went away: what was noted of it comes to a record that verifies; the note ends with the record. */
import { expect, it } from 'vitest';
import { abandonedRecord, verify, type FlownDraft } from '../../sim/files/index.js';
import { MODEL_VERSION } from '../../sim/index.js';
import { about, emptyBook, flown } from './made.js';

const { app, seed, airframe, scenario, device, gauge, clock, commands, end } = flown(4);
const setting = { app, seed, airframe, scenario, device, gauge };
const draftAt = (tick: number): FlownDraft => ({ tick, clock, commands, marks: [{ tick: 0, stampMs: 0, what: 'start' }], input: ['key', 'mouse'] });

it.each([1, 100, 1234, end.tick - 1])('noted at tick %i it is a stopped run up to there, and verifies', (tick) => {
  const record = abandonedRecord(setting, draftAt(tick));
  expect(record).toMatchObject({ end: { tick, why: 'stopped' }, outcome: 'void', source: 'flown', device: { input: 'key, mouse' } });
  expect(record !== null && verify(record)).toMatchObject({ ok: true, refused: [] });
});

it('noted before its first tick there is nothing to keep', () => expect(abandonedRecord(setting, draftAt(0))).toBe(null));

it('the note is there until the run is kept or forgotten', async () => {
  const book = await emptyBook();
  const note = { about: about('a'), model: MODEL_VERSION, setting, draft: draftAt(100), notedMs: 5 };
  await book.note(note);
  await book.note({ ...note, about: about('b') });
  expect(await book.unfinished()).toEqual([note, { ...note, about: about('b') }]);
  await book.keep(flown(4), about('a'));
  await book.forget('b');
  expect(await book.unfinished()).toEqual([]);
});
