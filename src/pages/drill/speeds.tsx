/** Speeds of every setting at the weight: figures, and the range between lowest to fly and never more, drawn on one scale. */
import type { Speeds as Sums } from '../../../sim/index.js';
import { at, type Scale } from '../../charts/plot.js';

interface Props {
  readonly speeds: Sums;
  /** Speed at the start, kt. */
  readonly startKt: number;
  /** Settings from the start on, deg. */
  readonly way: readonly number[];
}

const WIDTH = 150;

export function SpeedTable({ speeds, startKt, way }: Props) {
  const { settings, massT, ice, iceKt, referenceFactor } = speeds;
  const known = [startKt, ...settings.flatMap(({ manoeuvreKt, referenceKt, limitKt }) => [manoeuvreKt, referenceKt, limitKt ?? manoeuvreKt])];
  const scale: Scale = { from: Math.min(...known) - 4, to: Math.max(...known) + 4, start: 0, end: WIDTH };
  return (
    <section class="speeds" aria-labelledby="speeds-title">
      <h2 id="speeds-title" class="ruled">Speeds at {massT} t{ice ? `, with ${iceKt} kt for ice` : ', no ice'}</h2>
      <table>
        <thead>
          <tr>
            <th scope="col">flaps</th><th scope="col">reference</th><th scope="col">manoeuvre</th><th scope="col">limit</th>
            <td class="range"><svg viewBox={`0 0 ${WIDTH} 18`} width={WIDTH} height="18" aria-hidden="true"><text x={at(scale, startKt)} y="13" text-anchor={startKt > (scale.from + scale.to) / 2 ? 'end' : 'start'}>start {startKt}</text></svg></td>
          </tr>
        </thead>
        <tbody>
          {settings.map((one) => (
            <tr key={one.settingDeg} class={way.slice(1).includes(one.settingDeg) ? 'asked' : undefined}>
              <th scope="row">{one.name}{mark(one.settingDeg, way)}</th>
              <td>{Math.round(one.referenceKt)}</td>
              <td>{Math.round(one.manoeuvreKt)}</td>
              <td>{one.limitKt ?? 'none'}</td>
              <td class="range"><Range scale={scale} startKt={startKt} {...one} /></td>
            </tr>
          ))}
        </tbody>
      </table>
      <p class="small">Knots, calibrated. Manoeuvre: the least to fly a setting at. Reference: {referenceFactor} × its stall speed{ice ? ' and ice' : ''}. Limit: never more.</p>
    </section>
  );
}

function mark(deg: number, way: readonly number[]) {
  const word = way.slice(1).includes(deg) ? 'task' : deg === way[0] ? 'now' : null;
  return word === null ? null : <em>{word}</em>;
}

/** From manoeuvre to limit a bar; open at the top where there is no limit. */
function Range({ scale, startKt, manoeuvreKt, referenceKt, limitKt }: Sums['settings'][number] & { readonly scale: Scale; readonly startKt: number }) {
  const x = (kt: number): number => at(scale, kt);
  return (
    <svg viewBox={`0 0 ${WIDTH} 22`} width={WIDTH} height="22" aria-hidden="true">
      <line class="range-start" x1={x(startKt)} x2={x(startKt)} y1="-12" y2="34" />
      <line class="range-bar" x1={x(manoeuvreKt)} x2={limitKt === null ? WIDTH : x(limitKt)} y1="11" y2="11" />
      <line class="range-reference" x1={x(referenceKt)} x2={x(referenceKt)} y1="7" y2="15" />
      <circle class="range-low" cx={x(manoeuvreKt)} cy="11" r="3.6" />
      {limitKt !== null && <line class="range-limit" x1={x(limitKt)} x2={x(limitKt)} y1="4" y2="18" />}
    </svg>
  );
}
