/** What the plan is worked out from: the tables of the aeroplane at this weight and height. */
import { papersOf, type PlanRequest } from '../../../sim/index.js';

export function PapersOf({ request }: { request: PlanRequest }) {
  const { airframe, altitudeFt, divertFt, massT, icing } = request;
  const { rows, edgeOut } = papersOf(request);
  const { heat, gear, drive, horn, limits, landingDeg } = airframe;
  const byFactor = airframe.speedRule === 'factor';
  return (
    <details class="plan-papers" open>
      <summary>The aeroplane’s figures, to work from</summary>
      <div class="wide" tabIndex={0} role="region" aria-label="The aeroplane’s figures">
        <table>
          <thead>
            <tr>
              <th scope="col">flaps</th><th scope="col">stall, kt</th><th scope="col">manoeuvre, {byFactor ? '× stall' : '+ kt'}</th><th scope="col">limit, kt</th><th scope="col">drive, °/s</th>
              <th scope="col">slows, kt/s</th><th scope="col">kg/h</th><th scope="col">kg/NM</th>
            </tr>
          </thead>
          <tbody>
            {rows.map((row) => (
              <tr key={row.settingDeg}>
                <th scope="row">{row.name}</th><td>{row.stallKt.toFixed(1)}</td><td>{byFactor ? row.manoeuvreBy.toFixed(2) : row.manoeuvreBy}</td><td>{row.limitKt ?? 'none'}</td>
                <td>{row.rateDegPerS.toFixed(3)}</td><td>{row.slowsKtPerS.toFixed(2)}</td><td>{Math.round(row.flowKgPerH)}</td><td>{row.kgPerNm.toFixed(2)}</td>
              </tr>
            ))}
            <tr><th scope="row">up, leading edge out</th><td /><td /><td>{limits.leadingEdgeKt}</td><td /><td /><td>{Math.round(edgeOut.flowKgPerH)}</td><td>{edgeOut.kgPerNm.toFixed(2)}</td></tr>
          </tbody>
        </table>
      </div>
      <ul class="small plan-facts">
        <li>At {massT} t, each at its manoeuvre speed: rate of the drive at that position, speed lost level with the levers at idle, fuel flow at {altitudeFt} ft, fuel for a mile in still air at {divertFt} ft.</li>
        <li>Reference speed: {airframe.referenceFactor} × stall{byFactor ? '' : '. Manoeuvre speed: on top of the reference of the last setting'}.{icing ? ` In ice ${limits.iceKt} kt on both.` : ''} Landing on the standby drive: {landingDeg}.</li>
        <li>Leading edge: {drive.leadingEdgeS} s to come out. Gear: {gear.transitS} s, lever below {gear.operateKt} kt. A hand takes about a second between two acts.</li>
        <li>Motor: {heat.placard}.</li>
        <li>Gear horn, gear not locked down: above flap {horn.landingBandDeg} at any lever angle; above flap {horn.takeOffBandDeg} with a lever below {horn.bothLiveTlaDeg}° (one engine {horn.oneLiveTlaDeg}°), and not to be silenced; up to flap {horn.takeOffBandDeg} so below {horn.heightFt} ft, and it may be silenced.</li>
      </ul>
    </details>
  );
}
