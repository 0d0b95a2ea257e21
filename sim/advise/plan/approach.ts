/** The approach flown by the nominal pilot: out step by step, gear and landing setting in either order, down the path. */
import { expand } from '../../expand.js';
import type { World } from '../../fixed.js';
import { limitKtNow, manoeuvreKt } from '../../marks.js';
import { ready } from '../../ready.js';
import { copyState, type State } from '../../state.js';
import { FT } from '../../units.js';
import { driveTo, firstTouch, makeReady, pause, type Held } from './drive.js';
import type { PlanRequest } from './request.js';
import { flyScript, seconds, type Do, type Script } from './script.js';

/** Which of the two comes first: the gear, or the setting that is landed with. */
export const ORDERS = ['gearFirst', 'settingFirst'] as const;
/** gearFirst: the gear is locked before the lever goes to the setting that is landed with. settingFirst: the other way round. */
export type Order = (typeof ORDERS)[number];
/** Whether the landing setting is driven to in level flight, or on the way down. */
export type Place = 'level' | 'path';

/** The path down, deg. Common practice, no source. */
export const PATH_DEG = -3;
/** The path ends this high above the threshold, ft: the screen of the landing distance (14 CFR 25.125(a)). */
export const SCREEN_FT = 50;
/** Slow enough for the next setting, kt above the speed asked for: as in the nominal run of the model. */
const NEAR_KT = 8;
/** Behind the last setting the speed has settled this near, kt. */
const SETTLED_KT = 2;

export interface DriveStep {
  readonly settingDeg: number;
  /** Manoeuvre speed of what is out, kt, as it is selected. */
  readonly speedKt: number;
  readonly leverS: number;
  /** Switch away from off, and back. */
  readonly fromS: number;
  readonly toS: number;
  /** Rest for heat on the way, s. */
  readonly restS: number;
  /** Seconds for which the motor was fed. */
  readonly motorOnS: number;
  /** Speed when the switch is pressed and when it is let go, and the lowest limit between, kt. */
  readonly fromKt: number;
  readonly toKt: number;
  readonly limitKt: number | null;
  /** Part of the cut-out. */
  readonly heatFrom: number;
  readonly heatTo: number;
}

export interface Touch { readonly speedKt: number; readonly atS: number; readonly outS: number }

/** One moment of the approach. */
export interface CoursePoint {
  readonly atS: number;
  /** Flown over the ground since the beginning, NM. */
  readonly groundNm: number;
  readonly altitudeFt: number;
  readonly speedKt: number;
  readonly flapDeg: number;
  readonly tlaDeg: number;
  /** 0 silent, 1 sounds and may be silenced, 2 sounds and may not. */
  readonly horn: 0 | 1 | 2;
  readonly motorOn: boolean;
  /** 0 up, 1 down and locked. */
  readonly gear: number;
  /** 1 is the cut-out. */
  readonly motorHeat: number;
  /** Burnt since the beginning. */
  readonly fuelKg: number;
}

export interface Approach {
  readonly order: Order;
  readonly place: Place;
  readonly touch: Touch | null;
  readonly steps: readonly DriveStep[];
  /** Both there at the landing setting, and all that comes before the path done; null where that never was. */
  readonly thereS: number | null;
  readonly readyS: number | null;
  /** Flown over the ground until then, NM. */
  readonly readyNm: number | null;
  readonly gearFromS: number | null;
  readonly gearDownS: number | null;
  readonly downS: number | null;
  /** False: the runway came first, or an hour went by. */
  readonly whole: boolean;
  readonly course: readonly CoursePoint[];
  readonly end: State;
  readonly world: World;
}

/** The world a plan begins in: nothing fails, nothing is scored, nobody is clocked. */
export function worldOf(request: PlanRequest): World {
  const { airframe, massT, altitudeFt, groundFt, speedKt, fromDeg, leadingEdge, gear, liveEngines, motorHeat, windKt, icing, settings } = request;
  return expand(ready({
    format: 1, title: 'plan', brief: '', airframe, speedHold: true, role: 'flying', mainDrive: 'lost', pointerNoise: false,
    start: { massT, altitudeFt, groundFt, speedKt, flapDeg: fromDeg, leadingEdge, gear, liveEngines, motorHeat, guard: 'closed', windKt, icing },
    task: { settings: [...settings], limitS: 3600 }, faults: [], events: [], procedure: { leverFirst: true, leaveAlone: true, call: true },
  }, airframe), airframe, 1, true);
}

/** Speeds that a plan selects, whole knots. */
export const wholeKt = (kt: number): number => Math.floor(kt + 0.5);

/** A point is kept at this distance, ticks: half a second. */
const KEEP_EVERY = 50;

/**
 * Flies one order at one place. With the gear down already, both orders are the same.
 * @param approachKt speed of the last part, kt
 * @param toScreen on down to the screen height; else to where the last of gear, setting and path has been done
 */
