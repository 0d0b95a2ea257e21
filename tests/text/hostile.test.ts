// No text may make the reader throw, hang, or take a part of a wrong file. On a quiet machine the slowest
// takes about a second; the limit is generous, since a busy machine is not a hang and one that goes every way takes minutes.
import fc from 'fast-check';
import { describe, expect, test, vi } from 'vitest';
import { readAirframe, readAny, readInputs, readRecord, readScenario, type Read } from '../../src/text/index.js';
import { MOST_PROBLEMS } from '../../src/text/problem.js';
import { MOST_BYTES } from '../../src/text/scan.js';
import { airframeText, drillNames, drillText, lookup } from '../files/shipped.js';
import { anyText, cut, ODD, withValue } from '../fuzz/texts.js';

const LONGEST_MS = 20_000;
vi.setConfig({ testTimeout: 60_000 });

function refused(text: string): Extract<Read<unknown>, { ok: false }> {
  const before = performance.now();
  const read = readAny(text, 'x.json', lookup);
  expect(performance.now() - before).toBeLessThan(LONGEST_MS);
  if (read.ok) throw new Error('taken');
  expect(read.problems.length).toBeGreaterThan(0);
  expect(read.problems.length).toBeLessThanOrEqual(MOST_PROBLEMS);
  for (const { line, column, path, found, allowed } of read.problems) {
    expect(line).toBeGreaterThan(0);
    expect(column).toBeGreaterThan(0);
    // One line each, and no longer than a person reads.
    expect(`${path}${found}`).not.toMatch(/\p{Cc}/u);
    expect(path.length + found.length).toBeLessThan(900);
    expect(allowed).not.toBe('');
  }
  return read;
}

const full = (unit: string, before = '', after = ''): string => before + unit.repeat(Math.floor((MOST_BYTES - before.length - after.length) / unit.length)) + after;

describe('large and odd texts are refused in time', () => {
  test.each<[string, string]>([
    ['half a million wrong acts', full('0,', '[', '0]')],
    ['as many objects', full('{},', '[', '{}]')],
    ['acts that are right but too many', full('{"atS":1,"do":"arm"},', '[', '{"atS":1,"do":"arm"}]')],
    ['a hundred thousand unknown keys', `[{"atS":1,"do":"arm"${Array.from({ length: 90_000 }, (_, at) => `,"k${at}":1`).join('')}}]`],
    ['one key over and over', full(',"atS":1', '[{"atS":1', '}]')],
    ['faults that are none', full('{"kind":"lag"},', '{"task":1,"faults":[', '0]}')],
    ['a wide trigger', full('{"after":"x"},', '{"task":1,"faults":[{"kind":"dead","name":"a","when":{"all":[', '{}]}}]}')],
    ['commands that are none', full('{"do":"arm"},', '{"digest":1,"commands":[', '{}]}')],
    ['a text as long as the file', full('a', '{"task":1,"title":"', '"}')],
    ['a key as long as the file', full('a', '{"task":1,"', '":1}')],
    ['one number', full('9')], ['backslashes', full('\\', '"')], ['quotes', full('"')], ['commas', full(',')], ['words', full('x ')], ['words on lines', full('x\n')],
    ['open lists', full('[')], ['open objects', full('{"a":')], ['crossed brackets', full('[}')], ['comments', full('/**/')], ['slashes', full('/')], ['line ends', full('\r\n')],
    ['zeros', full('\0')], ['half characters', full('\ud800', '"', '"')],
    ['too large by one byte', `"${'a'.repeat(MOST_BYTES - 1)}"`], ['twenty megabytes', 'x'.repeat(20_000_000)],
    ['depth 20,000', `${'{"all":['.repeat(10_000)}${']}'.repeat(10_000)}`],
    ['nothing', ''], ['a byte-order mark', '\uFEFF'], ['two of them', '\uFEFF\uFEFF{}'],
  ])('%s', (_, text) => { refused(text); });
});

