/** The steps of the plan: out, and back in. */
import type { Plan } from '../../../sim/index.js';

const s = (value: number): string => value.toFixed(0);
const heat = (part: number): string => `${(100 * part).toFixed(0)} %`;

export function Steps({ plan: { steps, touch, totalS, readyS, request } }: { plan: Plan }) {
  if (steps.length === 0) return <p class="small">The flaps stand there already.</p>;
  return (
    <>
      {touch !== null && <p class="plan-touch">First touch: slow to {touch.speedKt} kt, touch at {s(touch.atS)} s, leading edge out at {s(touch.outS)} s. It does not come back.</p>}
      <div class="wide" tabIndex={0} role="region" aria-label="Table of the steps out">
        <table class="plan-table">
          <thead><tr><th scope="col">to</th><th scope="col">slow to</th><th scope="col">lever</th><th scope="col">hold</th><th scope="col">motor on</th><th scope="col">closed form</th><th scope="col">limit</th><th scope="col">heat behind</th></tr></thead>
          <tbody>
            {steps.map((step) => (
              <tr key={step.settingDeg}>
                <th scope="row">{nameOf(request.airframe, step.settingDeg)}</th><td>{step.speedKt} kt</td><td>{s(step.leverS)} s</td><td>{s(step.fromS)} to {s(step.toS)} s</td>
                <td>{step.motorOnS.toFixed(1)} s</td><td>{step.closedS.toFixed(1)} s</td><td>{step.limitKt === null ? 'none' : `${step.limitKt} kt`}</td>
                <td>{heat(step.heatTo)}{step.restS > 0 && `, rest ${s(step.restS)} s`}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      <p class="small">Both there at {totalS === null ? 'no time' : `${s(totalS)} s`}, ready for the way down at {readyS === null ? 'no time' : `${s(readyS)} s`}. Each setting: slow, lever, hold, both there; only then the next.</p>
    </>
  );
}

export function BackIn({ plan: { retraction, request } }: { plan: Plan }) {
  if (retraction.steps.length === 0) return null;
  const latched = request.airframe.drive.retractSwitch === 'latched';
  return (
    <>
      <div class="wide" tabIndex={0} role="region" aria-label="Table of the steps back in">
        <table class="plan-table">
          <thead><tr><th scope="col">to</th><th scope="col">accelerate to</th><th scope="col">motor on</th><th scope="col">limit</th><th scope="col">heat behind</th></tr></thead>
          <tbody>
            {retraction.steps.map((step) => (
              <tr key={step.settingDeg}>
                <th scope="row">{nameOf(request.airframe, step.settingDeg)}</th><td>{step.speedKt} kt</td><td>{step.motorOnS.toFixed(1)} s</td>
                <td>{step.limitKt === null ? 'none' : `${step.limitKt} kt`}</td><td>{heat(step.heatTo)}{step.restS > 0 && `, rest ${s(step.restS)} s`}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      <p class="small">Go-around: thrust, climb, gear; no flap switch before a safe height and speed. Then speed first, then the lever, then the switch{latched ? ', which stays where it is put: watch it all the more' : ''}. The leading edge stays out.</p>
    </>
  );
}

const nameOf = (airframe: Plan['request']['airframe'], deg: number): string => airframe.settings.find((one) => one.deg === deg)?.name ?? `${deg}°`;
