/** Faults and events added, moved, copied and taken away, from the form or from the picture. */
import type { ChoiceShape, ListShape } from '../../../../sim/files/index.js';
import { duplicated, moved, type Json } from '../../../text/index.js';
import type { Draft } from '../draft.js';
import { KINDS } from '../kinds.js';
import { eventWords, faultWords } from '../words.js';
import { valueAt } from './at.js';
import { freshName, ofKind, triggerOf } from './begin.js';
import { chosen } from './chosen.js';
import { keyIn } from './key-in.js';

/** Faults and events are lists of the same make. */
export const LISTS = {
  faults: { by: 'kind', noun: 'fault', words: faultWords },
  events: { by: 'do', noun: 'event', words: eventWords },
} as const;
export type ListName = keyof typeof LISTS;

/** What each list may hold. */
export const choiceOf = (list: ListName): ChoiceShape => (keyIn(KINDS.scenario.shape, list).shape as ListShape).item as ChoiceShape;

/** How many there are. */
function countIn(draft: Draft, list: ListName): number {
  const found = valueAt(draft.json.value, [list]);
  return Array.isArray(found) ? found.length : 0;
}

/** Adds one behind the others and opens it. @returns what it does, in words; null where there is no such kind */
export function addThing(draft: Draft, list: ListName, shape: ChoiceShape, kind: string, when?: { [key: string]: Json }): string | null {
  const { by, words } = LISTS[list];
  const option = shape.options.get(kind);
  if (option === undefined) return null;
  const json = draft.json.value;
  const name = freshName(kind, json);
  const made = ofKind(option, by, kind, { name, side: 'right', when: when ?? triggerOf(list === 'faults' ? 'flapDeg' : 'atS', {}, json, '') }, json);
  const index = countIn(draft, list);
  draft.put([list, index], { name, ...made });
  chosen.value = { list, index };
  return words(made);
}

/** Takes one away. */
export function removeThing(draft: Draft, list: ListName, index: number): void {
  draft.put([list, index], undefined);
  chosen.value = null;
}

/** Moves one to another place, and opens it there. */
export function moveThing(draft: Draft, list: ListName, index: number, to: number): void {
  draft.edit(moved(draft.text.value, [list], index, to));
  chosen.value = { list, index: to };
}

/** Copies one behind itself, under a name of its own, and opens the copy. */
export function copyThing(draft: Draft, list: ListName, index: number, name: string): void {
  draft.edit(duplicated(draft.text.value, [list], index), 'copy');
  draft.put([list, index + 1, 'name'], freshName(name, draft.json.value), 'copy');
  draft.part();
  chosen.value = { list, index: index + 1 };
}
