// JSON's grammar (RFC 8259) with comments: held against the language's own JSON.parse, and JSONTestSuite's kinds of trouble by hand.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readTree } from '../../src/text/syntax.js';
import { DEEPEST, MOST_BYTES, scan } from '../../src/text/scan.js';
import { placer } from '../../src/text/place.js';
import { valuesOf } from '../../src/text/values.js';

const read = (text: string) => {
  const tree = readTree(text);
  if (!tree.ok) return { ok: false as const, said: tree.findings.map((finding) => ({ offset: finding.offset, ...finding.say() })) };
  return { ok: true as const, ...valuesOf(tree.root, placer(text)) };
};
const byLanguage = (text: string): { value: unknown } | null => {
  try { return { value: JSON.parse(text) as unknown }; } catch { return null; }
};

describe('the same texts are JSON as for JSON.parse, and mean the same', () => {
  const agree = (text: string) => {
    const mine = read(text);
    const theirs = byLanguage(text);
    expect(mine.ok, JSON.stringify(text)).toBe(theirs !== null);
    if (mine.ok && mine.findings.length === 0) expect(JSON.stringify(mine.value)).toBe(JSON.stringify(theirs!.value));
  };
  test('any JSON', () => fc.assert(fc.property(fc.json(), agree)));
  test('JSON with one character dropped, doubled or put in', () =>
    fc.assert(fc.property(fc.json(), fc.nat(), fc.constantFrom('', '{', '}', '[', ']', ',', ':', '"', '\\', '0', '-', '.', 'e', 'n', '\t', '\u00a0', '\u2028', '\v', '\u0000'), fc.boolean(), (json, at, put, drop) => {
      const place = at % (json.length + 1);
      agree(json.slice(0, place) + put + json.slice(place + (drop ? 1 : 0)));
    }), { numRuns: 1000 }));
  test('snippets of its signs in any order', () =>
    fc.assert(fc.property(fc.array(fc.constantFrom('{', '}', '[', ']', ',', ':', '"', '"a"', '\\', '\\u', '12', '-', '.5', '1e', 'true', 'nul', ' ', '\n')), (parts) => agree(parts.join(''))), { numRuns: 2000 }));
  test.each(['01', '-01', '1.', '.5', '+1', '1e', '1e+', 'NaN', 'Infinity', '0x1', '1_000', "'a'", '"\\x"', '"\\u12"', '"\u0001"', '"a', 'tru', '[1,]', '{"a":1,}', '[,1]', '{,}', '{a:1}', '{"a"}', '{"a":}', '[1 2]', '{"a":1 "b":2}', '1 2', '', ' ', '[', '{', '"\n"', '\u00a0 1'])(
    '%j is none', (text) => expect(read(text).ok).toBe(false));
});

test('comments may stand anywhere between tokens', () => {
  expect(read('// a [[[\n{ /* { */ "a" : /* " */ 1 // x\n }').ok).toBe(true);
  expect(read('{"a": "// no comment"}')).toMatchObject({ ok: true, value: { a: '// no comment' } });
  expect(read('{} /* open').ok).toBe(false);
});

test('a comma with nothing behind it stands at the comma, once', () => {
  const text = '{"a": [1, 2,\n ], // x\n "b": 1, /* y */ }';
  expect(read(text)).toEqual({
    ok: false, said: [text.indexOf('2,') + 1, text.lastIndexOf(',')].map((offset) => ({ offset, path: '', found: 'a comma with nothing behind it', allowed: 'no comma behind the last entry' })),
  });
});

test('one stumble a line is told', () => {
  const said = read('{"a": x y z,\n "b": q\n}');
  expect(said.ok ? [] : said.said.map(({ offset, found }) => [offset, found])).toEqual([[6, '"x"'], [19, '"q"']]);
});

test('minus zero is zero', () => expect(Object.is((read('-0') as { value: unknown }).value, 0)).toBe(true));

describe('the scan before the parser', () => {
  const deep = (levels: number, open = '[', close = ']') => open.repeat(levels) + close.repeat(levels);
  test('nesting up to the cap', () => {
    expect(read(deep(DEEPEST)).ok).toBe(true);
    expect(read(deep(DEEPEST + 1))).toMatchObject({ ok: false, said: [{ offset: DEEPEST, found: `lists and objects nested more than ${DEEPEST} deep` }] });
    expect(read(deep(20_000)).ok).toBe(false);
    expect(read(deep(20_000, '{"a":', '}')).ok).toBe(false);
  });
  test('brackets in texts, behind escapes and in comments do not count', () => {
    expect(read(`["${'['.repeat(5000)}", "\\"${'['.repeat(100)}"] /* ${'['.repeat(5000)} */ // ${'{'.repeat(100)}`).ok).toBe(true);
  });
  test('size up to the cap, in bytes of UTF-8', () => {
    const text = (bytes: number) => `"${'a'.repeat(bytes - 2)}"`;
    expect(read(text(MOST_BYTES)).ok).toBe(true);
    expect(read(text(MOST_BYTES + 1)).ok).toBe(false);
    const wide = (count: number, sign: string) => `"${sign.repeat(count)}"`;
    // Bytes by Node's own count.
    for (const sign of ['\u00e9', '\u20ac', '\u{1f600}']) {
      const most = Math.floor((MOST_BYTES - 2) / Buffer.byteLength(sign));
      expect(scan(wide(most, sign)).refused).toBe(null);
      expect(scan(wide(most + 1, sign)).refused).not.toBe(null);
    }
  });
  // What the scan lets pass, the parser (which calls itself) must survive, however wrong the brackets are.
  test('no heap of brackets gets the parser deeper than the scan allows', () => {
    for (const unit of ['[},', '{],', '{"a":[},"b":', '[}', '[]}', '{[', '{]', '[{', '[{"a":', '{"a":[}', '["', '[,', '{"a"[', '[/*', '[\\']) {
      expect(() => read(unit.repeat(20_000))).not.toThrow();
    }
    fc.assert(fc.property(fc.array(fc.constantFrom('[', '{', ']', '}', '"', ',', ':', '"a":', '{"a":', '/*', '*/', '//', '\n', '\\'), { minLength: 1, maxLength: 12 }), (parts) => {
      expect(() => read(parts.join('').repeat(3000))).not.toThrow();
    }), { numRuns: 60 });
  }, 60_000);
});
