// The shipped sets, read through their door and made ready.
import { readdirSync } from 'node:fs';
import { baseOf, type SetFile } from '../../sim/files/index.js';
import { readySet, type ReadySet } from '../../sim/index.js';
import { readSet } from '../../src/text/index.js';
import { lookup, textOf } from '../files/shipped.js';

const folder = new URL('../../scenarios/sets/', import.meta.url);
export const setNames = readdirSync(folder).map((name) => name.replace('.json', '')).sort();
export const setText = (name: string): string => textOf(`sets/${name}.json`);

const noDrill = (): undefined => undefined;

export function setFile(name: string): SetFile {
  const read = readSet(setText(name), name, lookup, noDrill);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return read.value;
}

/** A shipped set, with keys changed at will. */
export function shippedSet(name: string, keys: Partial<SetFile> = {}): ReadySet {
  const set = { ...setFile(name), ...keys };
  const found = baseOf(set, lookup, noDrill);
  if (!('base' in found)) throw new Error(found.allowed);
  return readySet(set, found.base, found.airframe);
}
