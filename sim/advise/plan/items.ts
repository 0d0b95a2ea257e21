/**
 * What a trainee fills in, item by item: the right value, how near counts as right and as near, and the sum that gives it.
 * Order, horn and the decision are chosen; what else failed is a list to tick.
 */
import type { Planned } from '../../files/plan.js';
import type { OrderHorn } from './horn.js';
import type { Order } from './approach.js';
import type { Plan } from './plan.js';
import { sumOf } from './sums.js';

/** Names of the single items, in the order in which a plan is filled in. */
export const SINGLE_ITEMS = [
  'referenceKt', 'order', 'horn', 'motorOnS', 'rest', 'totalS', 'startByNm', 'descentFtPerMin', 'continueKg', 'divertKg', 'longerPct', 'commit', 'failed', 'terrain',
] as const;
type Single = (typeof SINGLE_ITEMS)[number];
/** A single item, or the manoeuvre speed of a setting. */
export type PlanItemId = Single | `manoeuvre-${number}`;

interface Common {
  readonly id: PlanItemId;
  readonly name: string;
  /** How it follows from what the plan is made for. */
  readonly sum: string;
}
/** A figure that is worked out, in `unit`. What is entered is judged as finely as `decimals` tells. */
export interface NumberItem extends Common {
  readonly kind: 'number';
  readonly unit: string;
  /** Places behind the point, 0 to 2. */
  readonly decimals: number;
  /** null: the drive never comes to it. */
  readonly right: number | null;
  /** As far off as this is right, and as far off as this is near. */
  readonly rightWithin: number;
  readonly nearWithin: number;
}
/** One choice of several; `right` and `near` hold values and not words. */
export interface ChoiceItem extends Common {
  readonly kind: 'choice';
  readonly choices: readonly (readonly [value: string, words: string])[];
  readonly right: string;
  /** Choices that stand, at a price that the sum names. */
  readonly near: readonly string[];
}
/** A list to tick: one tick too many or too few is near. */
export interface ManyItem extends Common {
  readonly kind: 'many';
  readonly choices: readonly string[];
  readonly right: readonly string[];
}
/** What a trainee fills in, told apart by `kind`. */
export type PlanItem = NumberItem | ChoiceItem | ManyItem;

const ORDER_WORDS = [['gearFirst', 'gear, then the landing setting'], ['settingFirst', 'landing setting, then the gear']] as const;
const HORN_WORDS = [['silent', 'silent'], ['silenceable', 'sounds, may be silenced'], ['sounds', 'sounds, may not be silenced']] as const;
const YES_NO = [['no', 'no'], ['yes', 'yes']] as const;

/** The worst of an order over both places: level, and on the path. */
export function worstOf(horn: readonly OrderHorn[], order: Order): OrderHorn['worst'] {
  const all = horn.filter((one) => one.order === order).map(({ worst }) => worst);
  return all.includes('sounds') ? 'sounds' : all.includes('silenceable') ? 'silenceable' : 'silent';
}

/** The order in which the horn has least to say; the gear first where both are alike. */
export const quieterOrder = (horn: readonly OrderHorn[]): Order => {
  const loud = (order: Order): number => ['silent', 'silenceable', 'sounds'].indexOf(worstOf(horn, order));
  return loud('settingFirst') < loud('gearFirst') ? 'settingFirst' : 'gearFirst';
};

