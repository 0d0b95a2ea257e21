/** The shipped sets, checked as any file is. Only their order and their facts are told onward; their names and titles stay here. */
import { baseOf, type Airframe, type Scenario } from '../../sim/files/index.js';
import { readySet, type ReadySet } from '../../sim/index.js';
import { readSet } from '../text/index.js';
import { airframesOnShelf, drillsOnShelf, sound } from './shelf.js';

export interface ShelvedSet {
  /** Name of its file: how a flight of it is found again. */
  readonly name: string;
  readonly of: ReadySet;
}

const texts = import.meta.glob<string>('../../scenarios/sets/*.json', { query: '?raw', import: 'default', eager: true });

/** The sets in the order of their numbers, first 1. */
export function sets(): ShelvedSet[] {
  const airframe = (name: string): Airframe | undefined => airframesOnShelf().get(name);
  const drill = (name: string): Scenario | undefined => drillsOnShelf().get(name);
  return Object.keys(texts).map((file): ShelvedSet => {
    const set = sound(readSet(texts[file] as string, file, airframe, drill));
    const found = baseOf(set, airframe, drill);
    if (!('base' in found)) throw new Error(`${file}: its run is not there`);
    return { name: /([^/]+)\.json$/.exec(file)?.[1] ?? file, of: readySet(set, found.base, found.airframe) };
  }).sort((a, b) => (a.of.set.order ?? Infinity) - (b.of.set.order ?? Infinity));
}
