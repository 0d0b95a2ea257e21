/** A moment of a run as the start of a new scenario, and what a start cannot hold of it. */
import type { Command } from '../command.js';
import { expand } from '../expand.js';
import type { Airframe } from '../files/airframe.js';
import type { ScenarioEvent } from '../files/event.js';
import type { Fault } from '../files/fault.js';
import type { Trigger } from '../files/trigger.js';
import type { ReadyScenario } from '../ready.js';
import { run } from '../replay.js';
import type { State } from '../state.js';
import { FT, RAD, ticksOf } from '../units.js';
import type { Acted } from './preview.js';

/** Something of the moment that a start cannot hold. */
export type NotHeld =
  | 'split' | 'held' | 'armed' | 'leadingEdge' | 'gear' | 'leftEngine' | 'path' | 'bank' | 'speedSelected' | 'normalDrive'
  | 'faults' | 'hazards' | 'groups' | 'goAround';

/** Made by `startHere`: what takes the place of these parts of the scenario; the rest of it stays. */
export interface StartHere {
  readonly start: ReadyScenario['start'];
  readonly task: ReadyScenario['task'];
  readonly mainDrive: ReadyScenario['mainDrive'];
  /** Those that had not acted, their times counted from here. */
  readonly faults: readonly Fault[];
  readonly events: readonly ScenarioEvent[];
  readonly notHeld: readonly NotHeld[];
}

/** Shortest run a scenario may have, s. */
const LEAST_S = 5;
/** Sides that differ by less count as even, deg. */
const EVEN_DEG = 0.05;

const rounded = (value: number, places: 1 | 10 | 100 | 1000): number => Math.floor(value * places + 0.5) / places;

/** @param commands of the run @param atS a moment of it, s */
export function startHere(scenario: ReadyScenario, airframe: Airframe, seed: number, commands: readonly Command[], acted: Acted, atS: number): StartHere {
  const world = expand(scenario, airframe, seed);
  const tick = ticksOf(rounded(atS, 100));
  const s = run(world, commands, undefined, tick).state;
  const toS = s.tick / 100;
  const heldS = s.heldTicks / 100;
  const times = actedTimes(scenario, acted, toS);
  const faults = scenario.faults.filter((_, at) => !isBefore(acted.faults[at], toS));
  const dropped = new Set(scenario.faults.filter((fault) => !faults.includes(fault)).map(({ name }) => name));
  const events = scenario.events.filter((event, at) => !isBefore(acted.events[at], toS) && !(event.do === 'clearFault' && dropped.has(event.fault)));
  const shift = <T extends { when: Trigger }>(thing: T): T => ({ ...thing, when: shifted(thing.when, toS, heldS, times) });
  const { task } = scenario;
  const left = task.settings.slice(s.latched.settingNext);
  const loses = events.some((event) => event.do === 'loseMainDrive');
  const returns = events.some((event) => event.do === 'returnMainDrive');
  return {
    start: startOf(s, scenario),
    task: {
      ...task, settings: left.length > 0 ? left : task.settings.slice(-1), limitS: Math.max(LEAST_S, rounded(task.limitS - toS, 100)),
      ...(task.legS === undefined ? {} : { legS: Math.max(1, rounded(task.legS - heldS, 100)) }),
    },
    mainDrive: s.latched.mainDrive === 1 && loses ? 'works' : scenario.mainDrive === 'returns' && returns ? 'returns' : 'lost',
    faults: faults.map(shift), events: events.map(shift),
    notHeld: notHeldOf(s, { dropped: dropped.size > 0, loses, kept: [...faults, ...events] }),
  };
}

const isBefore = (actedS: number | null | undefined, toS: number): boolean => actedS !== null && actedS !== undefined && actedS < toS;

/** When what has a name acted, s. */
function actedTimes({ faults, events }: ReadyScenario, acted: Acted, toS: number): ReadonlyMap<string, number> {
  const times = new Map<string, number>();
  const note = (name: string | undefined, actedS: number | null | undefined): void => { if (name !== undefined && isBefore(actedS, toS)) times.set(name, actedS as number); };
  faults.forEach(({ name }, at) => note(name, acted.faults[at]));
  events.forEach(({ name }, at) => note(name, acted.events[at]));
  return times;
}

