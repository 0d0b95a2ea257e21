// Tables as text: whatever stands in a cell, the reader of tables gives it back (RFC 4180, sections 2.5 to 2.7).
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { readRows } from '../../src/text/csv.js';
import { figure, tableText } from '../../src/text/table.js';

test('by hand: quotes, commas and line ends inside a cell; every line ended', () => {
  expect(tableText([['a', 'b c'], ['1,5', 'say "go"'], ['two\nlines', '']])).toBe('a,b c\r\n"1,5","say ""go"""\r\n"two\nlines",\r\n');
});

test('what is written is read back', () => {
  const table = fc.integer({ min: 2, max: 5 }).chain((width) => fc.array(fc.array(fc.string({ maxLength: 8 }), { minLength: width, maxLength: width }), { minLength: 1, maxLength: 6 }));
  fc.assert(fc.property(table, (rows) => {
    const read = readRows(tableText(rows));
    expect(read.ok && read.rows.map((row) => row.map(({ text }) => text))).toEqual(rows);
  }));
});

test('figures: no more decimals than asked for, none that say nothing, and nothing for what is not there', () => {
  expect([figure(1.23456, 2), figure(1.5, 4), figure(-0.00001, 3), figure(300, 1), figure(null, 2)]).toEqual(['1.23', '1.5', '0', '300', '']);
});
