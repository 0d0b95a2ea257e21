/** A text as rows of cells with their places: RFC 4180, line ends CR LF, LF or a lone CR, the last one optional. Never throws. */
import { type Finding, quoted } from './problem.js';

export interface Cell {
  readonly text: string;
  /** Offset in the text, UTF-16 units. */
  readonly offset: number;
}

export type Rows = { ok: true; rows: Cell[][] } | { ok: false; findings: Finding[] };

/** Most rows read, the header included: no table of trials has more, and each is fitted. */
export const MOST_ROWS = 2001;

const says = (offset: number, found: string, allowed: string): Finding => ({ offset, say: () => ({ path: '', found, allowed }) });

/** Reads the grammar: every slip is told. Empty lines at the end are no rows. */
export function readRows(text: string): Rows {
  const findings: Finding[] = [];
  const rows: Cell[][] = [];
  let row: Cell[] = [];
  let at = 0;
  while (at < text.length) {
    const { cell, end } = text[at] === '"' ? quotedCell(text, at, findings) : plainCell(text, at, findings);
    row.push(cell);
    at = end;
    const comma = text[at] === ',';
    if (comma) {
      at += 1;
      if (at < text.length) continue;
      row.push({ text: '', offset: at });
    }
    at += !comma && text.startsWith('\r\n', at) ? 2 : comma ? 0 : 1;
    rows.push(row);
    row = [];
  }
  while (rows.length > 0 && isEmpty(rows.at(-1) as Cell[])) rows.pop();
  const over = rows[MOST_ROWS]?.[0];
  if (over !== undefined) return { ok: false, findings: [says(over.offset, `more than ${MOST_ROWS - 1} rows below the header`, `at most ${MOST_ROWS - 1}`)] };
  return findings.length === 0 ? { ok: true, rows } : { ok: false, findings };
}

const isEmpty = (row: readonly Cell[]): boolean => row.length === 1 && row[0]?.text === '';

function plainCell(text: string, from: number, findings: Finding[]): { cell: Cell; end: number } {
  let end = from;
  while (end < text.length && !',\r\n'.includes(text[end] as string)) end += 1;
  const cell = { text: text.slice(from, end), offset: from };
  const mark = cell.text.indexOf('"');
  if (mark >= 0) findings.push(says(from + mark, `a double quote inside ${quoted(cell.text)}`, 'a cell in double quotes from its first character, quotes inside it doubled'));
  return { cell, end };
}

function quotedCell(text: string, from: number, findings: Finding[]): { cell: Cell; end: number } {
  let at = from + 1;
  for (;;) {
    const mark = text.indexOf('"', at);
    if (mark < 0) {
      findings.push(says(from, 'a double quote that is never closed', 'a closing double quote'));
      return { cell: { text: text.slice(from + 1), offset: from }, end: text.length };
    }
    at = mark + 1;
    if (text[at] !== '"') break;
    at += 1;
  }
  const cell = { text: text.slice(from + 1, at - 1).replaceAll('""', '"'), offset: from };
  const { cell: behind, end } = plainCell(text, at, []);
  if (behind.text !== '') findings.push(says(at, quoted(behind.text), 'a comma or the end of the line behind a closing double quote'));
  return { cell, end };
}
