import { createHash } from 'node:crypto';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { canonical, digestOf, sha256Hex } from '../../sim/files/index.js';

const double = (hex: string): number => Buffer.from(hex, 'hex').readDoubleBE();

describe('canonical JSON', () => {
  // RFC 8785, Appendix B: bits of a double, and how it is written.
  test.each([
    ['0000000000000000', '0'], ['8000000000000000', '0'], ['0000000000000001', '5e-324'], ['8000000000000001', '-5e-324'],
    ['7fefffffffffffff', '1.7976931348623157e+308'], ['ffefffffffffffff', '-1.7976931348623157e+308'],
    ['4340000000000000', '9007199254740992'], ['c340000000000000', '-9007199254740992'], ['4430000000000000', '295147905179352830000'],
    ['44b52d02c7e14af5', '9.999999999999997e+22'], ['44b52d02c7e14af6', '1e+23'], ['44b52d02c7e14af7', '1.0000000000000001e+23'],
    ['444b1ae4d6e2ef4e', '999999999999999700000'], ['444b1ae4d6e2ef4f', '999999999999999900000'], ['444b1ae4d6e2ef50', '1e+21'],
    ['3eb0c6f7a0b5ed8c', '9.999999999999997e-7'], ['3eb0c6f7a0b5ed8d', '0.000001'], ['41b3de4355555553', '333333333.3333332'],
    ['41b3de4355555554', '333333333.33333325'], ['41b3de4355555555', '333333333.3333333'], ['41b3de4355555556', '333333333.3333334'],
    ['41b3de4355555557', '333333333.33333343'], ['becbf647612f3696', '-0.0000033333333333333333'], ['43143ff3c1cb0959', '1424953923781206.2'],
  ])('the number %s is %s', (hex, text) => expect(canonical(double(hex))).toBe(text));

  test.each([['7fffffffffffffff'], ['7ff0000000000000'], ['fff0000000000000']])('the number %s is refused (RFC 8785, Appendix B)', (hex) =>
    expect(() => canonical(double(hex))).toThrow(TypeError));

  test('the sample of RFC 8785, 3.2.2 to 3.2.4, to the last byte', () => {
    const sample = '{"numbers": [333333333.33333329, 1E30, 4.50, 2e-3, 0.000000000000000000000000001],'
      + ' "string": "\\u20ac$\\u000F\\u000aA\'\\u0042\\u0022\\u005c\\\\\\"\\/", "literals": [null, true, false]}';
    const bytes = '7b226c69746572616c73223a5b6e756c6c2c747275652c66616c73655d2c226e756d62657273223a5b3333333333333333332e333333333333332c'
      + '31652b33302c342e352c302e3030322c31652d32375d2c22737472696e67223a22e282ac245c75303030665c6e4127425c225c5c5c5c5c222f227d';
    expect(Buffer.from(canonical(JSON.parse(sample)), 'utf8').toString('hex')).toBe(bytes);
  });

  test('keys in the order of RFC 8785, 3.2.3: by UTF-16 units', () => {
    const value = { '\u20ac': 'Euro Sign', '\r': 'Carriage Return', '\ufb33': 'Hebrew Letter Dalet With Dagesh', '1': 'One',
      '\u{1f600}': 'Emoji: Grinning Face', '\u0080': 'Control', '\u00f6': 'Latin Small Letter O With Diaeresis' };
    expect(Object.values(JSON.parse(canonical(value)) as object)).toEqual(['One', 'Carriage Return', 'Control',
      'Latin Small Letter O With Diaeresis', 'Euro Sign', 'Emoji: Grinning Face', 'Hebrew Letter Dalet With Dagesh']);
    const order = ['Carriage Return', 'One', 'Control', 'Latin Small', 'Euro', 'Emoji', 'Hebrew'].map((word) => canonical(value).indexOf(word));
    expect(order).toEqual([...order].sort((a, b) => a - b));
  });

  test.each([['half a pair in a text', '\ud800'], ['half a pair in a key', { '\udc00': 1 }], ['undefined in a list', [undefined]], ['a function', () => 1],
    ['a big whole number', 1n], ['a date', new Date(0)], ['a map', new Map()]])('%s is refused', (_, value) => expect(() => canonical(value)).toThrow(TypeError));

  test('one text for one value, whatever the order of keys; JSON reads it back', () => {
    fc.assert(fc.property(fc.json(), (json) => {
      const value: unknown = JSON.parse(json);
      fc.pre(!/\p{Surrogate}/u.test(JSON.stringify(value)) && !json.includes('\\ud'));
      const turned = JSON.parse(json, (_key, inner: unknown) =>
        (inner !== null && typeof inner === 'object' && !Array.isArray(inner) ? Object.fromEntries(Object.entries(inner).reverse()) : inner)) as unknown;
      expect(canonical(turned)).toBe(canonical(value));
      expect(JSON.parse(canonical(value))).toEqual(JSON.parse(JSON.stringify(value)));
    }));
  });
});

describe('SHA-256', () => {
  // FIPS 180-4 examples (NIST, "Examples with Intermediate Values", SHA-256), and its long message of a million letters.
  test.each([
    ['', 'e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855'],
    ['abc', 'ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad'],
    ['abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq', '248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1'],
    ['a'.repeat(1_000_000), 'cdc76e5c9914fb9281a1c7e284d73e67f1809a48a497200e046d39ccc7112cd0'],
  ])('of a text', (text, digest) => expect(sha256Hex(text)).toBe(digest));

  test('as Node computes it, for any text', () => {
    fc.assert(fc.property(fc.string({ unit: 'binary' }), (text) => {
      expect(sha256Hex(text)).toBe(createHash('sha256').update(text, 'utf8').digest('hex'));
    }));
  });
});

test('the digest leaves itself out, and nothing else', () => {
  const record = { b: 1, a: { c: [1, 2] } };
  expect(digestOf({ ...record, digest: 'x' })).toBe(createHash('sha256').update('{"a":{"c":[1,2]},"b":1}').digest('hex'));
  expect(digestOf({ ...record, digest: 'y' })).toBe(digestOf(record));
  expect(digestOf({ ...record, b: 2 })).not.toBe(digestOf(record));
  expect(() => digestOf({ b: NaN })).toThrow(TypeError);
});
