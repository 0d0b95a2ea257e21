/**
 * The plan: speeds, steps, times, heat, fuel, distances, and what gear and horn do in each order. Times and heat are those of
 * the drive itself, flown from beginning to end by the nominal pilot; closed forms stand beside them as checks.
 */
import { prepare } from '../../prepare.js';
import { speedsOf, type SettingSpeeds, type Speeds } from '../speeds.js';
import { flyApproach, ORDERS, wholeKt, type Approach } from './approach.js';
import { fuelKgPerNm, flowKgPerH, groundKt, type Steady } from './fuel.js';
import { hornOf, type OrderHorn } from './horn.js';
import { landingOf, type Landing } from './landing.js';
import { motorOnS } from './motor.js';
import type { DriveStep, Touch } from './parts.js';
import { descentFtPerMin, pathNm } from './path.js';
import { systemsOf, type PressureSystem } from './pressure.js';
import type { PlanRequest } from './request.js';
import { flyRetraction, type Retraction } from './retract.js';
import type { CoursePoint } from './track.js';

/** One setting on the way out, as flown with the gear first; times in s from the beginning of the plan. */
export interface PlanStep extends DriveStep {
  /** Setting it comes from, deg. */
  readonly beforeDeg: number;
  /** The same drive at its mean speed in closed form, s. */
  readonly closedS: number;
}

/** Flows are those of level flight at the manoeuvre speed of what is out, in still air. What the approach burns is flown. */
export interface PlanFuel {
  readonly holdKgPerH: number;
  readonly holdKg: number;
  /** From the beginning of the plan to the screen. */
  readonly approachKg: number;
  /** Both together. */
  readonly continueKg: number;
  /** To the alternate as the aeroplane is before the first touch, and behind it, with the leading edge out. */
  readonly cleanKgPerNm: number;
  readonly cleanKg: number;
  readonly outKgPerNm: number;
  readonly divertKg: number;
  /** Left for diverting behind the first touch, once the hold is flown; null where no fuel is given. */
  readonly leftKg: number | null;
}

/**
 * Made by `planOf`. Touch, steps, times and heat are those of the approach with the gear first, flown level to the landing setting;
 * `horn` alone tells of both orders at both places. Times count from the beginning of the plan.
 */
export interface Plan {
  readonly request: PlanRequest;
  readonly speeds: Speeds;
  readonly landing: SettingSpeeds;
  /** Reference speed of the landing setting and what is added, whole knots. */
  readonly approachKt: number;
  readonly touch: Touch | null;
  readonly steps: readonly PlanStep[];
  readonly motorOnS: number;
  readonly restS: number;
  /** Most heat on the way, part of the cut-out. */
  readonly mostHeat: number;
  /** From the beginning to both there at the landing setting; to all done before the path. null: it never came to that. */
  readonly totalS: number | null;
  readonly readyS: number | null;
  readonly readyNm: number | null;
  readonly pathNm: number;
  readonly startByNm: number | null;
  readonly groundKt: number;
  readonly descentFtPerMin: number;
  readonly retraction: Retraction;
  readonly fuel: PlanFuel;
  readonly distance: Landing;
  readonly horn: readonly OrderHorn[];
  /** The flown approach, gear first, to the screen; and setting first. */
  readonly course: readonly CoursePoint[];
  readonly pressure: { readonly source: string; readonly systems: readonly PressureSystem[] };
  readonly commit: 'continue' | 'divert';
  /** The flap part of the terrain alert would sound: what is landed with is less than the last setting. */
  readonly terrain: boolean;
  /** False: the drive never brought it to the landing setting. */
  readonly whole: boolean;
}

