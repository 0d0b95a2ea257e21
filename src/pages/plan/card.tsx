/** The plan on one sheet, A5 or A4: what was planned beside what was worked out, the steps, and the caution. */
import { enteredOf, type Plan, type PlanItem } from '../../../sim/index.js';
import type { Planned } from '../../../sim/files/index.js';
import { CAUTION } from '../frame.js';
import { valueWords } from './words.js';

interface Props {
  readonly title: string;
  readonly plan: Plan;
  readonly items: readonly PlanItem[];
  readonly planned: Planned;
}

export function Card({ title, plan, items, planned }: Props) {
  const { request, steps, touch, retraction, pressure, distance } = plan;
  const { airframe, massT, altitudeFt, windKt, icing } = request;
  const name = (deg: number): string => airframe.settings.find((one) => one.deg === deg)?.name ?? `${deg}°`;
  const single = items.filter(({ kind }) => kind !== 'many');
  return (
    <section class="plan-card" aria-labelledby="plan-card-title">
      <header><h2 id="plan-card-title">{title}</h2><p>{airframe.title}, {massT} t, {altitudeFt} ft, {windKt === 0 ? 'calm' : `${windKt < 0 ? 'tail' : 'head'} wind ${Math.abs(windKt)} kt`}{icing && ', ice'}</p></header>
      <div class="plan-card-columns">
        <div>
          <h3>Out</h3>
          <ol>
            {touch !== null && <li>{touch.speedKt} kt: first touch, leading edge out</li>}
            {steps.map((step) => <li key={step.settingDeg}>{step.speedKt} kt: lever {name(step.settingDeg)}, hold {step.motorOnS.toFixed(0)} s{step.restS > 0 && `, rest ${step.restS.toFixed(0)} s`}, both there</li>)}
            <li>{plan.approachKt} kt: approach, flaps {plan.landing.name}</li>
          </ol>
          <h3>Back in</h3>
          <ol>
            <li>thrust, climb, gear; flaps wait</li>
            {retraction.steps.map((step) => <li key={step.settingDeg}>{step.speedKt} kt first, lever {name(step.settingDeg)}, switch {step.motorOnS.toFixed(0)} s</li>)}
          </ol>
          <h3>A split that is shown</h3>
          <ol><li>let go, call, do not press again</li><li>look: does a side still move?</li><li>fly, then the list</li></ol>
        </div>
        <div>
          <table>
            <thead><tr><td /><th scope="col">planned</th><th scope="col">worked out</th></tr></thead>
            <tbody>
              {single.map((item) => (
                <tr key={item.id}><th scope="row">{item.name}</th><td>{valueWords(item, enteredOf(item.id, planned))}{planned.shown.includes(item.id) && ' (shown)'}</td><td>{valueWords(item, item.right)}</td></tr>
              ))}
              {distance.factoredM !== null && <tr><th scope="row">Landing distance, × {distance.ratio.toFixed(2)} × 1.15</th><td /><td>{Math.round(distance.factoredM)} m</td></tr>}
            </tbody>
          </table>
          <p><strong>With the pressure that drives the flaps:</strong> {pressure.systems.filter(({ state }) => state !== 'kept').map((one) => `${one.name} ${one.state} (${one.instead})`).join('; ')}.</p>
        </div>
      </div>
      <p class="plan-card-caution">{CAUTION}</p>
    </section>
  );
}
