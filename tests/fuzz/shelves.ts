/** Shipped drills and sets by name, as sets and courses find them. */
import type { Scenario, SetFile } from '../../sim/files/index.js';
import { drill, drillNames } from '../files/shipped.js';
import { setFile, setNames } from '../set/shipped.js';

export const shippedDrills: ReadonlyMap<string, Scenario> = new Map(drillNames.map((name) => [name, drill(name)]));
export const shippedSets: ReadonlyMap<string, SetFile> = new Map(setNames.map((name) => [name, setFile(name)]));