/** Works a plan out. @throws RangeError for a mass that is not positive */
export function planOf(request: PlanRequest): Plan {
  const { airframe, massT, icing, groundFt, altitudeFt, windKt, settings, additiveKt } = request;
  const speeds = speedsOf(airframe, massT, icing);
  const landingDeg = settings[settings.length - 1] as number;
  const rowOf = (deg: number): SettingSpeeds => speeds.settings.find(({ settingDeg }) => settingDeg === deg) ?? (speeds.settings[0] as SettingSpeeds);
  const landing = rowOf(landingDeg);
  const last = speeds.settings[speeds.settings.length - 1] as SettingSpeeds;
  const approachKt = wholeKt(landing.referenceKt + additiveKt);
  const flown = ORDERS.flatMap((order) => (['level', 'path'] as const).map((place) => flyApproach(request, order, place, approachKt, order === 'gearFirst' && place === 'level')));
  const main = flown[0] as Approach;
  const retraction = flyRetraction(request, main);
  const steps = stepsOf(request, main);
  const overKt = groundKt(approachKt, groundFt, windKt);
  const downNm = pathNm(altitudeFt, groundFt);
  const fuel = fuelOf(request, speeds, main, approachKt);
  const distance = landingOf(landing.referenceKt + additiveKt, last.referenceKt, request.landingM, request.runwayM);
  return {
    request, speeds, landing, approachKt, touch: main.touch, steps,
    motorOnS: steps.reduce((sum, step) => sum + step.motorOnS, 0), restS: steps.reduce((sum, step) => sum + step.restS, 0),
    mostHeat: main.course.reduce((most, { motorHeat }) => Math.max(most, motorHeat), 0),
    totalS: main.thereS, readyS: main.readyS, readyNm: main.readyNm, pathNm: downNm,
    startByNm: main.readyNm === null ? null : main.readyNm + downNm,
    groundKt: overKt, descentFtPerMin: descentFtPerMin(overKt),
    retraction, fuel, distance, horn: flown.map(hornOf), course: main.course, pressure: systemsOf(airframe),
    commit: commitOf(request, fuel, distance), terrain: landingDeg < last.settingDeg, whole: main.whole,
  };
}

function stepsOf({ airframe, massT, fromDeg }: PlanRequest, { steps }: Approach): PlanStep[] {
  const { drive } = prepare(airframe, massT);
  return steps.map((step, index) => {
    const beforeDeg = steps[index - 1]?.settingDeg ?? fromDeg;
    return { ...step, beforeDeg, closedS: motorOnS(drive, (step.fromKt + step.toKt) / 2, beforeDeg, step.settingDeg) };
  });
}

/** From the beginning to the screen. The model's air stands still: in a head wind the way down takes as much longer as it covers less ground. */
function approachFuel({ course, downS }: Approach, approachKt: number, midFt: number, windKt: number): number {
  const endKg = course[course.length - 1]?.fuelKg ?? 0;
  const downKg = course.find(({ atS }) => downS !== null && atS >= downS)?.fuelKg ?? endKg;
  return downKg + (endKg - downKg) * groundKt(approachKt, midFt, 0) / groundKt(approachKt, midFt, windKt);
}

function fuelOf({ airframe, massT, fromDeg, leadingEdge, liveEngines, altitudeFt, groundFt, windKt, holdMin, alternateNm, divertFt, fuelKg }: PlanRequest, speeds: Speeds, main: Approach, approachKt: number): PlanFuel {
  const { flight } = prepare(airframe, massT);
  // What is out is flown at its manoeuvre speed, with the leading edge as it stands.
  const out = speeds.settings.reduce((found, one) => (one.settingDeg <= fromDeg ? one : found), speeds.settings[0] as SettingSpeeds);
  const speedKt = wholeKt(out.manoeuvreKt);
  const steady = (edge: number, atFt: number): Steady => ({ speedKt, altitudeFt: atFt, flapDeg: fromDeg, leadingEdge: edge, gear: 0, liveEngines });
  const now = leadingEdge === 'out' ? 1 : 0;
  const holdKgPerH = flowKgPerH(flight, steady(now, altitudeFt));
  const holdKg = holdKgPerH * holdMin / 60;
  const approachKg = approachFuel(main, approachKt, (altitudeFt + groundFt) / 2, windKt);
  // Which way the wind blows on the way to the alternate is not said: still air.
  const cleanKgPerNm = fuelKgPerNm(flight, steady(now, divertFt), 0);
  const outKgPerNm = fuelKgPerNm(flight, steady(1, divertFt), 0);
  return {
    holdKgPerH, holdKg, approachKg, continueKg: holdKg + approachKg, cleanKgPerNm, cleanKg: cleanKgPerNm * alternateNm,
    outKgPerNm, divertKg: outKgPerNm * alternateNm, leftKg: fuelKg === null ? null : fuelKg - holdKg,
  };
}

/**
 * Continue where the runway takes the landing and the fuel takes hold and approach; what is not given is no reason against.
 * Else divert, as long as the fuel reaches: before the first touch, since the leading edge does not come back.
 */
function commitOf({ fuelKg }: PlanRequest, { continueKg, cleanKg }: PlanFuel, { fits }: Landing): 'continue' | 'divert' {
  const canContinue = fits !== false && (fuelKg === null || fuelKg >= continueKg);
  const canDivert = fuelKg === null || fuelKg >= cleanKg;
  return !canContinue && canDivert ? 'divert' : 'continue';
}
