/** What the choices come to for this window and this eye: a gauge as it will be drawn, and its figures beside the airframe's own. */
import { useSignal } from '@preact/signals';
import type { Airframe } from '../../../sim/files/index.js';
import { mmOf, visualMin } from '../../../sim/stats/visual.js';
import { layout } from '../../view/layout.js';
import { Fan, gaugeOf } from '../fan.js';
import { distanceMm, size } from './choices.js';
import { EyePlan } from './eyeplan.js';
import { pxPerMm, windowSize } from './screen.js';
import { sightOf, wishOf } from './sight.js';

/** A difference smaller than this is none, part. */
const ALIKE = 0.005;

export function ComesTo({ airframes }: { airframes: readonly Airframe[] }) {
  const chosen = useSignal(0);
  const airframe = airframes[chosen.value] ?? airframes[0];
  const scale = pxPerMm.value;
  const { width, height } = windowSize.value;
  if (airframe === undefined) return null;
  const at = layout(width, height, wishOf(size.value, scale, airframe.gauge));
  const sight = sightOf(at, airframe.gauge, size.value, scale, devicePixelRatio);
  const middle = airframe.drive.stopDeg * 0.4;
  const own = airframe.gauge.radiusMm;
  const { radiusMm, apartDeg } = sight;
  return (
    <section class="size-comes" aria-labelledby="size-comes">
      <h2 id="size-comes" class="ruled">What it comes to in this window, {width} × {height} px</h2>
      {airframes.length > 1 && (
        <div class="answers" role="group" aria-label="Airframe">
          {airframes.map(({ title, name }, index) => <label key={name} class="answer"><input type="radio" name="size-airframe" checked={chosen.value === index} onChange={() => { chosen.value = index; }} /><span>{title}</span></label>)}
        </div>
      )}
      <div class="size-pair">
        <figure>
          <Fan gauge={gaugeOf(airframe)} left={middle + 0.5} right={middle - 0.5} radius={at.gauge.radius} title={`The gauge as it will be drawn, its pointers 1 degree apart${radiusMm === undefined ? '' : `, ${radiusMm.toFixed(0)} mm long`}`} />
          <figcaption>As it will be drawn, {scale === null ? 'in a size nobody has measured' : size.value.isTrue ? 'in the size of the drill' : 'in the size of this window'}; here 1° apart.</figcaption>
        </figure>
        <div>
          <dl class="facts">
            <div><dt>Pointer of {airframe.title}</dt><dd>{own} mm</dd></div>
            <div><dt>Pointer as drawn</dt><dd>{radiusMm === undefined ? `${at.gauge.radius.toFixed(0)} px` : `${radiusMm.toFixed(1)} mm`}</dd></div>
            {scale !== null && sight.mmPerPx !== null && (
              <>
                <div><dt>1° of split at its tip</dt><dd>{(sight.pxPerDeg * sight.mmPerPx).toFixed(2)} mm</dd></div>
                <div><dt>for an eye at {distanceMm(size.value)} mm</dt><dd>{visualMin(sight.pxPerDeg * sight.mmPerPx, distanceMm(size.value)).toFixed(1)}′ of arc</dd></div>
                <div><dt>Speed to gauge</dt><dd>{apartDeg?.toFixed(0)}° at the eye</dd></div>
              </>
            )}
          </dl>
          {scale === null
            ? <p class="small">Millimetres and minutes of arc appear once the card has been laid on this screen.</p>
            : <Short own={own} drawn={radiusMm ?? own} wishDeg={size.value.apartDeg} givenDeg={apartDeg ?? 0} isTrue={size.value.isTrue} />}
          {scale !== null && apartDeg !== undefined && <EyePlan apartMm={mmOf(apartDeg, distanceMm(size.value))} distanceMm={distanceMm(size.value)} apartDeg={apartDeg} />}
        </div>
      </div>
    </section>
  );
}

/** What the window could not give, and what it gives instead. */
function Short({ own, drawn, wishDeg, givenDeg, isTrue }: { own: number; drawn: number; wishDeg: number | null; givenDeg: number; isTrue: boolean }) {
  const lacks = [
    ...(isTrue && drawn < own * (1 - ALIKE) ? [`A pointer of ${own} mm does not fit this window. The longest that does is drawn, ${drawn.toFixed(1)} mm, and the record says so. A larger window has room.`] : []),
    ...(isTrue && drawn > own * (1 + ALIKE) ? [`A pointer of ${own} mm would be too short to read on this screen. The shortest that can be read is drawn, ${drawn.toFixed(1)} mm, and the record says so.`] : []),
    ...(wishDeg !== null && Math.abs(givenDeg - wishDeg) > 0.05 ? [`Speed and gauge cannot stand ${wishDeg}° apart in this window: ${givenDeg.toFixed(1)}° is ${givenDeg < wishDeg ? 'the most' : 'the least'} it gives. ${givenDeg < wishDeg ? 'A larger window, or an eye nearer to it, gives more.' : 'A smaller window, or an eye farther off, gives less.'}`] : []),
  ];
  return lacks.length === 0 ? null : <div class="note" role="status">{lacks.map((one) => <p key={one}>{one}</p>)}</div>;
}
