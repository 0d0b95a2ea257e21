/** What a plan is made for: the aeroplane, the day, and what is left to the runway. */
import type { Airframe } from '../../files/airframe.js';
import type { ReadyScenario } from '../../ready.js';

/** What `planRequestOf` reads off a scenario. Heights are above sea level, speeds calibrated. */
export interface PlanRequest {
  readonly airframe: Airframe;
  readonly massT: number;
  readonly altitudeFt: number;
  readonly groundFt: number;
  /** Calibrated, when the plan begins. */
  readonly speedKt: number;
  /** Where the flaps stand when the plan begins, deg. */
  readonly fromDeg: number;
  /** Settings to drive to, rising; the last is landed with. Never empty. */
  readonly settings: readonly number[];
  readonly leadingEdge: 'in' | 'out';
  readonly gear: 'up' | 'down';
  /** 1 or 2; with one, the right one has failed. */
  readonly liveEngines: number;
  /** 1 is the cut-out. */
  readonly motorHeat: number;
  /** Head wind, negative from behind. */
  readonly windKt: number;
  readonly icing: boolean;
  /** null: not known. */
  readonly fuelKg: number | null;
  readonly distanceNm: number | null;
  /** Of the instructor's own, on top of the reference speed. */
  readonly additiveKt: number;
  /** Holding while the list is read and the drive runs, min. */
  readonly holdMin: number;
  readonly alternateNm: number;
  readonly divertFt: number;
  /** Runway there is, and the landing distance with the last setting from the aeroplane's own papers, both unfactored, m. */
  readonly runwayM: number | null;
  readonly landingM: number | null;
}

/** Where a scenario says nothing of its plan: two turns of four minutes, an alternate and a height that are made up. */
export const PLAN_DEFAULTS = { additiveKt: 0, holdMin: 8, alternateNm: 60, divertFt: 10_000 } as const;

/**
 * The plan a scenario asks for. Its task goes out: those settings, and on to the setting for landing. Its task goes in:
 * from where that ends, out again to land. Nothing of faults and events is looked at.
 */
export function planRequestOf({ start, task, plan = {} }: ReadyScenario, airframe: Airframe): PlanRequest {
  const last = task.settings[task.settings.length - 1] ?? start.flapDeg;
  const fromDeg = last < start.flapDeg ? last : start.flapDeg;
  const asked = task.settings.filter((deg) => deg > fromDeg && deg >= start.flapDeg);
  return {
    airframe, fromDeg, settings: settingsOf(airframe, fromDeg, asked),
    massT: start.massT, altitudeFt: start.altitudeFt, groundFt: start.groundFt, speedKt: start.speedKt,
    leadingEdge: start.leadingEdge, gear: start.gear, liveEngines: start.liveEngines, motorHeat: start.motorHeat,
    windKt: start.windKt, icing: start.icing, fuelKg: start.fuelKg ?? null, distanceNm: start.distanceNm ?? null,
    additiveKt: plan.additiveKt ?? PLAN_DEFAULTS.additiveKt, holdMin: plan.holdMin ?? PLAN_DEFAULTS.holdMin,
    alternateNm: plan.alternateNm ?? PLAN_DEFAULTS.alternateNm, divertFt: plan.divertFt ?? PLAN_DEFAULTS.divertFt,
    runwayM: plan.runwayM ?? null, landingM: plan.landingM ?? null,
  };
}

/** Settings that are asked for, and those between the last of them and the setting for landing. Rising, each once. */
export function settingsOf({ settings, landingDeg }: Airframe, fromDeg: number, asked: readonly number[]): number[] {
  const most = asked.reduce((a, b) => Math.max(a, b), fromDeg);
  const on = settings.map(({ deg }) => deg).filter((deg) => deg > most && deg <= landingDeg);
  const all = [...new Set([...asked, ...on])].sort((a, b) => a - b);
  // At the setting for landing already, or beyond: the one the flaps stand at or have passed is landed with.
  return all.length > 0 ? all : [Math.max(fromDeg, settings[1]?.deg ?? fromDeg)];
}