test('a long list of problems is cut, and says how many more there are', () => {
  const keys = Array.from({ length: 500 }, (_, at) => `"k${at}": 1`).join(',\n');
  const read = refused(`{ "task": 1,\n${keys} }`);
  expect(read.problems).toHaveLength(MOST_PROBLEMS);
  const all = refused(`{ "task": 1,\n${keys.split('\n').slice(0, 100).join('\n').replace(/,$/, '')} }`);
  expect(read.more + MOST_PROBLEMS).toBe(all.problems.length + 400);
});

test('deep and wide triggers inside the cap are read', () => {
  const when = (levels: number): object => (levels === 0 ? { heldS: 1 } : { any: [when(levels - 1)] });
  const text = (levels: number) => drillText('set-16-from-4').replace(/"when": \{[^}]*\}/, `"when": ${JSON.stringify(when(levels))}`);
  expect(readScenario(text(20), 'x', lookup).ok).toBe(true);
  expect(readScenario(text(64), 'x', lookup).ok).toBe(false);
});

test('a circle of after through many names is told at once', () => {
  const faults = Array.from({ length: 16 }, (_, at) => ({ name: `n${at}`, kind: 'dead', when: { any: Array.from({ length: 8 }, (__, other) => ({ after: `n${(at + other + 1) % 16}` })) } }));
  const text = drillText('set-16-from-4').replace(/"faults": \[[\s\S]*?\}\s*\],?/, `"faults": ${JSON.stringify(faults)},`);
  expect(refused(text).problems.some(({ allowed }) => allowed.startsWith('no circle of after'))).toBe(true);
});

test('names that all refer to the eight before them are walked once each, not along every way', () => {
  const things = Array.from({ length: 40 }, (_, at) => ({
    name: `n${at}`, when: at === 0 ? { atS: 1 } : { any: Array.from({ length: Math.min(8, at) }, (__, back) => ({ after: `n${at - back - 1}` })) }, do: 'level',
  })).reverse();
  const text = drillText('set-16-from-4').replace('"faults"', `"events": ${JSON.stringify(things)}, "faults"`);
  // Too many conditions and too many names, and no circle.
  expect(refused(text).problems.map(({ allowed }) => allowed.replace(/,? not \d+$/, ''))).toEqual([
    expect.stringContaining('conditions in the triggers'), expect.stringContaining('different names behind after'),
  ]);
});

const readers = [readAny, readScenario, readAirframe, readInputs, readRecord] as ((text: string, file: string, look: typeof lookup) => Read<unknown>)[];
const always = (text: string) => { for (const read of readers) expect(typeof read(text, 'x', lookup).ok).toBe('boolean'); };

describe('any text gives an answer', () => {
  test('any text, any bytes taken for text, any JSON', () => fc.assert(fc.property(anyText, always), { numRuns: 300 }));
  test('any JSON under the keys of a scenario', () => {
    const keys = ['format', 'airframe', 'start', 'task', 'faults', 'events', 'recognition', 'procedure', 'title', 'passes', 'digest', 'drive', '__proto__'];
    fc.assert(fc.property(fc.dictionary(fc.constantFrom(...keys), fc.jsonValue({ maxDepth: 4 })), (value) => always(JSON.stringify(value))), { numRuns: 300 });
  });
});

describe('shipped files, damaged', () => {
  const text = fc.constantFrom(airframeText, ...drillNames.map(drillText));
  test('a piece cut out, doubled, moved or replaced', () => {
    fc.assert(fc.property(text, fc.nat(), fc.nat(60), fc.string({ unit: 'binary', maxLength: 8 }), fc.nat(3), (whole, at, length, put, how) => {
      always(cut(whole, at, length, put, how));
    }), { numRuns: 200 });
  }, 60_000);
  test('one value replaced by another: refused, or a file that is right', () => {
    fc.assert(fc.property(text, fc.nat(), fc.constantFrom(...ODD), (whole, at, value) => always(withValue(whole, at, () => value))), { numRuns: 250 });
  }, 60_000);
});
