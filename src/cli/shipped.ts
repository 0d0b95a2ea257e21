/** Where the files lie that come with Evenhand: found from this file, built (dist) or not (src/cli). */
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { type Airframe, type Lookup, type ScenarioLookup, type SetLookup } from '../../sim/files/index.js';
import { readAirframe, readScenario, readSet } from '../text/index.js';

const top = [new URL('../', import.meta.url), new URL('../../', import.meta.url)]
  .map((url) => fileURLToPath(url))
  .find((folder) => existsSync(join(folder, 'package.json')) && existsSync(join(folder, 'scenarios')));

/** A path below the folder that holds package.json. @throws Error when the installation has lost its files. */
export function shippedPath(...parts: string[]): string {
  if (top === undefined) throw new Error('the folder "scenarios" is not where it was installed');
  return join(top, ...parts);
}

/** Names of the shipped drills, sorted. */
export const drillNames = (): string[] => namesIn('drills');

/** Names of the shipped airframes, sorted. */
export const airframeNames = (): string[] => namesIn('airframes');

/** Path of a shipped drill, or null if there is none of that name. */
export function drillPath(name: string): string | null {
  return drillNames().includes(name) ? shippedPath('scenarios', 'drills', `${name}.json`) : null;
}

/** Names of the shipped sets, sorted. */
export const setNames = (): string[] => namesIn('sets');

/** Path of a shipped set, or null if there is none of that name. */
export function setPath(name: string): string | null {
  return setNames().includes(name) ? shippedPath('scenarios', 'sets', `${name}.json`) : null;
}

/** Finds shipped drills by name. */
export function drills(): ScenarioLookup {
  const lookup = airframes();
  return (name) => {
    const file = drillPath(name);
    if (file === null) return undefined;
    const read = readScenario(readFileSync(file, 'utf8'), file, lookup);
    return read.ok ? read.value : undefined;
  };
}

/** Finds shipped sets by name. */
export function sets(): SetLookup {
  const [lookup, named] = [airframes(), drills()];
  return (name) => {
    const file = setPath(name);
    if (file === null) return undefined;
    const read = readSet(readFileSync(file, 'utf8'), file, lookup, named);
    return read.ok ? read.value : undefined;
  };
}

/** Finds shipped airframes by name; each file is read once. */
export function airframes(): Lookup {
  const known = new Map<string, Airframe | undefined>();
  return (name) => {
    if (!known.has(name)) known.set(name, namesIn('airframes').includes(name) ? shippedAirframe(name) : undefined);
    return known.get(name);
  };
}

function shippedAirframe(name: string): Airframe | undefined {
  const file = shippedPath('scenarios', 'airframes', `${name}.json`);
  const read = readAirframe(readFileSync(file, 'utf8'), file);
  return read.ok ? read.value : undefined;
}

function namesIn(kind: 'drills' | 'airframes' | 'sets'): string[] {
  return readdirSync(shippedPath('scenarios', kind)).filter((file) => file.endsWith('.json')).map((file) => file.slice(0, -5)).sort();
}

/** Version of Evenhand, from package.json. */
export function version(): string {
  const found: unknown = JSON.parse(readFileSync(shippedPath('package.json'), 'utf8'));
  return typeof found === 'object' && found !== null && 'version' in found ? String(found.version) : 'unknown';
}
