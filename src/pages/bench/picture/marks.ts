/** Where the faults and events of a scenario stand: on the time of the run, on the travel of the flaps, or on a condition. Plain sums. */
import type { Json } from '../../../text/index.js';
import { kindIn } from '../form/begin.js';
import { eventWords, faultWords, isWritten, triggerWords, word, type Written } from '../words.js';

export type Ruler = 'time' | 'travel';

export interface Mark {
  readonly list: 'faults' | 'events';
  readonly index: number;
  readonly kind: string;
  /** As the file calls it, else its kind. */
  readonly name: string;
  /** Everything about it in one sentence. */
  readonly words: string;
  /** null: nothing tells where it stands. */
  readonly on: Ruler | null;
  /** s or deg. */
  readonly value: number;
  /** Where the figure is written that moves it; null where no single figure does. */
  readonly key: 'atS' | 'flapDeg' | null;
}

/** The figure of a mark, as it stands on it. */
export const figureOn = ({ on, value }: Pick<Mark, 'on' | 'value'>): string => (on === null ? '' : on === 'time' ? `${Number(value.toFixed(1))} s` : `${Number(value.toFixed(2))}°`);

export const labelOf = (mark: Mark): string => `${mark.name} ${figureOn(mark)}`.trim();

/** When each acted in a run that was flown, by its place in the file. */
export interface ActedAt {
  readonly faults: readonly (number | null)[];
  readonly events: readonly (number | null)[];
}

export function marksIn(json: Json, acted: ActedAt | null): Mark[] {
  if (!isWritten(json)) return [];
  return (['faults', 'events'] as const).flatMap((list) => {
    const things = json[list];
    return Array.isArray(things) ? things.map((thing, index) => markOf(isWritten(thing) ? thing : {}, list, index, acted)) : [];
  });
}

function markOf(thing: Written, list: Mark['list'], index: number, acted: ActedAt | null): Mark {
  const when = isWritten(thing['when']) ? thing['when'] : {};
  const kind = word(thing[list === 'faults' ? 'kind' : 'do']);
  const does = list === 'faults' ? faultWords(thing) : eventWords(thing);
  const told = { list, index, kind, name: typeof thing['name'] === 'string' && thing['name'] !== '' ? thing['name'] : kind, words: `${does.replace(/\.$/, '')}, ${triggerWords(when)}.` };
  const trigger = kindIn(when);
  if ((trigger === 'atS' || trigger === 'flapDeg') && typeof when[trigger] === 'number') {
    return { ...told, on: trigger === 'atS' ? 'time' : 'travel', value: when[trigger], key: trigger };
  }
  const atS = acted?.[list][index] ?? null;
  return { ...told, on: atS === null ? null : 'time', value: atS ?? 0, key: null };
}

export interface Range {
  readonly from: number;
  readonly to: number;
}

/** From 0 to the latest end, s. */
export function timeOf(json: Json): Range {
  const limit = isWritten(json) && isWritten(json['task']) ? json['task']['limitS'] : undefined;
  return { from: 0, to: typeof limit === 'number' && limit > 0 && limit <= 3600 ? limit : 180 };
}

/** From where the flaps stand over the settings to reach, deg; where they go in first, the greater comes first. */
export function travelOf(json: Json): Range {
  const [start, task] = isWritten(json) ? [json['start'], json['task']] : [];
  const begin = isWritten(start) && typeof start['flapDeg'] === 'number' ? start['flapDeg'] : 0;
  const settings = (isWritten(task) && Array.isArray(task['settings']) ? task['settings'] : []).filter((one) => typeof one === 'number');
  const [low, high] = [Math.min(begin, ...settings), Math.max(begin, ...settings)];
  if (low === high) return { from: low, to: low + 10 };
  return (settings[0] ?? high) >= begin ? { from: low, to: high } : { from: high, to: low };
}

/** Steps to which a mark is drawn: fine enough to mean something, coarse enough to be hit. */
export function gridOf(ruler: Ruler, { from, to }: Range): number {
  if (ruler === 'travel') return 0.5;
  return Math.abs(to - from) <= 600 ? 1 : 5;
}

/** A value on the grid and on the ruler. */
export function snapped(value: number, grid: number, { from, to }: Range): number {
  const inside = Math.min(Math.max(from, to), Math.max(Math.min(from, to), value));
  return Number((Math.round(inside / grid) * grid).toFixed(3));
}

export interface Flag {
  /** Where its mark stands, px. */
  readonly x: number;
  /** Room that mark and label take, px. */
  readonly width: number;
}

export interface Placed {
  /** From 0, at the ruler. */
  readonly lane: number;
  /** The label stands left of its mark, as there is no room at its right. */
  readonly left: boolean;
}

/** Lanes for flags in their order, so that none lies over another. `half`: px of a mark about its place. */
export function lanes(flags: readonly Flag[], room: number, half: number): Placed[] {
  const taken: (readonly [number, number])[][] = [];
  return flags.map(({ x, width }) => {
    const left = x - half + width > room && x + half - width >= 0;
    const span = left ? [x + half - width, x + half] as const : [x - half, x - half + width] as const;
    let lane = 0;
    while (taken[lane]?.some(([from, to]) => span[0] < to && from < span[1]) === true) lane += 1;
    (taken[lane] ??= []).push(span);
    return { lane, left };
  });
}
