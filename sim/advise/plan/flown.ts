/** Planned and flown: what of a plan can be read off the run that was flown by it, from the replayed record. */
import type { RunRecord } from '../../files/record.js';
import { commandsOfRecord, requestOf } from '../../score/replayed.js';
import { rowsOf } from '../../score/trace.js';
import { FT, KT } from '../../units.js';
import { planRequestOf } from './request.js';

/** One item of a plan beside what the run came to; numbers in `unit`, words without one. */
export interface FlownItem {
  readonly id: string;
  /** For a speed: the setting the lever went to, deg. */
  readonly settingDeg?: number;
  readonly planned: number | string | null;
  /** null: the run never came to it, or the scenario does not give it. */
  readonly flown: number | string | null;
  readonly unit: string;
  /** Places behind the point with which both are told. */
  readonly decimals: number;
  /** The trainee had it shown instead of working it out. */
  readonly shown: boolean;
}

interface Seen {
  beginTick: number | null;
  beginNm: number;
  levers: Map<number, number>;
  arrivals: number;
  lastThere: number | null;
  gearTick: number | null;
  landingLever: number | null;
  fedTicks: number;
  worst: 0 | 1 | 2;
  downFt: number;
  downTicks: number;
  fuelKg: number;
}

const HORN = ['silent', 'silenceable', 'sounds'] as const;

/** @returns null for a record without a plan */
export function plannedAndFlown(record: RunRecord): FlownItem[] | null {
  const { plan } = record;
  if (plan === undefined) return null;
  const request = requestOf(record);
  const made = planRequestOf(request.scenario, record.airframe);
  const landing = made.settings[made.settings.length - 1];
  const { start, task } = request.scenario;
  const log = commandsOfRecord(record);
  const begin = log.reduce<number | null>((first, { rank, tick }) => (rank === 2 && (first === null || tick < first) ? tick : first), null);
  const seen: Seen = {
    beginTick: begin, beginNm: 0, levers: new Map(), arrivals: 0, lastThere: null, gearTick: start.gear === 'down' ? 0 : null, landingLever: start.flapLeverDeg === landing ? 0 : null,
    fedTicks: 0, worst: 0, downFt: 0, downTicks: 0, fuelKg: 0,
  };
  let lever = start.flapLeverDeg;
  let heightM = start.altitudeFt * FT;
  const windMps = start.windKt * KT;
  rowsOf(request, log, record.end.tick, 1, (s) => {
    const tick = s.tick - 1;
    if (begin !== null && tick < begin) seen.beginNm = (s.distanceM - windMps * s.tick / 100) / 1852;
    if (s.latched.flapLeverDeg !== lever) {
      lever = s.latched.flapLeverDeg;
      if (!seen.levers.has(lever)) seen.levers.set(lever, s.casKt);
      if (lever === landing && seen.landingLever === null) seen.landingLever = tick;
    }
    if (s.latched.settingNext > seen.arrivals) {
      seen.arrivals = s.latched.settingNext;
      if (s.latched.settingNext >= task.settings.length) seen.lastThere = tick;
    }
    if (seen.gearTick === null && s.latched.gearLever === 1) seen.gearTick = tick;
    if (s.latched.contactor > 0) seen.fedTicks += 1;
    if (s.latched.horn > seen.worst) seen.worst = s.latched.horn as 0 | 1 | 2;
    if (s.pathSin < 0 && s.tick > 0) {
      seen.downFt += (heightM - s.heightM) / FT;
      seen.downTicks += 1;
    }
    heightM = s.heightM;
    seen.fuelKg = s.fuelKg;
    return null;
  });
  const isShown = (id: string): boolean => plan.shown.includes(id);
  const number = (id: string, planned: number | null, flown: number | null, unit: string, decimals: number): FlownItem => ({ id, planned, flown, unit, decimals, shown: isShown(id) });
  const toLanding = task.settings[task.settings.length - 1] === landing;
  return [
    ...made.settings.flatMap((deg, index): FlownItem[] => {
      const before = index === 0 ? outOf(record, made.fromDeg) : made.settings[index - 1];
      const planned = plan.manoeuvre.find(({ settingDeg }) => settingDeg === before)?.kt ?? null;
      return [{ id: `manoeuvre-${before}`, settingDeg: deg, planned, flown: seen.levers.get(deg) ?? null, unit: 'kt', decimals: 0, shown: isShown(`manoeuvre-${before}`) }];
    }),
    { id: 'order', planned: plan.order, flown: orderFlown(seen), unit: '', decimals: 0, shown: isShown('order') },
    { id: 'horn', planned: plan.horn, flown: HORN[seen.worst], unit: '', decimals: 0, shown: isShown('horn') },
    number('motorOnS', plan.motorOnS, seen.fedTicks === 0 ? null : seen.fedTicks / 100, 's', 0),
    number('totalS', plan.totalS, toLanding && seen.lastThere !== null && begin !== null ? (seen.lastThere - begin) / 100 : null, 's', 0),
    number('startByNm', plan.startByNm, start.distanceNm === undefined || begin === null ? null : start.distanceNm - seen.beginNm, 'NM', 1),
    number('descentFtPerMin', plan.descentFtPerMin, seen.downTicks < 500 ? null : seen.downFt / (seen.downTicks / 6000), 'ft/min', 0),
    number('continueKg', plan.continueKg, seen.fuelKg, 'kg', 0),
  ].filter(({ planned }) => planned !== null);
}

/** The setting that is out at a position: the largest at or below it, deg. */
const outOf = ({ airframe }: RunRecord, deg: number): number => airframe.settings.reduce((found, one) => (one.deg <= deg ? one.deg : found), 0);

/** Gear lever and lever to the landing setting, whichever went first; null while one of them has not. */
function orderFlown({ gearTick, landingLever, lastThere }: Seen): 'gearFirst' | 'settingFirst' | null {
  if (gearTick !== null && landingLever !== null) return gearTick <= landingLever ? 'gearFirst' : 'settingFirst';
  if (gearTick !== null) return 'gearFirst';
  return lastThere !== null && landingLever !== null ? 'settingFirst' : null;
}
