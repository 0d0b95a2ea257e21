/** The items of a plan in their groups, each to be filled in, checked or shown, and under them what goes for all. */
import type { ComponentChildren } from 'preact';
import { enteredOf, planItems, withEntered, withShown, type Plan, type PlanItem } from '../../../sim/index.js';
import { FRESH } from './asked.js';
import { Entry } from './entry.js';
import type { PlanOf } from './house.js';
import { keep, type Kept } from './kept.js';

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

interface Props {
  readonly of: PlanOf;
  /** Changes with every figure that the plan is made for. */
  readonly asked: string;
  readonly plan: Plan;
  readonly items: readonly PlanItem[];
  readonly kept: Kept;
  /** Where it goes on from here. */
  readonly on: ComponentChildren;
}

export function Items({ of, asked, plan, items, kept, on }: Props) {
  const { planned, settled } = kept;
  const put = (part: Partial<Kept>): void => keep(of, { ...kept, ...part });
  const open = items.filter(({ id }) => !settled.includes(id));
  const filled = open.filter(({ id }) => enteredOf(id, planned) !== null);
  const check = (ids: readonly string[]): void => put({ settled: [...settled, ...ids.filter((id) => !settled.includes(id))] });
  const show = (those: readonly PlanItem[]): void => {
    // In order: whoever has the order shown is asked about the horn in that order.
    let next = planned;
    for (const item of those) next = withShown(next, planItems(plan, next.order).find(({ id }) => id === item.id) ?? item);
    put({ planned: next, settled: [...settled, ...those.map(({ id }) => id)] });
  };
  return (
    <>
      {!plan.whole && <p class="note" role="status"><span>As it stands this does not end well: the drive never comes to the setting, or the runway comes first. Figures that hang on it have no right value.</span></p>}
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
        {on}
        <p class="small" role="status">{open.length === 0 ? 'Every item stands. Its picture is below.' : `${settled.length} of ${items.length} items stand. The picture, the steps and the card come when all do.`}</p>
      </div>
    </>
  );
}
