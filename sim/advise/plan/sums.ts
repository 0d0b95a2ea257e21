/** The sum behind each item of a plan, in figures. */
import type { Order } from './approach.js';
import type { OrderHorn } from './horn.js';
import type { PlanItemId } from './items.js';
import { ARRIVAL_FACTOR } from './landing.js';
import { PATH_DEG, SCREEN_FT } from './path.js';
import type { Plan } from './plan.js';

const n = (value: number, decimals = 0): string => value.toFixed(decimals);
const whole = (value: number): string => n(value).replace(/\B(?=(\d{3})+$)/g, ' ');

export function sumOf(plan: Plan, id: PlanItemId, order: Order): string {
  const { fuel, distance, request, steps, speeds } = plan;
  const ice = speeds.iceKt > 0 ? ` + ${n(speeds.iceKt)} ice` : '';
  if (isManoeuvre(id)) return manoeuvreWords(plan, Number(id.slice('manoeuvre-'.length)), ice);
  switch (id) {
    case 'referenceKt': return `${speeds.referenceFactor} x stall ${n(plan.landing.stallKt, 1)}${ice} = ${n(plan.landing.referenceKt, 1)} kt${request.additiveKt > 0 ? `; approach at ${plan.approachKt} with ${n(request.additiveKt)} of your own` : ''}`;
    case 'order': return (['gearFirst', 'settingFirst'] as const).map((one) => `${one === 'gearFirst' ? 'gear first' : 'setting first'}: ${hornWords(plan.horn, one)}`).join('; ');
    case 'horn': return hornWords(plan.horn, order);
    case 'motorOnS': return steps.length === 0 ? 'the flaps stand there already' : `${steps.map(({ beforeDeg, settingDeg, motorOnS }) => `${n(beforeDeg)} to ${n(settingDeg)} ${n(motorOnS, 1)}`).join(' + ')} = ${n(plan.motorOnS, 1)} s; at constant speed ${n(steps.reduce((sum, { closedS }) => sum + closedS, 0), 1)} s`;
    case 'rest': return `heat ${n(request.motorHeat * 100)} % at the beginning, ${n(plan.mostHeat * 100)} % at the most; the cut-out opens at 100 %${plan.restS > 0 ? `; ${n(plan.restS)} s of rest` : ''}; placard ${request.airframe.heat.placard}`;
    case 'totalS': return plan.totalS === null ? 'the drive does not come there' : totalWords(plan);
    case 'startByNm': return plan.startByNm === null || plan.readyNm === null ? 'the drive does not come there' : `${n(plan.readyNm, 1)} NM over the ground in ${n(plan.readyS ?? 0)} s until all is ready, wind ${windWords(request.windKt)}, + ${n(plan.pathNm, 1)} NM from ${whole(request.altitudeFt)} ft down to ${SCREEN_FT} ft above ${whole(request.groundFt)} ft at ${-PATH_DEG} deg = ${n(plan.startByNm, 1)} NM`;
    case 'descentFtPerMin': return `${n(plan.groundKt)} kt over the ground x 101.27 ft/min for a knot x tan ${-PATH_DEG} deg = ${n(plan.descentFtPerMin)} ft/min`;
    case 'continueKg': return `hold ${n(request.holdMin)} min at ${whole(fuel.holdKgPerH)} kg/h = ${n(fuel.holdKg)} + flaps, approach and path ${n(fuel.approachKg)} = ${n(fuel.continueKg)} kg`;
    case 'divertKg': return `${n(request.alternateNm)} NM x ${n(fuel.outKgPerNm, 2)} kg = ${n(fuel.divertKg)} kg; before the first touch x ${n(fuel.cleanKgPerNm, 2)} = ${n(fuel.cleanKg)} kg, in still air${fuel.leftKg === null ? '' : `; on board behind the hold ${n(fuel.leftKg)} kg`}`;
    case 'longerPct': return `${n(distance.speedKt, 1)}^2 / ${n(distance.lastKt, 1)}^2 = ${n(distance.ratio, 3)}${distance.factoredM === null || distance.lastM === null ? '' : `; ${whole(distance.lastM)} m x ${n(distance.ratio, 3)} x ${ARRIVAL_FACTOR} = ${whole(distance.factoredM)} m`}; one factor, ${ARRIVAL_FACTOR} on arrival, and no other`;
    case 'commit': return commitWords(plan);
    case 'failed': return plan.pressure.systems.map(({ name, state, instead }) => `${name}: ${state}, ${instead}`).join('; ');
    case 'terrain': return plan.terrain ? `landed with ${plan.landing.name}, short of the last setting: the alert takes that for forgotten flaps` : 'landed with the last setting: nothing to inhibit';
  }
}

