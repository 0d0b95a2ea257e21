/** A table of trials: from its text to trials, or to every problem in it. */
import type { Trial } from '../../sim/index.js';
import { type Cell, readRows } from './csv.js';
import { nearest } from './near.js';
import { placer } from './place.js';
import { type Finding, quoted, type Read, refuse } from './problem.js';
import { MOST_BYTES } from './scan.js';

/** The columns, in any order, each once. */
export const TRIAL_COLUMNS = ['id', 'rate_deg_per_s', 'onset_s', 'release_s', 'end_s', 'limit_deg'] as const;
type Column = (typeof TRIAL_COLUMNS)[number];

/** What a figure may be. Times: ten hours at most. */
const RANGES: Readonly<Record<Exclude<Column, 'id'>, { least: number; most: number; unit: string; empty: string | null }>> = {
  rate_deg_per_s: { least: 0.0001, most: 100, unit: 'deg/s', empty: 'in a quiet run' },
  onset_s: { least: 0, most: 36000, unit: 's', empty: 'for a quiet run' },
  release_s: { least: 0, most: 36000, unit: 's', empty: 'for none' },
  end_s: { least: 0.01, most: 36000, unit: 's', empty: null },
  limit_deg: { least: 0.01, most: 90, unit: 'deg', empty: null },
};
const LONGEST_ID = 64;
const NUMBER = /^-?(\d+(\.\d*)?|\.\d+)([eE][+-]?\d{1,3})?$/;

/** Reads a table of trials of one condition. `file` names it in problems. */
export function readTrials(text: string, file: string): Read<Trial[]> {
  const plain = text.startsWith('\uFEFF') ? text.slice(1) : text;
  if (plain.length > MOST_BYTES) return refuse(file, '', [finding(0, '', `more than ${MOST_BYTES} characters`, `a file of at most ${MOST_BYTES} bytes`)]);
  const read = readRows(plain);
  if (!read.ok) return refuse(file, plain, read.findings);
  const [header, ...rows] = read.rows;
  if (header === undefined) return refuse(file, plain, [finding(0, '', 'an empty file', `a header with the columns ${TRIAL_COLUMNS.join(', ')}`)]);
  const findings: Finding[] = [];
  const places = columnPlaces(header, findings);
  if (findings.length === 0 && rows.length === 0) findings.push(finding(plain.length, '', 'no trial', 'at least one row below the header'));
  if (findings.length > 0) return refuse(file, plain, findings);
  const lineOf = placer(plain);
  const trials = rows.flatMap((row) => trialOf(row, places, header.length, findings) ?? []);
  findings.push(...together(trials, (offset) => lineOf(offset).line));
  return findings.length > 0 ? refuse(file, plain, findings) : { ok: true, value: trials.map(({ trial }) => trial) };
}

const finding = (offset: number, path: string, found: string, allowed: string): Finding => ({ offset, say: () => ({ path, found, allowed }) });

/** Where each column stands. */
function columnPlaces(header: readonly Cell[], findings: Finding[]): Map<Column, number> {
  const places = new Map<Column, number>();
  header.forEach(({ text, offset }, at) => {
    const column = TRIAL_COLUMNS.find((one) => one === text);
    const near = nearest(text, TRIAL_COLUMNS);
    if (column === undefined) findings.push(finding(offset, quoted(text), 'an unknown column', near === null ? `one of the columns ${TRIAL_COLUMNS.join(', ')}` : `did you mean ${near}?`));
    else if (places.has(column)) findings.push(finding(offset, column, 'the column a second time', 'once'));
    else places.set(column, at);
  });
  for (const column of TRIAL_COLUMNS) if (!places.has(column)) findings.push(finding(0, column, 'no such column', 'each of the six columns'));
  return places;
}

interface Placed { trial: Trial; id: Cell; limit: Cell }

function trialOf(row: readonly Cell[], places: ReadonlyMap<Column, number>, count: number, findings: Finding[]): Placed | null {
  const first = row[0] as Cell;
  if (row.length !== count) {
    findings.push(finding(first.offset, '', row.length === 1 && first.text === '' ? 'an empty line' : `${row.length} ${row.length === 1 ? 'cell' : 'cells'}`, `${count} cells, as in the header`));
    return null;
  }
  const before = findings.length;
  const cell = (column: Column): Cell => row[places.get(column) as number] as Cell;
  const figure = (column: keyof typeof RANGES): number | null => figureOf(column, cell(column), findings);
  const id = cell('id');
  if (id.text === '' || id.text.length > LONGEST_ID) findings.push(finding(id.offset, 'id', id.text === '' ? 'nothing' : quoted(id.text), `a text of 1 to ${LONGEST_ID} characters`));
  const [onsetS, releaseS, endS, limitDeg] = [figure('onset_s'), figure('release_s'), figure('end_s'), figure('limit_deg')];
  // A quiet run needs no rate; one that is written there, 0 included, says nothing.
  const quiet = cell('onset_s').text === '';
  const rateDegPerS = quiet && Number(cell('rate_deg_per_s').text) === 0 ? null : figure('rate_deg_per_s');
  if (!quiet && cell('rate_deg_per_s').text === '') findings.push(finding(cell('rate_deg_per_s').offset, 'rate_deg_per_s', 'nothing', wording('rate_deg_per_s', false)));
  if (endS !== null) {
    for (const [column, value] of [['onset_s', onsetS], ['release_s', releaseS]] as const) {
      if (value !== null && value > endS) findings.push(finding(cell(column).offset, column, cell(column).text, `at most end_s (${endS})`));
    }
  }
  if (findings.length > before || endS === null || limitDeg === null) return null;
  return { trial: { rateDegPerS: quiet ? null : rateDegPerS, onsetS, releaseS, endS, limitDeg }, id, limit: cell('limit_deg') };
}

function figureOf(column: keyof typeof RANGES, { text, offset }: Cell, findings: Finding[]): number | null {
  const { least, most, empty } = RANGES[column];
  if (text === '' && empty !== null) return null;
  const value = Number(text);
  if (NUMBER.test(text) && value >= least && value <= most) return value;
  findings.push(finding(offset, column, text === '' ? 'nothing' : quoted(text), wording(column, empty !== null)));
  return null;
}

const wording = (column: keyof typeof RANGES, mayBeEmpty: boolean): string => {
  const { least, most, unit, empty } = RANGES[column];
  return `a number from ${least} to ${most} ${unit}${mayBeEmpty ? `, or nothing ${empty}` : ''}`;
};

/** What holds for the table as a whole: an id once, one limit, as different limits are different conditions. */
function together(placed: readonly Placed[], line: (offset: number) => number): Finding[] {
  const seen = new Map<string, Cell>();
  const first = placed[0];
  return placed.flatMap(({ trial, id, limit }) => {
    const before = seen.get(id.text);
    if (before === undefined) seen.set(id.text, id);
    return [
      ...(before === undefined ? [] : [finding(id.offset, 'id', quoted(id.text), `an id of its own; this one stands in line ${line(before.offset)}`)]),
      ...(first === undefined || trial.limitDeg === first.trial.limitDeg ? []
        : [finding(limit.offset, 'limit_deg', limit.text, `${first.limit.text} as in line ${line(first.limit.offset)}: trials of different limits are not one condition`)]),
    ];
  });
}
