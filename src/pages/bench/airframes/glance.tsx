/** Two airframes side by side in the figures that matter on the standby drive; one alone where none is compared. */
import type { Airframe } from '../../../../sim/files/index.js';
import type { AirframeFigures } from '../../../../sim/index.js';

export interface Glanced {
  readonly airframe: Airframe;
  readonly figures: AirframeFigures;
}

const at = <T,>(all: readonly T[], find: (one: T) => boolean): T | undefined => all.find(find);

/** Each figure with its words. */
const ROWS: readonly (readonly [name: string, of: (one: Glanced) => string])[] = [
  ['take-off, landing, empty mass', ({ airframe: { mass } }) => `${mass.takeOffT}, ${mass.landingT}, ${mass.emptyT} t`],
  ['wing area, span', ({ airframe: { wing } }) => `${wing.areaM2} m², ${wing.spanM} m`],
  ['settings', ({ airframe: { settings } }) => settings.map(({ name }) => name).join(', ')],
  ['landing setting on the standby drive', ({ airframe: { landingDeg } }) => `${landingDeg}°`],
  ['its reference speed', ({ airframe: { landingDeg }, figures: { speeds } }) => `${at(speeds.settings, ({ settingDeg }) => settingDeg === landingDeg)?.referenceKt.toFixed(0) ?? '–'} kt`],
  ['switch out, in', ({ airframe: { drive } }) => `${drive.extendSwitch}, ${drive.retractSwitch}`],
  ['drive without load', ({ airframe: { drive } }) => `${drive.noLoadRateDegPerS} deg/s`],
  ['flaps up to landing setting', ({ figures: { drive } }) => spanOf(drive.map(({ toLandingS }) => toLandingS))],
  ['one degree after a side stops', ({ figures: { splits } }) => spanOf(splits.map(({ stopsDegPerS }) => (stopsDegPerS === 0 ? null : 1 / stopsDegPerS)))],
  ['motor, from cold to the cut-out', ({ airframe: { heat } }) => `${heat.ratedS} s at ${heat.ratedTorqueNm} N m`],
  ['placard', ({ airframe: { heat } }) => heat.placard],
  ['standby drive up to', ({ airframe: { limits } }) => `${limits.standbyDriveKt} kt`],
  ['growth that counts as late', ({ airframe: { recognition } }) => `${recognition.limitDeg}°`],
];

/** From the least to the most of a column. */
function spanOf(values: readonly (number | null)[]): string {
  const known = values.filter((value) => value !== null);
  if (known.length === 0) return 'trips';
  const [low, high] = [Math.min(...known), Math.max(...known)];
  return `${low.toFixed(1)} to ${high.toFixed(1)} s`;
}

export function Glance({ main, other }: { main: Glanced; other: Glanced | null }) {
  const all = other === null ? [main] : [main, other];
  return (
    <table class="glance">
      <thead><tr><td />{all.map(({ airframe }, index) => <th key={index} scope="col">{airframe.title}</th>)}</tr></thead>
      <tbody>{ROWS.map(([name, of]) => <tr key={name}><th scope="row">{name}</th>{all.map((one, index) => <td key={index}>{of(one)}</td>)}</tr>)}</tbody>
    </table>
  );
}