const isManoeuvre = (id: PlanItemId): id is `manoeuvre-${number}` => id.startsWith('manoeuvre-');

const windWords = (kt: number): string => (kt === 0 ? 'calm' : `${n(Math.abs(kt))} kt ${kt > 0 ? 'head' : 'tail'}`);

function manoeuvreWords({ speeds, request: { airframe } }: Plan, deg: number, ice: string): string {
  const row = speeds.settings.find(({ settingDeg }) => settingDeg === deg);
  const setting = airframe.settings.find((one) => one.deg === deg);
  const last = speeds.settings[speeds.settings.length - 1];
  if (row === undefined || setting === undefined || last === undefined) return '';
  const from = airframe.speedRule === 'factor' ? `${setting.manoeuvreFactor} x stall ${n(row.stallKt, 1)}` : `reference of ${last.name} ${n(last.referenceKt - speeds.iceKt, 1)} + ${setting.manoeuvreIncrementKt}`;
  return `${from}${ice} = ${n(row.manoeuvreKt, 1)} kt; limit ${row.limitKt ?? 'none'}; stall warning from ${n(row.bankToWarningDeg)} deg of bank`;
}

function totalWords({ touch, steps, totalS }: Plan): string {
  const parts = steps.map(({ settingDeg, leverS, toS }, index) => `${n(settingDeg)} at ${n(toS)} s${index === 0 && touch !== null ? ` (first touch ${n(touch.atS)} s, leading edge out ${n(touch.outS)} s)` : ''} behind the lever at ${n(leverS)} s`);
  return `${parts.join('; ')}; both there at ${n(totalS ?? 0)} s`;
}

function hornWords(horn: readonly OrderHorn[], order: Order): string {
  return horn.filter((one) => one.order === order).map(({ place, spans, whole }) => {
    const where = place === 'level' ? 'level' : 'on the path';
    if (spans.length === 0) return `${where} silent${whole ? '' : ' (not done before the runway)'}`;
    const told = spans.map(({ fromS, toS, silenceable, tlaDeg, flapDeg }) => `${n(fromS)} to ${n(toS)} s, flap ${n(flapDeg, 1)}, levers down to ${n(tlaDeg)} deg${silenceable ? ', may be silenced' : ''}`);
    return `${where} ${told.join(', and ')}${whole ? '' : ' (not done before the runway)'}`;
  }).join('; ');
}

function commitWords({ fuel, distance, request: { fuelKg }, commit, startByNm, request: { distanceNm } }: Plan): string {
  const parts = [
    distance.fits === null ? 'no runway or landing distance is given' : `${whole(distance.factoredM ?? 0)} m asked for, ${whole(distance.runwayM ?? 0)} m there`,
    fuelKg === null ? 'no fuel is given' : `${whole(fuelKg)} kg on board, ${whole(fuel.continueKg)} to continue, ${whole(fuel.cleanKg)} to divert now, ${whole(fuel.divertKg)} behind the first touch`,
    ...(distanceNm !== null && startByNm !== null && distanceNm < startByNm ? [`${n(distanceNm, 1)} NM left are short of ${n(startByNm, 1)}: hold first`] : []),
  ];
  return `${parts.join('; ')}: ${commit === 'continue' ? 'continue' : 'divert'}`;
}