/** @param order what the trainee has chosen; the horn is asked about that order, or about the quieter one */
export function planItems(plan: Plan, order: Order | null = null): PlanItem[] {
  const { speeds, landing, request, horn, fuel, distance, pressure } = plan;
  const quieter = quieterOrder(horn);
  const other: Order = quieter === 'gearFirst' ? 'settingFirst' : 'gearFirst';
  // Where the horn has as little to say in both, either is right.
  const right = worstOf(horn, 'gearFirst') === worstOf(horn, 'settingFirst') ? order ?? quieter : quieter;
  const asked = order ?? quieter;
  const part = (value: number | null, share: number, least: number): number => Math.max(least, Math.abs(value ?? 0) * share);
  const number = (id: PlanItemId, name: string, unit: string, right: number | null, decimals: number, rightWithin: number, nearWithin: number): NumberItem =>
    ({ id, name, kind: 'number', unit, right, decimals, rightWithin, nearWithin, sum: sumOf(plan, id, asked) });
  const choice = (id: Single, name: string, choices: ChoiceItem['choices'], right: string, near: readonly string[] = []): ChoiceItem =>
    ({ id, name, kind: 'choice', choices, right, near, sum: sumOf(plan, id, asked) });
  const flown = speeds.settings.filter(({ settingDeg }) => settingDeg === outDeg(plan) || request.settings.includes(settingDeg));
  return [
    ...flown.map((row) => number(`manoeuvre-${row.settingDeg}`, `Manoeuvre speed, flaps ${row.name}`, 'kt', row.manoeuvreKt, 0, 1, 5)),
    number('referenceKt', `Reference speed, flaps ${landing.name}`, 'kt', landing.referenceKt, 0, 1, 5),
    choice('order', 'Gear and landing setting', ORDER_WORDS, right, right === quieter ? [other] : [quieter]),
    choice('horn', 'The gear horn in that order, at the worst', HORN_WORDS, worstOf(horn, asked)),
    number('motorOnS', 'Motor on, in all', 's', plan.whole ? plan.motorOnS : null, 0, part(plan.motorOnS, 0.05, 2), part(plan.motorOnS, 0.15, 5)),
    choice('rest', 'The motor needs a rest on the way', YES_NO, plan.restS > 0 ? 'yes' : 'no'),
    number('totalS', 'From the beginning to both there', 's', plan.totalS, 0, part(plan.totalS, 0.1, 5), part(plan.totalS, 0.25, 10)),
    number('startByNm', 'Begin at the latest, from the runway', 'NM', plan.startByNm, 1, part(plan.startByNm, 0.05, 1), part(plan.startByNm, 0.15, 2)),
    number('descentFtPerMin', 'Rate of descent on the path', 'ft/min', plan.descentFtPerMin, 0, 20, 70),
    number('continueKg', 'Fuel for the hold and the approach', 'kg', fuel.continueKg, 0, part(fuel.continueKg, 0.05, 10), part(fuel.continueKg, 0.15, 30)),
    number('divertKg', 'Fuel to the alternate, leading edge out', 'kg', fuel.divertKg, 0, part(fuel.divertKg, 0.05, 10), part(fuel.divertKg, 0.15, 30)),
    number('longerPct', 'Landing longer than with the last setting', '%', distance.longerPct, 0, 1, 5),
    choice('commit', 'Continue or divert', [['continue', 'continue here'], ['divert', 'divert']], plan.commit),
    {
      id: 'failed', name: 'Lost or reduced with flap pressure', kind: 'many', choices: pressure.systems.map(({ name }) => name),
      right: pressure.systems.filter(({ state }) => state !== 'kept').map(({ name }) => name), sum: sumOf(plan, 'failed', asked),
    },
    choice('terrain', 'Inhibit the flap part of the terrain alert', YES_NO, plan.terrain ? 'yes' : 'no'),
  ];
}

/** The setting that is out when the plan begins: the largest at or below the flaps, deg. */
export const outDeg = ({ speeds, request: { fromDeg } }: Pick<Plan, 'speeds' | 'request'>): number =>
  speeds.settings.reduce((found, { settingDeg }) => (settingDeg <= fromDeg ? settingDeg : found), 0);

/** off: beyond what counts as near, or another value than the item asks for. */
export type Verdict = 'right' | 'near' | 'off';

/** Judges what was entered for an item; null where nothing was. @throws RangeError for an item of another kind */
export function verdictOf(item: PlanItem, planned: Planned): Verdict | null {
  const entered = enteredOf(item.id, planned);
  if (entered === null) return null;
  switch (item.kind) {
    case 'number': {
      if (item.right === null || typeof entered !== 'number') return 'off';
      // A figure is judged as finely as it is asked for: rounding is no error.
      const off = Math.abs(entered - item.right) - 0.5 * [1, 0.1, 0.01][item.decimals]! * 1.000001;
      return off <= item.rightWithin ? 'right' : off <= item.nearWithin ? 'near' : 'off';
    }
    case 'choice': return entered === item.right ? 'right' : item.near.includes(String(entered)) ? 'near' : 'off';
    case 'many': {
      const ticked = Array.isArray(entered) ? entered : [];
      const wrong = item.choices.filter((one) => ticked.includes(one) !== item.right.includes(one)).length;
      return wrong === 0 ? 'right' : wrong === 1 ? 'near' : 'off';
    }
  }
}

/** What a plan holds for an item; null: left blank. */
export function enteredOf(id: PlanItemId, planned: Planned): number | string | readonly string[] | null {
  if (!isSingle(id)) return planned.manoeuvre.find(({ settingDeg }) => `manoeuvre-${settingDeg}` === id)?.kt ?? null;
  return planned[id];
}
const isSingle = (id: PlanItemId): id is Single => (SINGLE_ITEMS as readonly string[]).includes(id);

/** A plan with nothing in it. */
export const BLANK: Planned = {
  manoeuvre: [], referenceKt: null, order: null, horn: null, motorOnS: null, rest: null, totalS: null, startByNm: null, descentFtPerMin: null,
  continueKg: null, divertKg: null, longerPct: null, commit: null, failed: null, terrain: null, shown: [],
};

/** The plan with another value for one item; null takes it out. The value must be of the item's kind. */
export function withEntered(planned: Planned, id: PlanItemId, value: number | string | readonly string[] | null): Planned {
  if (isSingle(id)) return { ...planned, [id]: value };
  const settingDeg = Number(id.slice('manoeuvre-'.length));
  const rest = planned.manoeuvre.filter((one) => one.settingDeg !== settingDeg);
  return { ...planned, manoeuvre: value === null ? rest : [...rest, { settingDeg, kt: value as number }].sort((a, b) => a.settingDeg - b.settingDeg) };
}

/** The trainee asked to be shown an item: its value stands in the plan, and that it was shown. */
export function withShown(planned: Planned, item: PlanItem): Planned {
  const value = item.kind !== 'number' ? item.right : item.right === null ? null : Number(item.right.toFixed(item.decimals));
  return { ...withEntered(planned, item.id, value), shown: [...planned.shown.filter((id) => id !== item.id), item.id] };
}
