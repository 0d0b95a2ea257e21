/** The plan: filled in blank, then checked item by item; then its picture, its steps and a card. */
import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import type { Airframe } from '../../../sim/files/index.js';
import { BLANK, enteredOf, planItems, withEntered, withShown, type Plan, type PlanItem, type PlanRequest } from '../../../sim/index.js';
import { Page } from '../frame.js';
import { Missing } from '../missing.js';
import type { House } from '../house.js';
import { fragmentOf, type Route } from '../route.js';
import '../look/plan.css';
import { Entry } from './entry.js';
import { GivenFigures } from './given.js';
import type { PlanOf } from './house.js';
import { keep, keyOf, plans, type Given, type Kept } from './kept.js';
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

const FRESH: Kept = { planned: BLANK, settled: [], given: null };
const GROUPS = ['Speeds', 'Gear and horn', 'The drive', 'The way, the fuel, the landing', 'Before the first touch'] as const;
type Group = (typeof GROUPS)[number];
const GROUP_OF: Readonly<Record<Exclude<PlanItem['id'], `manoeuvre-${number}`>, Group>> = {
  referenceKt: 'Speeds', order: 'Gear and horn', horn: 'Gear and horn', motorOnS: 'The drive', rest: 'The drive', totalS: 'The drive',
  startByNm: 'The way, the fuel, the landing', descentFtPerMin: 'The way, the fuel, the landing', continueKg: 'The way, the fuel, the landing',
  divertKg: 'The way, the fuel, the landing', longerPct: 'The way, the fuel, the landing',
  commit: 'Before the first touch', failed: 'Before the first touch', terrain: 'Before the first touch',
};
/** A manoeuvre speed is a speed. */
const groupOf = (id: string): Group => (Object.hasOwn(GROUP_OF, id) ? GROUP_OF[id as keyof typeof GROUP_OF] : 'Speeds');

