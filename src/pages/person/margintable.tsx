/** The sums behind the picture of the margin, row by row. */
import type { MarginRow, Released, RoomPoint } from '../../../sim/index.js';
import { degrees, percent } from '../words.js';

export const FAULT_NAMES: Readonly<Record<MarginRow['fault'], string>> = {
  disconnect: 'One side stops', lag: 'One side lags', jam: 'Jams, then shears', slip: 'Slips now and again', blowback: 'Is blown back',
};
export const BASIS_WORDS: Readonly<Record<MarginRow['basis'], string>> = { flown: 'flown', between: 'expected', beyond: 'expected, beyond what was flown' };

const at = (point: RoomPoint | null | undefined): string => (point === null || point === undefined ? 'not reached' : `${point.afterS.toFixed(0)} s`);
const release = (one: Released | null): string => (one === null ? 'not reached' : `${degrees(one.splitDeg)}, ${one.afterS.toFixed(1)} s, ${percent(one.usedPct)}`);

export const MarginTable = ({ rows }: { rows: readonly MarginRow[] }) => (
  <details class="rows">
    <summary>The sums as a table</summary>
    <div class="wide" tabIndex={0} role="region" aria-label="The sums of the margin">
      <table class="flights margin-sums">
        <thead><tr>{['fault', 'opens by', '20 % used', '50 %', '100 %', 'your median', 'its 95 % interval', 'nine in ten', 'at most about', 'from'].map((head) => <th key={head} scope="col">{head}</th>)}</tr></thead>
        <tbody>{rows.map(({ fault, room: { splitRateDegPerS, levels }, at: own, basis, releases }) => (
          <tr key={fault}>
            <th scope="row">{FAULT_NAMES[fault]}</th>
            <td>{splitRateDegPerS === null ? '–' : `${splitRateDegPerS.toFixed(2)}°/s`}</td>
            {levels.map((level) => <td key={level.usedPct}>{at(level.at)}</td>)}
            <td>{release(own.median)}</td><td>{own.medianLo === null || own.medianHi === null ? '–' : `${degrees(own.medianLo.splitDeg)} to ${degrees(own.medianHi.splitDeg)}`}</td>
            <td>{release(own.q90)}</td><td>{release(own.q90Hi)}</td>
            <td>{basis === 'flown' ? `${releases.length} releases` : BASIS_WORDS[basis]}</td>
          </tr>
        ))}</tbody>
      </table>
    </div>
    <p class="small">Held on: seconds from the fault until that part of the roll authority is used. Let go: split at the release, seconds from the fault, and what is used when all has settled, one second behind the release (15 s where a side is blown back). Opens by: mean over the first degree.</p>
  </details>
);
