/** The plan: filled in blank, then checked item by item; then its picture, its steps and a card. */
import { planItems, type PlanRequest } from '../../../sim/index.js';
import { Page } from '../frame.js';
import type { House } from '../house.js';
import '../look/plan.css';
import { Missing } from '../missing.js';
import { fragmentOf, type Route } from '../route.js';
import { FRESH, useAsked } from './asked.js';
import { GivenFigures } from './given.js';
import type { PlanOf } from './house.js';
import { Items } from './items.js';
import { keep, keyOf } from './kept.js';
import { PapersOf } from './papers.js';
import { Worked } from './worked.js';

interface Props {
  readonly house: House;
  readonly of: PlanOf;
  /** Of the run it is for, as its pages call it; empty for an approach of one's own. */
  readonly name: string;
  /** The brief it came from. */
  readonly back: Exclude<Route, { page: 'nowhere' }> | null;
}

export function PlanPage({ house, of, name, back }: Props) {
  const { request, key, kept, airframes, plan: { value: plan }, failed: { value: failed } } = useAsked(house, of);
  const title = name === '' ? 'Plan' : `Plan for ${name}`;
  const above = back !== null && <p class="above"><a href={fragmentOf(back)}>Back to the brief</a><span>before the run</span></p>;
  if (request === null) return <Missing title={title} kind="plan" says="There is no such run to plan" />;
  if (request === undefined) return <Page title={title} kind="plan">{above}<h1>{title}</h1>{failed === null ? <p class="waiting">Fetching what the plan is made for …</p> : <Failed why={failed} />}</Page>;
  const items = plan === null ? [] : planItems(plan, kept.planned.order);
  const stands = items.length > 0 && items.every(({ id }) => kept.settled.includes(id));
  const isFree = 'free' in of;
  return (
    <Page title={title} kind="plan" tools={stands ? <button class="plain" type="button" onClick={() => print()}>Print the card</button> : undefined}>
      <div class="plan-screen">
        {above}
        <h1>{title}</h1>
        <p class="large">Fill it in first. Then it is checked, item by item, against the approach as the model flies it. What you ask to be shown is noted as shown{isFree ? '' : ', and the plan goes along with the run'}.</p>
        <details class="plan-papers" open={isFree}>
          <summary>What it is made for: {givenWords(request)}</summary>
          <GivenFigures
            key={keyOf(of)} request={request} airframes={isFree ? airframes : null}
            change={({ airframe, ...rest }) => keep(of, { ...FRESH, given: { ...rest, airframe: airframe.name } })}
          />
          <p class="small">Another figure here begins the plan anew.</p>
        </details>
        <PapersOf request={request} />
        {failed !== null && <Failed why={failed} />}
        {plan === null && failed === null && <p class="waiting" role="status">Flying the approach …</p>}
        {plan !== null && <Items of={of} asked={key} plan={plan} items={items} kept={kept} on={back !== null && <a class="plan-on" href={fragmentOf(back)}>On to the brief</a>} />}
      </div>
      {plan !== null && stands && <Worked title={title} plan={plan} items={items} planned={kept.planned} />}
    </Page>
  );
}

function givenWords({ airframe, massT, altitudeFt, speedKt, windKt, fromDeg, icing, liveEngines }: PlanRequest): string {
  const flaps = airframe.settings.find(({ deg }) => deg === fromDeg)?.name ?? `${fromDeg}°`;
  return [airframe.title, `${massT} t`, `${altitudeFt} ft`, `${speedKt} kt`, `flaps ${flaps}`, windKt === 0 ? 'calm' : `${windKt > 0 ? 'head' : 'tail'} wind ${Math.abs(windKt)} kt`, ...(icing ? ['ice'] : []), ...(liveEngines === 1 ? ['one engine'] : [])].join(', ');
}

const Failed = ({ why }: { why: string }) => <p class="note" role="alert"><span>The plan could not be worked out: {why}. Other figures may do.</span></p>;