/** A trigger with its times counted from here; one that waits for what has acted becomes a time. */
function shifted(when: Trigger, toS: number, heldS: number, times: ReadonlyMap<string, number>): Trigger {
  const from = (value: number, by: number): number => Math.max(0, rounded(value - by, 100));
  const inner = (list: readonly Trigger[]): Trigger[] => list.map((one) => shifted(one, toS, heldS, times));
  if (when.atS !== undefined) return { ...when, atS: from(when.atS, toS) };
  if (when.heldS !== undefined) return { ...when, heldS: from(when.heldS, heldS) };
  if (when.after !== undefined) {
    const actedS = times.get(when.after);
    return actedS === undefined ? when : { atS: from(actedS + (when.delayS ?? 0), toS) };
  }
  if (when.hazardPerS !== undefined) {
    const { hazardFromS = 0, hazardForS, ...rest } = when;
    const gone = Math.max(0, heldS - hazardFromS);
    return { ...rest, hazardFromS: from(hazardFromS, heldS), ...(hazardForS === undefined ? {} : { hazardForS: Math.max(0.01, rounded(hazardForS - gone, 100)) }) };
  }
  if (when.all !== undefined) return { ...when, all: inner(when.all) };
  if (when.any !== undefined) return { ...when, any: inner(when.any) };
  return when;
}

function startOf(s: State, { start }: ReadyScenario): ReadyScenario['start'] {
  const NM = 1852;
  const heading = (start.headingDeg ?? 90) + s.turnedRad / RAD;
  const turned = Math.abs(s.turnedRad) > 1e-3;
  return {
    ...start,
    altitudeFt: rounded(s.heightM / FT, 1), speedKt: rounded(s.casKt, 10), flapDeg: rounded((s.leftDeg + s.rightDeg) / 2, 100), flapLeverDeg: s.latched.flapLeverDeg,
    leadingEdge: s.latched.leadingEdgeGoing === 1 ? 'out' : 'in', gear: s.latched.gearLever === 1 ? 'down' : 'up', liveEngines: s.latched.leftLive + s.latched.rightLive < 2 ? 1 : 2,
    motorHeat: Math.min(1.2, rounded(s.motorHeat, 1000)), guard: s.latched.guardOpen === 1 ? 'open' : 'closed',
    ...(turned ? { headingDeg: rounded(heading - 360 * Math.floor(heading / 360), 10) } : {}),
    ...(start.fuelKg === undefined ? {} : { fuelKg: Math.max(0, rounded(start.fuelKg - s.fuelKg, 1)) }),
    ...(start.distanceNm === undefined ? {} : { distanceNm: Math.max(0, rounded(start.distanceNm - s.distanceM / NM, 10)) }),
  };
}

interface About { readonly dropped: boolean; readonly loses: boolean; readonly kept: readonly { readonly when: Trigger }[] }

function notHeldOf(s: State, { dropped, loses, kept }: About): NotHeld[] {
  const is: Readonly<Record<NotHeld, boolean>> = {
    split: Math.abs(s.leftDeg - s.rightDeg) > EVEN_DEG,
    held: s.latched.drive !== 0 || s.rateDegPerS !== 0,
    armed: s.latched.armed === 1,
    leadingEdge: s.latched.leadingEdgeGoing === 1 && s.leadingEdge < 1,
    gear: s.gear !== s.latched.gearLever,
    leftEngine: s.latched.leftLive === 0,
    path: s.pathSin !== 0,
    bank: Math.abs(s.bankRad) > RAD || s.latched.autopilot === 0,
    speedSelected: Math.abs(s.latched.selectedKt - s.casKt) > 0.5,
    normalDrive: s.latched.mainDrive === 1 && !loses,
    faults: dropped,
    hazards: kept.some(({ when }) => when.hazardPerS !== undefined),
    groups: kept.some(({ when }) => when.all !== undefined),
    goAround: s.latched.goAround === 1,
  };
  return (Object.keys(is) as NotHeld[]).filter((one) => is[one]);
}
