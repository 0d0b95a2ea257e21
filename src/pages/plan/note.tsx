/** On a brief: the way to the plan, and the plan itself as a card once something stands in it. */
import type { Airframe, Planned } from '../../../sim/files/index.js';
import type { PlanOf } from './house.js';
import { isBegun, keyOf, plans } from './kept.js';

const ORDER = { gearFirst: 'gear, then setting', settingFirst: 'setting, then gear' } as const;
const YES = { yes: 'yes', no: 'no' } as const;

export function PlanNote({ of, href, airframe }: { of: PlanOf; href: string; airframe: Airframe }) {
  const kept = plans.value[keyOf(of)];
  if (kept === undefined || !isBegun(kept)) return <p class="plan-way"><a href={href}>Plan it first</a><span>speeds, steps, fuel and the gear horn, before the run</span></p>;
  return (
    <section class="plan-brief" aria-labelledby="plan-brief-title">
      <h2 id="plan-brief-title" class="ruled">Your plan</h2>
      <dl class="facts">{plannedFacts(kept.planned, airframe).map(([what, value]) => <div key={what}><dt>{what}</dt><dd>{value}</dd></div>)}</dl>
      <p class="small">It goes along with the run, and the debrief lays it beside what was flown. <a href={href}>Change the plan</a></p>
    </section>
  );
}

/** What stands in a plan, in pairs: blanks are left out. */
export function plannedFacts({ manoeuvre, order, motorOnS, totalS, startByNm, referenceKt, commit, continueKg, divertKg, longerPct, terrain, descentFtPerMin }: Planned, { settings }: Airframe): (readonly [string, string])[] {
  const name = (deg: number): string => settings.find((one) => one.deg === deg)?.name ?? `${deg}°`;
  const figure = (what: string, value: number | null, unit: string, decimals = 0): (readonly [string, string])[] => (value === null ? [] : [[what, `${value.toFixed(decimals)} ${unit}`]]);
  return [
    ...(manoeuvre.length === 0 ? [] : [['Manoeuvre speeds', manoeuvre.map(({ settingDeg, kt }) => `${name(settingDeg)} ${Math.round(kt)}`).join(', ')] as const]),
    ...figure('Reference speed', referenceKt, 'kt'),
    ...(order === null ? [] : [['Order', ORDER[order]] as const]),
    ...figure('Motor on', motorOnS, 's'), ...figure('Both there after', totalS, 's'), ...figure('Begin at the latest', startByNm, 'NM', 1),
    ...figure('Down at', descentFtPerMin, 'ft/min'), ...figure('Hold and approach', continueKg, 'kg'), ...figure('To the alternate', divertKg, 'kg'), ...figure('Landing longer by', longerPct, '%'),
    ...(commit === null ? [] : [['Before the first touch', commit === 'continue' ? 'continue here' : 'divert'] as const]),
    ...(terrain === null ? [] : [['Inhibit the terrain alert', YES[terrain]] as const]),
  ];
}