export function PlanPage({ house, of, name, back }: Props) {
  const first = useSignal<PlanRequest | null | undefined>(undefined);
  const airframes = useSignal<readonly Airframe[]>([]);
  const plan = useSignal<Plan | null>(null);
  const failed = useSignal<string | null>(null);
  const title = name === '' ? 'Plan' : `Plan for ${name}`;
  useEffect(() => {
    first.value = undefined;
    void Promise.all([house.plan.request(of), house.airframes()]).then(([request, all]) => {
      airframes.value = all;
      first.value = request;
    }, (problem: unknown) => { failed.value = problem instanceof Error ? problem.message : String(problem); });
  }, [house, keyOf(of)]);
  const kept = plans.value[keyOf(of)] ?? FRESH;
  const request = first.value === undefined || first.value === null ? null : requestOf(first.value, kept.given, airframes.value);
  const asked = request === null ? '' : JSON.stringify({ ...request, airframe: request.airframe.name });
  useEffect(() => {
    if (request === null) return;
    let over = false;
    plan.value = null;
    failed.value = null;
    house.plan.workOut(request).then((made) => { if (!over) plan.value = made; }, (problem: unknown) => { if (!over) failed.value = problem instanceof Error ? problem.message : String(problem); });
    return () => { over = true; };
  }, [asked]);
  const above = back !== null && <p class="above"><a href={fragmentOf(back)}>Back to the brief</a><span>before the run</span></p>;
  if (first.value === null) return <Missing title={title} kind="plan" says="There is no such run to plan" />;
  if (request === null) return <Page title={title} kind="plan">{above}<h1>{title}</h1>{failed.value === null ? <p class="waiting">Fetching what the plan is made for …</p> : <Failed why={failed.value} />}</Page>;
  const { planned, settled } = kept;
  const items = plan.value === null ? [] : planItems(plan.value, planned.order);
  const put = (part: Partial<Kept>): void => keep(of, { ...kept, ...part });
  const open = items.filter(({ id }) => !settled.includes(id));
  const filled = open.filter(({ id }) => enteredOf(id, planned) !== null);
  const check = (ids: readonly string[]): void => put({ settled: [...settled, ...ids.filter((id) => !settled.includes(id))] });
  const show = (those: readonly PlanItem[]): void => {
    // In order: whoever has the order shown is asked about the horn in that order.
    let next = planned;
    for (const item of those) next = withShown(next, plan.value === null ? item : planItems(plan.value, next.order).find(({ id }) => id === item.id) ?? item);
    put({ planned: next, settled: [...settled, ...those.map(({ id }) => id)] });
  };
  return (
    <Page
      title={title} kind="plan"
      tools={open.length === 0 && items.length > 0 ? <button class="plain" type="button" onClick={() => print()}>Print the card</button> : undefined}
    >
      <div class="plan-screen">
        {above}
        <h1>{title}</h1>
        <p class="large">Fill it in first. Then it is checked, item by item, against the approach as the model flies it. What you ask to be shown is noted as shown{of !== null && 'free' in of ? '' : ', and the plan goes along with the run'}.</p>
        <details class="plan-papers" open={'free' in of}>
          <summary>What it is made for: {givenWords(request)}</summary>
          <GivenFigures
            key={keyOf(of)} request={request} airframes={'free' in of ? airframes.value : null}
            change={({ airframe, ...rest }) => keep(of, { ...FRESH, given: { ...rest, airframe: airframe.name } })}
          />
          <p class="small">Another figure here begins the plan anew.</p>
        </details>
        <PapersOf request={request} />
        {failed.value !== null && <Failed why={failed.value} />}
        {plan.value === null && failed.value === null && <p class="waiting" role="status">Flying the approach …</p>}
        {plan.value !== null && (
          <>
            {!plan.value.whole && <p class="note" role="status"><span>As it stands this does not end well: the drive never comes to the setting, or the runway comes first. Figures that hang on it have no right value.</span></p>}
            {GROUPS.map((group) => (
              <section key={group} class="plan-group">
                <h2 class="ruled">{group}</h2>
                <ul>
                  {items.filter(({ id }) => groupOf(id) === group).map((item) => (
                    <Entry
                      key={`${asked} ${item.id}`} item={item} planned={planned} settled={settled.includes(item.id)}
                      enter={(id, value) => put({ planned: withEntered(planned, id, value) })} check={(id) => check([id])} show={(one) => show([one])}
                    />
                  ))}
                </ul>
              </section>
            ))}
            <div class="plan-foot">
              {open.length > 0 && <button class="button" type="button" disabled={filled.length === 0} onClick={() => check(filled.map(({ id }) => id))}>Check all that is filled in</button>}
              {open.length > filled.length && <button class="button quiet" type="button" onClick={() => show(open.filter(({ id }) => enteredOf(id, planned) === null))}>Show the rest</button>}
              {(settled.length > 0 || filled.length > 0) && <button class="button quiet" type="button" onClick={() => keep(of, { ...FRESH, given: kept.given })}>Begin again</button>}
              {back !== null && <a class="plan-on" href={fragmentOf(back)}>On to the brief</a>}
              <p class="small" role="status">{open.length === 0 ? 'Every item stands. Its picture is below.' : `${settled.length} of ${items.length} items stand. The picture, the steps and the card come when all do.`}</p>
            </div>
          </>
        )}
      </div>
      {plan.value !== null && open.length === 0 && <Worked title={title} plan={plan.value} items={items} planned={planned} />}
    </Page>
  );
}

function givenWords({ airframe, massT, altitudeFt, speedKt, windKt, fromDeg, icing, liveEngines }: PlanRequest): string {
  const flaps = airframe.settings.find(({ deg }) => deg === fromDeg)?.name ?? `${fromDeg}°`;
  return [airframe.title, `${massT} t`, `${altitudeFt} ft`, `${speedKt} kt`, `flaps ${flaps}`, windKt === 0 ? 'calm' : `${windKt > 0 ? 'head' : 'tail'} wind ${Math.abs(windKt)} kt`, ...(icing ? ['ice'] : []), ...(liveEngines === 1 ? ['one engine'] : [])].join(', ');
}

const Failed = ({ why }: { why: string }) => <p class="note" role="alert"><span>The plan could not be worked out: {why}. Other figures may do.</span></p>;

/** What the run asks for, with what was changed on the page. */
function requestOf(first: PlanRequest, given: Given | null, airframes: readonly Airframe[]): PlanRequest {
  if (given === null) return first;
  const airframe = given.airframe === first.airframe.name ? first.airframe : airframes.find(({ name }) => name === given.airframe) ?? first.airframe;
  return { ...given, airframe };
}
