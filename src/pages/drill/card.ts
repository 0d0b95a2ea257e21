/** What a brief may tell of a drill: the task and the aeroplane as they are at the start, and nothing of what comes. */
import type { Airframe, Scenario } from '../../../sim/files/index.js';
import { speedsOf } from '../../../sim/index.js';
import { feet } from '../../view/words.js';
import { groupOf, handRules, hasWorkload } from '../front/asks.js';
import type { DrillCard } from '../house.js';

export function cardOf({ scenario, airframe }: { scenario: Scenario; airframe: Airframe }, number: number): DrillCard {
  const { start, task, recognition, role, speedHold } = scenario;
  const name = (deg: number): string => airframe.settings.find((setting) => setting.deg === deg)?.name ?? `${deg}`;
  const lever = start.flapLeverDeg;
  const limitDeg = recognition?.limitDeg ?? airframe.recognition.limitDeg;
  const scored = recognition !== undefined;
  const measuring = recognition?.measuring ?? false;
  return {
    number,
    brief: scenario.brief,
    group: groupOf(scenario, airframe),
    from: name(start.flapDeg),
    to: task.settings.map(name),
    way: [start.flapDeg, ...task.settings],
    scored, measuring,
    workload: hasWorkload(scenario),
    facts: [
      ['Speed', `${start.speedKt} kt`],
      ['Height', `${feet(start.altitudeFt)} ft`],
      ['Mass', `${start.massT} t`],
      ['Flaps', name(start.flapDeg)],
      ...(lever === undefined ? [] : [['Flap lever', name(lever)] as const]),
      ['Gear', start.gear === 'down' ? 'down' : 'up'],
      ...(start.liveEngines === 1 ? [['Engines', 'one runs'] as const] : []),
      ['Thrust', speedHold ? 'speed hold' : 'by your hand'],
      ['Your part', role === 'driving' ? 'drive; another flies' : 'fly and drive'],
      ['Workload', hasWorkload(scenario) ? 'callouts will come' : 'none'],
      ['Time at most', `${Math.round(task.limitS)} s`],
      ['Airframe', airframe.title],
    ],
    rules: handRules({ scored, measuring, limitDeg, limitS: task.limitS, afterS: task.afterS }),
    speeds: speedsOf(airframe, start.massT, start.icing),
    startKt: start.speedKt,
    airframe,
  };
}
