/** Where the files lie that come with Evenhand: found from this file, built (dist) or not (src/cli). Reads no file that has to be checked. */
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

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

/** Version of Evenhand, from package.json. */
export function version(): string {
  const found: unknown = JSON.parse(readFileSync(shippedPath('package.json'), 'utf8'));
  return typeof found === 'object' && found !== null && 'version' in found ? String(found.version) : 'unknown';
}

function namesIn(kind: 'drills' | 'airframes' | 'sets'): string[] {
  return readdirSync(shippedPath('scenarios', kind)).filter((file) => file.endsWith('.json')).map((file) => file.slice(0, -5)).sort();
}