export function flyApproach(request: PlanRequest, order: Order, place: Place, approachKt: number, toScreen: boolean): Approach {
  const { airframe, groundFt, windKt, icing, fromDeg } = request;
  const world = worldOf(request);
  const { fixed } = world;
  const settings = request.settings.filter((deg) => deg > fromDeg);
  const landing = request.settings[request.settings.length - 1] as number;
  const manoeuvre = (deg: number): number => wholeKt(manoeuvreKt(airframe, fixed, deg, icing));
  const screenFt = groundFt + SCREEN_FT;

  let s: State = world.state;
  const now = (): State => s;
  let touch: Touch | null = null;
  const steps: DriveStep[] = [];
  const course: CoursePoint[] = [];
  const times = { there: null as number | null, ready: null as number | null, readyNm: null as number | null, gearFrom: null as number | null, gearDown: null as number | null, down: null as number | null };
  const at = (): number => s.tick / 100;
  let groundM = 0;
  let distanceM = 0;
  let fedTicks = 0;
  let limitKt = Infinity;
  let ranOut = false;

  function* slowTo(act: Do, kt: number, within: number): Script {
    act({ do: 'selectSpeed', speedKt: kt });
    yield (x) => x.casKt <= kt + within;
  }
  function* gearDown(act: Do): Script {
    if (s.latched.gearLever === 1) return;
    yield (x) => x.casKt <= airframe.gear.operateKt;
    act({ do: 'setGear', to: 'down' });
    times.gearFrom = at();
    yield pause();
  }
  function* locked(): Script {
    yield (x) => x.gear >= 1;
    times.gearDown ??= at();
  }
  function* goDown(act: Do): Script {
    if (times.down !== null) return;
    act({ do: 'descend', toFt: screenFt, pathDeg: PATH_DEG });
    times.down = at();
    yield pause();
  }
  function* extend(act: Do, deg: number, speedKt: number): Script {
    if (s.latched.flapLeverDeg < deg) act({ do: 'setFlapLever', settingDeg: deg });
    const leverS = at();
    yield pause();
    const [heatFrom, fromKt, fedFrom] = [s.motorHeat, s.casKt, fedTicks];
    limitKt = Infinity;
    let held: Held | null = null;
    yield* driveTo(act, fixed, now, deg, (h) => { held = h; });
    const { fromS, toS, restS } = held ?? { fromS: leverS, toS: leverS, restS: 0 };
    steps.push({
      settingDeg: deg, speedKt, leverS, fromS, toS, restS, motorOnS: (fedTicks - fedFrom) / 100, fromKt, toKt: s.casKt,
      limitKt: limitKt < Infinity ? limitKt : null, heatFrom: heatFrom / fixed.drive.cutOut, heatTo: s.motorHeat / fixed.drive.cutOut,
    });
  }
  function* script(act: Do): Script {
    yield* makeReady(act, now);
    let out = fromDeg > 0 ? airframe.settings.reduce((a, { deg }) => (deg <= fromDeg ? deg : a), 0) : 0;
    for (const deg of settings) {
      const isLast = deg === landing;
      const speedKt = manoeuvre(out);
      yield* slowTo(act, speedKt, NEAR_KT);
      if (s.leadingEdge < 1) {
        if (airframe.procedure.firstTouch === 'afterLever') act({ do: 'setFlapLever', settingDeg: deg });
        yield* firstTouch(act, fixed, now, (atS, outS) => { touch = { speedKt, atS, outS }; });
      }
      if (isLast && place === 'path') yield* goDown(act);
      if (isLast && order === 'gearFirst') {
        yield* gearDown(act);
        yield* locked();
      }
      yield* extend(act, deg, speedKt);
      out = deg;
    }
    times.there = at();
    if (order === 'settingFirst' && place === 'path') yield* gearDown(act);
    yield* slowTo(act, Math.max(manoeuvre(landing), approachKt), SETTLED_KT);
    times.ready = at();
    times.readyNm = groundM / 1852;
    yield* goDown(act);
    yield* gearDown(act);
    yield* locked();
    act({ do: 'selectSpeed', speedKt: approachKt });
    yield toScreen ? (x) => x.pathSin === 0 : seconds(1);
  }

  const see = (x: State): void => {
    s = x;
    groundM += (x.distanceM - distanceM) - windKt * (1852 / 3600) * (x.tick > 0 ? 0.01 : 0);
    distanceM = x.distanceM;
    if (x.latched.contactor !== 0) fedTicks += 1;
    // Levelled off at the screen with something still to do.
    if (times.down !== null && x.pathSin === 0 && x.tick > times.down * 100 + 1 && (times.ready === null || x.gear < 1)) ranOut = true;
    if (x.latched.drive !== 0) limitKt = Math.min(limitKt, limitKtNow(x, airframe));
    const last = course[course.length - 1];
    if (last !== undefined && x.tick % KEEP_EVERY !== 0 && last.horn === x.latched.horn) return;
    course.push({
      atS: x.tick / 100, groundNm: groundM / 1852, altitudeFt: x.heightM / FT, speedKt: x.casKt, flapDeg: x.driveDeg,
      tlaDeg: x.latched.leftLive === 1 ? x.leftTlaDeg : x.rightTlaDeg, horn: x.latched.horn as 0 | 1 | 2, motorOn: x.latched.contactor !== 0, gear: x.gear,
      motorHeat: x.motorHeat / fixed.drive.cutOut, fuelKg: x.fuelKg,
    });
  };
  const { state, done } = flyScript(world, script, see);
  return {
    order, place, touch, steps, thereS: times.there, readyS: times.ready, readyNm: times.readyNm, gearFromS: times.gearFrom, gearDownS: times.gearDown, downS: times.down,
    whole: done && !ranOut, course, end: copyState(state), world,
  };
}
