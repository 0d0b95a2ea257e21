/** Tables of trials: the grammar of RFC 4180, and every problem at once with its place. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { MOST_ROWS, readRows } from '../../src/text/csv.js';
import { readTrials, TRIAL_COLUMNS } from '../../src/text/index.js';

const HEAD = TRIAL_COLUMNS.join(',');
const cells = (text: string): string[][] | null => { const read = readRows(text); return read.ok ? read.rows.map((row) => row.map((cell) => cell.text)) : null; };
const said = (text: string): string[] => {
  const read = readTrials(text, 't.csv');
  return read.ok ? [] : read.problems.map(({ line, column, path, found, allowed }) => `${line}:${column} ${path} | ${found} | ${allowed}`);
};

describe('rows and cells (RFC 4180, section 2)', () => {
  it.each<[string, string, string[][]]>([
    ['line ends CR LF', 'aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n', [['aaa', 'bbb', 'ccc'], ['zzz', 'yyy', 'xxx']]],
    ['no line end behind the last', 'aaa,bbb,ccc\r\nzzz,yyy,xxx', [['aaa', 'bbb', 'ccc'], ['zzz', 'yyy', 'xxx']]],
    ['line ends LF and CR', 'a,b\nc,d\re,f', [['a', 'b'], ['c', 'd'], ['e', 'f']]],
    ['cells in quotes', '"aaa","bbb","ccc"\r\nzzz,yyy,xxx', [['aaa', 'bbb', 'ccc'], ['zzz', 'yyy', 'xxx']]],
    ['line ends and commas in quotes', '"aaa","b\r\nb,b","ccc"', [['aaa', 'b\r\nb,b', 'ccc']]],
    ['quotes doubled in quotes', '"aaa","b""bb","""",""', [['aaa', 'b"bb', '"', '']]],
    ['spaces belong to a cell', ' a , b', [[' a ', ' b']]],
    ['empty cells, the last one too', 'a,,\n,,\n', [['a', '', ''], ['', '', '']]],
    ['a comma at the very end', 'a,', [['a', '']]],
    ['empty lines at the end are no rows', 'a\n\n\n', [['a']]],
    ['an empty line inside is one', 'a\n\nb', [['a'], [''], ['b']]],
    ['nothing', '', []],
  ])('%s', (_, text, rows) => expect(cells(text)).toEqual(rows));
  it('what is written is read again, whatever stands in the cells', () => {
    fc.assert(fc.property(fc.array(fc.array(fc.string(), { minLength: 2, maxLength: 5 }), { minLength: 1, maxLength: 8 }), (rows) => {
      const text = rows.map((row) => row.map((cell) => `"${cell.replaceAll('"', '""')}"`).join(',')).join('\r\n');
      expect(cells(text)).toEqual(rows);
    }));
  });
  it('no text makes it throw, and none hangs', () => {
    fc.assert(fc.property(fc.string({ unit: fc.constantFrom('"', ',', '\n', '\r', 'a', '1'), maxLength: 60 }), (text) => { readTrials(text, 't.csv'); readTrials(`${HEAD}\n${text}`, 't.csv'); }), { numRuns: 2000 });
  });
});

describe('problems', () => {
  it.each<[string, string, string[]]>([
    ['an empty file', '', [`1:1  | an empty file | a header with the columns ${TRIAL_COLUMNS.join(', ')}`]],
    ['a header alone', `${HEAD}\n`, ['2:1  | no trial | at least one row below the header']],
    ['a column that is mistyped', `${HEAD.replace('onset_s', 'onset')}\n1,1,1,2,60,3`, ['1:1 onset_s | no such column | each of the six columns', '1:19 "onset" | an unknown column | did you mean onset_s?']],
    ['a column twice', `${HEAD},id\n1,1,1,2,60,3,1`, ['1:53 id | the column a second time | once']],
    ['a quote inside, and one never closed', `${HEAD}\n1"2,1,1,2,60,3\n"3,1,1,2,60,3`, [
      '2:2  | a double quote inside "1\\"2" | a cell in double quotes from its first character, quotes inside it doubled', '3:1  | a double quote that is never closed | a closing double quote']],
    ['text behind a closing quote', `${HEAD}\n"1"x,1,1,2,60,3`, ['2:4  | "x" | a comma or the end of the line behind a closing double quote']],
    ['too few cells, an empty line, too many', `${HEAD}\n1,1,1,2,60\n\n2,1,1,2,60,3,4`, ['2:1  | 5 cells | 6 cells, as in the header', '3:1  | an empty line | 6 cells, as in the header', '4:1  | 7 cells | 6 cells, as in the header']],
    ['figures that are none, all in one row', `${HEAD}\n,fast,-1,1e9,,0`, [
      '2:1 id | nothing | a text of 1 to 64 characters', '2:2 rate_deg_per_s | "fast" | a number from 0.0001 to 100 deg/s, or nothing in a quiet run', '2:7 onset_s | "-1" | a number from 0 to 36000 s, or nothing for a quiet run',
      '2:10 release_s | "1e9" | a number from 0 to 36000 s, or nothing for none', '2:14 end_s | nothing | a number from 0.01 to 36000 s', '2:15 limit_deg | "0" | a number from 0.01 to 90 deg']],
    ['no rate with an onset', `${HEAD}\n1,,1,2,60,3\n2,0,1,2,60,3`, ['2:3 rate_deg_per_s | nothing | a number from 0.0001 to 100 deg/s', '3:3 rate_deg_per_s | "0" | a number from 0.0001 to 100 deg/s, or nothing in a quiet run']],
    ['behind the end', `${HEAD}\n1,1,61,62,60,3`, ['2:5 onset_s | 61 | at most end_s (60)', '2:8 release_s | 62 | at most end_s (60)']],
    ['an id twice', `${HEAD}\na,1,1,2,60,3\nb,1,1,2,60,3\na,1,1,2,60,3`, ['4:1 id | "a" | an id of its own; this one stands in line 2']],
    ['two limits', `${HEAD}\n1,1,1,2,60,3\n2,1,1,2,60,2.5`, ['3:12 limit_deg | 2.5 | 3 as in line 2: trials of different limits are not one condition']],
    ['spaces and words for figures', `${HEAD}\n1, 1,NaN,Infinity,0x10,3`, [
      '2:3 rate_deg_per_s | " 1" | a number from 0.0001 to 100 deg/s, or nothing in a quiet run', '2:6 onset_s | "NaN" | a number from 0 to 36000 s, or nothing for a quiet run',
      '2:10 release_s | "Infinity" | a number from 0 to 36000 s, or nothing for none', '2:19 end_s | "0x10" | a number from 0.01 to 36000 s']],
  ])('%s', (_, text, problems) => expect(said(text)).toEqual(problems));
  it('too many rows', () => {
    const rows = (count: number) => `${HEAD}\n${Array.from({ length: count }, (_, n) => `${n},,,,60,3`).join('\n')}\n`;
    expect(said(rows(MOST_ROWS - 1))).toEqual([]);
    expect(said(rows(MOST_ROWS))).toEqual([expect.stringContaining('more than 2000 rows below the header | at most 2000')]);
  });
  it('too large a text is not read at all', () => expect(said('x'.repeat(1_048_577))).toEqual([expect.stringContaining('more than 1048576 characters')]));
});

describe('trials', () => {
  it('columns in any order, a byte-order mark, quoted figures, a quiet run with a rate of nothing, 0 or any', () => {
    const read = readTrials('\uFEFFlimit_deg,end_s,id,rate_deg_per_s,release_s,onset_s\n3,60,"a, b",".5",2,1\n3,60,c,,,\n3,60,d,0,41,\n3,60,e,2,,\n', 't.csv');
    const quiet = { rateDegPerS: null, onsetS: null, releaseS: null, endS: 60, limitDeg: 3 };
    expect(read).toEqual({ ok: true, value: [{ rateDegPerS: 0.5, onsetS: 1, releaseS: 2, endS: 60, limitDeg: 3 }, quiet, { ...quiet, releaseS: 41 }, quiet] });
  });
});
