/** The doors of logbooks: a line, a file brought to the logbook, files brought to a class. */
import { gzipSync } from 'node:zlib';
import 'fake-indexeddb/auto';
import fc from 'fast-check';
import { readClass } from '../../src/records/class.js';
import { NOBODY } from '../../src/records/nobody.js';
import { importBook } from '../../src/records/logbook/import.js';
import { attemptOf, headOf, toldOf } from '../../src/records/logbook/lines.js';
import { about, emptyBook, flown } from '../records/made.js';
import { door, type Door } from './door.js';
import { must } from './promises.js';
import { anyText, damagedFrom } from './texts.js';
import { untouched, watched } from './watched.js';

const ID = '0123456789abcdef0123456789abcdef';
const HEAD = JSON.stringify({ evenhandLogbook: 1, app: 'evenhand', runs: 2 });
const ATTEMPT = JSON.stringify({ flight: { id: ID, set: 'short', seed: 1, person: 'ada', name: 'before', startedMs: 1, runs: 4, blocks: 1, done: [{ entry: 'a', outcome: 'caught' }], leftMs: null, forecast: { caughtOf10: 8, fromDeg: 0.2, toDeg: 0.4 } } });
const RUN = (() => {
  const { id: _id, imported: _imported, ...told } = about(ID);
  return JSON.stringify({ id: ID, ...told, record: flown(1) });
})();
const LINES = [HEAD, ATTEMPT, RUN];

const line = fc.oneof({ weight: 1, arbitrary: anyText.map((text) => text.replace(/\n/g, ' ')) }, { weight: 4, arbitrary: damagedFrom(LINES) }, { weight: 2, arbitrary: fc.constantFrom(...LINES) });
/** Lines, packed; and what a disk or a mail program may do to the bytes. */
const packed = fc.record({
  lines: fc.array(line, { maxLength: 5 }), begins: fc.integer({ min: 0, max: 9 }), plain: fc.boolean(),
  cutAt: fc.option(fc.nat(3000), { nil: null, freq: 3 }), flip: fc.option(fc.nat(5000), { nil: null, freq: 4 }),
});
type Packed = typeof packed extends fc.Arbitrary<infer T> ? T : never;

function bytesOf({ lines, begins, plain, cutAt, flip }: Packed): Uint8Array<ArrayBuffer> {
  const text = [...(begins === 0 ? [] : [HEAD]), ...lines].join('\n');
  const bytes = new Uint8Array(plain && begins > 7 ? Buffer.from(text) : gzipSync(text));
  if (flip !== null && bytes.length > 0) bytes[flip % bytes.length] = (bytes[flip % bytes.length] as number) ^ 0x55;
  return cutAt === null ? bytes : bytes.slice(0, cutAt);
}

const readable = (why: string): void => must(why !== '' && why.length < 1500 && !/\p{Cc}/u.test(why), `a refusal nobody can read: ${JSON.stringify(why.slice(0, 200))}`);

async function imported(what: Packed, count: (what: string) => void): Promise<void> {
  const book = await emptyBook();
  let ids = 0;
  const told = await importBook(book, new Blob([bytesOf(what)]), { id: () => (ids += 1).toString(16).padStart(32, 'f'), progress: () => undefined, stop: () => false });
  untouched('importBook');
  if (!told.ok) return readable(told.why);
  for (const { why } of told.refused) readable(why);
  must(await book.count() === told.kept, `${told.kept} said to be kept, ${await book.count()} in the book`);
  if (told.kept > 0) count('runs taken into a book');
  await book.attempts();
}

async function shown(what: Packed): Promise<void> {
  const book = await readClass(NOBODY, [new File([bytesOf(what)], 'f.gz'), new File([what.lines.join('\n')], 'f.json')], { named: 'x', progress: () => undefined, stop: () => false });
  untouched('readClass');
  for (const { why } of book.refused) readable(why);
  must(book.runs === [...book.people.values()].reduce((sum, { entries }) => sum + entries.length, 0), 'runs of a class that are nobody’s');
}

export const bookDoors = (count: (what: string) => void): readonly Door[] => [
  door('line', 6, line, (text) => {
    watched('headOf', () => headOf(text));
    const attempt = watched('attemptOf', () => attemptOf(text));
    if (attempt !== null) must(JSON.stringify(attemptOf(JSON.stringify({ flight: attempt }))) === JSON.stringify(attempt), 'a flight read as another');
    watched('toldOf', () => toldOf(text));
  }),
  door('logbook', 3, packed, (what) => imported(what, count)),
  door('class', 3, packed, shown),
];
