/** What acts more than once, and what ends a fault: the checks that need the whole list. */
import { isClearable } from '../clear.js';
import { MOST_CROSSINGS, MOST_ENTRIES, MOST_MEMOS } from '../entry.js';
import type { ScenarioEvent } from './event.js';
import type { Fault } from './fault.js';
import { broken, type Misfit } from './misfit.js';
import { CROSSINGS, type Trigger } from './trigger.js';

interface Things { readonly faults: readonly Fault[]; readonly events: readonly ScenarioEvent[] }

const listed = ({ faults, events }: Things): { thing: Fault | ScenarioEvent; path: string }[] => [
  ...faults.map((thing, index) => ({ thing, path: `faults.${index}` })),
  ...events.map((thing, index) => ({ thing, path: `events.${index}` })),
];

const waitsForCrossing = (when: Trigger): boolean => CROSSINGS.some((key) => when[key as 'flapDeg'] !== undefined);

/** `times` and `everyS` belong together; a crossing alone comes anew by itself. */
export const repeatMisfits = (things: Things): Misfit[] => broken(listed(things).flatMap(({ thing, path }) => [
  [thing.everyS === undefined || thing.times !== undefined, `${path}.everyS`, 'everyS only beside times'],
  [thing.times === undefined || thing.everyS !== undefined || waitsForCrossing(thing.when), `${path}.times`, 'everyS beside times, since such a trigger does not come anew'],
] as const));

/** Every `clearFault` names a fault of the file that can end. */
export const clearMisfits = ({ faults, events }: Things): Misfit[] => events.flatMap((event, index) => {
  if (event.do !== 'clearFault') return [];
  const fault = faults.find(({ name }) => name === event.fault);
  const path = ['events', index, 'fault'];
  if (fault === undefined) return [{ path, allowed: 'the name of a fault' }];
  return isClearable(fault.kind) ? [] : [{ path, allowed: `a fault that can end: a ${fault.kind} stays` }];
});

/** Conditions of a trigger, itself and those inside. */
function within(when: Trigger): Trigger[] {
  return [when, ...[...(when.all ?? []), ...(when.any ?? [])].flatMap(within)];
}

/** Most conditions in all triggers of a file: each is looked at in every tick. */
export const MOST_CONDITIONS = 200;

/** The model has room for so many conditions and no more. */
export function roomMisfits(things: Things): Misfit[] {
  const all = listed(things);
  const conditions = all.flatMap(({ thing: { when, times, everyS } }) => {
    const inside = within(when);
    return times !== undefined && everyS === undefined ? Array.from({ length: times }, () => inside).flat() : inside;
  });
  const entries = all.reduce((sum, { thing }) => sum + (thing.times ?? 1), 0);
  const crossings = conditions.filter(waitsForCrossing).length;
  const names = new Set([
    ...conditions.flatMap(({ after }) => after ?? []),
    ...all.flatMap(({ thing: { name, times, everyS, when }, path }) => (times !== undefined && everyS !== undefined && when.atS === undefined ? [name ?? `#${path}`] : [])),
  ]).size;
  const list = things.faults.length > 0 ? 'faults' : 'events';
  return broken([
    [conditions.length <= MOST_CONDITIONS, list, `at most ${MOST_CONDITIONS} conditions in the triggers of a file, not ${conditions.length}`],
    [entries <= MOST_ENTRIES, list, `at most ${MOST_ENTRIES} faults and events, each counted as often as it may act, not ${entries}`],
    [crossings <= MOST_CROSSINGS, list, `at most ${MOST_CROSSINGS} conditions on flapDeg, speedKt or altitudeFt, not ${crossings}`],
    [names <= MOST_MEMOS, list, `at most ${MOST_MEMOS} different names behind after, and things that act again after everyS, not ${names}`],
  ]);
}
