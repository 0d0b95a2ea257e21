/** The tables of the workshop: drive, sides that part, horn, speeds. */
import type { Airframe } from '../../../../sim/files/index.js';
import type { AirframeFigures } from '../../../../sim/index.js';

interface Props {
  readonly airframe: Airframe;
  readonly figures: AirframeFigures;
}

const kt = (value: number): string => value.toFixed(0);
const rate = (value: number): string => (value === 0 ? 'trips' : value.toFixed(value < 1 ? 3 : 2));

/** A table that scrolls by itself where it is too wide. */
function Wide({ name, head, rows }: { name: string; head: readonly string[]; rows: readonly (readonly string[])[] }) {
  return (
    <div class="wide" tabIndex={0} role="region" aria-label={name}>
      <table>
        <thead><tr>{head.map((word) => <th key={word} scope="col">{word}</th>)}</tr></thead>
        <tbody>{rows.map(([first, ...rest], index) => <tr key={index}><th scope="row">{first}</th>{rest.map((cell, at) => <td key={at}>{cell}</td>)}</tr>)}</tbody>
      </table>
    </div>
  );
}

export const DriveTable = ({ airframe: { settings, landingDeg }, figures: { drive } }: Props) => (
  <>
    <Wide
      name="Rates of the drive" head={['deg/s at', ...settings.map(({ name }) => name), `0 to ${landingDeg}`]}
      rows={drive.map(({ speedKt, ratesDegPerS, toLandingS }) => [`${speedKt} kt`, ...ratesDegPerS.map(rate), toLandingS === null ? 'trips' : `${toLandingS.toFixed(1)} s`])}
    />
    <p class="small">The time is in one piece at one speed, without steps and without starting and stopping.</p>
  </>
);

export const SplitTable = ({ airframe, figures: { splits } }: Props) => (
  <>
    <Wide
      name="How fast the sides part" head={['from', 'at', 'one stops', 'half the rate', 'driven back', 'one degree after']}
      rows={splits.map(({ settingDeg, speedKt, stopsDegPerS, halfDegPerS, backDegPerS }) => [
        airframe.settings.find(({ deg }) => deg === settingDeg)?.name ?? String(settingDeg), `${kt(speedKt)} kt`, rate(stopsDegPerS), rate(halfDegPerS), rate(backDegPerS),
        [stopsDegPerS, halfDegPerS, backDegPerS].map((one) => (one === 0 ? '–' : (1 / one).toFixed(1))).join(', ') + ' s',
      ])}
    />
    <p class="small">Degrees a second at the manoeuvre speed of the setting that is driven from; where it stands at the fault. The last column: seconds to one degree, in the same order.</p>
  </>
);

export const HornTable = ({ figures: { horn } }: Props) => (
  <>
    <Wide
      name="Angles of the gear horn" head={['flaps', 'both engines', 'one engine', 'height', 'may be silenced']}
      rows={horn.map(({ fromDeg, toDeg, bothLiveDeg, oneLiveDeg, belowFt, silenceable }) => [
        `${fromDeg === 0 ? 'up' : `over ${fromDeg}`} to ${toDeg}`, bothLiveDeg === null ? 'at any angle' : `below ${bothLiveDeg}°`, oneLiveDeg === null ? 'at any angle' : `below ${oneLiveDeg}°`,
        belowFt === null ? 'any' : `below ${belowFt} ft`, silenceable ? 'yes' : 'no',
      ])}
    />
    <p class="small">While the gear is not locked down. The angle is that of the lower lever of an engine that runs.</p>
  </>
);

export const SpeedsTable = ({ airframe, figures: { speeds } }: Props) => (
  <>
    <Wide
      name="Speeds of every setting" head={['setting', 'stall', 'warning', 'reference', 'manoeuvre', 'bank to warning', 'limit', 'room to limit']}
      rows={speeds.settings.map(({ name, stallKt, warningKt, referenceKt, manoeuvreKt, bankToWarningDeg, limitKt }) => [
        name, kt(stallKt), kt(warningKt), kt(referenceKt), kt(manoeuvreKt), `${bankToWarningDeg.toFixed(0)}°`, limitKt === null ? 'none' : String(limitKt), limitKt === null ? '–' : `${kt(limitKt - manoeuvreKt)} kt`,
      ])}
    />
    <p class="small">Knots, calibrated, {speeds.massT} t, no ice. Reference: {airframe.referenceFactor} stall speeds. Manoeuvre: {airframe.speedRule === 'factor' ? 'the setting’s factor on its stall speed' : 'the setting’s increment on the reference speed of the last setting'}. Room: from the manoeuvre speed to the limit.</p>
  </>
);
