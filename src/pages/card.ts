/** What a brief may tell of a drill: the task and the aeroplane as they are at the start, and nothing of what comes. */
import type { Airframe, Scenario } from '../../sim/files/index.js';
import { grouped } from '../view/words.js';
import type { DrillCard } from './house.js';

export function cardOf({ scenario, airframe }: { scenario: Scenario; airframe: Airframe }, number: number): DrillCard {
  const { start, task, recognition } = scenario;
  const name = (deg: number): string => airframe.settings.find((setting) => setting.deg === deg)?.name ?? `${deg}`;
  const lever = start.flapLeverDeg;
  const gear = start.gear === 'down' ? 'down' : 'up';
  return {
    number,
    brief: scenario.brief,
    from: name(start.flapDeg),
    to: task.settings.map(name),
    facts: [
      ['Speed', `${start.speedKt} kt`],
      ['Height', `${grouped(start.altitudeFt)} ft`],
      ['Mass', `${start.massT} t`],
      ['Flaps', name(start.flapDeg)],
      ...(lever === undefined ? [] : [['Flap lever', name(lever)] as const]),
      ['Gear', gear],
      ['Time at most', `${Math.round(task.limitS)} s`],
      ['Airframe', airframe.title],
    ],
    limitDeg: recognition === undefined ? null : recognition.limitDeg ?? airframe.recognition.limitDeg,
    measuring: recognition?.measuring ?? false,
    airframe,
  };
}
