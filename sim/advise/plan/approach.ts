/** The approach flown by the nominal pilot: out step by step, gear and landing setting in either order, down the path. */
import { expand } from '../../expand.js';
import type { World } from '../../fixed.js';
import { manoeuvreKt } from '../../marks.js';
import { ready } from '../../ready.js';
import { copyState, type State } from '../../state.js';
import { makeReady } from './drive.js';
import { atS, extend, gearDown, gearLocked, goDown, nothingNoted, slowTo, touchFirst, type Flight, type Noted } from './parts.js';
import { SCREEN_FT } from './path.js';
import type { PlanRequest } from './request.js';
import { flyScript, seconds, type Script } from './script.js';
import { follow, trackFrom, type CoursePoint } from './track.js';

/** Which of the two comes first: the gear, or the setting that is landed with. */
export const ORDERS = ['gearFirst', 'settingFirst'] as const;
/** gearFirst: the gear is locked before the lever goes to the setting that is landed with. settingFirst: the other way round. */
export type Order = (typeof ORDERS)[number];
/** Whether the landing setting is driven to in level flight, or on the way down. */
export type Place = 'level' | 'path';

/** Slow enough for the next setting, kt above the speed asked for: as in the nominal run of the model. */
const NEAR_KT = 8;
/** Behind the last setting the speed has settled this near, kt. */
const SETTLED_KT = 2;

export interface Approach extends Readonly<Noted> {
  readonly order: Order;
  readonly place: Place;
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

/** Which approach is flown. */
interface Way {
  readonly order: Order;
  readonly place: Place;
  /** Speed of the last part, kt. */
  readonly approachKt: number;
  /** On down to the screen height; else to where the last of gear, setting and path has been done. */
  readonly toScreen: boolean;
}

/** Flies one order at one place. With the gear down already, both orders are the same. */
export function flyApproach(request: PlanRequest, order: Order, place: Place, approachKt: number, toScreen: boolean): Approach {
  const { airframe, windKt } = request;
  const world = worldOf(request);
  const { fixed } = world;
  const track = trackFrom(world.state);
  const noted = nothingNoted();
  let ranOut = false;
  const script = flyScript(world, (act) => approach({ act, airframe, fixed, track, noted }, request, { order, place, approachKt, toScreen }), (s) => {
    follow(track, s, airframe, fixed, windKt);
    // Levelled off at the screen with something still to do.
    if (noted.downS !== null && s.pathSin === 0 && s.tick > noted.downS * 100 + 1 && (noted.readyS === null || s.gear < 1)) ranOut = true;
  });
  return { order, place, ...noted, whole: script.done && !ranOut, course: track.course, end: copyState(script.state), world };
}

function* approach(flight: Flight, request: PlanRequest, { order, place, approachKt, toScreen }: Way): Script {
  const { act, airframe, fixed, track, noted } = flight;
  const { fromDeg, icing } = request;
  const landing = request.settings[request.settings.length - 1] as number;
  const screenFt = request.groundFt + SCREEN_FT;
  const manoeuvre = (deg: number): number => wholeKt(manoeuvreKt(airframe, fixed, deg, icing));

  yield* makeReady(act, () => track.state);
  let out = fromDeg > 0 ? airframe.settings.reduce((a, { deg }) => (deg <= fromDeg ? deg : a), 0) : 0;
  for (const deg of request.settings.filter((one) => one > fromDeg)) {
    const isLast = deg === landing;
    const speedKt = manoeuvre(out);
    yield* slowTo(flight, speedKt, NEAR_KT);
    if (track.state.leadingEdge < 1) yield* touchFirst(flight, deg, speedKt);
    if (isLast && place === 'path') yield* goDown(flight, screenFt);
    if (isLast && order === 'gearFirst') {
      yield* gearDown(flight);
      yield* gearLocked(flight);
    }
    yield* extend(flight, deg, speedKt);
    out = deg;
  }
  noted.thereS = atS(flight);
  if (order === 'settingFirst' && place === 'path') yield* gearDown(flight);
  yield* slowTo(flight, Math.max(manoeuvre(landing), approachKt), SETTLED_KT);
  noted.readyS = atS(flight);
  noted.readyNm = track.groundM / 1852;
  yield* goDown(flight, screenFt);
  yield* gearDown(flight);
  yield* gearLocked(flight);
  act({ do: 'selectSpeed', speedKt: approachKt });
  yield toScreen ? (s) => s.pathSin === 0 : seconds(1);
}
