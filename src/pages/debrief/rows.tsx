/** The figures of the charts as a table: a row a second, or a few seconds in a long run, and the last. */
import type { DebriefRow } from '../../../sim/index.js';
import { shownApart, trulyApart, type Facts } from './facts.js';
import { degrees, knots, percent, seconds } from '../words.js';

const COLUMNS: readonly (readonly [head: string, cell: (row: DebriefRow) => string])[] = [
  ['left pointer', (row) => degrees(row.leftPointerDeg)], ['right pointer', (row) => degrees(row.rightPointerDeg)], ['shown apart', (row) => degrees(shownApart(row))],
  ['left side', (row) => degrees(row.leftDeg)], ['right side', (row) => degrees(row.rightDeg)], ['truly apart', (row) => degrees(trulyApart(row))],
  ['speed', (row) => knots(row.speedKt)], ['limit', (row) => (row.limitKt === null ? 'none' : knots(row.limitKt))],
  ['lever', (row) => `${Math.round(row.tlaDeg)}°`], ['horn', (row) => (row.horn ? 'sounds' : 'silent')], ['roll authority', (row) => percent(row.rollAuthorityPct)],
];

const MOST_ROWS = 200;

export function Rows({ facts: { rows } }: { facts: Facts }) {
  const endS = rows[rows.length - 1]?.atS ?? 0;
  const step = [1, 2, 5, 10, 20, 60].find((one) => endS / one <= MOST_ROWS) ?? 60;
  const shown = rows.filter(({ atS }, index) => index === rows.length - 1 || Math.abs(atS / step - Math.round(atS / step)) < 1e-6);
  return (
    <details class="rows">
      <summary>The figures as a table</summary>
      <div class="wide" tabIndex={0} role="region" aria-label="The figures as a table">
        <table>
          <thead><tr><th scope="col">time</th>{COLUMNS.map(([head]) => <th key={head} scope="col">{head}</th>)}</tr></thead>
          <tbody>{shown.map((row) => <tr key={row.atS}><th scope="row">{seconds(row.atS)}</th>{COLUMNS.map(([head, cell]) => <td key={head}>{cell(row)}</td>)}</tr>)}</tbody>
        </table>
      </div>
    </details>
  );
}
