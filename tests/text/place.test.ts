import fc from 'fast-check';
import { expect, test } from 'vitest';
import { placer } from '../../src/text/place.js';

test.each<[string, number, string]>([
  ['', 0, '1:1'], ['ab', 0, '1:1'], ['ab', 2, '1:3'], ['ab', 99, '1:3'], ['ab', -1, '1:1'],
  ['a\nb', 1, '1:2'], ['a\nb', 2, '2:1'], ['a\r\nb', 2, '1:3'], ['a\r\nb', 3, '2:1'], ['a\rb', 2, '2:1'], ['\n\n\n', 3, '4:1'], ['a\r\r\nb', 4, '3:1'],
  ['\u{1f600}x', 2, '1:2'], ['\u{1f600}\u{1f600}x', 4, '1:3'], ['\u00e9x', 1, '1:2'], ['\tx', 1, '1:2'], ['\ud800x', 1, '1:2'],
])('%j, offset %i: %s', (text, offset, place) => {
  const { line, column } = placer(text)(offset);
  expect(`${line}:${column}`).toBe(place);
});

test('as counted by hand: line ends before it, characters since the last of them', () => {
  fc.assert(fc.property(fc.array(fc.constantFrom('a', '\n', '\r\n', '\r', '\u{1f600}', '\t', '\u00e9')), fc.nat(40), (parts, at) => {
    // A part must not join with the next to one line end.
    fc.pre(parts.every((part, index) => part !== '\r' || !parts[index + 1]?.startsWith('\n')));
    const before = parts.slice(0, at);
    const text = parts.join('');
    const ends = before.filter((part) => /[\r\n]/.test(part)).length;
    const last = before.findLastIndex((part) => /[\r\n]/.test(part));
    expect(placer(text)(before.join('').length)).toEqual({ line: ends + 1, column: before.length - last });
  }));
});
