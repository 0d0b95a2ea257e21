/** A debrief as files for other programs: its rows as a table, its figures as data. */
import type { RunRecord } from '../../../sim/files/index.js';
import type { DebriefRow } from '../../../sim/index.js';
import { figure, tableText } from '../../text/table.js';
import type { Facts } from './facts.js';

/** Heads name the unit; decimals are those that the model's own step still tells apart on a screen. */
const COLUMNS: readonly (readonly [head: string, cell: (row: DebriefRow) => string])[] = [
  ['time (s)', ({ atS }) => figure(atS, 2)],
  ['left pointer (deg)', (row) => figure(row.leftPointerDeg, 4)], ['right pointer (deg)', (row) => figure(row.rightPointerDeg, 4)],
  ['left side (deg)', (row) => figure(row.leftDeg, 4)], ['right side (deg)', (row) => figure(row.rightDeg, 4)],
  ['drive rate (deg/s)', (row) => figure(row.rateDegPerS, 4)],
  ['speed (kt)', (row) => figure(row.speedKt, 2)], ['limit (kt)', (row) => figure(row.limitKt, 2)], ['lowest (kt)', (row) => figure(row.lowestKt, 2)],
  ['manoeuvre (kt)', (row) => figure(row.manoeuvreKt, 2)], ['selected (kt)', (row) => figure(row.selectedKt, 2)],
  ['lever angle (deg)', (row) => figure(row.tlaDeg, 2)], ['horn below (deg)', (row) => figure(row.hornTlaDeg, 2)], ['horn', (row) => (row.horn ? 'sounds' : 'silent')],
  ['leading edge', (row) => row.leadingEdge], ['gear', (row) => row.gear],
  ['height (ft)', (row) => figure(row.altitudeFt, 1)], ['bank (deg)', (row) => figure(row.bankDeg, 3)],
  ['roll authority (%)', (row) => figure(row.rollAuthorityPct, 3)], ['motor heat (1 = cut-out)', (row) => figure(row.motorHeat, 4)],
];

/** The rows of the charts, ten a second and the last. */
export const rowsText = ({ rows }: Pick<Facts, 'rows'>): string => tableText([COLUMNS.map(([head]) => head), ...rows.map((row) => COLUMNS.map(([, cell]) => cell(row)))]);

/** All that the debrief knows of the run but its rows, with the digest of the record that it follows from. */
export function figuresText({ rows: _rows, ...facts }: Facts, { digest, model, app, source, device, assessment }: RunRecord): string {
  return `${JSON.stringify({ what: 'figures of an Evenhand debrief', caution: 'practice aid on an invented airframe; earns no credit', record: { digest, model, app, source, assisted: device.assisted ?? [] }, ...facts, assessment }, null, 2)}\n`;
}

export type Kind = 'rows.csv' | 'figures.json' | 'charts.svg' | 'charts.png';

/** The run is named by its digest alone: the drill's own name would give it away. */
export const exportName = ({ digest }: Pick<RunRecord, 'digest'>, kind: Kind): string => `evenhand-run-${digest.slice(0, 8)}-${kind}`;
