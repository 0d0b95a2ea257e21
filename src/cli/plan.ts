/** `plan`: the approach plan of a scenario, worked out, with the sums. */
import type { PlanOutput } from '../../sim/files/index.js';
import { planItems, planOf, planRequestOf, type Plan, type PlanItem } from '../../sim/index.js';
import type { Values } from '../text/index.js';
import { columns } from './columns.js';
import { type Io, printJson, printLines } from './io.js';
import { openScenario } from './opened.js';
import { DONE } from './trouble.js';

export interface PlanOptions { seed: number; set?: Values; json?: boolean }

export function plan(io: Io, typed: string, { seed, set, json = false }: PlanOptions): number {
  const { scenario, airframe } = openScenario(typed, seed, set);
  const made = planOf(planRequestOf(scenario, airframe));
  if (json) printJson(io, outputOf(typed, made));
  else printLines(io, planLines(made));
  return DONE;
}

function outputOf(typed: string, made: Plan): PlanOutput {
  const { request, speeds, landing: _landing, retraction, distance, horn, course: _course, pressure, steps, ...rest } = made;
  return {
    scenario: typed, airframe: request.airframe.name, massT: request.massT, windKt: request.windKt,
    ...rest, steps: [...steps],
    speeds: speeds.settings.map(({ name: _name, ...row }) => row),
    retraction: [...retraction.steps], retractionS: retraction.totalS, landing: distance,
    horn: horn.map(({ spans, ...one }) => ({ ...one, spans: [...spans] })), pressure: [...pressure.systems],
    items: planItems(made).map(({ id, name, right, sum, ...item }) => ({ id, name, right: typeof right === 'object' && right !== null ? [...right] : right, unit: item.kind === 'number' ? item.unit : '', sum })),
  };
}

const kt = (value: number): string => value.toFixed(0);
const s = (value: number): string => value.toFixed(1);
const percent = (part: number): string => `${(100 * part).toFixed(0)} %`;

function planLines(made: Plan): string[] {
  const { request: { airframe, massT, altitudeFt, windKt, icing, fromDeg }, steps, touch, retraction, whole } = made;
  return [
    `${airframe.title}, ${massT} t, ${altitudeFt} ft, ${windKt === 0 ? 'calm' : `head wind ${windKt} kt`}${icing ? ', ice' : ''}; flaps at ${fromDeg}`,
    'A practice aid on an invented airframe. Your operator\'s approved procedures come first.',
    ...(whole ? [] : ['The plan does not come to its end before the runway, or the drive never comes to the setting.']), '',
    ...(touch === null ? [] : [`First touch at ${s(touch.atS)} s: slow to ${touch.speedKt} kt; leading edge out at ${s(touch.outS)} s, and not back.`, '']),
    ...(steps.length === 0 ? ['The flaps stand at the landing setting already.'] : columns([
      ['out', 'slow to', 'lever', 'hold from', 'to', 'motor on', 'closed', 'limit', 'heat', 'rest'],
      ...steps.map((step) => [
        `${step.beforeDeg} to ${step.settingDeg}`, `${step.speedKt} kt`, `${s(step.leverS)} s`, `${s(step.fromS)} s`, `${s(step.toS)} s`, `${s(step.motorOnS)} s`, `${s(step.closedS)} s`,
        step.limitKt === null ? 'none' : `${kt(step.limitKt)} kt`, `${percent(step.heatFrom)} to ${percent(step.heatTo)}`, step.restS > 0 ? `${s(step.restS)} s` : 'none',
      ]),
    ], [1, 2, 3, 4, 5, 6, 7])), '',
    ...(retraction.steps.length === 0 ? [] : columns([
      ['back in', 'accelerate to', 'motor on', 'limit', 'heat'],
      ...retraction.steps.map((step) => [`to ${step.settingDeg}`, `${step.speedKt} kt`, `${s(step.motorOnS)} s`, step.limitKt === null ? 'none' : `${kt(step.limitKt)} kt`, percent(step.heatTo)]),
    ], [1, 2, 3])), '',
    ...columns([['item', 'right'], ...planItems(made).map((item) => [item.name, rightOf(item)])]), '',
    ...planItems(made).map(({ name, sum }) => `${name}: ${sum}.`),
  ];
}

/** What is right, in words. */
function rightOf(item: PlanItem): string {
  switch (item.kind) {
    case 'number': return item.right === null ? 'never' : `${item.right.toFixed(item.decimals)} ${item.unit}`;
    case 'choice': return item.choices.find(([value]) => value === item.right)?.[1] ?? item.right;
    case 'many': return item.right.join(', ');
  }
}
