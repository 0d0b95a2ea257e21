/** What the file did to the previewed run, as marks on its charts. */
import type { ReadyScenario } from '../../../../sim/files/index.js';
import type { Acted } from '../../../../sim/index.js';
import type { Moment } from '../../debrief/moments.js';

const EVENT_WORDS: Readonly<Partial<Record<string, string>>> = {
  descend: 'descends', level: 'levels off', selectSpeed: 'speed selected', failEngine: 'engine stops', setGear: 'gear lever',
  returnMainDrive: 'normal drive back', freeze: 'freeze', loseMainDrive: 'normal drive lost', clear: 'fault ends', selectHeading: 'heading selected',
};

/** What the charts mark themselves, under no name. */
const TOLD: readonly string[] = ['message', 'tellGoAround'];

/** Faults and events where they acted. Callouts are marked by the charts themselves. */
export function actedMoments({ faults, events }: Pick<ReadyScenario, 'faults' | 'events'>, acted: Acted): Moment[] {
  return [
    ...faults.flatMap(({ name }, index): Moment[] => at(acted.faults[index], `fault ${name}`, 'failure', 2)),
    ...events.flatMap((event, index): Moment[] => (event.do === 'callout' || (TOLD.includes(event.do) && event.name === undefined) ? [] : at(acted.events[index], event.name ?? EVENT_WORDS[event.do] ?? event.do, 'other', 3))),
  ];
}

const at = (atS: number | null | undefined, word: string, sign: Moment['sign'], rank: number): Moment[] => (atS === null || atS === undefined ? [] : [{ atS, word, sign, rank }]);
