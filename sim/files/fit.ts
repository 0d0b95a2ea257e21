/** Do a scenario and its airframe fit together? Checks that need both, and those that need the whole scenario. */
import { clMax, stallKt } from '../flight/roll.js';
import { prepare } from '../prepare.js';
import type { Airframe } from './airframe.js';
import { broken, type Misfit } from './misfit.js';
import { ready, type ReadyScenario } from '../ready.js';
import { TRAINEES } from '../trainee/numbers.js';
import { oneOf } from './allowed.js';
import { roomMisfits } from './repeated.js';
import type { Scenario } from './scenario.js';
import type { Trigger } from './trigger.js';

/** Everything that keeps this scenario from being flown with this (sound) airframe; empty when they fit. */
export function misfits(scenario: Scenario, airframe: Airframe): Misfit[] {
  const full = ready(scenario, airframe);
  return [...startFits(full, airframe), ...speedFits(full, airframe), ...taskFits(full, airframe), ...faultsFit(full, airframe), ...roomMisfits(full), ...scoringFits(full)];
}

/** A flap lever stands at settings alone: acts, in any list, that move it to another place. */
export const leverMisfits = (acts: readonly object[], airframe: Airframe): Misfit[] => acts.flatMap((act, index) =>
  ('settingDeg' in act && !airframe.settings.some(({ deg }) => deg === act.settingDeg) ? [{ path: [index, 'settingDeg'], allowed: settingsOf(airframe) }] : []));

function startFits({ start }: ReadyScenario, airframe: Airframe): Misfit[] {
  const { mass, drive, settings } = airframe;
  return broken([
    [start.massT >= mass.emptyT && start.massT <= mass.takeOffT, 'start.massT', `a mass of this airframe: from ${mass.emptyT} to ${mass.takeOffT} t`],
    [start.flapDeg <= drive.stopDeg, 'start.flapDeg', `at most the airframe's stop (${drive.stopDeg} deg)`],
    [settings.some(({ deg }) => deg === start.flapLeverDeg), 'start.flapLeverDeg', settingsOf(airframe)],
    [start.fuelKg === undefined || start.fuelKg <= (start.massT - mass.emptyT) * 1000, 'start.fuelKg', `at most massT less the airframe's emptyT (${mass.emptyT} t)`],
  ]);
}

function speedFits({ start }: ReadyScenario, airframe: Airframe): Misfit[] {
  const { limits, gear, roll } = airframe;
  const flap = flapLimitKt(airframe, start.flapDeg);
  const { flight } = prepare(airframe, start.massT);
  // Calibrated airspeed is never below the equivalent one, so a speed below this one is below the stall for certain.
  const stall = stallKt(flight, clMax(flight, start.flapDeg, start.leadingEdge === 'out' ? 1 : 0));
  const limit = (holds: boolean, allowed: string): [boolean, string, string] => [holds, 'start.speedKt', allowed];
  return broken([
    limit(start.speedKt >= stall, `above the stall at this mass and flap (about ${Math.floor(stall) + 1} kt)`),
    limit(start.speedKt <= flap, `at most the limit at flap ${start.flapDeg} (${flap} kt)`),
    limit(start.leadingEdge === 'in' || start.speedKt <= limits.leadingEdgeKt, `at most the limit with the leading edge out (${limits.leadingEdgeKt} kt)`),
    limit(start.gear === 'up' || start.speedKt <= gear.extendedKt, `at most the limit with the gear down (${gear.extendedKt} kt)`),
    limit(start.speedKt < roll.reversalKt, `below the speed at which roll control is lost (${roll.reversalKt} kt)`),
  ]);
}

/** Limit of the setting whose range holds a position: between two settings that of the one further out. */
function flapLimitKt({ settings }: Airframe, flapDeg: number): number {
  const setting = settings.find(({ deg }) => deg >= flapDeg) ?? settings.at(-1);
  return setting?.limitKt ?? Infinity;
}

const settingsOf = ({ settings }: Airframe): string => `a setting of the airframe: ${settings.map(({ deg }) => deg).join(', ')}`;

function taskFits({ task, events, start, role }: ReadyScenario, airframe: Airframe): Misfit[] {
  const known = new Set(airframe.settings.map(({ deg }) => deg));
  return [
    ...broken(task.settings.flatMap((deg, index) => [
      [known.has(deg), `task.settings.${index}`, settingsOf(airframe)],
      [index === 0 || deg !== task.settings[index - 1], `task.settings.${index}`, 'another setting than the one before it'],
    ] as const)),
    ...broken(events.flatMap((event, index) =>
      event.do === 'descend' || event.do === 'clearAltitude' ? [[event.toFt > start.groundFt, `events.${index}.toFt`, `above the ground (groundFt is ${start.groundFt} ft)`]] : [])),
    // What the trainee may not select cannot be asked of the trainee.
    ...broken(events.map(({ do: what }, index) => [role !== 'driving' || (what !== 'clearHeading' && what !== 'clearAltitude'), `events.${index}.do`, 'no clearance where another pilot flies (role is driving)'])),
  ];
}

/** A trigger that can never act is a mistake, not a quiet run. */
function faultsFit({ faults, events, task }: ReadyScenario, { drive }: Airframe): Misfit[] {
  const inTrigger = (when: Trigger, path: string): Misfit[] => [
    ...broken([
      [(when.flapDeg ?? 0) <= drive.stopDeg, `${path}.flapDeg`, `at most the airframe's stop (${drive.stopDeg} deg)`],
      [(when.atS ?? 0) <= task.limitS, `${path}.atS`, `at most limitS of the task (${task.limitS} s)`],
      [(when.hazardFromS ?? 0) <= task.limitS, `${path}.hazardFromS`, `at most limitS of the task (${task.limitS} s)`],
      [(when.heldS ?? 0) <= task.limitS, `${path}.heldS`, `at most limitS of the task (${task.limitS} s)`],
    ]),
    ...(['all', 'any'] as const).flatMap((group) => (when[group] ?? []).flatMap((leaf, index) => inTrigger(leaf, `${path}.${group}.${index}`))),
  ];
  return [
    ...faults.flatMap(({ when }, index) => inTrigger(when, `faults.${index}.when`)),
    ...events.flatMap(({ when }, index) => inTrigger(when, `events.${index}.when`)),
  ];
}

function scoringFits({ recognition, training, passes, fails, events }: ReadyScenario): Misfit[] {
  return [
    // Who can look at the gauge as long as they like recognises nothing.
    ...broken(events.map(({ do: what }, index) => [recognition === undefined || what !== 'freeze', `events.${index}.do`, 'no freeze in a scenario with recognition'])),
    ...broken([[recognition === undefined || training !== true, 'training', 'false beside recognition: a scored run shows no such mark']]),
    ...broken([[recognition === undefined || recognition.seenDeg < recognition.limitDeg, 'recognition.seenDeg', `below limitDeg (${recognition?.limitDeg} deg)`]]),
    ...(['passes', 'fails'] as const).flatMap((list) => ({ passes, fails })[list]?.flatMap((name, index) =>
      (TRAINEES.some((known) => known === name) ? [] : [{ path: [list, index], allowed: `a scripted trainee: ${oneOf(TRAINEES)}` }])) ?? []),
    ...(fails ?? []).flatMap((name, index) => (passes?.includes(name) ? [{ path: ['fails', index], allowed: 'a trainee that is not among passes' }] : [])),
  ];
}
