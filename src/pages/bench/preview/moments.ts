/** What the file did to the previewed run, as marks on its charts. */
import type { ReadyScenario } from '../../../../sim/files/index.js';
import { asks, tells, type Acted, type Asking, type Telling } from '../../../../sim/index.js';
import type { Moment } from '../../debrief/moments.js';

type Event = ReadyScenario['events'][number];

/** What the charts mark themselves is named here only where the file names it. */
const EVENT_WORDS: Readonly<Record<Exclude<Event['do'], (Asking | Telling)['do']>, string>> = {
  descend: 'descends', level: 'levels off', selectSpeed: 'speed selected', failEngine: 'engine stops', setGear: 'gear lever',
  returnMainDrive: 'normal drive back', freeze: 'freeze', loseMainDrive: 'normal drive lost', clearFault: 'fault ends',
};

/** Faults and events where they acted. What asks is marked by the charts themselves. */
export function actedMoments({ faults, events }: Pick<ReadyScenario, 'faults' | 'events'>, acted: Acted): Moment[] {
  return [
    ...faults.flatMap(({ name }, index): Moment[] => at(acted.faults[index], `fault ${name}`, 'failure', 2)),
    ...events.flatMap((event, index): Moment[] => {
      const word = wordOf(event);
      return word === null ? [] : at(acted.events[index], word, 'other', 3);
    }),
  ];
}

function wordOf(event: Event): string | null {
  if (asks(event)) return null;
  return event.name ?? (tells(event) ? null : EVENT_WORDS[event.do as keyof typeof EVENT_WORDS]);
}

const at = (atS: number | null | undefined, word: string, sign: Moment['sign'], rank: number): Moment[] => (atS === null || atS === undefined ? [] : [{ atS, word, sign, rank }]);
