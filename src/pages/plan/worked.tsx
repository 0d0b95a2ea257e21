/** Once every item stands: the picture, the horn in each order, the steps, and the card. */
import type { Planned } from '../../../sim/files/index.js';
import type { Plan, PlanItem } from '../../../sim/index.js';
import { SpeedTable } from '../drill/speeds.js';
import { Card } from './card.js';
import { Horns } from './horns.js';
import { Profile } from './profile.js';
import { BackIn, Steps } from './steps.js';

export function Worked({ title, plan, items, planned }: { title: string; plan: Plan; items: readonly PlanItem[]; planned: Planned }) {
  return (
    <>
      <div class="plan-screen plan-worked">
        <section aria-labelledby="plan-profile"><h2 id="plan-profile" class="ruled">The approach</h2><Profile plan={plan} /></section>
        <section aria-labelledby="plan-horns"><h2 id="plan-horns" class="ruled">The gear horn in each order</h2><Horns plan={plan} /></section>
        <SpeedTable speeds={plan.speeds} startKt={plan.request.speedKt} way={[plan.request.fromDeg, ...plan.request.settings]} />
        <section aria-labelledby="plan-steps"><h2 id="plan-steps" class="ruled">Out, step by step</h2><Steps plan={plan} /></section>
        {plan.retraction.steps.length > 0 && <section aria-labelledby="plan-back"><h2 id="plan-back" class="ruled">Back in</h2><BackIn plan={plan} /></section>}
        <div class="plan-foot"><button class="button quiet" type="button" onClick={() => print()}>Print the card</button><p class="small">One sheet, A5; on A4 it fills the upper half.</p></div>
      </div>
      <Card title={title} plan={plan} items={items} planned={planned} />
    </>
  );
}
